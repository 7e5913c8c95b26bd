import type { SetUp } from '#counting';
import {
  type Engine,
  engines,
  sameValve,
  threads,
  type ValveId,
  valveKey,
  valvesOf,
} from '#valvetrain';
import type { Units } from '#words';
import { crankDraft } from './crankDraft';
import { type Draft, emptyDraft, NOT_KNOWN } from './draft';
import { lengthText, longUnit, memoryKey, shortUnit, type TextUnit } from './draftText';
import { endsDraft } from './endsDraft';
import { groupsDraft } from './groupsDraft';

/** Writes lengths into fields and remembers the exact figure behind each. */
interface Pen {
  readonly remembered: Record<string, number>;
  write(mm: number, unit: TextUnit): string;
}

function pen(): Pen {
  const remembered: Record<string, number> = {};
  return {
    remembered,
    write(mm, unit) {
      const text = lengthText(mm, unit);
      remembered[memoryKey(text, unit)] = mm;
      return text;
    },
  };
}

/** A set-up as the form shows it. Reading it back gives the same set-up, figure for figure. */
export function draftFrom(setUp: SetUp, units: Units): Draft {
  const { write, remembered } = pen();
  const { adjuster, testPushrod, calling } = setUp;
  const short = shortUnit(units);
  const measured = adjuster?.measuredTravelPerQuarterMm;
  return {
    ...emptyDraft(units),
    name: setUp.name,
    ...engineDraft(setUp.engine),
    ...scopeDraft(setUp),
    rockers: setUp.rockers,
    counts: setUp.checking === undefined ? 'fastener' : 'checking pushrod',
    turns: adjuster?.kind ?? 'pivot',
    ...(adjuster === null ? { thread: NOT_KNOWN } : threadDraft(adjuster.pitchMm)),
    ratio: adjuster === null ? '' : String(adjuster.rockerRatio),
    lean: adjuster === null || adjuster.leanDeg === 0 ? '' : String(adjuster.leanDeg),
    measured: measured === undefined ? '' : write(measured, short),
    ...groupsDraft(setUp.groups, (mm) => write(mm, short)),
    pushrod: testPushrod === null ? '' : write(testPushrod.mm, longUnit(units)),
    ...checkingDraft(setUp, units, write),
    ...endsOf(setUp, (mm) => write(mm, longUnit(units))),
    zeroFeel: setUp.zeroFeel ?? 'up-and-down play',
    carried: {
      buying: setUp.buying ?? null,
      measuredTravel: setUp.measuredTravel ?? null,
    },
    calling: calling.way,
    degrees: calling.way === 'strokes' ? calling.degrees : 60,
    callsLastOnly: setUp.callsLastOnly,
    asksLanding: setUp.asksLanding,
    clock: setUp.clock,
    hands: setUp.hands,
    ...crankDraft(setUp),
    remembered,
  };
}

function checkingDraft(
  { checking, testPushrod }: SetUp,
  units: Units,
  write: Pen['write'],
): Pick<Draft, 'convention' | 'closed' | 'perTurn'> {
  return {
    convention: checking?.convention ?? testPushrod?.convention ?? 'tip to tip',
    closed: checking === undefined ? '' : write(checking.closedMm, longUnit(units)),
    perTurn: checking === undefined ? '' : write(checking.perTurnMm, shortUnit(units)),
  };
}

function endsOf({ buying }: SetUp, write: (mm: number) => string): Pick<Draft, 'ends'> {
  return { ends: endsDraft(buying?.ends ?? null, write) };
}

function engineDraft(engine: Engine | null): Partial<Draft> {
  if (engine === null) return { engine: NOT_KNOWN };
  const running = { direction: engine.runningDirection, seenFrom: engine.seenFrom };
  const order = engine.firingOrder.join('-');
  const banksOf = (banks: Engine['banks']) => banks.map((bank) => bank.join(' ')).join(' / ');
  const banks = banksOf(engine.banks);
  const alike = engines.filter(
    (one) =>
      engine.firingAnglesDeg === undefined &&
      one.layout === engine.layout &&
      one.firingOrder.join('-') === order,
  );
  const same = alike.find(
    (one) => one.numbering === engine.numbering && banksOf(one.banks) === banks,
  );
  if (same !== undefined) return { engine: same.id, firstBank: 'left', ...running };
  const swapped = alike.find((one) => banksOf(one.banks.toReversed()) === banks);
  if (swapped !== undefined && engine.numbering === 'typed')
    return { engine: swapped.id, firstBank: 'right', ...running };
  return {
    engine: 'typed',
    cylinders: String(engine.cylinders),
    order,
    layout: engine.layout,
    numbering: engine.numbering,
    banks,
    firing: engine.firingAnglesDeg === undefined ? 'evenly' : 'typed',
    firingAngles: engine.firingAnglesDeg?.join(' ') ?? '',
    ...running,
  };
}

function scopeDraft({ engine, scope }: SetUp): Partial<Draft> {
  if (engine === null) return {};
  const has = (valve: ValveId) => scope.some((id) => sameValve(id, valve));
  const all = valvesOf(engine);
  if (all.every(has)) return { which: 'all' };
  const [first] = scope;
  const ofFirst = all.filter(({ cylinder }) => cylinder === first?.cylinder);
  if (first !== undefined && scope.length === ofFirst.length && ofFirst.every(has)) {
    return { which: 'one cylinder', oneCylinder: String(first.cylinder) };
  }
  return { which: 'picked', picked: scope.map(valveKey) };
}

/** Several threads share a pitch; where only one has it, it is named. */
function threadDraft(pitchMm: number): Partial<Draft> {
  const alike = threads.filter((thread) => thread.pitchMm === pitchMm);
  const [first] = alike;
  if (first === undefined) return { thread: 'pitch', pitch: String(pitchMm) };
  if (alike.length === 1) return { thread: first.id };
  return first.system === 'metric'
    ? { thread: 'pitch', pitch: String(pitchMm) }
    : { thread: 'tpi', tpi: first.id.slice(first.id.lastIndexOf('-') + 1) };
}
