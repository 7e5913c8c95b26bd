/** The lock that keeps the screen on, as the browser offers it. */
interface ScreenLocks {
  request(kind: 'screen'): Promise<{ release(): Promise<void> }>;
}

/** What the wake lock needs of the page. */
export interface WakeLockPage {
  readonly locks: ScreenLocks | null;
  readonly document: Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;
}

/**
 * Keeps the screen on until let go. The browser drops the lock whenever the page is hidden, so it is
 * asked for again each time the page is shown. A refusal costs only the lit screen.
 */
export function keepScreenOn({ locks, document }: WakeLockPage): () => void {
  let held: Promise<{ release(): Promise<void> } | null> = Promise.resolve(null);

  function ask(): void {
    if (locks === null || document.visibilityState !== 'visible') return;
    held = locks.request('screen').catch(() => null);
  }

  ask();
  document.addEventListener('visibilitychange', ask);
  return () => {
    document.removeEventListener('visibilitychange', ask);
    void held.then((lock) => lock?.release()).catch(() => undefined);
  };
}

/** The browser's own screen locks; null where it has none. */
export function screenLocks(page: Window): ScreenLocks | null {
  return 'wakeLock' in page.navigator ? page.navigator.wakeLock : null;
}
