/**
 * What a story worked by keyboard alone needs of a page, whichever driver opened it. Keys are called
 * by their `code`.
 */
export interface StoryPage {
  readonly keyboard: {
    press(code: string, options?: { readonly delay?: number }): Promise<void>;
    type(text: string): Promise<void>;
  };
  /** Runs in the page; the function may use nothing from outside itself. */
  evaluate<Result, Given>(inPage: (given: Given) => Result, given: Given): Promise<Result>;
  goto(url: string): Promise<unknown>;
  url(): string;
}

/** The text of the first element there is; null where there is none. */
export function textOf(page: StoryPage, selector: string): Promise<string | null> {
  return page.evaluate((css) => document.querySelector(css)?.textContent ?? null, selector);
}

/** The texts of all the elements there are. */
export function textsOf(page: StoryPage, selector: string): Promise<readonly string[]> {
  return page.evaluate(
    (css) => [...document.querySelectorAll(css)].map((element) => element.textContent ?? ''),
    selector,
  );
}

/** Whether such an element is there and takes up room. */
export function isShown(page: StoryPage, selector: string): Promise<boolean> {
  return page.evaluate(
    (css) => (document.querySelector(css)?.getClientRects().length ?? 0) > 0,
    selector,
  );
}

/** Waits so long, ms. */
export function rest(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

/** Waits until it is so; for hooks, where a test's own polling may not be used. */
export async function until(isSo: () => Promise<boolean>, what: string): Promise<void> {
  const end = Date.now() + 30_000;
  while (!(await isSo())) {
    if (Date.now() > end) throw new Error(`never came about: ${what}`);
    await rest(50);
  }
}
