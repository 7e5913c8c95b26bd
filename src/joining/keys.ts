import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Bench } from '#bench';
import { systemClock } from '#clock';
import {
  bindKeys,
  bindLearning,
  commandFor,
  type KeyMeaning,
  type LearnState,
  needsStageKey,
  type PressCue,
  readKeymap,
  stripOf,
  withinStep,
  withKey,
  withListen,
  withPedal,
} from '#pressing';
import type { KeyAct, KeysState } from '#screens';
import type { SettingsStore } from '#settings';
import type { Speaker } from '#speaking';
import { shown } from '#words';
import type { EarJoint } from './ear';

export interface Keys {
  readonly store: StoreApi<KeysState>;
  learnPedal(): void;
  learnListen(): void;
  learnKey(act: KeyAct): void;
  stopLearning(): void;
  forgetKeys(): void;
}

interface KeysParts {
  readonly page: Window;
  readonly bench: Bench;
  readonly settings: SettingsStore;
  readonly speaker: Speaker;
  readonly ear: Pick<EarJoint, 'toggle' | 'hold'>;
  /** Whether the bench is on the screen: keys act nowhere else. */
  onBench(): boolean;
}

/** Keys and pedals joined to the bench. */
export function joinKeys({ page, bench, settings, speaker, ear, onBench }: KeysParts): Keys {
  const keymap = () => readKeymap(settings.store.getState().settings.keys);
  const strip = () => {
    const { pedal } = keymap();
    const pedalIs = pedal.sendsKeyUp ? 'pedal' : 'pedal, taps only';
    return stripOf(keymap()).map(({ meaning, label }) => ({
      meaning: meaning === 'pedal' ? pedalIs : meaning,
      label,
    }));
  };
  const pedal = () => keymap().pedal.codes;
  const store = createStore<KeysState>(() => ({
    strip: strip(),
    pedal: pedal(),
    needsStageKey: needsStageKey(keymap()),
    holding: null,
    learning: null,
  }));
  let giveUp: (() => void) | null = null;

  settings.store.subscribe(() =>
    store.setState({
      strip: strip(),
      pedal: pedal(),
      needsStageKey: needsStageKey(keymap()),
    }),
  );

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
      else if (press.kind === 'listen') ear.hold(press.on);
      else ear.toggle();
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
    const [code] = codes;
    if (state.target === 'pedal')
      settings.change({ keys: withPedal(keymap(), { codes, sendsKeyUp }) });
    else if (code === undefined) return;
    else if (state.target !== 'listen')
      settings.change({ keys: withKey(keymap(), code, state.target) });
    else settings.change({ keys: withListen(keymap(), code), listens: 'while held' });
    giveUp?.();
    giveUp = null;
  }

  function learn(target: 'pedal' | 'listen' | KeyMeaning): void {
    giveUp?.();
    giveUp = bindLearning({
      window: page,
      clock: systemClock,
      target,
      keymap: keymap(),
      onState: learned,
    });
  }

  return {
    store,
    learnPedal: () => learn('pedal'),
    learnListen: () => learn('listen'),
    learnKey: learn,
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
