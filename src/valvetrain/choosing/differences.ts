import type { Engine } from '../engine';
import { AGREEMENT_FACTOR } from '../uncertainty/guard';
import { rootSumOfSquares } from '../uncertainty/rectangular';
import { targetPreloadMm } from '../windows';
import { type Factor, type FixedGroup, type GroupLabel, grouped } from './schemes';
import { type ChoosableValve, zeroLashLengthMm } from './valve';

/** How much longer one group needs its pushrods than another, by the means of their readings. */
export interface GroupDifference {
  /** What tells the two apart; 'together': the intakes differ from the exhausts by bank. */
  readonly by: Factor | 'together';
  /** Null for 'together', which sets four groups against one another. */
  readonly groups: readonly [longer: GroupLabel, shorter: GroupLabel] | null;
  readonly differenceMm: number;
  /** 1.96 u of the difference, mm. The travel per quarter turn is common to both and cancels. */
  readonly allowedMm: number;
  /** Larger than its uncertainty: more than the noise of counting. */
  readonly isReal: boolean;
}

interface Mean {
  readonly label: GroupLabel;
  readonly neededMm: number;
  readonly ownMm: number;
  readonly commonMm: number;
}

/**
 * Every difference between intakes and exhausts, between any two banks, and (with two banks) whether the
 * one depends on the other. A real one lets a second length be thought of; no more than that.
 */
export function groupDifferences(
  valves: readonly ChoosableValve[],
  engine: Pick<Engine, 'banks'>,
): readonly GroupDifference[] {
  const meansBy = (factors: readonly Factor[]) => grouped(valves, factors, engine).map(meanOf);
  return [
    ...pairs(meansBy(['valve'])).map((pair) => between('valve', pair)),
    ...pairs(meansBy(['bank'])).map((pair) => between('bank', pair)),
    ...together(meansBy(['bank', 'valve'])),
  ];
}

/** The factors that really tell the valves apart. */
export function realFactors(differences: readonly GroupDifference[]): readonly Factor[] {
  const real = differences.filter(({ isReal }) => isReal);
  const both = real.some(({ by }) => by === 'together');
  return (['bank', 'valve'] as const).filter(
    (factor) => both || real.some(({ by }) => by === factor),
  );
}

function meanOf({ label, valves }: FixedGroup): Mean {
  const mean = (of: (valve: ChoosableValve) => number) =>
    valves.reduce((sum, valve) => sum + of(valve), 0) / valves.length;
  return {
    label,
    neededMm: mean((valve) => zeroLashLengthMm(valve) + targetPreloadMm(valve.window)),
    ownMm: rootSumOfSquares(...valves.map(({ preload }) => preload.ownMm)) / valves.length,
    commonMm: mean(({ preload }) => preload.commonMm),
  };
}

function between(by: Factor, [a, b]: readonly [Mean, Mean]): GroupDifference {
  const [longer, shorter] = a.neededMm >= b.neededMm ? [a, b] : [b, a];
  return judged(by, [longer.label, shorter.label], [longer], [shorter]);
}

/** (a − b) − (c − d): 0 where each bank's intakes and exhausts differ alike. */
function together(means: readonly Mean[]): readonly GroupDifference[] {
  const banks = [...new Set(means.map(({ label }) => label.bank))];
  const cell = (bank: number | undefined, valve: 'intake' | 'exhaust') =>
    means.filter(({ label }) => label.bank === bank && label.valve === valve);
  const [left, right] = banks;
  if (banks.length !== 2 || means.length !== 4) return [];
  const plus = [...cell(left, 'intake'), ...cell(right, 'exhaust')];
  const minus = [...cell(left, 'exhaust'), ...cell(right, 'intake')];
  return [judged('together', null, plus, minus)];
}

function judged(
  by: GroupDifference['by'],
  groups: GroupDifference['groups'],
  plus: readonly Mean[],
  minus: readonly Mean[],
): GroupDifference {
  const total = (means: readonly Mean[], of: (mean: Mean) => number) =>
    means.reduce((sum, mean) => sum + of(mean), 0);
  const difference = (of: (mean: Mean) => number) => total(plus, of) - total(minus, of);
  const differenceMm = Math.abs(difference(({ neededMm }) => neededMm));
  const uMm = rootSumOfSquares(
    ...[...plus, ...minus].map(({ ownMm }) => ownMm),
    difference(({ commonMm }) => commonMm),
  );
  const allowedMm = AGREEMENT_FACTOR * uMm;
  return { by, groups, differenceMm, allowedMm, isReal: differenceMm > allowedMm };
}

function pairs<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((a, place) => items.slice(place + 1).map((b) => [a, b] as const));
}
