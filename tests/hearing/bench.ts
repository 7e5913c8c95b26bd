import {
  type By,
  type Command,
  type CommandBody,
  type Decision,
  decide,
  evolve,
  initial,
  type JobEvent,
  type JobState,
  type SetUp,
  type Stage,
  stageOf,
  type Utterance,
} from '#counting';
import { turn48 } from '#valvetrain';
import { v8SetUp } from '../fakes/setUps';

/** What one command came to, in one word: its events' types, else the decision. */
export function inShort(decision: Decision): string {
  if (decision.kind === 'events') return decision.events.map(({ type }) => type).join(' ');
  return decision.kind === 'refused' ? `refused: ${decision.refusal.code}` : decision.kind;
}

/** A job without a screen, a disk or a voice: commands are decided and folded at once. */
export interface PlainBench {
  readonly state: () => JobState;
  readonly log: JobEvent[];
  readonly decisions: string[];
  submit(body: CommandBody, at: number, by?: By, utterance?: Utterance): Decision;
}

export const START_AT = 1_700_000_000_000;

/** A job opened on this set-up. */
export function openJob(setUp: SetUp = v8SetUp()): PlainBench {
  let state = initial;
  const log: JobEvent[] = [];
  const decisions: string[] = [];
  function submit(body: CommandBody, at: number, by: By = 'voice', utterance?: Utterance) {
    const command: Command = { ...body, at, by, ...(utterance ? { utterance } : {}) };
    const decision = decide(state, command);
    if (decision.kind === 'events') {
      for (const event of decision.events) {
        state = evolve(state, event);
        log.push(event);
      }
    }
    decisions.push(inShort(decision));
    return decision;
  }
  submit({ type: 'openJob', jobId: 'job', setUp, app: { version: '0', commit: '' } }, START_AT - 1);
  return { state: () => state, log, decisions, submit };
}

/** The commands that lead to each stage of a job. */
const ON_THE_WAY: readonly (readonly [Stage, CommandBody])[] = [
  ['cautions', { type: 'cautionsHeard' }],
  ['hands clear', { type: 'handsClear' }],
  ['turning', { type: 'crankThere' }],
  ['to start', { type: 'zero' }],
  ['counting', { type: 'call', to48: turn48(24), form: 'bare' }],
  ['counting', { type: 'call', to48: turn48(48), form: 'bare' }],
  ['counting', { type: 'seat', loose: false }],
  ['landing', { type: 'land', word: 'half' }],
  ['read', { type: 'next', cylinder: true }],
];

/** What a stage needs of the set-up. */
function setUpFor(stage: Stage): SetUp {
  if (stage === 'choose valve') return v8SetUp({ engine: null, scope: [] });
  if (stage === 'all read') return v8SetUp({ scope: [{ cylinder: 1, valve: 'exhaust' }] });
  return v8SetUp({ hands: stage === 'hands clear' ? 'with helper' : 'alone' });
}

/** A job brought to this stage by ordinary commands; counting, it stands at four quarters. */
export function benchAt(stage: Stage, setUp: SetUp = setUpFor(stage)): PlainBench {
  const bench = openJob(setUp);
  if (stage === 'discarded') bench.submit({ type: 'discard' }, START_AT, 'touch');
  if (stage === 'held') {
    bench.submit({ type: 'cautionsHeard' }, START_AT, 'key');
    bench.submit({ type: 'hold' }, START_AT, 'key');
  }
  for (const [from, body] of ON_THE_WAY) {
    if (stageOf(bench.state()) === stage) break;
    if (from === stageOf(bench.state())) bench.submit(body, START_AT, 'key');
  }
  if (stage === 'counting') {
    for (const to48 of [24, 48]) {
      bench.submit({ type: 'call', to48: turn48(to48), form: 'bare' }, START_AT, 'key');
    }
  }
  return bench;
}

/** The state of a job brought to this stage. */
export function walked(stage: Stage, setUp?: SetUp): JobState {
  const state = benchAt(stage, setUp).state();
  if (stageOf(state) !== stage) throw new Error(`stands at ${stageOf(state)}, not at ${stage}`);
  return state;
}
