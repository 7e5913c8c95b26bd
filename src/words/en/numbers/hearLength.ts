import { readBelowHundred, readDecimals, readDigit, readFigures, readWhole } from './hearWhole';
import { fromSteps } from './rounding';
import { tokensOf } from './tokens';

/** Whole inches taken for a length; past nineteen, 'twenty one fifty' could be two numbers. */
const LEAST_INCHES = 1;
const MOST_INCHES = 19;

/**
 * A length in inches as said or written, in millimetres: 'eight one seventy-five', 'eight even',
 * 'eight oh five oh', 'eight point one seven five', '8.175', '8175', '8 1 75'. From 1.000 to
 * 19.999 in. What could be read two ways is undefined, so that it is asked again: 'eight'
 * (the rest may have been lost), 'eight seventy-five' (8.075 or 8.750), 'eight one five'.
 */
export function hearLength(text: string): number | undefined {
  const tokens = tokensOf(text);
  const named = INCH_NAMES.has(tokens.at(-1) ?? '');
  const bare = named ? tokens.slice(0, -1) : tokens;
  const thou = readJoined(bare) ?? readInches(bare, named);
  const inRange =
    thou !== undefined && thou >= LEAST_INCHES * 1000 && thou < (MOST_INCHES + 1) * 1000;
  return inRange ? fromSteps(thou, 'thou', 0) : undefined;
}

/** Figures run together: '8175', '10150', and '81 75' where 81 can't be inches. */
function readJoined(tokens: readonly string[]): number | undefined {
  const figures = tokens.join(' ');
  return /^(\d{4,5}|[2-9]\d \d\d)$/.test(figures) ? Number(figures.replace(' ', '')) : undefined;
}

function readInches(tokens: readonly string[], named: boolean): number | undefined {
  const [first = '', ...rest] = tokens;
  const decimal = /^(\d{1,2})\.(\d{1,3})0*$/.exec(first);
  if (decimal !== null) {
    return rest.length === 0 ? thouOf(Number(decimal[1]), decimal[2] ?? '') : undefined;
  }
  const inches = readBelowHundred([first]);
  if (inches === undefined) {
    return undefined;
  }
  const thousandths = readThousandths(rest, named);
  return thousandths === undefined ? undefined : inches * 1000 + thousandths;
}

function readThousandths(tokens: readonly string[], named: boolean): number | undefined {
  const [first, ...rest] = tokens;
  if (first === undefined) {
    return named ? 0 : undefined;
  }
  if (rest.length === 0 && (first === 'even' || first === 'flat')) {
    return 0;
  }
  if (first === 'point') {
    return readAfterPoint(rest);
  }
  const whole = readWhole(tokens);
  return whole !== undefined && whole >= 100 ? whole : readDigits(tokens);
}

/** What follows 'point': digits one by one or in pairs ('one seventy five'), or a number of thousandths. */
function readAfterPoint(tokens: readonly string[]): number | undefined {
  const whole = readWhole(tokens);
  if (whole !== undefined && whole >= 100) {
    return whole;
  }
  const digits = readDecimals(tokens) ?? '';
  return /^\d{1,3}$/.test(digits) ? thouOf(0, digits) : undefined;
}

/** Exactly three digits, the first a nought: 'oh five oh', 'oh fifty', '0 75', '050'. */
function readDigits(tokens: readonly string[]): number | undefined {
  const digits = readFigures(tokens) ?? '';
  if (/^0\d\d$/.test(digits)) {
    return Number(digits);
  }
  const [first = '', ...rest] = tokens;
  return readDigit(first) === 0 && rest.length === 2 ? readBelowHundred(rest) : undefined;
}

function thouOf(inches: number, decimals: string): number {
  return inches * 1000 + Number(decimals.padEnd(3, '0'));
}

const INCH_NAMES: ReadonlySet<string> = new Set(['in', 'inch', 'inches']);
