/** The job's figures, worked out here from its set-up and nothing of the app's. */

import { spelled } from './spelled';

export const setUp = {
  order: [1, 8, 4, 3, 6, 5, 7, 2],
  pitchMm: 1.25,
  ratio: 1.7,
  /** Usable and preferred limits, thou. */
  usable: [75, 110] as const,
  preferred: [80, 100] as const,
  travelThou: 200,
  keepOutThou: 20,
  testPushrodIn: 8.15,
};

/** Thou of preload a quarter turn: the bolt goes down a quarter of its pitch, the lever adds to it. */
export const thouPerQuarter = ((setUp.pitchMm / 25.4) * 1000 * (1 + 1 / setUp.ratio)) / 4;

export function thou(quarters: number): number {
  return quarters * thouPerQuarter;
}

/** The preload as a whole figure; the tests' counts keep clear of every limit by more than half. */
export function figure(quarters: number): number {
  const limits = [...setUp.usable, ...setUp.preferred, 0, setUp.travelThou - setUp.keepOutThou];
  const nearest = Math.min(...limits.map((limit) => Math.abs(thou(quarters) - limit)));
  if (quarters > 0 && nearest < 0.5) throw new Error(`${quarters} quarters lie on a limit`);
  return Math.round(thou(quarters));
}

export function verdict(quarters: number): string {
  const p = thou(quarters);
  if (p <= 0) return 'lash';
  if (p >= setUp.travelThou - setUp.keepOutThou) return 'near bottom';
  if (p < setUp.usable[0]) return 'light';
  if (p > setUp.usable[1]) return 'heavy';
  if (p < setUp.preferred[0]) return 'fits, light side';
  return p > setUp.preferred[1] ? 'fits, heavy side' : 'fits';
}

/** Half-width of the feel for zero, quarters, and of the travel per quarter, relative: rectangular. */
const ZERO_FEEL = 0.15;
const TRAVEL = { byGeometry: 0.07, measured: 0.02 };

/** Variances of a reading, thou²: of its own (r is what its landing resolves, quarters), and in common. */
export function variances(quarters: number, r: number, travel: number) {
  const own = thouPerQuarter ** 2 * (r ** 2 / 12 + ZERO_FEEL ** 2 / 3);
  return { own, common: (thou(quarters) * travel) ** 2 / 3 };
}

/** Half the band: inside a limit by this much is proven, one-sided 95 %, thou. */
export function guard(quarters: number, r: number, travel: number): number {
  const { own, common } = variances(quarters, r, travel);
  return 1.65 * Math.sqrt(own + common);
}

/** What lies across the usable limit the reading can't be told from; null where it is proven. */
export function cantTellFrom(quarters: number, r: number): string | null {
  const [from, to] = setUp.usable;
  const reach = guard(quarters, r, TRAVEL.byGeometry);
  const p = thou(quarters);
  if (Math.abs(p - from) < reach) return p < from ? 'fits' : 'light';
  if (Math.abs(p - to) < reach) return p > to ? 'fits' : 'heavy';
  return null;
}

/** What settles a reading that can't be told: measuring the travel, alone or with so many counts more. */
export function settling(quarters: number, r: number): string {
  const margin = Math.min(...setUp.usable.map((limit) => Math.abs(thou(quarters) - limit)));
  if (guard(quarters, r, TRAVEL.measured) <= margin) {
    const counting = (margin / 1.65) ** 2 > variances(quarters, r, TRAVEL.byGeometry).common;
    return counting ? 'Measure the travel.' : 'No count will: measure the travel.';
  }
  const { own, common } = variances(quarters, r, TRAVEL.measured);
  const counts = Math.ceil(own / ((margin / 1.65) ** 2 - common));
  if (!(counts > 1)) throw new Error(`nothing settles ${quarters} quarters`);
  return `Measure the travel, then ${spelled(counts - 1)} more counts.`;
}

/** The cylinder half the order away: it stands at overlap when this one fires. */
export function companion(cylinder: number): number {
  const { order } = setUp;
  const at = order.indexOf(cylinder);
  return order[(at + order.length / 2) % order.length] ?? 0;
}

/** 'eight, one fifty' for 8.150, as the shop says a length. */
export function spelledLength(inches: number): string {
  const whole = Math.floor(inches + 1e-9);
  const rest = Math.round((inches - whole) * 1000);
  if (rest === 0) return `${spelled(whole)} even`;
  const hundreds = Math.floor(rest / 100);
  const over = rest % 100;
  const tail = over === 0 ? 'hundred' : over < 10 ? `oh ${spelled(over)}` : spelled(over);
  return `${spelled(whole)}, ${hundreds === 0 ? 'oh' : spelled(hundreds)} ${tail}`;
}

/** What is said for a valve: the cylinder and which of its two. */
export interface Valve {
  readonly cylinder: number;
  readonly kind: 'exhaust' | 'intake';
}

/** All sixteen in the order of the walk. */
export const walk: readonly Valve[] = setUp.order.flatMap((cylinder) => [
  { cylinder, kind: 'exhaust' as const },
  { cylinder, kind: 'intake' as const },
]);
