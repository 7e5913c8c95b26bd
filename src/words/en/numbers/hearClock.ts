import type { ClockTime } from './clock';
import { partWord } from './hearFraction';
import { readBelowHundred } from './hearWhole';
import { bySpelling, CLOCK_HOMOPHONES } from './homophones';
import { tokensOf } from './tokens';

/** A clock time as heard. `explicit` is false when it could as well be a number ('four', '4.30', 'four thirty'). */
export interface HeardClock extends ClockTime {
  readonly explicit: boolean;
}

/**
 * Where the builder says the mark stands: "4 o'clock", '4:00', '16:00', 'half past one',
 * 'quarter to one', 'four'. Quarters of an hour only; anything else is undefined.
 */
export function hearClock(text: string): HeardClock | undefined {
  const tokens = tokensOf(text);
  const bare = tokens.slice(0, tokens.findLastIndex((token) => !SUFFIXES.has(token)) + 1);
  const suffixed = bare.length < tokens.length;
  const heard = readFigures(bare) ?? readPastOrTo(bare) ?? readHourAndMinutes(bare);
  return heard === undefined ? undefined : { ...heard, explicit: heard.explicit || suffixed };
}

/** '4:00', '16:30', '4.30'. */
function readFigures(tokens: readonly string[]): HeardClock | undefined {
  const [only = '', ...others] = tokens;
  const match = others.length === 0 ? /^(\d{1,2})([:.])(\d\d)$/.exec(only) : null;
  const hour = Number(match?.[1]);
  const minutes = minutesOf(Number(match?.[3]));
  if (match === null || hour > 23 || minutes === undefined) {
    return undefined;
  }
  return { hour: hour % 12 === 0 ? 12 : hour % 12, minutes, explicit: match[2] === ':' };
}

/** 'half past one', 'a quarter to one', '1/4 past 12'. */
function readPastOrTo(tokens: readonly string[]): HeardClock | undefined {
  const [part = '', side = '', ...hourTokens] = tokens[0] === 'a' ? tokens.slice(1) : tokens;
  const hour = readHour(hourTokens);
  const minutes = PARTS_OF_AN_HOUR.get(partWord(part));
  if (hour === undefined || minutes === undefined) {
    return undefined;
  }
  switch (SIDES.get(side) ?? side) {
    case 'past':
      return { hour, minutes, explicit: true };
    case 'to':
      return minutes === 15
        ? { hour: hour === 1 ? 12 : hour - 1, minutes: 45, explicit: true }
        : undefined;
    default:
      return undefined;
  }
}

/** 'four', 'four thirty', 'four forty five'. */
function readHourAndMinutes(tokens: readonly string[]): HeardClock | undefined {
  const [first, ...rest] = tokens;
  const hour = first === undefined ? undefined : readHour([first]);
  const minutes = rest.length === 0 ? 0 : minutesOf(readBelowHundred(rest));
  if (hour === undefined || minutes === undefined || (rest.length > 0 && minutes === 0)) {
    return undefined;
  }
  return { hour, minutes, explicit: false };
}

function readHour(tokens: readonly string[]): number | undefined {
  const hour = tokens.length === 1 ? readBelowHundred(tokens) : undefined;
  return hour !== undefined && hour >= 1 && hour <= 12 ? hour : undefined;
}

function minutesOf(value: number | undefined): ClockTime['minutes'] | undefined {
  return QUARTER_HOURS.find((minutes) => minutes === value);
}

const QUARTER_HOURS = [0, 15, 30, 45] as const;

const SUFFIXES: ReadonlySet<string> = new Set(['oclock', 'am', 'pm']);

const SIDES = bySpelling(CLOCK_HOMOPHONES);

const PARTS_OF_AN_HOUR: ReadonlyMap<string, 15 | 30> = new Map([
  ['half', 30],
  ['1/2', 30],
  ['quarter', 15],
  ['1/4', 15],
]);
