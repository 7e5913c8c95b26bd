import { listenForPresses } from './devices';
import { dialogOpen, takesText } from './keptKeys';
import type { PressInput } from './pressInput';
import type { PressRunnerParts } from './pressRunner';
import { runPresses } from './pressRunner';

/** What the binding is given: the window whose keys it takes, and a runner's parts. */
export interface KeyBindingParts extends PressRunnerParts {
  readonly window: Window;
}

/** Keys bound to the bench. */
export interface KeyBinding {
  /** For another device, such as a game pad: codes of its own go the same road as keys. */
  feed(input: PressInput): boolean;
  /** Lets go of the window. */
  stop(): void;
}

/** Feeds a window's keys to the bench's presses; under a dialog they are off. */
export function bindKeys(parts: KeyBindingParts): KeyBinding {
  const { window, clock } = parts;
  const page = window.document;
  const runner = runPresses({
    ...parts,
    context() {
      const given = parts.context();
      return { ...given, active: given.active && !dialogOpen(page) };
    },
  });

  /** A closing dialog gives the focus back to the button that opened it, which would keep Space. */
  function onDialogClosed(): void {
    const focused = page.activeElement;
    if (dialogOpen(page) || !(focused instanceof HTMLElement) || focused === page.body) return;
    if (!takesText(focused)) focused.blur();
  }

  const stopDevices = listenForPresses(window, clock, runner.feed);
  page.addEventListener('close', onDialogClosed, true);
  return {
    feed: runner.feed,
    stop() {
      page.removeEventListener('close', onDialogClosed, true);
      stopDevices();
      runner.stop();
    },
  };
}
