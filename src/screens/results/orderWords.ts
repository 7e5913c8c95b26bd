import type { LeftOut } from '#counting';
import type {
  GroupDifference,
  GroupLabel,
  LengthConvention,
  Reason,
  Scheme,
  ValveId,
  WhyNot,
} from '#valvetrain';

const kinds = { intake: 'intakes', exhaust: 'exhausts' } as const;

function labelName({ bank, valve }: GroupLabel): string {
  const parts = [bank === undefined ? '' : `bank ${bank + 1}`, valve ? kinds[valve] : ''];
  return parts.filter((part) => part !== '').join(' ') || 'all valves';
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of what to buy, English. */
export const orderWords = {
  title: (scheme: Scheme) => (scheme === 'one for all' ? 'One length for all' : 'Pushrods to buy'),
  group: (label: GroupLabel) => capital(labelName(label)),
  forValves: (count: number) => (count === 1 ? 'for 1 valve' : `for ${count} valves`),
  noneLeft: 'none left',
  fits: (fits: number, of: number) =>
    fits === of
      ? `Puts ${of === 1 ? 'the one valve' : `all ${of}`} inside the usable window.`
      : `Puts ${fits} of ${of} inside the usable window; ${of - fits} would not be proven.`,
  reasons: {
    'one length serves as many': 'No more lengths would make more valves usable.',
    'difference is noise':
      'The groups differ by no more than counting does: no second length for that.',
    'difference is real':
      'The groups really differ, and lengths of their own make more valves usable.',
    'difference is real but one length serves':
      'The groups really differ, yet one length serves them all.',
    'a valve would be proven out': 'With fewer lengths some valve would be proven out.',
    'nothing fits all': 'No answer makes every valve usable.',
    'stock runs out': 'The stock runs out: some valves get none.',
  } satisfies Record<Reason, string>,
  difference: ({ by, groups, isReal }: GroupDifference, figure: string, allowed: string) => {
    const noise = isReal ? 'more than' : 'within';
    const end = `${figure}, ${noise} the ${allowed} that is noise`;
    if (by === 'together' || groups === null)
      return `What intakes and exhausts differ by is not the same in both banks: ${end}.`;
    return `${capital(labelName(groups[0]))} want longer than ${labelName(groups[1])} by ${end}.`;
  },
  failing: 'Not proven usable',
  whyNot: {
    'stock runs out': 'the stock has none left for it',
    'uncertainty wider than the window': 'its reading is less sure than its window is wide',
    'no length on offer': 'no length on offer puts it inside',
    'shared length': 'another length would do, but not this one',
    'own reading proven out': 'its own reading is outside',
  } satisfies Record<WhyNot, string>,
  leftOut: {
    loose: 'seated loose: fit a longer test pushrod and count it again',
    'no preload': 'no preload: the thread is not known',
    'no window': 'no window: its lifter is not known',
    'no length': 'its test pushrod has no length',
    'other convention':
      'its length is stated the other way: give ball and oil hole under what can be bought',
  } satisfies Record<LeftOut['why'], string>,
  leftOutTitle: 'Read, but of no use for choosing',
  valve: ({ cylinder, valve }: ValveId) => `${cylinder} ${valve}`,
  offGrid: (length: string) =>
    `The test pushrod of ${length} is none of the lengths on offer; that does no harm to choosing.`,
  notOnOffer: (lengths: readonly string[]) =>
    `Fitted, but not among the lengths on offer: ${lengths.join(', ')}.`,

  mm: 'mm',
  order: 'Order',
  orderColumns: {
    length: 'Length',
    quantity: 'Valves',
    spares: 'Spares',
    total: 'In all',
    left: 'Left',
  },
  sparesShort: (count: number) => `${count} short`,
  other: 'Another answer',
  schemes: {
    'one for all': 'One for all',
    'by valve': 'Intakes and exhausts',
    'by bank': 'By bank',
    'by bank and valve': 'By bank, intakes and exhausts',
    'fewest lengths': 'Fewest lengths, each valve by its own reading',
  } satisfies Record<Scheme, string>,
  schemeNow: (lengths: string, usable: number, of: number) => `${lengths}: ${usable} of ${of}`,
  suggested: 'suggested',

  predicted: 'What each valve would have',
  predictedColumns: { valve: 'Valve', length: 'Length', preload: 'Preload', verdict: 'Verdict' },
  predictedHow:
    'Each by its own reading, with its guard; groups are judged on the mean of their readings.',
  cantTell: (across: string) => `can’t tell from ${across}`,

  install: 'Fitted: start the final check',
  installHow:
    'Starts a round that holds every valve, with these pushrods in, against what is predicted.',

  buying: 'What can be bought',
  offer: 'Lengths come',
  offers: {
    '25': 'every 25 thou (0.635 mm)',
    '50': 'every 50 thou (1.27 mm)',
    mm: 'every so many millimetres',
    any: 'in any length, to order',
    stock: 'from a stock list',
  },
  step: 'Step between lengths',
  offset: 'Counted from a length of',
  offsetHint: 'Left empty, from nought.',
  stock: 'Stock, one length a line with how many',
  stockHint: { inch: 'As 8.150 x 6', mm: 'As 207.0 x 6' },
  spares: 'Spares of each length',
  convention: 'These lengths are stated',
  conventions: {
    'tip to tip': 'tip to tip',
    'full ball': 'full ball',
  } satisfies Record<LengthConvention, string>,
  ends: 'Ball and oil hole, for lengths stated both ways',
  keepBuying: 'Choose from these',
  badStock: (line: string) => `‘${line}’ is no line of stock: give a length, an x and how many.`,
  badFigure: (label: string) => `${label}: that is no figure.`,
  bothEnds: 'Give ball and oil hole at both ends, or leave all four empty.',
  refused: 'That could not be taken now.',
};
