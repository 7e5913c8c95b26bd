import type { ValveKind } from '#valvetrain';

const numbers = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

const kinds: Readonly<Record<ValveKind, string>> = { intake: 'Intakes', exhaust: 'Exhausts' };

const many = (count: number) => numbers[count] ?? String(count);

/** 'The last nine', 'The only one'. */
const last = (jobs: number) => (jobs === 1 ? 'The only other one' : `The last ${many(jobs)}`);

/** Words of what past jobs took, English. */
export const historyWords = {
  title: 'Past jobs of these parts',
  none: 'No other job of these parts is measured on this device: nothing to compare with.',
  range: (from: string, to: string) =>
    from === to ? from : `${from.replace(/ (in|mm)$/, '')} to ${to}`,
  unusual: (jobs: number, took: string, asks: string) =>
    `${last(jobs)} took ${took}; this one asks for ${asks}: check base circle first.`,
  next: 'Then that the plungers are up, rockers seated and pushrods in their cups; then what is not as it was: cam, head, gasket, block, rockers, lifters.',
  usual: (jobs: number, took: string, asks: string, judged: boolean) =>
    `${last(jobs)} took ${took}; this one asks for ${asks}. ${
      judged ? 'Nothing unusual.' : 'Too few to judge it by.'
    }`,
  needed: (
    valve: ValveKind,
    past: string,
    now: string,
    off: string,
    allowed: string,
    unusual: boolean,
  ) =>
    `${kinds[valve]} needed ${past}; here ${now}, ${off} from their middle, ${
      unusual ? 'more than' : 'within'
    } the ${allowed} that is usual.`,
  never:
    'Engines of the same parts do take different lengths: this is for comparing, never in place of measuring.',
};
