/** What this method of counting can't measure. */
export type OutOfScopeKind =
  | 'solid lifters'
  | 'overhead cam'
  | 'shared rocker shaft or bridge'
  | 'converted-solid test lifters';

export const outOfScopeKinds: readonly OutOfScopeKind[] = [
  'solid lifters',
  'overhead cam',
  'shared rocker shaft or bridge',
  'converted-solid test lifters',
];

/** Why a set-up is out of scope and what to do instead, in one sentence. */
export function outOfScope(kind: OutOfScopeKind): string {
  switch (kind) {
    case 'solid lifters':
      return 'Solid lifters have no plunger and so no preload: set their lash with a feeler gauge to the cam maker’s figure.';
    case 'overhead cam':
      return 'An overhead cam has no pushrod to carry the preload: set its valves by the engine maker’s procedure.';
    case 'shared rocker shaft or bridge':
      return 'Several rockers held by one shaft or bridge can’t be counted rocker by rocker: torque them all down and measure with a checking pushrod.';
    case 'converted-solid test lifters':
      return 'A test lifter converted to solid has no plunger to press down: measure with a checking pushrod, opened to zero lash, and add the preload wanted.';
    default:
      return unknownKind(kind);
  }
}

function unknownKind(kind: never): never {
  throw new RangeError(`Unknown kind: ${String(kind)}.`);
}
