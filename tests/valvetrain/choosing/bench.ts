import {
  type Answer,
  type Choice,
  type ChoosableValve,
  choosePushrods,
  type Offer,
  type Scheme,
  type Travel,
  type ValveId,
  valvesOf,
  type Window,
} from '#valvetrain';
import { THOU, windowInThou } from '../samples';

/** Two banks of four, numbered alternately. */
export const engine = {
  cylinders: 8,
  banks: [
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ],
};

export const TEST_LENGTH_MM = 200;

/** Lengths every so many thou, the test length one of them. */
export function every(thou: number): Offer {
  return { kind: 'grid', stepMm: thou * THOU, offsetMm: TEST_LENGTH_MM };
}

/** Stock by distance from the test length, thou, and quantity. */
export function stock(...lines: readonly (readonly [thou: number, quantity: number])[]): Offer {
  return {
    kind: 'stock',
    lines: lines.map(([thou, quantity]) => ({
      lengthMm: TEST_LENGTH_MM + thou * THOU,
      quantity,
    })),
  };
}

/** Sixteen valves that read so many thou on the test length, usually with 3.3 thou of their own. */
export function sixteen(
  readThou: (id: ValveId) => number,
  { ownThou = 3.3, commonThou = 3, window = () => windowInThou() }: Terms = {},
): readonly ChoosableValve[] {
  return valvesOf(engine).map((id) => ({
    id,
    preload: {
      preloadMm: readThou(id) * THOU,
      ownMm: ownThou * THOU,
      commonMm: commonThou * THOU,
    },
    testLengthMm: TEST_LENGTH_MM,
    window: window(id),
  }));
}

interface Terms {
  readonly ownThou?: number;
  readonly commonThou?: number;
  readonly window?: (id: ValveId) => Window;
}

export function chosen(valves: readonly ChoosableValve[], offer: Offer): Choice {
  const choice = choosePushrods(valves, offer, engine);
  if (choice === null) throw new Error('nothing to choose for');
  return choice;
}

export function answer(choice: Choice, scheme: Scheme): Answer {
  const found = choice.answers.find((each) => each.scheme === scheme);
  if (found === undefined) throw new Error(`no answer ${scheme}`);
  return found;
}

export function suggested(choice: Choice): Answer {
  return answer(choice, choice.suggestion.scheme);
}

/** The lengths of an answer, thou from the test length, and how many valves get each. */
export function lengthsOf({ lengths }: Answer): readonly (readonly [number, number])[] {
  return lengths.map(({ lengthMm, valves }) => [
    Math.round((lengthMm - TEST_LENGTH_MM) / THOU),
    valves.length,
  ]);
}

/** Exact travel for readings whose count is all there is to them. */
export const exactTravel: Travel = { perQuarterMm: 20 * THOU, uMm: 0, basis: 'dial readings' };
