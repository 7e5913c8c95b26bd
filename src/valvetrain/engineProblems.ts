import { firingAngleProblems } from './crank/firingAngleProblems';
import { companion, cylinderNumbers, type Engine, isCylinderCount, MOST_CYLINDERS } from './engine';
import { listFigure, plainFigure } from './figures';
import { hasRefusal, odd, type Problem, refused } from './problems';

/**
 * What is wrong with an engine. Empty when it can be used. Refused: a cylinder count outside 1 to
 * 12, a cylinder missing from the firing order or the banks, there twice, or not of this engine,
 * banks that don't suit the layout, firing angles that can't be. Odd: an order that doesn't begin with 1, banks of unequal
 * length, or companions that an engine of this layout does not have.
 */
export function engineProblems(e: Engine): readonly Problem[] {
  if (!isCylinderCount(e.cylinders)) return [countProblem(e.cylinders)];
  const found = [
    ...coverProblems('firingOrder', 'firing order', e.firingOrder, e.cylinders),
    ...bankProblems(e),
    ...firingAngleProblems(e),
  ];
  return hasRefusal(found) ? found : [...found, ...startProblems(e), ...companionProblems(e)];
}

function countProblem(cylinders: number): Problem {
  if (Number.isNaN(cylinders)) {
    return refused(
      'cylinders',
      'missing',
      `The number of cylinders is missing: give a whole number from 1 to ${MOST_CYLINDERS}.`,
    );
  }
  const given = Number.isFinite(cylinders) ? plainFigure(cylinders) : 'That many';
  return refused(
    'cylinders',
    'out of range',
    `${given} cylinders can’t be used: give a whole number from 1 to ${MOST_CYLINDERS}.`,
  );
}

/** Every cylinder 1 to n must be there once and once only. */
function coverProblems(
  field: 'firingOrder' | 'banks',
  name: string,
  given: readonly number[],
  cylinders: number,
): readonly Problem[] {
  const all = cylinderNumbers(cylinders);
  const found: Problem[] = [];
  const strangers = [...new Set(given.filter((n) => !all.includes(n)))];
  const twice = all.filter((n) => given.filter((other) => other === n).length > 1);
  const missing = all.filter((n) => !given.includes(n));
  if (strangers.length > 0) {
    const shown = listFigure(strangers.map((n) => (Number.isFinite(n) ? plainFigure(n) : 'a gap')));
    found.push(
      refused(
        field,
        'no such cylinder',
        `The ${name} has ${shown} in it, but this engine’s cylinders are 1 to ${cylinders}.`,
      ),
    );
  }
  if (twice.length > 0) {
    found.push(
      refused(
        field,
        'twice',
        `${cylinderList(twice)} in the ${name} more than once: each cylinder belongs there once.`,
      ),
    );
  }
  if (missing.length > 0) {
    found.push(
      refused(
        field,
        'missing',
        `${cylinderList(missing)} missing from the ${name}: each of 1 to ${cylinders} belongs there once.`,
      ),
    );
  }
  return found;
}

function cylinderList(cylinders: readonly number[]): string {
  return cylinders.length === 1
    ? `Cylinder ${listFigure(cylinders)} is`
    : `Cylinders ${listFigure(cylinders)} are`;
}

function bankProblems(e: Engine): readonly Problem[] {
  const cover = coverProblems('banks', 'list of banks', e.banks.flat(), e.cylinders);
  if (cover.length > 0) return cover;
  const banks = e.banks.length;
  if (e.layout === 'inline' && banks !== 1) {
    return [
      refused(
        'banks',
        'wrong number',
        `An inline engine has one row of cylinders, not ${banks}: number it in line.`,
      ),
    ];
  }
  if (e.layout !== 'V' && e.layout !== 'flat') return [];
  const name = e.layout === 'V' ? 'V' : 'flat';
  if (banks !== 2 || e.banks.some((bank) => bank.length === 0)) {
    return [
      refused(
        'banks',
        'wrong number',
        `A ${name} engine has two banks with cylinders in both: say whether it is numbered by bank or alternately.`,
      ),
    ];
  }
  if (e.banks[0]?.length !== e.banks[1]?.length) {
    return [
      odd(
        'banks',
        'unequal',
        `The banks have ${listFigure(e.banks.map((bank) => bank.length))} cylinders; a ${name} engine mostly has as many on each side. Confirm it if it is right.`,
      ),
    ];
  }
  return [];
}

function startProblems(e: Engine): readonly Problem[] {
  const first = e.firingOrder[0];
  if (first === undefined || first === 1) return [];
  return [
    odd(
      'firingOrder',
      'does not begin with 1',
      `The firing order begins with ${first}; most are written from 1. Confirm it if it is right.`,
    ),
  ];
}

/**
 * Companions come to TDC together, so the crank's layout fixes them: cylinder k and
 * n + 1 − k on the mirrored crank of an inline 4, 6 or 8, and the two opposite each other on a flat
 * engine whose opposed pistons move out and in together. An order that pairs others is most
 * often mistyped. Derived.
 */
function companionProblems(e: Engine): readonly Problem[] {
  if (e.firingAnglesDeg !== undefined) return [];
  const wrong = cylinderNumbers(e.cylinders).find((cylinder) => {
    const expected = expectedCompanion(e, cylinder);
    return expected !== undefined && companion(e, cylinder) !== expected;
  });
  if (wrong === undefined) return [];
  const paired = listFigure([wrong, companion(e, wrong) ?? 'none']);
  const expected = listFigure([wrong, expectedCompanion(e, wrong) ?? 'none']);
  return [
    odd(
      'firingOrder',
      'unusual companions',
      `This order puts ${paired} at TDC together; on ${e.layout === 'flat' ? 'a flat' : 'an inline'} ${e.cylinders} it is mostly ${expected}. Check the order for a slip, and confirm it if it is right.`,
    ),
  ];
}

function expectedCompanion(e: Engine, cylinder: number): number | undefined {
  if (e.layout === 'inline' && [4, 6, 8].includes(e.cylinders)) return e.cylinders + 1 - cylinder;
  if (e.layout !== 'flat') return undefined;
  const bank = e.banks.findIndex((cylinders) => cylinders.includes(cylinder));
  const place = e.banks[bank]?.indexOf(cylinder) ?? -1;
  return e.banks[1 - bank]?.[place];
}
