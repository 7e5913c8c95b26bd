/** Lengths by groups, worked out here from the trade's rules and nothing of the app's. */

import { guard, setUp, thou, variances } from './figures';
import type { Counted } from './oneLength';

const BY_GEOMETRY = 0.07;

export interface KindLength {
  readonly kind: Counted['kind'];
  readonly inches: number;
  readonly valves: number;
}

interface Mean {
  readonly thou: number;
  readonly own: number;
  readonly common: number;
}

function meanOf(group: readonly Counted[]): Mean {
  const sum = (of: (one: Counted) => number) => group.reduce((all, one) => all + of(one), 0);
  const own = sum(({ quarters, resolves = 0.5 }) => variances(quarters, resolves, BY_GEOMETRY).own);
  const common = sum(({ quarters }) => Math.sqrt(variances(quarters, 0.5, BY_GEOMETRY).common));
  return {
    thou: sum(({ quarters }) => thou(quarters)) / group.length,
    own: own / group.length ** 2,
    common: common / group.length,
  };
}

const ofKind = (readings: readonly Counted[], kind: Counted['kind']) =>
  readings.filter((one) => one.kind === kind);

/** What intakes and exhausts differ by, and how much of that is noise, thou. */
export function kindsDiffer(readings: readonly Counted[]): {
  readonly thou: number;
  readonly noise: number;
  readonly wantsLonger: Counted['kind'];
} {
  const [e, i] = [meanOf(ofKind(readings, 'exhaust')), meanOf(ofKind(readings, 'intake'))];
  const u = Math.sqrt(e.own + i.own + (e.common - i.common) ** 2);
  return {
    thou: Math.abs(e.thou - i.thou),
    noise: 1.96 * u,
    wantsLonger: e.thou > i.thou ? 'intake' : 'exhaust',
  };
}

/**
 * A length for each kind, of every 25 thou: that which proves its mean usable and comes nearest the
 * middle of the preferred band.
 *
 * @throws where no length does.
 */
export function lengthsByKind(readings: readonly Counted[]): readonly KindLength[] {
  const [from, to] = setUp.usable;
  const target = (setUp.preferred[0] + setUp.preferred[1]) / 2;
  return (['exhaust', 'intake'] as const).map((kind) => {
    const group = ofKind(readings, kind);
    const mean = meanOf(group);
    const g = 1.65 * Math.sqrt(mean.own + mean.common ** 2);
    const usable = Array.from({ length: 200 }, (_, i) => 25 * (i + 250))
      .map((length) => ({ length, p: mean.thou + length - setUp.testPushrodIn * 1000 }))
      .filter(({ p }) => p >= from + g && p <= to - g)
      .sort((a, b) => Math.abs(a.p - target) - Math.abs(b.p - target));
    const [best] = usable;
    if (best === undefined) throw new Error(`no length for the ${kind}s`);
    return { kind, inches: best.length / 1000, valves: group.length };
  });
}

/** The preload a valve would have with another pushrod, thou, and what it is sure to. */
export function predicted(one: Counted, inches: number): { thou: number; guard: number } {
  const p = thou(one.quarters) + (inches - setUp.testPushrodIn) * 1000;
  return { thou: p, guard: guard(one.quarters, one.resolves ?? 0.5, BY_GEOMETRY) };
}
