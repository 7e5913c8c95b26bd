import { createStore, type StoreApi } from 'zustand/vanilla';
import type { EarShown } from '#screens';
import { type EarParts, type LoadedEar, told } from './earParts';

export interface EarJoint {
  readonly store: StoreApi<EarShown>;
  /** The ear's key: open when it is shut or dead, shut when it is open. */
  toggle(): void;
  /** The listening key. */
  hold(on: boolean): void;
  /** The builder agrees that speech may leave the device, and opens the ear. */
  agree(): void;
  /** The builder shuts it, or does not agree. */
  shut(): void;
  /** The bench leaves the screen: elsewhere nothing tells that the ear is open, so it is shut. */
  leaveBench(): void;
  /** The ear's own log as a file's text; empty while it was never opened. */
  log(): string;
}

const unopened: EarShown = {
  state: 'shut',
  why: 'asked',
  byKey: false,
  place: null,
  ghost: null,
  captions: [],
  level: null,
  fetched: null,
  tooNoisy: false,
};

/** The ear, whose code is fetched when it is first wanted: whoever counts by key never needs it. */
export function joinEar(parts: EarParts): EarJoint {
  const { bench, settings, speaker } = parts;
  const chosen = () => settings.store.getState().settings;
  const shutNow = (): EarShown => ({ ...unopened, byKey: chosen().listens === 'while held' });
  const store = createStore<EarShown>(shutNow);
  let loading: Promise<LoadedEar> | null = null;
  let loaded: LoadedEar | null = null;

  /** Runs in the order asked, once the code is here. */
  function withEar(use: (ear: LoadedEar) => void): void {
    const { whichEar } = chosen();
    if (whichEar === 'none') return;
    loading ??= import('./chosenEar').then(({ chosenEar }) => chosenEar(whichEar, parts, store));
    const mine = loading;
    mine.then(
      (ear) => {
        if (mine !== loading) return;
        loaded = ear;
        use(ear);
      },
      () => {
        if (mine !== loading) return;
        loading = null;
        store.setState({ state: 'dead', why: 'network' });
        speaker.announce([told({ state: 'dead', why: 'network', count48: null })]);
      },
    );
  }

  /** Another ear is chosen: the one there was is taken down, since one is open at a time. */
  function change(): void {
    const gone = loading;
    loading = null;
    loaded = null;
    store.setState(shutNow());
    gone?.then(
      (ear) => ear.close(),
      () => undefined,
    );
  }

  settings.store.subscribe(({ settings: now }, { settings: before }) => {
    if (now.whichEar !== before.whichEar) change();
    else if (now.listens !== before.listens)
      store.setState({ byKey: now.listens === 'while held' });
  });
  bench.store.subscribe((now, before) => {
    const woken = before.resting && !now.resting;
    if (!woken || !chosen().earOnWaking) return;
    if (store.getState().state === 'shut') withEar((ear) => ear.start());
  });

  return {
    store,
    toggle() {
      speaker.unlock();
      const none = { state: 'shut', why: 'asked', count48: null } as const;
      if (chosen().whichEar === 'none') speaker.announce([told(none)]);
      withEar((ear) => ear.toggle());
    },
    hold(on) {
      speaker.unlock();
      withEar((ear) => ear.hold(on));
    },
    agree() {
      speaker.unlock();
      settings.change({ mayLeave: true });
      withEar((ear) => ear.start());
    },
    shut: () => withEar((ear) => ear.stop()),
    leaveBench() {
      const { state } = store.getState();
      if (state === 'open' || state === 'opening') withEar((ear) => ear.stop());
    },
    log: () => loaded?.log() ?? '',
  };
}
