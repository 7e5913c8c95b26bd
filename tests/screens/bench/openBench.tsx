import { render } from '@testing-library/react';
import { createStore } from 'zustand/vanilla';
import { createBench, type Keeper, type Voice } from '#bench';
import { type CommandBody, decide, initial, type JobEvent, type SetUp } from '#counting';
import {
  BenchScreen,
  type EarShown,
  type KeysState,
  type MouthState,
  type Services,
  ServicesProvider,
} from '#screens';
import { createSettings } from '#settings';
import { valvesOf } from '#valvetrain';
import { fakeClock } from '../../fakes/clock';
import { engine, windowInThou } from '../../valvetrain/samples';
import { fakeSoundCheck, shutEar } from '../services';

const v8 = engine([1, 8, 4, 3, 6, 5, 7, 2]);

/** A V8 on M8 × 1.25 bolts with 1.65 rockers: a quarter turn is 0.0198 in of preload. */
export const setUp: SetUp = {
  name: 'Harrow Fen, pump engine 4',
  engine: v8,
  scope: valvesOf(v8),
  adjuster: { kind: 'pivot', pitchMm: 1.25, rockerRatio: 1.65, leanDeg: 0 },
  rockers: 'bolt-down',
  groups: [{ id: 'all', name: 'All valves', window: windowInThou(), members: { kind: 'all' } }],
  calling: { way: 'quarters' },
  callsLastOnly: false,
  asksLanding: true,
  clock: 'mark',
  hands: 'alone',
  testPushrod: null,
};

const quietVoice: Voice = {
  unlock() {},
  announce() {},
  kept() {},
  alarm() {},
  cut() {},
  hush() {},
};

/** The log of a job just opened on a set-up. */
function opened(on: SetUp): JobEvent[] {
  const app = { version: '0', commit: '0' };
  const decision = decide(initial, {
    type: 'openJob',
    jobId: 'job',
    setUp: on,
    app,
    at: 0,
    by: 'app',
  });
  if (decision.kind !== 'events') throw new Error('the set-up was refused');
  return [...decision.events];
}

/** The bench screen on a real bench with its log in memory, driven by commands. */
export async function openBench(
  commands: readonly CommandBody[],
  changes: {
    readonly setUp?: Partial<SetUp>;
    readonly append?: Keeper['append'];
    readonly ear?: Partial<EarShown>;
  } = {},
) {
  const clock = fakeClock();
  const log = opened({ ...setUp, ...changes.setUp });
  const sent: CommandBody[] = [];
  const keeper: Keeper = {
    read: async () => ({ events: [...log], newer: false }),
    append: changes.append ?? (async (events) => void log.push(...events)),
    claim: async () => ({ release() {} }),
    takeOver: async () => ({ release() {} }),
    follow: () => () => {},
    watch: () => () => {},
  };
  const bench = createBench({ clock, keeper, voice: quietVoice });
  await bench.open('job');
  bench.submit({ type: 'ask', about: 'where' }, 'pedal');
  for (const command of commands) bench.submit(command, 'pedal');
  const services: Services = {
    bench,
    settings: createSettings({ load: async () => null, save: async () => {} }),
    mouth: createStore<MouthState>(() => ({ captions: [], silent: null, voices: [] })),
    ear: createStore<EarShown>(() => ({ ...shutEar, ...changes.ear })),
    keys: createStore<KeysState>(() => ({
      strip: [],
      pedal: [],
      needsStageKey: false,
      holding: null,
      learning: null,
    })),
    soundCheck: fakeSoundCheck(),
    route: createStore(() => ({ route: { screen: 'bench' as const, jobId: 'job' } })),
    touch: (command) => {
      sent.push(command);
      bench.submit(command, 'touch');
    },
    go() {},
    // The bench screen uses no more of the services than these.
  } as Partial<Services> as Services;
  render(
    <ServicesProvider value={services}>
      <BenchScreen />
    </ServicesProvider>,
  );
  return { bench, services, sent, clock };
}

const go: CommandBody = { type: 'advance' };
const more: CommandBody = { type: 'step', size: 'step' };

/** Cautions heard and the crank at the first cylinder. */
export const toFirstValve: readonly CommandBody[] = [go, go];

/** The first valve at zero and so many quarters counted. */
export function counted(quarters: number): readonly CommandBody[] {
  return [...toFirstValve, go, ...Array.from({ length: quarters }, () => more)];
}
