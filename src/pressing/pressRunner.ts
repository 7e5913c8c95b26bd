import type { Cancel, Clock } from '#clock';
import type { Press, PressCue } from './press';
import type { PressContext } from './pressContext';
import type { PressInput } from './pressInput';
import { reduce } from './pressReducer';
import { initialPressState } from './pressState';

/** What a runner is given. */
export interface PressRunnerParts {
  readonly clock: Clock;
  /** Asked afresh at every input, so that it is the bench as it is then. */
  readonly context: () => PressContext;
  /** `at` is the clock's milliseconds of the event that made the press. */
  readonly onPress: (press: Press, at: number) => void;
  readonly onCue: (cue: PressCue) => void;
}

/** The reducer kept running: any device feeds it. */
export interface PressRunner {
  /** Returns whether the device's own action is to be prevented. */
  feed(input: PressInput): boolean;
  /** Cancels what is held or waiting and sets no more timers. */
  stop(): void;
}

/** Joins the reducer to a clock: keeps its state, sets its timers, hands on its presses. */
export function runPresses({ clock, context, onPress, onCue }: PressRunnerParts): PressRunner {
  let state = initialPressState;
  let cancelTimer: Cancel | null = null;
  let stopped = false;

  function feed(input: PressInput): boolean {
    if (stopped) return false;
    cancelTimer?.();
    cancelTimer = null;
    const result = reduce(state, input, context());
    state = result.state;
    if (result.wakeAt !== undefined) {
      cancelTimer = clock.after(Math.max(1, result.wakeAt - clock.now()), () => {
        feed({ type: 'time', at: clock.now() });
      });
    }
    for (const press of result.presses) onPress(press, input.at);
    for (const cue of result.cues) onCue(cue);
    return result.consumed;
  }

  return {
    feed,
    stop() {
      feed({ type: 'blur', at: clock.now() });
      stopped = true;
    },
  };
}
