import {
  ballFlatMm,
  GUARD_FACTOR,
  offerProblems,
  type Problem,
  type PushrodEnd,
} from '#valvetrain';
import type { SetUp } from './setUp';

const MOST_SPARES = 100;
const CLOSED_MM = { least: 50, most: 500 } as const;
const MOST_PER_TURN_MM = 5;

/** What is wrong with what can be bought. */
export function buyingProblems({ buying }: Pick<SetUp, 'buying'>): readonly Problem[] {
  if (buying === undefined) return [];
  const { offer, spares, ends } = buying;
  const problems = [...offerProblems(offer)];
  if (!Number.isSafeInteger(spares) || spares < 0 || spares > MOST_SPARES) {
    problems.push(
      refused(
        'spares',
        'no number',
        `Spares of each length are a whole number, 0 to ${MOST_SPARES}.`,
      ),
    );
  }
  if (ends?.some((end) => !isPossible(end))) {
    problems.push(
      refused('ends', 'no ball', 'A pushrod’s ball must be wider than the oil hole through it.'),
    );
  }
  return problems;
}

/** What is wrong with a checking pushrod. */
export function checkingProblems({
  checking,
  calling,
}: Pick<SetUp, 'checking' | 'calling'>): readonly Problem[] {
  if (checking === undefined) return [];
  const problems: Problem[] = [];
  const { closedMm, perTurnMm } = checking;
  if (!(closedMm >= CLOSED_MM.least && closedMm <= CLOSED_MM.most)) {
    problems.push(
      refused(
        'closed',
        'length out of range',
        'That is not a checking pushrod’s closed length. Enter 50 to 500 mm (1.969 to 19.685 in).',
      ),
    );
  }
  if (!(perTurnMm > 0 && perTurnMm <= MOST_PER_TURN_MM)) {
    problems.push(
      refused(
        'perTurn',
        'no lead',
        'A turn of the checking pushrod must open it by something: 1.27 mm (0.050 in) is usual.',
      ),
    );
  }
  if (calling.way !== 'turns') {
    problems.push(
      refused(
        'calling',
        'not in turns',
        'A checking pushrod is counted in whole turns: call turns.',
      ),
    );
  }
  return problems;
}

/** What is wrong with a measured travel. */
export function travelProblems({ measuredTravel }: SetUp): readonly Problem[] {
  if (measuredTravel === undefined) return [];
  const { perQuarterMm, uMm } = measuredTravel;
  if (
    perQuarterMm > 0 &&
    Number.isFinite(perQuarterMm) &&
    uMm >= 0 &&
    uMm * GUARD_FACTOR < perQuarterMm
  )
    return [];
  return [
    refused(
      'measuredTravel',
      'travel too uncertain',
      'The measured travel per quarter turn is too uncertain to go by. Measure it again.',
    ),
  ];
}

function isPossible(end: PushrodEnd): boolean {
  try {
    return Number.isFinite(ballFlatMm(end));
  } catch {
    return false;
  }
}

function refused(field: string, code: string, sentence: string): Problem {
  return { field, code, severity: 'refused', sentence };
}
