import { type JobSheet, lengthConvention } from '#counting';
import type { Units } from '#words';
import type { Build } from '../build';
import { csvOf } from './csv';
import { valveColumns, valveRecords } from './sheetRows';

export const SHEET_FORMAT = 'turncaller job sheet';
/** The newest version of the JSON around the figures. */
export const SHEET_VERSION = 1;

/** The sheet's figures as CSV, a line a valve, the job's name and people on each. */
export function sheetCsv(sheet: JobSheet, units: Units): string {
  const { setUp, notes, counted } = sheet;
  const job = [
    setUp.name,
    notes.builder,
    notes.customer,
    counted === null ? null : new Date(counted.to).toISOString(),
  ];
  return csvOf(
    ['job', 'builder', 'customer', 'counted_at', ...valveColumns],
    valveRecords(sheet, units).map((record) => [
      ...job,
      ...valveColumns.map((column) => record[column]),
    ]),
  );
}

/** The sheet's figures, and what they rest on, as JSON. */
export function sheetJson(sheet: JobSheet, units: Units, { version, commit }: Build): string {
  const { setUp, notes, counted, travel, order, stops } = sheet;
  const { name, engine, adjuster, rockers, groups, calling, testPushrod, checking } = setUp;
  const file = {
    format: SHEET_FORMAT,
    version: SHEET_VERSION,
    app: { version, commit },
    job: {
      id: sheet.jobId,
      name,
      ...notes,
      countedFrom: counted && new Date(counted.from).toISOString(),
      countedTo: counted && new Date(counted.to).toISOString(),
      round: sheet.round,
      roundsBefore: sheet.roundsBefore,
      finalCheck: sheet.finalCheck,
    },
    engine,
    parts: { rockers, adjuster, testPushrod, checkingPushrod: checking ?? null },
    method: {
      calling,
      asksLanding: setUp.asksLanding,
      zeroFeel: setUp.zeroFeel ?? 'up-and-down play',
      walk: setUp.walk ?? null,
    },
    travelPerQuarter: travel && {
      mm: travel.perQuarterMm,
      uMm: travel.uMm,
      basis: travel.basis,
      byLeverMm: travel.byLeverMm,
      byPitchAloneMm: travel.byPitchAloneMm,
    },
    windows: groups.map((group) => ({ name: group.name, members: group.members, ...group.window })),
    order: order && {
      scheme: order.taken.scheme,
      convention: lengthConvention(setUp),
      usable: order.taken.usable,
      of: order.taken.of,
      lines: order.order.map(({ lengthMm, quantity, spares }) => ({ lengthMm, quantity, spares })),
    },
    stops: stops.map(({ group, stop }) => ({
      group,
      quarters: stop.count48 / 12,
      preloadMm: stop.preload.preloadMm,
    })),
    unnamedReadings: sheet.unnamed.length,
    valves: valveRecords(sheet, units),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}
