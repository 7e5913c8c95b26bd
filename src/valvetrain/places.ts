import type { Engine } from './engine';

/** Where a cylinder lies in a drawing of the engine from above. */
export interface CylinderPlace {
  readonly cylinder: number;
  /** Index into the engine's banks; 0 is the left bank for someone at the rear looking forward. */
  readonly bank: number;
  /** Place in its bank counted from the front, 0 first. */
  readonly fromFront: number;
}

/** Every cylinder's place, bank by bank, front to rear. */
export function cylinderPlaces(e: Pick<Engine, 'banks'>): readonly CylinderPlace[] {
  return e.banks.flatMap((cylinders, bank) =>
    cylinders.map((cylinder, fromFront) => ({ cylinder, bank, fromFront })),
  );
}

/**
 * The same engine with its banks on the other sides: makers differ on which bank holds number one.
 * The numbering becomes typed, since the banks can no longer be worked out from it.
 */
export function withBanksSwapped(e: Engine): Engine {
  return { ...e, numbering: 'typed', banks: e.banks.toReversed() };
}
