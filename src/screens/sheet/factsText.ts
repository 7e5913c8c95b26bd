import type { JobSheet } from '#counting';
import type { Engine, Window } from '#valvetrain';
import { type Units, writeMm, writeThou } from '#words';
import { figureIn } from '../pieces/figureIn';
import { amountText, lengthText } from '../results/orderText';
import { resolutionText } from '../results/resultRows';
import { layoutName } from '../set-up/setUpNames';
import { walkWords } from '../set-up/walkWords';
import { sheetWords as words } from './sheetWords';

/** One part of what the readings rest on: its name and its lines. */
export interface Fact {
  readonly name: string;
  readonly lines: readonly string[];
}

/** Engine, parts, method, travel and windows, in the sheet's words. */
export function factsOf(sheet: JobSheet, units: Units): readonly Fact[] {
  return [
    { name: words.engine, lines: engineLines(sheet) },
    { name: words.parts, lines: partLines(sheet, units) },
    { name: words.method, lines: methodLines(sheet) },
    { name: words.travel, lines: travelLines(sheet, units) },
    { name: words.windows, lines: windowLines(sheet, units) },
  ];
}

function engineLines({ setUp: { engine, scope } }: JobSheet): readonly string[] {
  if (engine === null) return [words.noEngine];
  const all = 2 * engine.cylinders;
  return [
    `${layoutName(engine.layout, engine.cylinders)}, ${engine.firingOrder.join('-')}`,
    ...bankLines(engine),
    capital(words.running(engine.runningDirection, engine.seenFrom)),
    ...(scope.length < all ? [words.scopePart(scope.length, all)] : []),
  ];
}

function bankLines({ banks }: Engine): readonly string[] {
  const [first, second, ...others] = banks.map((bank) => bank.join(' '));
  if (first === undefined || second === undefined) return [];
  if (others.length === 0) return [words.banks(first, second)];
  return [first, second, ...others].map(words.bank);
}

function partLines({ setUp }: JobSheet, units: Units): readonly string[] {
  const { adjuster, rockers, testPushrod, checking, groups } = setUp;
  const lifters = new Set(groups.map(({ window }) => window.lifter));
  return [
    [...lifters].map(capital).join(', '),
    adjuster === null
      ? `${words.rockers[rockers]}. ${words.noThread}`
      : [
          words.rockers[rockers],
          words.ratio(String(adjuster.rockerRatio)),
          words.turned[adjuster.kind],
          words.pitch(plain(adjuster.pitchMm), plain(25.4 / adjuster.pitchMm)),
          ...(adjuster.leanDeg === 0 ? [] : [words.lean(plain(adjuster.leanDeg))]),
        ].join(', '),
    checking === undefined
      ? ''
      : words.checking(lengthText(units, checking.closedMm), amountText(units, checking.perTurnMm)),
    testPushrod === null || checking !== undefined
      ? ''
      : `${words.testPushrod(lengthText(units, testPushrod.mm))} ${words.conventions[testPushrod.convention]}`,
  ].filter((line) => line !== '');
}

function methodLines({ setUp, valves }: JobSheet): readonly string[] {
  const readings = valves.flatMap((valve) => valve.readings);
  const counted = readings.filter((reading) => reading.kind === 'counted');
  const directions = new Set(counted.map(({ direction }) => direction));
  const [only] = directions;
  const direction = directions.size > 1 ? 'both' : (only ?? 'none');
  const resolved = [...new Set(counted.map(resolutionText))].join(', ');
  const dials = valves.filter((valve) => valve.readings.some(({ kind }) => kind === 'dial'));
  return [
    `${words.direction[direction]}, ${words.calling[setUp.calling.way]}`,
    capital(
      [
        words.feel[setUp.zeroFeel ?? 'up-and-down play'],
        ...(resolved === '' ? [] : [words.read(resolved)]),
        ...(dials.length === 0
          ? []
          : [words.dialRead(dials.map(({ valve }) => words.valve(valve)).join(', '))]),
      ].join(', '),
    ),
    words.crank(walkWords.methods[setUp.walk?.method ?? 'firing order']),
  ];
}

function travelLines({ travel }: JobSheet, units: Units): readonly string[] {
  if (travel === null) return [words.noTravel];
  const fine = (mm: number) => fineText(units, mm);
  return [
    words.travelIs(fine(travel.perQuarterMm), words.basis[travel.basis]),
    ...(travel.basis === 'geometry' ? [] : [words.travelByLever(fine(travel.byLeverMm))]),
    ...(Math.abs(travel.byPitchAloneMm - travel.byLeverMm) < 1e-9
      ? []
      : [words.travelByPitch(fine(travel.byPitchAloneMm))]),
  ];
}

function windowLines({ setUp: { groups } }: JobSheet, units: Units): readonly string[] {
  if (groups.length === 0) return [words.noWindows];
  return groups.map(({ name, window }) => `${name}: ${windowText(window, units)}`);
}

function windowText(window: Window, units: Units): string {
  const figure = (mm: number) => figureIn(units, mm);
  const unit = words.unit[units];
  return `${words.window(
    words.range(figure(window.usableMinMm), figure(window.usableMaxMm)),
    words.range(figure(window.preferredMinMm), figure(window.preferredMaxMm)),
    figure(window.plungerTravelMm),
    words.keepOut(figure(window.keepOutTopMm), figure(window.keepOutBottomMm)),
  )} ${unit}`;
}

/** A travel per quarter turn, finer than a preload. */
function fineText(units: Units, mm: number): string {
  return units === 'inch' ? writeThou(mm, 1) : writeMm(mm, 1);
}

function plain(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
