import { bySpelling, NOUGHT_HOMOPHONES, NUMBER_HOMOPHONES } from './homophones';
import { tokensOf } from './tokens';
import { BELOW_TWENTY, TENS } from './vocabulary';

/**
 * A whole number from 0 to 999, in figures or words, cardinal or shop: '117', 'one seventeen',
 * 'one hundred and seventeen', 'one one seven'. Undefined for anything else.
 */
export function hearWhole(text: string): number | undefined {
  return readWhole(tokensOf(text));
}

/** As `hearWhole`, from tokens. */
export function readWhole(tokens: readonly string[]): number | undefined {
  const [first, second, ...rest] = tokens;
  if (first === undefined) {
    return undefined;
  }
  if (second === undefined && /^\d{3}$/.test(first)) {
    return Number(first);
  }
  const small = readBelowHundred(tokens);
  if (small !== undefined) {
    return small;
  }
  const hundreds = first === 'a' && second === 'hundred' ? 1 : readDigit(first);
  if (hundreds === undefined || hundreds === 0 || second === undefined) {
    return undefined;
  }
  const over = second === 'hundred' ? readAfterHundred(rest) : readAfterDigit([second, ...rest]);
  return over === undefined ? undefined : hundreds * 100 + over;
}

/** A number from 0 to 99, from tokens: '78', 'seventy eight', 'too'. */
export function readBelowHundred(tokens: readonly string[]): number | undefined {
  const [first, second, ...rest] = tokens;
  if (first === undefined || rest.length > 0) {
    return undefined;
  }
  const value = wordValue(first);
  if (second === undefined) {
    return value;
  }
  const unit = readDigit(second);
  const isTens = value !== undefined && value >= 20 && value % 10 === 0;
  return isTens && unit !== undefined && unit > 0 ? value + unit : undefined;
}

/** One digit, 0 to 9, noughts by all their names: '5', 'five', 'fife', 'oh', 'zero'. */
export function readDigit(token: string): number | undefined {
  if (NOUGHTS.has(token)) {
    return 0;
  }
  const value = wordValue(token);
  return value !== undefined && value < 10 && !/^\d\d$/.test(token) ? value : undefined;
}

/** The figures that tokens stand for, run together ('one' '75' is '175'); undefined when one stands for none. */
export function readFigures(tokens: readonly string[]): string | undefined {
  const figures = tokens.map((token) =>
    /^\d{1,3}$/.test(token) ? token : (readDigit(token) ?? wordValue(token)),
  );
  return figures.includes(undefined) ? undefined : figures.join('');
}

/** As `readFigures`, for what follows a point, where tens and units are one pair: 'twenty' 'five' is '25'. */
export function readDecimals(tokens: readonly string[]): string | undefined {
  const pair = tokens.length === 2 ? readBelowHundred(tokens) : undefined;
  return pair === undefined ? readFigures(tokens) : String(pair);
}

/** True for a word that is a number only because a number was expected ('to', 'for'). */
export function isNumberHomophone(token: string): boolean {
  return HOMOPHONES.has(token);
}

function readAfterHundred(tokens: readonly string[]): number | undefined {
  if (tokens.length === 0) {
    return 0;
  }
  const over = readBelowHundred(tokens[0] === 'and' ? tokens.slice(1) : tokens);
  return over === 0 ? undefined : over;
}

/** What follows the hundreds in the shop's way: 'oh five', 'seventeen', or two digits one by one. */
function readAfterDigit(tokens: readonly string[]): number | undefined {
  const [first, second, ...rest] = tokens;
  if (first === undefined || rest.length > 0) {
    return undefined;
  }
  if (second === undefined) {
    const over = readBelowHundred([first]);
    return over !== undefined && over >= 10 ? over : undefined;
  }
  const tens = readDigit(first);
  const unit = readDigit(second);
  return tens !== undefined && unit !== undefined ? tens * 10 + unit : readBelowHundred(tokens);
}

function wordValue(token: string): number | undefined {
  return /^\d{1,2}$/.test(token) ? Number(token) : VALUES.get(HOMOPHONES.get(token) ?? token);
}

const HOMOPHONES = bySpelling(NUMBER_HOMOPHONES);

const NOUGHTS: ReadonlySet<string> = new Set([
  'oh',
  'zero',
  ...NOUGHT_HOMOPHONES.map(({ written }) => written),
]);

const VALUES: ReadonlyMap<string, number> = new Map([
  ...BELOW_TWENTY.map((word, value) => [word, value] as const),
  ...TENS.map((word, tens) => [word, tens * 10] as const).filter(([word]) => word !== ''),
]);
