/**
 * The figures of one engine from plan to final check, in millimetres, worked out here from the trade's
 * rules and nothing of the app's.
 */

const RATIO = 1.7;
const PITCH_MM = 1.25;

/** What `pumpPlan` changes: the cam's base circle, the deck, the gasket, shims under the rockers. */
const terms = {
  'base circle': (36.5 - 35.7) / 2,
  'deck milled': -0.25,
  gasket: 1.37 - 1.02,
  'pivot shim': 0.5 * (1 + 1 / RATIO),
};
const PRESENT_MM = 205.4;
const PRESENT_PRELOAD_MM = 2;
/** The middle of 80 to 100 thou. */
const TARGET_MM = 90 * 0.0254;

const byParts = Object.values(terms).reduce((sum, term) => sum + term, 0);
const byPreload = TARGET_MM - PRESENT_PRELOAD_MM;

/** Half-widths of what was given with one: half the diameter's, the gasket's, the preload's. */
const gives = [0.04 / 2, 0.05, 0.2];
const together = (halves: readonly number[]) =>
  Math.min(
    halves.reduce((sum, half) => sum + half, 0),
    1.96 * Math.sqrt(halves.reduce((sum, half) => sum + half ** 2 / 3, 0)),
  );

/** Half millimetres are what test pushrods come in. */
const startMm = Math.round((PRESENT_MM + byParts + byPreload) * 2) / 2;

export const plan = {
  terms: { ...terms, plunger: byPreload },
  longerMm: byParts + byPreload,
  giveMm: together(gives),
  keptMm: PRESENT_PRELOAD_MM - byParts,
  exactMm: PRESENT_MM + byParts + byPreload,
  startMm,
  startPreloadMm: PRESENT_PRELOAD_MM - byParts + (startMm - PRESENT_MM),
};

/** Travel of the pushrod for a quarter turn of the bolt. */
const perQuarterMm = (PITCH_MM * (1 + 1 / RATIO)) / 4;

export interface Reading {
  readonly valve: string;
  readonly quarters: number;
}

export const preloadOf = (quarters: number) => quarters * perQuarterMm;

/** Standard uncertainties, mm, of a count landed to half a quarter: its own, and what all share. */
function uncertainties(quarters: number) {
  const own = perQuarterMm * Math.sqrt(0.5 ** 2 / 12 + 0.15 ** 2 / 3);
  return { own, common: (preloadOf(quarters) * 0.07) / Math.sqrt(3) };
}

const USABLE_MM = [75 * 0.0254, 110 * 0.0254] as const;
const STEP_MM = 0.25;

/**
 * The one length of every quarter millimetre: most valves usable by the mean of all, then the mean
 * nearest the target, then the shorter.
 * @throws where the two kinds of valve differ by more than counting does.
 */
export function oneLengthMm(readings: readonly Reading[]): number {
  const kind = (name: string) => readings.filter(({ valve }) => valve.endsWith(name));
  const mean = (some: readonly Reading[]) =>
    some.reduce((sum, { quarters }) => sum + preloadOf(quarters), 0) / some.length;
  const [exhausts, intakes] = [kind('exhaust'), kind('intake')];
  const { own } = uncertainties(0);
  const noise = 1.96 * own * Math.sqrt(1 / exhausts.length + 1 / intakes.length);
  if (Math.abs(mean(exhausts) - mean(intakes)) > noise) throw new Error('a real difference');
  const all = mean(readings);
  const { common } = uncertainties(all / perQuarterMm);
  const guard = 1.65 * Math.sqrt(own ** 2 / readings.length + common ** 2);
  const lengths = Array.from({ length: 400 }, (_, i) => 150 + i * STEP_MM).map((length) => {
    const preload = all + length - plan.startMm;
    const usable = preload >= USABLE_MM[0] + guard && preload <= USABLE_MM[1] - guard;
    return { length, usable, off: Math.abs(preload - TARGET_MM) };
  });
  lengths.sort((a, b) => Number(b.usable) - Number(a.usable) || a.off - b.off);
  const [best] = lengths;
  if (!best?.usable) throw new Error('no length makes the valves usable');
  return best.length;
}

export interface FinalRow {
  readonly predictedMm: number;
  readonly foundMm: number;
  readonly agrees: boolean;
}

/** What the final check of a valve comes to: the measured preload moved by the change of length. */
export function finalRow(measured: number, found: number, longerMm: number): FinalRow {
  const predictedMm = preloadOf(measured) + longerMm;
  const foundMm = preloadOf(found);
  const [was, is] = [uncertainties(measured), uncertainties(found)];
  const u = Math.sqrt(was.own ** 2 + is.own ** 2 + (is.common - was.common) ** 2);
  return { predictedMm, foundMm, agrees: Math.abs(foundMm - predictedMm) <= 1.96 * u };
}

/** Two decimals, as a preload or a length is written. */
export const mm2 = (mm: number) => mm.toFixed(2).replace('-', '−');

/** Three decimals with the sign, as a term is written. */
export function mm3(mm: number): string {
  return `${mm > 0 ? '+' : '−'}${Math.abs(mm).toFixed(3)}`;
}
