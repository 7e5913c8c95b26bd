/** Input types that are not for text: there only some keys belong to the control. */
const NOT_TEXT = new Set([
  'button',
  'checkbox',
  'color',
  'file',
  'image',
  'radio',
  'range',
  'reset',
  'submit',
]);

const CONTROL = [
  'button',
  'input',
  'a[href]',
  'summary',
  '[role="button"]',
  '[role="link"]',
  '[role="checkbox"]',
  '[role="switch"]',
  '[role="tab"]',
  '[role="radio"]',
  '[role="slider"]',
].join(',');

/** Controls that are worked with the arrow and page keys too. */
const ARROWED =
  'input[type="radio"],input[type="range"],[role="tab"],[role="radio"],[role="slider"]';

const PRESSING_KEYS = new Set(['Space', 'Enter', 'NumpadEnter']);

/** Whether an element is written in. */
export function takesText(element: Element): boolean {
  if (element instanceof HTMLInputElement) return !NOT_TEXT.has(element.type);
  if (element instanceof HTMLTextAreaElement) return true;
  return element instanceof HTMLElement && element.isContentEditable;
}

/**
 * Whether the focused control keeps this key. A text field keeps them all; a control reached by
 * keyboard keeps what works it. One that was clicked or touched keeps none: the next press counts.
 */
export function controlKeeps(focused: Element, code: string, clicked: boolean): boolean {
  if (takesText(focused)) return true;
  if (clicked || !focused.matches(':focus-visible')) return false;
  if (focused.matches('select')) return true;
  if (PRESSING_KEYS.has(code)) return focused.matches(CONTROL);
  return /^(Arrow|Page)/.test(code) && focused.matches(ARROWED);
}

/** Whether a dialog stands over the page. */
export function dialogOpen(page: Document): boolean {
  return page.querySelector('dialog[open],[aria-modal="true"]') !== null;
}
