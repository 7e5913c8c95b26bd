/** How far apart two folded texts sound, 0 (the same) to 1. */
export function soundsApart(first: string, second: string): number {
  const longer = Math.max(first.length, second.length);
  return longer === 0 ? 0 : Math.min(1, distance(first, second) / longer);
}

/** Spellings of one sound made one; spaces go, since recognisers part words where they like. */
export function folded(text: string): string {
  return FOLDS.reduce((word, [from, to]) => word.replace(from, to), text.toLowerCase());
}

const FOLDS: readonly (readonly [RegExp, string])[] = [
  [/[^a-z0-9]/g, ''],
  [/ph/g, 'f'],
  [/ck/g, 'k'],
  [/c(?=[eiy])/g, 's'],
  [/tch|ch/g, '+'],
  [/sh/g, '*'],
  [/th/g, '='],
  [/qu/g, 'kw'],
  [/[cq]/g, 'k'],
  [/x/g, 'ks'],
  [/wh/g, 'w'],
  [/^wr/g, 'r'],
  [/^kn/g, 'n'],
  [/gh/g, ''],
  [/y/g, 'i'],
  [/(.)\1/g, '$1'],
];

const VOWELS = 'aeiou';
const ALIKE = ['td', 'sz', 'pb', 'kg', 'fv', 'mn', '*+', '=f', '=t', '=d', 'lr', 'wu'];

function isVowel(letter: string): boolean {
  return VOWELS.includes(letter);
}

function swapCost(a: string, b: string): number {
  if (a === b) return 0;
  if (isVowel(a) && isVowel(b)) return 0.4;
  return ALIKE.some((pair) => pair.includes(a) && pair.includes(b)) ? 0.4 : 1;
}

function dropCost(letter: string): number {
  return isVowel(letter) || letter === 'h' ? 0.5 : 1;
}

/** Least cost of turning one into the other by swaps and drops (Wagner and Fischer, 1974). */
function distance(a: string, b: string): number {
  let above = [0];
  for (const letter of b) above.push(last(above) + dropCost(letter));
  for (const from of a) {
    const row = [(above[0] ?? 0) + dropCost(from)];
    for (const [i, to] of [...b].entries()) {
      row.push(
        Math.min(
          (above[i] ?? 0) + swapCost(from, to),
          (above[i + 1] ?? 0) + dropCost(from),
          last(row) + dropCost(to),
        ),
      );
    }
    above = row;
  }
  return last(above);
}

function last(row: readonly number[]): number {
  return row.at(-1) ?? 0;
}
