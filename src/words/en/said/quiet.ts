import type { Cue, Fact } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal } from '../numbers';
import { tappedCount } from './count';
import { jobName } from './job';
import { sentence, valveName } from './pieces';

/** The caption of a tick without words: by what happened, else by the sound. */
export function quiet(fact: Fact, cue: Cue | null, context: SayingContext): string {
  switch (fact.kind) {
    case 'job opened':
      return jobName(fact.name);
    case 'start':
      return fact.direction === 'on' ? 'Zero.' : 'Off its stand.';
    case 'still':
      return 'Still zero.';
    case 'tapped':
      return sentence(tappedCount(fact, context));
    case 'torqued':
      return sentence(`${valveName(fact.valve)} torqued`);
    case 'cylinder done':
      return `Cylinder ${cardinal(fact.cylinder.cylinder)} done.`;
    case 'pushrods loose':
      return 'Pushrods loose.';
    default:
      return cue === null ? 'Noted.' : cues[cue];
  }
}

const cues: Readonly<Record<Cue, string>> = {
  zero: 'Zero.',
  short: 'Counted.',
  enter: 'Counted, into the window.',
  in: 'Counted.',
  leave: 'Counted, out of the window.',
  past: 'Counted.',
  plain: 'Counted.',
  landing: 'Landing noted.',
  seat: 'Seated.',
  unproven: 'Seated, not proven.',
  soft: 'Noted.',
  back: 'Taken back.',
  missed: 'Missed: say it again.',
  refused: 'Not taken.',
};
