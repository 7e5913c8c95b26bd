/** Tells whether a focused element was clicked or touched. */
export interface ClickedFocus {
  has(element: Element): boolean;
  stop(): void;
}

/**
 * Watches which element got the focus by mouse or touch. `:focus-visible` alone does not tell: it
 * comes to match a clicked button as soon as a key goes down.
 */
export function watchClickedFocus(page: Document): ClickedFocus {
  let clicked: EventTarget | null = null;
  let pointerWasLast = false;

  function onPointer(event: Event): void {
    pointerWasLast = true;
    const focused = page.activeElement;
    if (focused !== null && event.composedPath().includes(focused)) clicked = focused;
  }

  function onKey(): void {
    pointerWasLast = false;
  }

  // A window that gets the keyboard back focuses the same element again: that changes nothing.
  function onFocus(event: FocusEvent): void {
    if (event.target !== clicked) clicked = pointerWasLast ? event.target : null;
  }

  page.addEventListener('pointerdown', onPointer, true);
  page.addEventListener('keydown', onKey, true);
  page.addEventListener('focusin', onFocus, true);
  return {
    has: (element) => element === clicked,
    stop() {
      page.removeEventListener('pointerdown', onPointer, true);
      page.removeEventListener('keydown', onKey, true);
      page.removeEventListener('focusin', onFocus, true);
    },
  };
}
