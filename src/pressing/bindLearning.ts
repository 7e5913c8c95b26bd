import type { Cancel, Clock } from '#clock';
import { listenForPresses } from './devices';
import type { Keymap, Meaning } from './keymap';
import { learn } from './learnReducer';
import type { LearnState } from './learnState';
import { startLearning } from './learnState';
import type { PressInput } from './pressInput';

/** What learning a key by pressing it is given. */
export interface LearningParts {
  readonly window: Window;
  readonly clock: Clock;
  /** What the key is to mean. */
  readonly target: Meaning;
  /** The keys as they are, to say what would be lost. */
  readonly keymap: Keymap;
  /** Called at the start and whenever the state changes; the last is `done`. */
  readonly onState: (state: LearnState) => void;
}

/** Learns a key from a window's key events until done. Returns what gives it up. */
export function bindLearning(parts: LearningParts): () => void {
  const { window, clock, target, keymap, onState } = parts;
  let state = startLearning(target);
  let cancelTimer: Cancel | null = null;

  function feed(input: PressInput): boolean {
    cancelTimer?.();
    cancelTimer = null;
    const result = learn(state, input, keymap);
    if (result.wakeAt !== undefined) {
      cancelTimer = clock.after(Math.max(1, result.wakeAt - clock.now()), () => {
        feed({ type: 'time', at: clock.now() });
      });
    }
    if (result.state !== state) {
      state = result.state;
      onState(state);
    }
    return result.consumed;
  }

  // The button that began the learning would keep Enter and Space for itself.
  const began = window.document.activeElement;
  if (began instanceof HTMLElement) began.blur();

  onState(state);
  const stopDevices = listenForPresses(window, clock, feed);
  return () => {
    cancelTimer?.();
    stopDevices();
    const { activeElement, body } = window.document;
    if (began instanceof HTMLElement && activeElement === body) began.focus();
  };
}
