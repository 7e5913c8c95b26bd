/** The one length the readings come to, worked out here from the trade's rules and nothing of the app's. */

import { guard, setUp, thou, type Valve, variances } from './figures';

/** A valve read; `resolves` is what its landing resolves, quarters, half of one where it is not said. */
export interface Counted extends Valve {
  readonly quarters: number;
  readonly resolves?: number;
}

export interface OneLength {
  readonly inches: number;
  /** Valves it makes usable. */
  readonly fits: number;
  /** The others, in the order they were given. */
  readonly failing: readonly Counted[];
}

const BY_GEOMETRY = 0.07;
const GRID_THOU = 25;

interface Mean {
  readonly thou: number;
  readonly own: number;
  readonly common: number;
}

function meanOf(group: readonly Counted[]): Mean {
  const each = group.map(({ quarters, resolves = 0.5 }) => ({
    thou: thou(quarters),
    ...variances(quarters, resolves, BY_GEOMETRY),
  }));
  const mean = (of: (one: (typeof each)[number]) => number) =>
    each.reduce((sum, one) => sum + of(one), 0) / each.length;
  return {
    thou: mean((one) => one.thou),
    own: mean((one) => one.own) / each.length,
    common: mean((one) => Math.sqrt(one.common)),
  };
}

/** Odd cylinders stand in one bank, even ones in the other. */
const bankOf = ({ cylinder }: Valve) => (cylinder % 2 === 1 ? 'odd' : 'even');

function by(readings: readonly Counted[], of: (valve: Valve) => string): readonly Counted[][] {
  const keys = [...new Set(readings.map(of))];
  return keys.map((key) => readings.filter((reading) => of(reading) === key));
}

/** Whether the sums of two sets of means differ by more than counting does. */
function differ(plus: readonly Mean[], minus: readonly Mean[]): boolean {
  const total = (means: readonly Mean[], of: (mean: Mean) => number) =>
    means.reduce((sum, mean) => sum + of(mean), 0);
  const difference = (of: (mean: Mean) => number) => total(plus, of) - total(minus, of);
  const own = total([...plus, ...minus], (mean) => mean.own);
  const u = Math.sqrt(own + difference((mean) => mean.common) ** 2);
  return Math.abs(difference((mean) => mean.thou)) > 1.96 * u;
}

/** Valves are taken to be alike as far as nothing tells them apart for sure. */
function pools(readings: readonly Counted[]): readonly Counted[][] {
  const kinds = by(readings, ({ kind }) => kind);
  const banks = by(readings, bankOf);
  const apart = ([a, b]: readonly Counted[][]) =>
    a !== undefined && b !== undefined && differ([meanOf(a)], [meanOf(b)]);
  const cell = (bank: string, kind: string) =>
    meanOf(readings.filter((one) => bankOf(one) === bank && one.kind === kind));
  const together = differ(
    [cell('odd', 'intake'), cell('even', 'exhaust')],
    [cell('odd', 'exhaust'), cell('even', 'intake')],
  );
  return by(readings, (valve) =>
    [
      together || apart(kinds) ? valve.kind : '',
      together || apart(banks) ? bankOf(valve) : '',
    ].join(' '),
  );
}

/**
 * Of every 25 thou, the length that makes most valves usable: their pool's mean proven usable, and
 * their own reading not proven out. Then the one whose worst mean is nearest the middle of the
 * preferred band; then the shorter.
 *
 * @throws where it would prove a valve out: then one length is not the answer.
 */
export function oneLength(readings: readonly Counted[]): OneLength {
  const [from, to] = setUp.usable;
  const target = (setUp.preferred[0] + setUp.preferred[1]) / 2;
  const pooled = pools(readings).map((group) => ({ group, mean: meanOf(group) }));
  const judged = Array.from({ length: 400 }, (_, i) => {
    const length = GRID_THOU * (i + 120);
    const longer = length - setUp.testPushrodIn * 1000;
    const out = ({ quarters, resolves = 0.5 }: Counted) => {
      const p = thou(quarters) + longer;
      const g = guard(quarters, resolves, BY_GEOMETRY);
      return p < from - g || p > to + g;
    };
    const usable = pooled.flatMap(({ group, mean }) => {
      const g = 1.65 * Math.sqrt(mean.own + mean.common ** 2);
      const p = mean.thou + longer;
      return p >= from + g && p <= to - g ? group.filter((one) => !out(one)) : [];
    });
    const worst = Math.max(...pooled.map(({ mean }) => Math.abs(mean.thou + longer - target)));
    const failing = readings.filter((one) => !usable.includes(one));
    return { length, fits: usable.length, failing, worst, out: readings.filter(out) };
  });
  judged.sort((a, b) => b.fits - a.fits || a.worst - b.worst || a.length - b.length);
  const [best] = judged;
  if (best === undefined) throw new Error('no lengths');
  if (best.out.length > 0) {
    const names = best.out.map(({ cylinder, kind }) => `${cylinder} ${kind}`).join(', ');
    throw new Error(`${best.length} thou proves out ${names}`);
  }
  return { inches: best.length / 1000, fits: best.fits, failing: best.failing };
}

/** A reading far from its fellows, by how many thou. */
export interface Stray {
  readonly valve: Counted;
  readonly offThou: number;
}

/**
 * Readings more than 3.5 robust standard deviations from the median of their kind: 1.4826 times the
 * median absolute deviation, but no less than the readings' own median uncertainty.
 */
export function strays(readings: readonly Counted[]): readonly Stray[] {
  return by(readings, ({ kind }) => kind).flatMap((alike) => {
    const middle = median(alike.map(({ quarters }) => thou(quarters)));
    const off = (one: Counted) => thou(one.quarters) - middle;
    const own = alike.map(({ quarters, resolves = 0.5 }) =>
      Math.sqrt(variances(quarters, resolves, BY_GEOMETRY).own),
    );
    const spread = Math.max(1.4826 * median(alike.map((one) => Math.abs(off(one)))), median(own));
    return alike
      .map((valve) => ({ valve, offThou: off(valve) }))
      .filter(({ offThou }) => Math.abs(offThou) > 3.5 * spread);
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (place: number) => sorted[place] ?? 0;
  return (at(Math.floor(sorted.length / 2)) + at(Math.ceil(sorted.length / 2) - 1)) / 2;
}
