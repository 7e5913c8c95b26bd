import { useEffect, useRef } from 'react';

/**
 * When a field is left. Left by a press elsewhere, only once that press is over: what then appears
 * under the field would move the pressed control from under the pointer, and its click would be lost.
 */
export function useLeaving(onLeave: (() => void) | undefined): () => void {
  const isPressed = useRef(false);
  useEffect(() => {
    const down = () => {
      isPressed.current = true;
    };
    const up = () => {
      isPressed.current = false;
    };
    const listening = new AbortController();
    const options = { capture: true, signal: listening.signal };
    window.addEventListener('pointerdown', down, options);
    window.addEventListener('pointerup', up, options);
    window.addEventListener('pointercancel', up, options);
    return () => listening.abort();
  }, []);
  return () => {
    if (onLeave === undefined) return;
    if (!isPressed.current) {
      onLeave();
      return;
    }
    const over = new AbortController();
    const leave = () => {
      over.abort();
      // The click follows the release at once, before the next frame.
      requestAnimationFrame(() => onLeave());
    };
    window.addEventListener('pointerup', leave, { signal: over.signal });
    window.addEventListener('pointercancel', leave, { signal: over.signal });
  };
}
