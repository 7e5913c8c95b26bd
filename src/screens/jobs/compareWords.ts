import type { ValveKind } from '#valvetrain';

/** Words of two jobs beside each other, English. */
export const compareWords = {
  title: 'Two jobs compared',
  loading: 'Reading the two jobs…',
  gone: 'One of the two can’t be read on this device.',
  done: 'Stop comparing',
  same: 'Same engine and parts, as far as the set-ups tell.',
  other: 'Not the same engine and parts: lengths may well differ.',
  difference: 'Difference',
  none: '–',
  unit: { inch: 'thou', mm: 'mm' },
  needs: {
    intake: 'Intakes need',
    exhaust: 'Exhausts need',
  } satisfies Record<ValveKind, string>,
  took: 'Lengths',
  taken: (fitted: boolean) => (fitted ? 'fitted' : 'to order'),
  alike: 'the same',
  differs: 'differs',
  valves: 'Length needed, valve by valve',
  valve: 'Valve',
};
