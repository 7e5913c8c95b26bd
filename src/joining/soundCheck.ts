import { createStore, type StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import type { SoundCheckStep } from '#counting';
import type { RunningCheck, VoicePrints } from '#hearing-offline';
import type { Keeping } from '#keeping';
import type { SoundCheckShown } from '#screens';
import type { Speaker } from '#speaking';

/** Where the builder's own words are kept: on this device, beside the settings, in no backup. */
const KEPT_AS = 'voice prints';

export interface SoundCheckJoint {
  readonly store: StoreApi<SoundCheckShown>;
  /** The builder's own words as they were kept, whatever they are; null for none. */
  readonly kept: StoreApi<{ readonly prints: unknown }>;
  start(): void;
  /** Ends it without a word. */
  stop(): void;
  /** Deletes the builder's own words. */
  forget(): void;
}

interface Parts {
  readonly page: Window & typeof globalThis;
  readonly speaker: Speaker;
  readonly keeping: Pick<Keeping, 'setting' | 'putSetting'>;
  /** The ear gives up the microphone. */
  shutEar(): void;
}

const idle: SoundCheckShown = {
  state: 'idle',
  phase: 'over',
  asked: null,
  done: 0,
  of: 0,
  fetched: null,
  verdict: null,
  why: null,
  kept: false,
  unkept: false,
};

/** The sound check, whose code is fetched when it is first asked for. */
export function joinSoundCheck({ page, speaker, keeping, shutEar }: Parts): SoundCheckJoint {
  const store = createStore<SoundCheckShown>(() => idle);
  const kept = createStore<{ readonly prints: unknown }>(() => ({ prints: null }));
  let running: RunningCheck | null = null;
  let asked = 0;
  keeping.setting(KEPT_AS).then(
    (prints) => {
      if (prints === undefined || prints === null) return;
      kept.setState({ prints });
      store.setState({ kept: true });
    },
    // A store that can't be read is told of elsewhere; without prints the ear hears all the same.
    () => undefined,
  );

  function say(step: SoundCheckStep): void {
    speaker.announce([
      {
        fact: { kind: 'sound check', step },
        cue: typeof step === 'object' ? 'soft' : null,
        timing: 'at once',
        keptThrough: 0,
        perishable: false,
      },
    ]);
  }

  function keep(prints: VoicePrints | null): void {
    kept.setState({ prints });
    store.setState({ kept: prints !== null, unkept: false });
    keeping.putSetting(KEPT_AS, prints).catch(() => store.setState({ unkept: true }));
  }

  function tellMouth(): void {
    const { saying, voice } = speaker.state();
    running?.mouth(saying?.spoken === true && voice === 'ready');
  }
  speaker.subscribe(tellMouth);

  function stop(): void {
    asked += 1;
    running?.stop();
    running = null;
    const { state } = store.getState();
    if (state === 'fetching' || state === 'running') store.setState({ state: 'idle' });
  }

  async function begin(): Promise<void> {
    const mine = asked;
    const offline = await import('#hearing-offline');
    if (mine !== asked) return;
    if (!offline.canRunOffline(page)) {
      store.setState({ state: 'failed', why: 'not here' });
      return;
    }
    const of = offline.CHECK_NUMBERS.length + offline.CHECK_COMMANDS.length;
    running = offline.startSoundCheck({
      clock: systemClock,
      ...offline.browserParts(page),
      onProgress: (part) => store.setState({ fetched: part }),
      say,
      onChange(check) {
        const before = check.phase === 'commands' ? offline.CHECK_NUMBERS.length : 0;
        store.setState({
          state: check.phase === 'over' ? 'over' : 'running',
          phase: check.phase,
          asked: offline.askedFor(check),
          done: check.phase === 'over' ? of : before + check.index,
          of,
          verdict: check.verdict,
        });
      },
      onOver(prints) {
        running = null;
        if (prints !== null) keep(prints);
      },
      onFailed(why) {
        running = null;
        store.setState({ state: 'failed', why });
      },
    });
    tellMouth();
  }

  return {
    store,
    kept,
    start() {
      stop();
      shutEar();
      speaker.unlock();
      store.setState(({ kept }) => ({ ...idle, kept, state: 'fetching' }));
      begin().catch(() => store.setState({ state: 'failed', why: 'network' }));
    },
    stop,
    forget: () => keep(null),
  };
}
