import { type RefObject, useEffect, useRef } from 'react';
import { shellWords as words } from './shellWords';

/**
 * A screen has come: the page is named after it, and the focus goes to its heading, so that a reader
 * says where it is and the keyboard goes on from there. For the one heading of the screen, which
 * takes `tabIndex={-1}`.
 */
export function useArrival(title: string): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = words.pageTitle(title);
  }, [title]);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return heading;
}
