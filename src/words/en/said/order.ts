import type { Distrusted, OrderTold } from '#counting';
import type { GroupLabel, ValveId } from '#valvetrain';
import type { SayingContext } from '../../context';
import { cardinal } from '../numbers';
import { amountWords, countWords, pushrodWords } from './figures';
import { howMany, isFull, lines, listed, sentence, valveName } from './pieces';

/** More valves than this are counted, not named, in one breath. */
const MOST_NAMED = 4;

/** What the readings come to: the lengths to buy, where to stop, or the final check. */
export function orderLine(order: OrderTold, read: number, context: SayingContext): string {
  switch (order.kind) {
    case 'lengths':
      return order.scheme === 'one for all'
        ? oneLength(order, read, context)
        : lines(
            ...order.lengths.map((share) => lengthFor(order.scheme, share, context)),
            rest(order),
          );
    case 'stops':
      return lines(
        ...order.stops.map(({ group, count48 }) => {
          const at = `stop at ${countWords(count48, context)}`;
          return sentence(order.stops.length === 1 ? at : `${group.toLowerCase()}: ${at}`);
        }),
      );
    case 'final':
      return order.differ.length === 0
        ? sentence(`all ${cardinal(order.of)} as predicted`)
        : sentence(`${cardinal(order.differ.length)} not as predicted${named(order.differ)}`);
    default: {
      const never: never = order;
      return never;
    }
  }
}

type Lengths = Extract<OrderTold, { kind: 'lengths' }>;
type Share = Lengths['lengths'][number];

function oneLength(order: Lengths, read: number, context: SayingContext): string {
  const { lengths, fits, of } = order;
  const lengthMm = lengths[0]?.lengthMm ?? null;
  if (fits === 0 || lengthMm === null) return 'No one length fits.';
  const length = pushrodWords(lengthMm, context);
  if (fits === of && of === read) return `One length fits all: ${length}.`;
  return lines(sentence(`${length} fits ${cardinal(fits)} of ${cardinal(of)}`), failing(order));
}

/** 'Exhausts: eight, one fifty.'; of the fewest lengths how many of each. */
function lengthFor(
  scheme: Lengths['scheme'],
  { label, lengthMm, valves }: Share,
  context: SayingContext,
): string {
  const length = lengthMm === null ? 'none' : pushrodWords(lengthMm, context);
  return scheme === 'fewest lengths'
    ? sentence(`${length} for ${howMany(valves, 'valve')}`)
    : sentence(`${groupName(label)}: ${length}`);
}

function groupName(label: GroupLabel | null): string {
  const bank = label?.bank === undefined ? '' : `bank ${cardinal(label.bank + 1)}`;
  const kind = label?.valve === undefined ? '' : `${label.valve}s`;
  return [bank, kind].filter((part) => part !== '').join(' ');
}

function rest(order: Lengths): string {
  if (order.fits === order.of) return '';
  return lines(sentence(`fits ${cardinal(order.fits)} of ${cardinal(order.of)}`), failing(order));
}

function failing({ failing: valves }: Lengths): string {
  if (valves.length === 0 || valves.length > MOST_NAMED) return '';
  return sentence(`not proven: ${listed(valves.map(valveName))}`);
}

/** Readings far from their fellows: told as readings to distrust, never as parts. */
export function distrustedLine(found: readonly Distrusted[], context: SayingContext): string {
  const [first, ...others] = found;
  if (first === undefined) return '';
  if (others.length > 0 || !isFull(context))
    return sentence(`distrust ${listed(found.map(({ valve }) => valveName(valve)))}`);
  const by = amountWords(Math.abs(first.offMm), context);
  return lines(
    `Distrust ${valveName(first.valve)}: ${by} ${first.offMm > 0 ? 'more' : 'less'} than its fellows.`,
    'Check that it was on its base circle, then count it again.',
  );
}

function named(valves: readonly ValveId[]): string {
  return valves.length > MOST_NAMED ? '' : `: ${listed(valves.map(valveName))}`;
}
