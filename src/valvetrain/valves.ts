export type ValveKind = 'intake' | 'exhaust';

export const valveKinds: readonly ValveKind[] = ['intake', 'exhaust'];

/** One valve of the engine. A pushrod engine here has one of each kind per cylinder. */
export interface ValveId {
  readonly cylinder: number;
  readonly valve: ValveKind;
}

/** A valve as a text key: '3 intake'. */
export function valveKey(id: ValveId): string {
  return `${id.cylinder} ${id.valve}`;
}

/**
 * Reads a key written by `valveKey`; undefined for anything else ('0 intake', '03 intake',
 * '3 inlet'). Whether the engine has that cylinder is not asked here.
 */
export function parseValveKey(key: string): ValveId | undefined {
  const match = /^([1-9]\d?) (intake|exhaust)$/.exec(key);
  if (match === null) return undefined;
  const valve = valveKinds.find((kind) => kind === match[2]);
  return valve === undefined ? undefined : { cylinder: Number(match[1]), valve };
}

export function sameValve(a: ValveId, b: ValveId): boolean {
  return a.cylinder === b.cylinder && a.valve === b.valve;
}

/** Every valve of an engine, by cylinder number, intake before exhaust. */
export function valvesOf(engine: { readonly cylinders: number }): readonly ValveId[] {
  return Array.from({ length: engine.cylinders }, (_, index) => index + 1).flatMap((cylinder) =>
    valveKinds.map((valve) => ({ cylinder, valve })),
  );
}
