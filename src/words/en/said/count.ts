import type { Fact, Question } from '#counting';
import { type Turn48, turn48 } from '#valvetrain';
import type { SayingContext } from '../../context';
import { countWithUnit, countWords, figureInPassing, shortVerdict, verdictWords } from './figures';
import { capital, commas, isFull, sentence, wordCount } from './pieces';

type CountFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** Words of a whole sentence between counts: more would not be over before the next count. */
const MOST_WORDS = 7;

/** 'four, seventy-eight', with the verdict when it changed; past the plunger's travel, that instead. */
export function counted(fact: CountFact<'counted'>, context: SayingContext): string {
  const { count48, figures, verdictChanged } = fact;
  const count = isFull(context) ? countWithUnit(count48, context) : countWords(count48, context);
  const line = (verdict: string): string => {
    const said = figures.pastTravel
      ? "past the plunger's travel"
      : commas(figureInPassing(figures, context), verdict);
    if (!isFull(context)) return commas(count, said);
    return sentence(said === '' ? count : `${count}: ${said}`);
  };
  if (!verdictChanged) return line('');
  const short = line(shortVerdict(figures.verdict));
  if (!isFull(context)) return short;
  const whole = line(verdictWords(figures.verdict));
  return wordCount(whole) > MOST_WORDS ? short : whole;
}

/** 'still four'; at zero a soft tick only. */
export function still({ count48 }: CountFact<'still'>, context: SayingContext): string {
  if (count48 === 0) return '';
  const said = `still ${countWords(count48, context)}`;
  return isFull(context) ? sentence(said) : said;
}

/** What was asked back, as a question. */
export function askedBack({ question }: CountFact<'asked back'>, context: SayingContext): string {
  switch (question.about) {
    case 'count':
      return askedCount(question, context);
    case 'zero': {
      const count = countWords(question.counted48, context);
      return isFull(context)
        ? `${capital(count)} counted: start over? Zero again if so.`
        : `${count} counted: start over?`;
    }
    case 'seat': {
      const what = question.loose ? 'loose' : countWords(question.counted48, context);
      return isFull(context)
        ? `Missed something. ${capital(what)}? Say it again if so.`
        : `missed something: ${what}?`;
    }
    default: {
      const never: never = question;
      return never;
    }
  }
}

function askedCount(question: Question & { about: 'count' }, context: SayingContext): string {
  const { why, counted48, options } = question;
  const had = countWords(counted48, context);
  const heard = either(options, context);
  switch (why) {
    case 'goes back':
    case 'jumps':
    case 'grew':
      return isFull(context)
        ? `Had ${had}, heard ${heard}. Say it again if it is ${heard}.`
        : `had ${had}, heard ${heard}?`;
    case 'position':
    case 'clock':
      if (!isFull(context)) return `${heard}?`;
      return `${capital(heard)}? ${options.length > 1 ? 'Say which.' : 'Say it again if so.'}`;
    case 'began before the seat':
      return isFull(context)
        ? `Heard ${heard} as you seated at ${had}. If ${heard} is right, count it again.`
        : `heard ${heard} as you seated at ${had}`;
    default: {
      const never: never = why;
      return never;
    }
  }
}

function either(options: readonly Turn48[], context: SayingContext): string {
  return options.map((to48) => countWords(to48, context)).join(', or ');
}

/** 'How far?' past the last mark. */
export function howFar(
  { count48, checking }: CountFact<'how far?'>,
  context: SayingContext,
): string {
  if (!isFull(context)) return 'How far?';
  if (checking) return `Zero lash. How far past ${countWords(count48, context)}?`;
  return `Seated. How far past ${countWords(count48, context)}?`;
}

/** Taps at 'how far?': the ticks say it when terse. */
export function tapped(fact: CountFact<'tapped'>, context: SayingContext): string {
  return isFull(context) ? sentence(tappedCount(fact, context)) : '';
}

/** Where the taps stand now: 'four and a half'. */
export function tappedCount(
  { count48, past48 }: CountFact<'tapped'>,
  context: SayingContext,
): string {
  return countWords(turn48(count48 + past48), context);
}
