import type { Reminder } from '#counting';

/** A reminder as a line on the bench. */
export function reminder(what: Reminder): string {
  switch (what.kind) {
    case 'question open':
      return 'A question is open: answer it, or take back for no.';
    case 'count doubtful':
      return 'Something was missed: say the count again.';
    case 'lifters pressed in':
      return 'Lifters are pressed in: the crank waits until each pushrod turns in the fingers again.';
    case 'skipped valves': {
      const valves = what.valves.map(({ cylinder, valve }) => `${cylinder} ${valve}`);
      return `Skipped: ${valves.join(', ')}.`;
    }
    case 'off base circle': {
      const valves = what.valves.map(({ cylinder, valve }) => `${cylinder} ${valve}`);
      return `Counted off base circle: ${valves.join(', ')}. Count again where the walk has it.`;
    }
    case 'unnamed readings':
      return what.count === 1
        ? 'One reading has no valve’s name yet.'
        : `${what.count} readings have no valve’s name yet.`;
    case 'not torqued':
      return what.count === 1
        ? 'One valve is not ticked off as torqued.'
        : `${what.count} valves are not ticked off as torqued.`;
    default: {
      const never: never = what;
      return never;
    }
  }
}
