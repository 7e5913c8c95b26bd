import { useState } from 'react';
import { allowed, type CommandBody, type JobState, type Question } from '#counting';
import { useBench, useServices } from '../services';
import { countLine } from './benchFigures';
import { benchWords } from './benchWords';
import styles from './question.module.css';
import { answerHint, questionLine } from './questionWords';

/** The question that is open, by its seq; null once it is answered or has run its ten seconds. */
export function useOpenQuestion(): {
  readonly seq: number;
  readonly question: Question;
  readonly lapse: () => void;
} | null {
  const asked = useBench((state) => state.job.asked);
  const [lapsed, setLapsed] = useState<number | null>(null);
  if (asked === null || asked.seq === lapsed) return null;
  return { seq: asked.seq, question: asked.question, lapse: () => setLapsed(asked.seq) };
}

interface Props {
  readonly question: Question;
  readonly onLapse: () => void;
}

/** A question asked back: nothing is taken until it is answered. Its line runs out as it lapses. */
export function QuestionBox({ question, onLapse }: Props) {
  const { touch } = useServices();
  const job = useBench((state) => state.job);
  const count = (count48: number) => countLine(job, count48);
  return (
    <section className={styles.question} role="alert">
      <p className={styles.questionText}>{questionLine(question, count)}</p>
      <p className={styles.questionHint}>{answerHint}</p>
      <div className={styles.answers}>
        {answers(job, question).map(({ name, command }) => (
          <button key={name} type="button" onClick={() => touch(command)}>
            {name}
          </button>
        ))}
        <button type="button" onClick={() => touch({ type: 'takeBack' })}>
          {benchWords.no}
        </button>
      </div>
      <span className={styles.lapse} onAnimationEnd={onLapse} aria-hidden="true" />
    </section>
  );
}

interface Answer {
  readonly name: string;
  readonly command: CommandBody;
}

function answers(job: JobState, question: Question): readonly Answer[] {
  const may = allowed(job);
  switch (question.about) {
    case 'count':
      return question.options
        .filter(() => may.includes('call'))
        .map((to48) => ({
          name: benchWords.yes(countLine(job, to48)),
          command: { type: 'call', to48, form: 'bare' },
        }));
    case 'zero':
      return [{ name: benchWords.yes(countLine(job, 0)), command: { type: 'zero' } }];
    case 'seat':
      return [
        {
          name: benchWords.yes(countLine(job, question.counted48)),
          command: { type: 'seat', loose: question.loose },
        },
      ];
    default: {
      const never: never = question;
      return never;
    }
  }
}
