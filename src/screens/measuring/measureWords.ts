import type { ValveId } from '#valvetrain';
import { conventionNames } from '../set-up/measuringWords';

/** Words of measuring otherwise than by counting on the one test pushrod, English. */
export const measureWords = {
  title: 'Measure another way',
  dial: 'Dial indicator reading',
  dialHow:
    'The pushrod’s travel from zero lash to the rocker seated, read off a dial indicator in place of a count. A count of the same valve stays beside it.',
  valve: 'Valve',
  valveName: ({ cylinder, valve }: ValveId) => `${cylinder} ${valve}`,
  travel: 'Travel',
  takeDial: 'Take the reading',
  noTravel: 'Type the travel the dial shows, as 88 or 2.24 mm.',
  rod: 'Another test pushrod',
  rodHow:
    'Fitted from here on: readings taken so far keep the pushrod they were taken on. The same valves on two lengths also tell the travel of a turn.',
  rodNow: (length: string) => `Fitted now: ${length}.`,
  rodNone: 'No length is known of the one fitted now.',
  length: 'Length',
  convention: 'How that length is taken',
  conventions: conventionNames,
  fit: 'It is fitted',
  noLength: { inch: 'Type its length, as 8.175.', mm: 'Type its length, as 207.6.' },
  roundHow: 'Or count every valve once more, from the first on; the readings so far are kept.',
  round: 'Count them all again',
  busy: 'Finish the valve that is being counted first.',
  refused: 'That could not be taken now.',
};
