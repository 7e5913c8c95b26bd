import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createBench } from '#bench';
import {
  engineSummary,
  initial,
  type JobEvent,
  recipeOf,
  replay,
  type SetUp,
  setUpOf,
} from '#counting';
import { createSettings } from '#settings';
import { createShelf, type JobCard, type JobFileRead } from '#shelf';
import type { Device, DeviceState } from '../../src/screens/device';
import type { Route } from '../../src/screens/route';
import {
  type EarShown,
  type KeysState,
  type MouthState,
  type RecordingShown,
  type Services,
  ServicesProvider,
  type SoundCheckService,
  type SoundCheckShown,
} from '../../src/screens/services';
import { fakeClock } from '../fakes/clock';
import { fakeKeeper, settled } from '../fakes/keeper';

/** Real bench, shelf and settings over logs in memory; the rest stands still and is watched. */
export function fakeServices(start: Route = { screen: 'jobs' }) {
  const clock = fakeClock();
  const keeper = fakeKeeper();
  keeper.prompt();
  let ids = 0;
  const bench = createBench({
    clock,
    keeper,
    voice: {
      unlock() {},
      announce() {},
      kept() {},
      alarm() {},
      cut() {},
      hush() {},
    },
  });
  const settings = createSettings({ load: async () => null, save: async () => {} });
  const shelf = createShelf({
    clock,
    app: { version: '1.2.3', commit: 'abc1234' },
    newId: () => {
      ids += 1;
      return `job-${ids}`;
    },
    keeper: {
      jobs: async () => [...keeper.logs.values()].map(cardOf).reverse(),
      read: (jobId) => keeper.read(jobId),
      append: (events) => keeper.append(events),
      readJobFile: async (text): Promise<JobFileRead> =>
        text.startsWith('[')
          ? { ok: true, events: JSON.parse(text) }
          : { ok: false, sentence: 'That is no job file.' },
      writeJobFile: async (events) => JSON.stringify(events),
    },
    backup: {
      readBackup: async (text) =>
        text.startsWith('[')
          ? { ok: true, logs: JSON.parse(text), settings: null }
          : { ok: false, sentence: 'That is no backup.' },
      writeBackup: async (logs) => JSON.stringify(logs),
      restoreLog: async (events) => {
        await keeper.append(events);
        return 'new';
      },
      settings: async () => undefined,
      takeSettings: vi.fn(),
    },
  });
  const route = createStore<{ readonly route: Route }>(() => ({ route: start }));
  const services: Services = {
    bench,
    shelf,
    settings,
    mouth: createStore<MouthState>(() => ({ captions: [], silent: 'no voice', voices: [] })),
    keys: createStore<KeysState>(() => ({
      strip: [{ meaning: 'one more', label: 'Space' }],
      pedal: ['PageDown'],
      needsStageKey: false,
      holding: null,
      learning: null,
    })),
    ear: createStore<EarShown>(() => shutEar),
    route,
    device: fakeDevice(),
    soundCheck: fakeSoundCheck(),
    recording: {
      store: createStore<RecordingShown>(() => ({ wanted: false, seconds: null, unkept: false })),
      look: vi.fn(),
      want: vi.fn(),
      hand: vi.fn(),
      forget: vi.fn(),
    },
    build: { version: '1.2.3', commit: 'abc1234' },
    features: [{ name: 'Wake lock', here: false, without: 'The screen may go dark.' }],
    go: vi.fn((to: Route) => route.setState({ route: to })),
    touch: (command) => bench.submit(command, 'touch'),
    practise: vi.fn(),
    toggleEar: vi.fn(),
    agreeToLeave: vi.fn(),
    shutEar: vi.fn(),
    earLog: () => '{}',
    learnPedal: vi.fn(),
    learnListen: vi.fn(),
    learnKey: vi.fn(),
    stopLearning: vi.fn(),
    forgetKeys: vi.fn(),
    tryVoice: vi.fn(),
    diagnostics: async () => '{"notices":[]}',
    save: vi.fn(),
  };
  return { services, keeper, clock };
}

export function fakeSoundCheck(): SoundCheckService {
  return {
    store: createStore<SoundCheckShown>(() => ({
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
    })),
    start: vi.fn(),
    stop: vi.fn(),
    forget: vi.fn(),
  };
}

function fakeDevice(): Device {
  return {
    store: createStore<DeviceState>(() => ({
      offline: 'ready',
      readyNow: false,
      update: 'none',
      store: 'here',
      lasting: 'yes',
    })),
    updateApp: vi.fn(),
    readyTold: vi.fn(),
  };
}

/** Draws a screen inside the app's services. */
export function draw(screen: ReactNode, services: Services) {
  return render(<ServicesProvider value={services}>{screen}</ServicesProvider>);
}

/** A job on this set-up, open on the bench and awake. */
export async function openJob(services: Services, setUp: SetUp): Promise<string> {
  const jobId = await services.shelf.create(setUp);
  if (jobId === null) throw new Error(services.shelf.store.getState().trouble ?? 'no job');
  await services.bench.open(jobId);
  services.touch({ type: 'ask', about: 'where' });
  await settled();
  return jobId;
}

function cardOf(events: readonly JobEvent[]): JobCard {
  const state = events.length === 0 ? initial : replay(events);
  const { read, wanted } = engineSummary(state);
  const setUp = setUpOf(state);
  return {
    id: state.jobId,
    name: setUp?.name ?? '',
    createdAt: events[0]?.at ?? 0,
    changedAt: events.at(-1)?.at ?? 0,
    engine: setUp?.engine == null ? null : 'V8',
    read,
    wanted,
    status: state.status,
    notes: state.notes,
    recipe: setUp === null ? null : recipeOf(setUp),
  };
}

/** An ear nobody has opened. */
export const shutEar: EarShown = {
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
