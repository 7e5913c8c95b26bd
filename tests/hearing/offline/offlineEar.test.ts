import { describe, expect, test } from 'vitest';
import type { EarCaption } from '#hearing';
import type { EarNotice } from '#words';
import type { WorkerPort } from '../../../src/hearing/offline/earWorker';
import type { CapturedMicrophone } from '../../../src/hearing/offline/microphone';
import { createOfflineEar } from '../../../src/hearing/offline/offlineEar';
import type { PipelineEvent } from '../../../src/hearing/offline/pipeline';
import type { FromWorker, ToWorker } from '../../../src/hearing/offline/workerMessages';
import { fakeClock } from '../../fakes/clock';
import { benchAt, START_AT } from '../bench';

interface FakeWorker extends WorkerPort {
  readonly told: ToWorker[];
  tells(message: FromWorker): void;
  crashes(): void;
}

function fakeWorker(): FakeWorker {
  const told: ToWorker[] = [];
  const worker: FakeWorker = {
    told,
    onmessage: null,
    onerror: null,
    postMessage: (message) => void told.push(message),
    terminate: () => undefined,
    tells: (data) => worker.onmessage?.({ data } as MessageEvent<FromWorker>),
    crashes: () => worker.onerror?.({} as ErrorEvent),
  };
  return worker;
}

/** The job stands at four quarters. */
function rig(openCapture?: () => Promise<CapturedMicrophone>) {
  const clock = fakeClock(START_AT + 60_000);
  const bench = benchAt('counting');
  const workers: FakeWorker[] = [];
  const notices: EarNotice[] = [];
  const captions: EarCaption[] = [];
  const progress: number[] = [];
  let lost: () => void = () => undefined;
  let closed = 0;
  const microphone: CapturedMicrophone = {
    rate: 44_100,
    onLost: (fn) => {
      lost = fn;
    },
    close: () => {
      closed += 1;
    },
  };
  const ear = createOfflineEar({
    clock,
    source: { url: 'http://here/ear.bin', sha256: '', bytes: 1 },
    makeWorker() {
      const worker = fakeWorker();
      workers.push(worker);
      return worker;
    },
    openCapture: openCapture ?? (() => Promise.resolve(microphone)),
    onProgress: (part) => progress.push(part),
    listener: {
      onCommand(body, utterance) {
        bench.submit(body, clock.now(), 'voice', utterance);
        ear.follow(bench.state(), null);
      },
      onHush: () => undefined,
      onCaption: (caption) => captions.push(caption),
      onNotice: (notice) => notices.push(notice),
    },
  });
  ear.follow(bench.state(), null);
  const worker = () => {
    const last = workers.at(-1);
    if (last === undefined) throw new Error('no worker yet');
    return last;
  };
  const settle = async () => {
    for (let i = 0; i < 20; i += 1) await Promise.resolve();
  };
  const heard = (words: string, verdict: 'taken' | 'missed' | 'nothing'): PipelineEvent => ({
    type: 'heard',
    verdict,
    voiced: 30,
    db: -30,
    print: null,
    candidate: {
      branch: { words, tier: 'expected', hearing: { kind: 'outside', waits: false } },
      fit: 0,
      frames: 60,
    },
  });
  const quarters = () => Number(bench.state().open?.count48 ?? 0) / 12;
  return {
    clock,
    ear,
    notices,
    captions,
    progress,
    workers,
    worker,
    settle,
    heard,
    quarters,
    loses: () => lost(),
    closedTimes: () => closed,
    async opens() {
      ear.start();
      worker().tells({ type: 'ready' });
      await settle();
      worker().tells({ type: 'events', events: [{ type: 'level', db: -60, noiseDb: -60 }] });
    },
  };
}

describe('the ear that needs no network', () => {
  test('is opening while its files come, tells how much is there, then listens', async () => {
    const { ear, worker, progress, settle, notices, clock } = rig();
    ear.start();
    expect(ear.view().state).toBe('opening');
    worker().tells({ type: 'progress', part: 0.5 });
    clock.advance(120_000);
    expect(ear.view().state).toBe('opening');
    worker().tells({ type: 'ready' });
    await settle();
    worker().tells({ type: 'events', events: [{ type: 'level', db: -61, noiseDb: -61 }] });
    expect(ear.view()).toMatchObject({ state: 'open', place: 'on device', level: -61 });
    expect(progress).toEqual([0.5]);
    expect(notices.map(({ state }) => state)).toEqual(['open']);
    expect(worker().told.map(({ type }) => type)).toContain('grammar');
  });

  test('what is taken counts, and the worker hears where the job now stands', async () => {
    const { opens, worker, heard, quarters } = rig();
    await opens();
    const before = worker().told.length;
    worker().tells({ type: 'events', events: [{ type: 'speech' }] });
    worker().tells({ type: 'events', events: [heard('five', 'taken')] });
    expect(quarters()).toBe(5);
    expect(
      worker()
        .told.slice(before)
        .map(({ type }) => type),
    ).toContain('grammar');
  });

  test('C9: over the app’s own voice nothing counts', async () => {
    const { ear, opens, worker, heard, quarters, clock } = rig();
    await opens();
    ear.mouth('Intake of one: run it down to zero lash.');
    clock.advance(200);
    worker().tells({ type: 'events', events: [{ type: 'speech' }] });
    clock.advance(700);
    worker().tells({ type: 'events', events: [heard('five', 'taken')] });
    worker().tells({ type: 'events', events: [heard('six', 'missed')] });
    clock.advance(2000);
    expect(quarters()).toBe(4);
  });

  test('noise is nothing: no caption, no count, and an hour of it leaves the ear open', async () => {
    const { ear, opens, worker, heard, quarters, clock, captions } = rig();
    await opens();
    for (let i = 0; i < 3600; i += 1) {
      worker().tells({ type: 'events', events: [{ type: 'speech' }] });
      clock.advance(500);
      worker().tells({ type: 'events', events: [heard('five', 'nothing')] });
      clock.advance(500);
    }
    expect(quarters()).toBe(4);
    expect(captions).toEqual([]);
    expect(ear.view().state).toBe('open');
  });

  test('a room grown too noisy for the voice in it is told, and when it is quiet again', async () => {
    const { ear, opens, worker, heard, notices, clock } = rig();
    await opens();
    const hears = (noiseDb: number, seconds: number) => {
      for (let i = 0; i < seconds * 4; i += 1) {
        clock.advance(250);
        worker().tells({ type: 'events', events: [{ type: 'level', db: -70, noiseDb }] });
      }
    };
    hears(-20, 30);
    for (const word of ['five', 'six', 'seven']) {
      worker().tells({ type: 'events', events: [heard(word, 'taken')] });
      clock.advance(1500);
    }
    hears(-45, 10);
    expect(notices.map(({ why }) => why)).toEqual(['asked']);
    hears(-38, 3);
    hears(-45, 3);
    hears(-38, 10);
    expect(notices.at(-1)).toMatchObject({ state: 'open', why: 'room louder', count48: 84 });
    hears(-43, 10);
    expect(notices).toHaveLength(2);
    hears(-50, 10);
    expect(notices.at(-1)).toMatchObject({ state: 'open', why: 'room quieter' });
    expect(notices).toHaveLength(3);
    expect(ear.view().state).toBe('open');
  });

  test('a near word is told as missed, with what to say', async () => {
    const { opens, worker, heard, captions, quarters } = rig();
    await opens();
    worker().tells({ type: 'events', events: [heard('five', 'missed')] });
    expect(captions).toMatchObject([{ kind: 'missed', understood: 'five', why: 'near' }]);
    expect(quarters()).toBe(4);
  });

  test.each([
    ['missing', 'no model'],
    ['corrupt', 'model damaged'],
    ['unable', 'not here'],
  ] as const)('files that are %s are said, and tried again when asked', async (why, said) => {
    const { ear, worker, workers, settle, notices } = rig();
    ear.start();
    worker().tells({ type: 'failed', why });
    await settle();
    worker().tells({ type: 'failed', why });
    await settle();
    expect(ear.view()).toMatchObject({ state: 'dead', why: said });
    expect(notices).toMatchObject([{ state: 'dead', why: said }]);
    const before = workers.length;
    ear.start();
    expect(workers.length).toBeGreaterThan(before);
  });

  test.each([
    ['NotAllowedError', 'denied'],
    ['NotFoundError', 'no microphone'],
  ])('a microphone that is not to be had (%s) is said', async (name, why) => {
    const { ear, worker, settle } = rig(() => Promise.reject(new DOMException('no', name)));
    ear.start();
    worker().tells({ type: 'ready' });
    await settle();
    expect(ear.view()).toMatchObject({ state: 'dead', why });
  });

  test('a microphone taken away, or one that goes silent, is said and let go', async () => {
    const first = rig();
    await first.opens();
    first.loses();
    expect(first.ear.view()).toMatchObject({ state: 'dead', why: 'no microphone' });
    expect(first.closedTimes()).toBe(1);
    const second = rig();
    await second.opens();
    second.clock.advance(4100);
    expect(second.ear.view()).toMatchObject({ state: 'dead', why: 'no microphone' });
  });

  test('a worker that crashes is started anew, and listens again', async () => {
    const { ear, opens, worker, workers, settle, clock, heard, quarters } = rig();
    await opens();
    worker().crashes();
    clock.advance(2000);
    await settle();
    expect(workers).toHaveLength(2);
    worker().tells({ type: 'ready' });
    await settle();
    worker().tells({ type: 'events', events: [{ type: 'level', db: -60, noiseDb: -60 }] });
    expect(ear.view().state).toBe('open');
    worker().tells({ type: 'events', events: [heard('five', 'taken')] });
    expect(quarters()).toBe(5);
  });

  test('shut while its files come, it stays shut', async () => {
    const { ear, worker, settle } = rig();
    ear.start();
    ear.stop();
    worker().tells({ type: 'ready' });
    await settle();
    expect(ear.view().state).toBe('shut');
  });
});
