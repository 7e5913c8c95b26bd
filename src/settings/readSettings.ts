import { readNamedWindows } from './namedWindows';
import { defaultSettings, type KeySettings, type Settings } from './settings';

type Fields = Readonly<Record<string, unknown>>;

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function oneOf<T extends string>(value: unknown, choices: readonly T[], otherwise: T): T {
  return choices.find((choice) => choice === value) ?? otherwise;
}

function within(value: unknown, least: number, most: number): number | null {
  return typeof value === 'number' && value >= least && value <= most ? value : null;
}

function flag(value: unknown, otherwise: boolean): boolean {
  return typeof value === 'boolean' ? value : otherwise;
}

function isText(value: unknown): value is string {
  return typeof value === 'string' && value.length <= 200;
}

function readKeys(value: unknown): KeySettings | null {
  if (!isFields(value) || !isFields(value.pedal) || !isFields(value.keys)) return null;
  const { codes, sendsKeyUp } = value.pedal;
  if (!Array.isArray(codes) || !codes.every(isText)) return null;
  const keys = Object.entries(value.keys).filter((entry): entry is [string, string] =>
    isText(entry[1]),
  );
  return {
    pedal: { codes, sendsKeyUp: flag(sendsKeyUp, true) },
    keys: Object.fromEntries(keys),
    ...(isText(value.listen) ? { listen: value.listen } : {}),
  };
}

/**
 * Settings from whatever was kept: every field that makes no sense falls back to its default, so a
 * damaged or older record never stops the app.
 */
export function readSettings(kept: unknown): Settings {
  if (!isFields(kept)) return defaultSettings;
  const d = defaultSettings;
  return {
    units: oneOf(kept.units, ['inch', 'mm'], d.units),
    numbers: oneOf(kept.numbers, ['cardinal', 'shop'], d.numbers),
    lengths: oneOf(kept.lengths, ['cardinal', 'shop', 'digits'], d.lengths),
    level: oneOf(kept.level, ['terse', 'plain', 'teaching'], d.level),
    speaks: flag(kept.speaks, d.speaks),
    voice: isText(kept.voice) ? kept.voice : d.voice,
    rate: within(kept.rate, 0.5, 2) ?? d.rate,
    headset: flag(kept.headset, d.headset),
    whichEar: oneOf(kept.whichEar, ['automatic', 'browser', 'offline', 'none'], d.whichEar),
    earOnWaking: flag(kept.earOnWaking, d.earOnWaking),
    listens: oneOf(kept.listens, ['open', 'while held'], d.listens),
    carrier: flag(kept.carrier, d.carrier),
    mayLeave: flag(kept.mayLeave, d.mayLeave),
    measuresRoom: flag(kept.measuresRoom, d.measuresRoom),
    keys: readKeys(kept.keys),
    keysOn: flag(kept.keysOn, d.keysOn),
    shop: oneOf(kept.shop, ['bright', 'dark'], d.shop),
    screenDiagonalIn: within(kept.screenDiagonalIn, 3, 120),
    practised: flag(kept.practised, d.practised),
    windows: readNamedWindows(kept.windows),
  };
}
