import type { Question } from '#counting';

/** A question asked back; `count` writes a count as the job calls it. */
export function questionLine(question: Question, count: (count48: number) => string): string {
  const had = count(question.counted48);
  switch (question.about) {
    case 'count':
      return countQuestion(question, had, question.options.map(count));
    case 'zero':
      return `${had} counted. Start over from zero?`;
    case 'seat':
      return `Something was missed. Seated at ${had}?`;
    default: {
      const never: never = question;
      return never;
    }
  }
}

function countQuestion(
  question: Question & { about: 'count' },
  had: string,
  options: readonly string[],
): string {
  const or = options.join(', or ');
  switch (question.why) {
    case 'goes back':
    case 'jumps':
      return `Had ${had}, heard ${or}?`;
    case 'position':
    case 'clock':
      return options.length > 1 ? `${or}?` : `Had ${had}: is it ${or}?`;
    case 'began before the seat':
      return `Heard ${or} as you seated at ${had}?`;
    case 'grew':
      return `Took ${had}, then heard ${or}?`;
    default: {
      const never: never = question.why;
      return never;
    }
  }
}

export const answerHint = 'The same again takes it. Take back says no.';
