import type { Cancel, Clock } from '#clock';
import type { PressInput } from './pressInput';

/** How often the pads are asked while one is connected: a browser tells of no button by itself. */
const ASK_MS = 15;

/** A button's code: 'Gamepad1' is the first. */
function codeOf(index: number): string {
  return `Gamepad${index + 1}`;
}

/** Codes of the buttons now down, on any pad; a second pad's first button is the first button too. */
function buttonsDown(pads: readonly (Gamepad | null)[]): ReadonlySet<string> {
  const down = new Set<string>();
  for (const pad of pads) {
    pad?.buttons.forEach(({ pressed }, index) => {
      if (pressed) down.add(codeOf(index));
    });
  }
  return down;
}

/**
 * Hands the buttons of game pads to `feed` as keys going down and up. The pads are asked only while
 * one is connected and the page is seen. A button held from before is no press. Returns what stops it.
 */
export function listenForPads(
  window: Window,
  clock: Clock,
  feed: (input: PressInput) => boolean,
): () => void {
  const { navigator, document: page } = window;
  const pads = () => ('getGamepads' in navigator ? navigator.getGamepads() : []);
  let before: ReadonlySet<string> | null = null;
  let cancel: Cancel | null = null;

  function ask(): void {
    cancel = null;
    const now = pads();
    if (!now.some((pad) => pad !== null) || page.visibilityState === 'hidden') {
      before = null;
      return;
    }
    const down = buttonsDown(now);
    const at = clock.now();
    const held = before ?? down;
    for (const code of down) if (!held.has(code)) feed({ type: 'down', code, repeat: false, at });
    for (const code of held) if (!down.has(code)) feed({ type: 'up', code, repeat: false, at });
    before = down;
    cancel = clock.after(ASK_MS, ask);
  }

  function begin(): void {
    if (cancel === null) ask();
  }

  window.addEventListener('gamepadconnected', begin);
  page.addEventListener('visibilitychange', begin);
  begin();
  return () => {
    cancel?.();
    window.removeEventListener('gamepadconnected', begin);
    page.removeEventListener('visibilitychange', begin);
  };
}
