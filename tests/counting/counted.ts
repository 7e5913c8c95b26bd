import type { CommandBody, LandingWord, SetUp } from '#counting';
import { type PushrodLength, turn48, type ValveId, type ValveKind } from '#valvetrain';
import { given, type Job, opened, type Step, when } from './given';
import { eightCylinders, exhaust, intake } from './samples';
import { say } from './steps';

/** A valve and what it is counted to, quarter turns in halves and quarters of one. */
export type Counted = readonly [valve: ValveId, quarters: number];

const landings: Readonly<Record<number, LandingWord>> = {
  0: 'nothing',
  0.25: 'a bit past',
  0.5: 'half',
  0.75: 'just shy',
};

/** A job with its cautions heard. */
export function begun(setUp: SetUp = eightCylinders): Job {
  return given(opened(setUp), [say('cautions heard', { type: 'cautionsHeard' }, 'key')]);
}

/** Counts each valve, the crank brought to it, and answers 'how far?'; what the last one came to is told. */
export function counted(job: Job, ...valves: readonly Counted[]): Job {
  return valves.reduce((on, one) => when(given(on, brought(one[0])), ...count(one[1])), job);
}

/** All exhausts, then all intakes, as counted. */
export function bothKinds(
  exhausts: readonly number[],
  intakes: readonly number[],
): readonly Counted[] {
  return [
    ...exhausts.map((quarters, at): Counted => [exhaust(at + 1), quarters]),
    ...intakes.map((quarters, at): Counted => [intake(at + 1), quarters]),
  ];
}

export function dial(cylinder: number, valve: ValveKind, travelMm: number): Step {
  const id = valve === 'intake' ? intake(cylinder) : exhaust(cylinder);
  return does({ type: 'readDial', valve: id, travelMm });
}

export function fitRod(
  mm: number,
  valves?: readonly ValveId[],
  rest: Partial<PushrodLength> = {},
): Step {
  const length = { mm, convention: 'tip to tip' as const, ...rest };
  return does({ type: 'fitPushrod', length, ...(valves ? { valves } : {}) });
}

export const finalRound: Step = does({ type: 'startRound', purpose: 'final check' });
export const measuringRound: Step = does({ type: 'startRound', purpose: 'measure' });

function brought({ cylinder, valve }: ValveId): readonly Step[] {
  return [
    does({ type: 'chooseValve', cylinder, valve }),
    does({ type: 'pushrodsLoose' }),
    does({ type: 'crankThere' }),
  ];
}

function count(quarters: number): readonly Step[] {
  const whole = Math.floor(quarters);
  const word = landings[quarters - whole];
  if (word === undefined) throw new Error(`no landing for ${quarters}`);
  return [
    does({ type: 'zero' }),
    // No more than three turns ahead are taken at once.
    ...Array.from({ length: Math.ceil(whole / 12) }, (_, at) =>
      does({ type: 'call', to48: turn48(12 * Math.min(whole, 12 * (at + 1))), form: 'turns' }),
    ),
    does({ type: 'seat', loose: false }),
    does({ type: 'land', word }),
  ];
}

function does(body: CommandBody): Step {
  return say(body.type, body, 'key');
}
