import {
  type CountedReading,
  type JobSheet,
  type Reading,
  readingCount48,
  readingResolution48,
  type SheetValve,
} from '#counting';
import { guardMm, type UncertainPreload } from '#valvetrain';
import type { Units } from '#words';
import { figureIn } from '../pieces/figureIn';
import type { Cell } from './csv';

/** The names of a valve's figures, in order; docs/job-sheet.md says what each is. */
export const valveColumns = [
  'cylinder',
  'valve',
  'unit',
  'lifter',
  'usable_from',
  'usable_to',
  'preferred_from',
  'preferred_to',
  'plunger_travel',
  'read_by',
  'readings_quarters',
  'resolution_quarters',
  'preload',
  'preload_band',
  'preload_mm',
  'verdict',
  'cannot_tell_from',
  'off_fellows',
  'repeats_differ',
  'test_pushrod_mm',
  'measured_length_mm',
  'order_mm',
  'predicted',
  'predicted_band',
  'predicted_mm',
  'predicted_verdict',
  'fitted_mm',
  'final',
  'final_band',
  'final_mm',
  'final_verdict',
  'final_agrees',
  'torqued',
] as const;

export type ValveColumn = (typeof valveColumns)[number];

/** One valve's figures. Those in `unit` are rounded as the sheet shows them; mm to a ten-thousandth. */
export type ValveRecord = Readonly<Record<ValveColumn, Cell>>;

/** Every valve of a sheet as plain figures, in the sheet's order. */
export function valveRecords({ valves }: JobSheet, units: Units): readonly ValveRecord[] {
  return valves.map((valve) => recordOf(valve, units));
}

function recordOf(one: SheetValve, units: Units): ValveRecord {
  const { measured, window, predicted, final } = one;
  const { reading, figures, standing } = measured;
  const shown = (mm: number | undefined) => (mm === undefined ? null : asShown(mm, units));
  const counted = one.readings.filter(isCounted);
  return {
    cylinder: one.valve.cylinder,
    valve: one.valve.valve,
    unit: units === 'inch' ? 'thou' : 'mm',
    lifter: window?.lifter ?? null,
    usable_from: shown(window?.usableMinMm),
    usable_to: shown(window?.usableMaxMm),
    preferred_from: shown(window?.preferredMinMm),
    preferred_to: shown(window?.preferredMaxMm),
    plunger_travel: shown(window?.plungerTravelMm),
    read_by: reading?.kind ?? null,
    readings_quarters:
      counted.length === 0
        ? null
        : counted.map((count) => tidy(readingCount48(count) / 12)).join(' '),
    resolution_quarters:
      reading !== null && isCounted(reading) ? tidy(readingResolution48(reading) / 12) : null,
    preload: figures?.preloadMm == null ? null : asShown(figures.preloadMm, units, one),
    preload_band: shown(figures?.sure?.guardMm),
    preload_mm: figures?.preloadMm == null ? null : tidy(figures.preloadMm),
    verdict: figures?.verdict ?? null,
    cannot_tell_from: figures?.sure?.against?.word ?? null,
    off_fellows: shown(one.distrusted?.offMm),
    repeats_differ: reading === null ? null : one.disagrees !== null,
    test_pushrod_mm: reading?.pushrod ? tidy(reading.pushrod.mm) : null,
    measured_length_mm:
      figures?.lengthMm === undefined || standing === null ? null : tidy(figures.lengthMm),
    order_mm: one.orderedMm === null ? null : tidy(one.orderedMm),
    ...predictedCells(predicted?.preload ?? null, units),
    predicted_verdict: predicted?.verdict ?? null,
    fitted_mm: final?.fitted ? tidy(final.fitted.mm) : null,
    ...finalCells(final?.line.standing?.preload ?? null, units),
    final_verdict: final?.line.figures?.verdict ?? null,
    final_agrees: final?.agreement?.agrees ?? null,
    torqued: reading?.torqued ?? null,
  };
}

function predictedCells(preload: UncertainPreload | null, units: Units) {
  return {
    predicted: preload && asShown(preload.preloadMm, units),
    predicted_band: preload && asShown(guardMm(preload), units),
    predicted_mm: preload && tidy(preload.preloadMm),
  };
}

function finalCells(preload: UncertainPreload | null, units: Units) {
  return {
    final: preload && asShown(preload.preloadMm, units),
    final_band: preload && asShown(guardMm(preload), units),
    final_mm: preload && tidy(preload.preloadMm),
  };
}

/** A length as the number that its figure on the sheet reads. */
function asShown(mm: number, units: Units, judged?: SheetValve): number {
  return Number(figureIn(units, mm, judged?.window ?? null).replace('−', '-'));
}

/** To a ten-thousandth: finer than anything here is measured. */
function tidy(value: number): number {
  return Math.round(value * 10_000) / 10_000;
}

function isCounted(reading: Reading): reading is CountedReading {
  return reading.kind === 'counted';
}
