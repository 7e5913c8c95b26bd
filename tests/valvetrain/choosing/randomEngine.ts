import type { ChoosableValve, Offer, StockLine, Travel, ValveId, Window } from '#valvetrain';
import { countedPreload, startingSets } from '#valvetrain';
import { oneOf, whole } from '../random';

const THOU = 25.4 / 1000;

export interface RandomEngine {
  readonly valves: readonly ChoosableValve[];
  readonly offer: Offer;
  readonly banks: readonly (readonly number[])[];
}

/** An engine of 4 to 32 valves as it might come off the bench, tidy or not. */
export function randomEngine(random: () => number): RandomEngine {
  const cylinders = whole(random, 2, 16);
  const all = Array.from({ length: cylinders }, (_, index) => index + 1);
  const banks =
    random() < 0.5
      ? [all]
      : [all.filter((cylinder) => cylinder % 2 === 1), all.filter((c) => c % 2 === 0)];
  const travel = randomTravel(random);
  const [usual, other] = [oneOf(random, startingSets), oneOf(random, startingSets)];
  const mixed = random() < 0.25;
  const byKind = random() < 0.5 ? 0 : whole(random, -40, 40);
  const byBank = random() < 0.5 ? 0 : whole(random, -40, 40);
  const spread = whole(random, 0, 40);
  const testLengths = random() < 0.7 ? [200] : [200, 201.27];
  const levelThou = whole(random, 30, 110);
  const valves = all.flatMap((cylinder) =>
    (['intake', 'exhaust'] as const).map((valve): ChoosableValve => {
      const id: ValveId = { cylinder, valve };
      const window: Window = mixed && cylinder % 4 === 0 ? other.window : usual.window;
      const testLengthMm = oneOf(random, testLengths);
      const trueThou =
        levelThou +
        (valve === 'intake' ? byKind : 0) +
        (banks[1]?.includes(cylinder) ? byBank : 0) +
        (random() - 0.5) * spread +
        (testLengthMm - 200) / THOU +
        (random() < 0.03 ? 60 : 0);
      const quarters = Math.max(0, (trueThou * THOU) / travel.perQuarterMm);
      const { read, resolution48 } = randomLanding(random, quarters);
      const counts = Array.from({ length: oneOf(random, [1, 1, 1, 2, 3]) }, () => ({
        resolution48,
        zeroFeelQuarters: 0.15,
      }));
      return { id, preload: countedPreload(read, counts, travel), testLengthMm, window };
    }),
  );
  return { valves, banks, offer: randomOffer(random, valves) };
}

function randomTravel(random: () => number): Travel {
  const perQuarterMm = oneOf(random, [19.54, 17.4, 20.5]) * THOU;
  const relative = oneOf(random, [0.07, 0.02, 0]) / Math.sqrt(3);
  return { perQuarterMm, uMm: perQuarterMm * relative, basis: 'geometry' };
}

function randomLanding(random: () => number, quarters: number) {
  switch (whole(random, 0, 2)) {
    case 0:
      return { read: Math.round(quarters * 4) / 4, resolution48: 6 };
    case 1:
      return { read: Math.round(quarters * 3) / 3, resolution48: 4 };
    default:
      return { read: Math.floor(quarters) + 0.5, resolution48: 12 };
  }
}

function randomOffer(random: () => number, valves: readonly ChoosableValve[]): Offer {
  if (random() < 0.5) {
    const stepMm = oneOf(random, [50, 25, 25, 10]) * THOU;
    return { kind: 'grid', stepMm, offsetMm: oneOf(random, [0, 0.3]) };
  }
  const stepMm = oneOf(random, [50, 25, 25, 10]) * THOU;
  const most = oneOf(random, [3, 8, 16, 40]);
  const middle = 200 + whole(random, -40, 40) * THOU;
  const lines: StockLine[] = Array.from({ length: whole(random, 1, 12) }, (_, place) => ({
    lengthMm: middle + (place - 5) * stepMm,
    quantity: whole(random, 0, most),
  }));
  const enough = lines.some(({ quantity }) => quantity > 0);
  return {
    kind: 'stock',
    lines: enough ? lines : [{ lengthMm: middle, quantity: valves.length }],
  };
}
