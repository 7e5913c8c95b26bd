export type EngineLayout = 'inline' | 'V' | 'flat' | 'other';

/**
 * How cylinders are numbered. 'by bank': one bank front to rear, then the other. 'alternating':
 * odd numbers on one bank, even on the other. The firing order alone does not tell which.
 */
export type Numbering = 'in line' | 'by bank' | 'alternating' | 'typed';

/** The way the crank runs, as seen from the end named by `SeenFrom`. */
export type RunningDirection = 'clockwise' | 'anticlockwise';

/** Where the builder stands: 'front' is the pulley or free end, 'rear' the flywheel end. */
export type SeenFrom = 'front' | 'rear';

/** A four-stroke engine. It fires evenly, one cylinder every 720/n degrees, unless angles are typed. */
export interface Engine {
  readonly layout: EngineLayout;
  /** 1 to 12. */
  readonly cylinders: number;
  readonly firingOrder: readonly number[];
  /**
   * An odd-fire engine's firing TDCs, crank degrees, one for each place in the firing order: first 0,
   * rising, all below 720. Left out, the engine fires evenly.
   */
  readonly firingAnglesDeg?: readonly number[];
  readonly numbering: Numbering;
  /**
   * Cylinder numbers of each bank, front to rear. The first bank lies on the left for someone
   * standing at the rear and looking forward.
   */
  readonly banks: readonly (readonly number[])[];
  readonly runningDirection: RunningDirection;
  readonly seenFrom: SeenFrom;
}

/** What makes an engine; `banks` is needed only where the numbering is typed. */
export interface EngineInput extends Omit<Engine, 'banks'> {
  readonly banks?: readonly (readonly number[])[];
}

/**
 * Builds an engine, working its banks out from the numbering (typed banks are taken as given).
 * Nothing is judged here: ask `engineProblems`.
 */
export function makeEngine(input: EngineInput): Engine {
  return { ...input, banks: banksOf(input) };
}

/** Typed angles nearer than this are one: no more than the rounding of thirds and sevenths. */
const SAME_TDC_DEG = 0.01;

/**
 * The cylinder n/2 places on in the firing order, at overlap (valves rocking) when this one is at
 * its firing TDC. Undefined for an odd number of cylinders, or one not in the order. Where firing
 * angles are typed it is the cylinder a whole turn away; undefined where none is.
 */
export function companion(e: Engine, cylinder: number): number | undefined {
  const count = e.firingOrder.length;
  const place = e.firingOrder.indexOf(cylinder);
  if (place < 0) return undefined;
  if (e.firingAnglesDeg !== undefined) {
    const own = firingAngleDeg(e, cylinder);
    return e.firingOrder.find(
      (other) => Math.abs(Math.abs(firingAngleDeg(e, other) - own) - 360) < SAME_TDC_DEG,
    );
  }
  if (count % 2 !== 0) return undefined;
  return e.firingOrder[(place + count / 2) % count];
}

/**
 * Crank angle of a cylinder's firing TDC, 0 up to 720°, from the firing TDC of the first in order.
 * @throws RangeError if the cylinder is not in the firing order.
 */
export function firingAngleDeg(e: Engine, cylinder: number): number {
  const place = placeInOrder(e, cylinder);
  return e.firingAnglesDeg?.[place] ?? place * turnToNextDeg(e);
}

/** Crank degrees from one firing TDC to the next in order where the engine fires evenly: 720/n. */
export function turnToNextDeg(e: Engine): number {
  return 720 / e.cylinders;
}

/**
 * Crank degrees in the running direction from one cylinder's firing TDC to another's, above 0 and up
 * to 720 (a cylinder to itself is two whole turns). Holds for odd-fire engines too.
 * @throws RangeError if either cylinder is not in the firing order.
 */
export function turnBetweenDeg(e: Engine, from: number, to: number): number {
  const turn = (firingAngleDeg(e, to) - firingAngleDeg(e, from) + 720) % 720;
  return turn === 0 ? 720 : turn;
}

/**
 * The firing order begun at a cylinder: from 6, order 1-8-4-3-6-5-7-2 is 6-5-7-2-1-8-4-3.
 * @throws RangeError if the cylinder is not in the firing order.
 */
export function firingOrderFrom(e: Engine, start: number): readonly number[] {
  const place = placeInOrder(e, start);
  return [...e.firingOrder.slice(place), ...e.firingOrder.slice(0, place)];
}

/** Numbers 1 to n in order, empty unless n is a whole number that an engine can have. */
export function cylinderNumbers(cylinders: number): readonly number[] {
  if (!isCylinderCount(cylinders)) return [];
  return Array.from({ length: cylinders }, (_, index) => index + 1);
}

export const MOST_CYLINDERS = 12;

export function isCylinderCount(cylinders: number): boolean {
  return Number.isInteger(cylinders) && cylinders >= 1 && cylinders <= MOST_CYLINDERS;
}

function placeInOrder(e: Engine, cylinder: number): number {
  const place = e.firingOrder.indexOf(cylinder);
  if (place < 0) throw new RangeError(`Cylinder ${cylinder} is not in the firing order.`);
  return place;
}

function banksOf(input: EngineInput): readonly (readonly number[])[] {
  const all = cylinderNumbers(input.cylinders);
  switch (input.numbering) {
    case 'in line':
      return [all];
    case 'by bank': {
      const half = Math.ceil(all.length / 2);
      return [all.slice(0, half), all.slice(half)];
    }
    case 'alternating':
      return [all.filter((n) => n % 2 === 1), all.filter((n) => n % 2 === 0)];
    case 'typed':
      return input.banks ?? [];
    default:
      return unknownNumbering(input.numbering);
  }
}

function unknownNumbering(numbering: never): never {
  throw new RangeError(`Unknown numbering: ${String(numbering)}.`);
}
