import { cylinderPlaces, type Engine, type ValveKind } from '#valvetrain';

/** A valve's plate in the plan. */
export interface PlatePlace {
  readonly valve: ValveKind;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface CylinderInPlan {
  readonly cylinder: number;
  readonly x: number;
  readonly y: number;
  readonly bore: number;
  readonly plates: readonly PlatePlace[];
}

export interface Plan {
  readonly width: number;
  readonly height: number;
  readonly outline: string;
  readonly cylinders: readonly CylinderInPlan[];
}

const HEAD = 36;
const PLATE = 158;
const EDGE = 12;
const TALLEST_ROW = 104;
const USUAL_HEIGHT = 408;

/**
 * Places of a drawing from above, front at the top. Two banks stand either side of the valley with
 * their valves outside; a single bank, or more than two, has a valve on either side of each bore.
 */
export function planOf(engine: Pick<Engine, 'banks'>): Plan {
  const rows = Math.max(1, ...engine.banks.map((bank) => bank.length));
  const valley = engine.banks.length === 2;
  const least = valley ? 68 : 34;
  const row = Math.max(least, Math.min(TALLEST_ROW, USUAL_HEIGHT / rows));
  const bore = Math.min(32, row / 2 - 2);
  const bank = (valley ? PLATE : 2 * PLATE) + 2 * bore + 3 * EDGE;
  const width = Math.max(1, engine.banks.length) * bank + EDGE;
  const height = HEAD + rows * row + EDGE;
  const cylinders = cylinderPlaces(engine).map(({ cylinder, bank: at, fromFront }) => {
    const left = EDGE / 2 + at * bank;
    const y = HEAD + (fromFront + 0.5) * row;
    return valley
      ? { cylinder, bore, y, ...besideValley(at, left, bank, y, bore, row) }
      : { cylinder, bore, y, ...inBank(left, bank, y, bore, row) };
  });
  const outline = `M2 ${HEAD - 6}H${width / 2 - 50}M${width / 2 + 50} ${HEAD - 6}H${width - 2}V${height - 2}H2V${HEAD - 6}`;
  return { width, height, outline, cylinders };
}

function besideValley(
  at: number,
  left: number,
  bank: number,
  y: number,
  bore: number,
  row: number,
): Pick<CylinderInPlan, 'x' | 'plates'> {
  const height = Math.min(42, row / 2 - 4);
  const outside = at === 0 ? left + EDGE : left + bank - EDGE - PLATE;
  const x = at === 0 ? left + bank - EDGE - bore : left + EDGE + bore;
  const plate = { x: outside, width: PLATE, height };
  return {
    x,
    plates: [
      { valve: 'exhaust', y: y - height - 2, ...plate },
      { valve: 'intake', y: y + 2, ...plate },
    ],
  };
}

function inBank(
  left: number,
  bank: number,
  y: number,
  bore: number,
  row: number,
): Pick<CylinderInPlan, 'x' | 'plates'> {
  const height = Math.min(44, row - 4);
  const x = left + bank / 2;
  const plate = { y: y - height / 2, width: PLATE, height };
  return {
    x,
    plates: [
      { valve: 'exhaust', x: x - bore - EDGE - PLATE, ...plate },
      { valve: 'intake', x: x + bore + EDGE, ...plate },
    ],
  };
}
