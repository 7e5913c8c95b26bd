import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Bench } from '#bench';
import { systemClock } from '#clock';
import {
  bindKeys,
  bindLearning,
  commandFor,
  type LearnState,
  type PressCue,
  readKeymap,
  stripOf,
  withinStep,
  withPedal,
} from '#pressing';
import type { KeysState } from '#screens';
import type { SettingsStore } from '#settings';
import type { Speaker } from '#speaking';
import { shown } from '#words';

export interface Keys {
  readonly store: StoreApi<KeysState>;
  learnPedal(): void;
  stopLearning(): void;
  forgetKeys(): void;
}

interface KeysParts {
  readonly page: Window;
  readonly bench: Bench;
  readonly settings: SettingsStore;
  readonly speaker: Speaker;
  /** Whether the bench is on the screen: keys act nowhere else. */
  onBench(): boolean;
}

/** Keys and pedals joined to the bench. */
export function joinKeys({ page, bench, settings, speaker, onBench }: KeysParts): Keys {
  const keymap = () => readKeymap(settings.store.getState().settings.keys);
  const strip = () => stripOf(keymap()).map(({ meaning, label }) => ({ meaning, label }));
  const store = createStore<KeysState>(() => ({ strip: strip(), holding: null, learning: null }));
  let giveUp: (() => void) | null = null;

  settings.store.subscribe(() => store.setState({ strip: strip() }));

  bindKeys({
    window: page,
    clock: systemClock,
    context: () => ({
      withinStep: (value) => withinStep(value, bench.store.getState().job),
      keymap: keymap(),
      active: onBench() && giveUp === null && settings.store.getState().settings.keysOn,
    }),
    onPress(press) {
      const command = commandFor(press, bench.store.getState().job);
      if (command !== null) bench.submit(command, 'key');
    },
    onCue: held,
  });

  function held(cue: PressCue): void {
    if (cue.kind === 'hold') speaker.tone(`hold ${cue.reached}`);
    store.setState({ holding: cue.kind === 'hold' ? cue.reached : null });
  }

  function learned(state: LearnState): void {
    const done = state.step === 'done';
    store.setState({
      learning: {
        sentence: state.problem ?? shown.learning(state.word),
        done,
        problems: done ? state.learned.problems : [],
      },
    });
    if (!done) return;
    const { codes, sendsKeyUp } = state.learned;
    settings.change({ keys: withPedal(keymap(), { codes, sendsKeyUp }) });
    giveUp?.();
    giveUp = null;
  }

  return {
    store,
    learnPedal() {
      giveUp?.();
      giveUp = bindLearning({
        window: page,
        clock: systemClock,
        target: 'pedal',
        keymap: keymap(),
        onState: learned,
      });
    },
    stopLearning() {
      giveUp?.();
      giveUp = null;
      store.setState({ learning: null });
    },
    forgetKeys() {
      settings.change({ keys: null });
      store.setState({ learning: null });
    },
  };
}
