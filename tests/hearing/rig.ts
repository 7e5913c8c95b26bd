import type { CommandBody, SetUp, Stage, Utterance } from '#counting';
import { createEar, type Ear, type EarCaption, type Place } from '#hearing';
import type { EarNotice } from '#words';
import { type FakeClock, fakeClock } from '../fakes/clock';
import { benchAt, type PlainBench, START_AT } from './bench';
import { type ScriptedRecogniser, scriptedRecogniser } from './scriptedRecogniser';

/** An ear with a scripted recogniser before a job that is decided at once. */
export interface Rig {
  readonly clock: FakeClock;
  readonly ear: Ear;
  readonly recogniser: ScriptedRecogniser;
  readonly bench: PlainBench;
  readonly commands: { readonly body: CommandBody; readonly utterance: Utterance }[];
  readonly captions: EarCaption[];
  readonly notices: EarNotice[];
  readonly hushes: number[];
  /** A press of the builder's. */
  press(body: CommandBody): void;
  /** What came of the commands since last asked, in short. */
  came(): string[];
  /** The count standing, 48ths. */
  count48(): number | undefined;
  /** Types of the commands given so far. */
  given(): string[];
  /** Says something in one go: speech, an interim, the final, as far apart as a service does. */
  says(text: string): void;
}

export interface RigOptions {
  readonly place?: Place | 'nowhere' | 'never';
  readonly asksFirst?: boolean;
  readonly setUp?: SetUp;
  readonly carrier?: string | null;
  readonly headset?: boolean;
  readonly listens?: 'open' | 'while held';
  readonly mayLeave?: boolean;
}

/** The rig with its job at this stage; the ear is not open yet. */
export function rigAt(stage: Stage, options: RigOptions = {}): Rig {
  const clock = fakeClock(START_AT + 60_000);
  const recogniser = scriptedRecogniser(clock, options.place ?? 'elsewhere', options.asksFirst);
  const bench = benchAt(stage, options.setUp);
  const commands: Rig['commands'] = [];
  const captions: EarCaption[] = [];
  const notices: EarNotice[] = [];
  const hushes: number[] = [];
  let asked = bench.decisions.length;
  // Past the utterances a test plays by hand.
  let index = 100;
  const carrier = options.carrier ?? null;
  const follow = () => ear.follow(bench.state(), carrier);
  const ear = createEar({
    clock,
    recogniser,
    listener: {
      onCommand(body, utterance) {
        commands.push({ body, utterance });
        bench.submit(body, clock.now(), 'voice', utterance);
        follow();
      },
      onHush: () => hushes.push(clock.now()),
      onCaption: (caption) => captions.push(caption),
      onNotice: (notice) => notices.push(notice),
    },
  });
  ear.configure({
    headset: options.headset ?? false,
    mayLeave: options.mayLeave ?? true,
    listens: options.listens ?? 'open',
  });
  follow();
  return {
    clock,
    ear,
    recogniser,
    bench,
    commands,
    captions,
    notices,
    hushes,
    press(body) {
      bench.submit(body, clock.now(), 'key');
      follow();
    },
    came() {
      const since = bench.decisions.slice(asked);
      asked = bench.decisions.length;
      return since;
    },
    count48: () => bench.state().open?.count48,
    given: () => commands.map(({ body }) => body.type),
    says(text) {
      const result = (isFinal: boolean) => ({
        type: 'result' as const,
        index,
        final: isFinal,
        alternatives: [{ text, confidence: isFinal ? 0.9 : 0 }],
      });
      recogniser.plays(
        [900, { type: 'speech started' }],
        [400, result(false)],
        [500, result(true)],
        [100, { type: 'speech ended' }],
      );
      index += 1;
    },
  };
}

/** The rig with its ear open. */
export async function openRig(stage: Stage, options: RigOptions = {}): Promise<Rig> {
  const rig = rigAt(stage, options);
  rig.ear.start();
  await settled();
  rig.recogniser.opens();
  rig.clock.advance(1000);
  return rig;
}

/** Lets what promises bring happen. */
export async function settled(): Promise<void> {
  for (let i = 0; i < 5; i += 1) await Promise.resolve();
}
