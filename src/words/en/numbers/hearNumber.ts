import type { Turn48 } from '#valvetrain';
import { QUARTER_48, TURN_48 } from './counts';
import { type Fraction, reduced } from './fractions';
import { partWord, readFraction, writtenFraction } from './hearFraction';
import { isNumberHomophone, readBelowHundred, readDecimals } from './hearWhole';
import { AND_HOMOPHONES } from './homophones';
import { tokensOf } from './tokens';

/** A unit that a count can name. */
export type CountUnit = 'quarter' | 'turn' | 'stroke';

/**
 * A number as heard: whole units and a proper fraction in lowest terms (0/1 when nothing is over).
 * `unit` is there only when the speaker named it: 'four' has none, 'four quarters' has 'quarter',
 * 'half a turn' has 'turn'.
 */
export interface HeardNumber {
  readonly whole: number;
  readonly fraction: Fraction;
  readonly unit?: CountUnit;
}

/** The largest number taken for a count. */
const MOST = 40;

/**
 * A count from 0 to 40: '5', 'five', '5 1/2', '5½', '1.5', 'five and a half', 'for', 'two turns',
 * 'half a quarter'. A bare 'quarter' is the unit, as it is called: 'a quarter' is one quarter turn
 * and 'three quarters' (or '3/4') is three; 'three quarters of a turn' is a part of a turn and
 * 'three quarters of a quarter' a part of a quarter. A bare 'half' or 'third' is of whatever unit
 * is being called. Clock hours and anything else are undefined.
 */
export function hearNumber(text: string): HeardNumber | undefined {
  const tokens = tokensOf(text);
  const heard = bareNumber(tokens) ?? quartersOnly(tokens) ?? withUnit(tokens);
  return heard !== undefined && heard.whole + heard.fraction.num / heard.fraction.den <= MOST
    ? heard
    : undefined;
}

/**
 * The heard number in whole 48ths of a turn; undefined when it is not a whole number of them.
 * unit48: 48ths in the unit being called (quarter 12, turn 48, a stroke its own); it serves where
 * the speaker named no unit, and for strokes.
 */
export function heardCount48(heard: HeardNumber, unit48: Turn48): number | undefined {
  const each48 = heard.unit === 'turn' ? TURN_48 : heard.unit === 'quarter' ? QUARTER_48 : unit48;
  const part48 = (heard.fraction.num * each48) / heard.fraction.den;
  return Number.isInteger(part48) ? heard.whole * each48 + part48 : undefined;
}

/** A number with no unit: 'five', '5½', 'five and a half', '1.5', 'half'. */
function bareNumber(tokens: readonly string[]): HeardNumber | undefined {
  return readDecimal(tokens) ?? readMixed(tokens) ?? readWholeOnly(tokens) ?? readPartOnly(tokens);
}

function readWholeOnly(tokens: readonly string[]): HeardNumber | undefined {
  const whole = readBelowHundred(tokens);
  return whole === undefined ? undefined : { whole, fraction: NOTHING };
}

/** A fraction alone, but for quarters, which are a unit of their own. */
function readPartOnly(tokens: readonly string[]): HeardNumber | undefined {
  const quarters = /^(quarters?|\d+\/4)$/.test(partWord(tokens.at(-1) ?? ''));
  const fraction = quarters ? undefined : readFraction(tokens);
  return fraction === undefined ? undefined : properly(fraction);
}

function readMixed(tokens: readonly string[]): HeardNumber | undefined {
  const last = tokens.at(-1);
  if (last !== undefined && writtenFraction(last) !== undefined && !tokens.some(isAnd)) {
    return joined(readBelowHundred(tokens.slice(0, -1)), readFraction([last]));
  }
  const and = tokens.findIndex(isAnd);
  return and < 1
    ? undefined
    : joined(readBelowHundred(tokens.slice(0, and)), readFraction(tokens.slice(and + 1)));
}

function joined(
  whole: number | undefined,
  fraction: Fraction | undefined,
): HeardNumber | undefined {
  const proper = fraction !== undefined && fraction.num < fraction.den;
  return whole !== undefined && proper ? { whole, fraction } : undefined;
}

/** '1.5', 'one point five'; thirds as they are cut short, but not '.3', which may be a clock's '.30'. */
function readDecimal(tokens: readonly string[]): HeardNumber | undefined {
  const point = tokens.indexOf('point');
  const whole = point < 1 ? undefined : readBelowHundred(tokens.slice(0, point));
  const decimals = readDecimals(tokens.slice(point + 1)) ?? '';
  const text = whole === undefined ? tokens.join(' ') : `${whole}.${decimals}`;
  const match = /^(\d{1,2})\.(\d{1,3})$/.exec(text);
  const fraction = DECIMALS.get((match?.[2] ?? '').replace(/0+$/, ''));
  return match === null || fraction === undefined
    ? undefined
    : { whole: Number(match[1]), fraction };
}

/** 'a quarter', 'quarter', '3/4': quarter turns, counted. */
function quartersOnly(tokens: readonly string[]): HeardNumber | undefined {
  const [first = '', second] = tokens;
  const written = second === undefined ? writtenFraction(first) : undefined;
  if (written?.den === 4) {
    return { whole: written.num, fraction: NOTHING, unit: 'quarter' };
  }
  const article = first === 'a' ? tokens.slice(1) : tokens;
  return article.length === 1 && partWord(article[0] ?? '') === 'quarter'
    ? { whole: 1, fraction: NOTHING, unit: 'quarter' }
    : undefined;
}

function withUnit(tokens: readonly string[]): HeardNumber | undefined {
  const name = partWord(tokens.at(-1) ?? '');
  const unit = UNITS.get(name);
  const body = tokens.slice(0, -1);
  if (unit === undefined || body.length === 0) {
    return undefined;
  }
  const number = readPartOf(body) ?? readNumberOf(body, name) ?? readTurnPart(body, unit);
  return number === undefined ? undefined : { ...number, unit };
}

/** 'a third of a', 'half a', 'half of a', '3/4 of a'. */
function readPartOf(body: readonly string[]): HeardNumber | undefined {
  const [before = '', article = ''] = body.slice(-2);
  if (article !== 'a' && article !== 'one') {
    return undefined;
  }
  const part = before === 'of' ? body.slice(0, -2) : body.slice(0, -1);
  const fraction = readFraction(part);
  const said = before === 'of' || (article === 'a' && fraction?.den === 2);
  return said && fraction !== undefined && fraction.num < fraction.den
    ? properly(fraction)
    : undefined;
}

/** 'four', 'one and a half', 'a full'; a homophone needs the plural ('to turn' is talk). */
function readNumberOf(body: readonly string[], name: string): HeardNumber | undefined {
  const counted = body.at(-1) === 'full' ? body.slice(0, -1) : body;
  const [first, ...rest] = counted;
  if (first === undefined || (rest.length === 0 && first === 'a')) {
    return { whole: 1, fraction: NOTHING };
  }
  if (rest.length === 0 && isNumberHomophone(first) && !name.endsWith('s')) {
    return undefined;
  }
  return bareNumber(counted);
}

/** 'quarter turn', 'three quarter turns': quarters that are parts of a turn. */
function readTurnPart(body: readonly string[], unit: CountUnit): HeardNumber | undefined {
  const fraction = unit === 'turn' ? readFraction(body) : undefined;
  return fraction === undefined ? undefined : properly(fraction);
}

function properly({ num, den }: Fraction): HeardNumber {
  return { whole: Math.floor(num / den), fraction: reduced(num % den, den) };
}

function isAnd(token: string): boolean {
  return ANDS.has(token);
}

const NOTHING: Fraction = { num: 0, den: 1 };

const ANDS: ReadonlySet<string> = new Set(['and', ...AND_HOMOPHONES.map(({ written }) => written)]);

const UNITS: ReadonlyMap<string, CountUnit> = new Map([
  ['quarter', 'quarter'],
  ['quarters', 'quarter'],
  ['turn', 'turn'],
  ['turns', 'turn'],
  ['stroke', 'stroke'],
  ['strokes', 'stroke'],
]);

const DECIMALS: ReadonlyMap<string, Fraction> = new Map([
  ['', NOTHING],
  ['5', { num: 1, den: 2 }],
  ['25', { num: 1, den: 4 }],
  ['75', { num: 3, den: 4 }],
  ['33', { num: 1, den: 3 }],
  ['333', { num: 1, den: 3 }],
  ['66', { num: 2, den: 3 }],
  ['67', { num: 2, den: 3 }],
  ['666', { num: 2, den: 3 }],
  ['667', { num: 2, den: 3 }],
]);
