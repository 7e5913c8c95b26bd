import { useStore } from 'zustand';
import { useServices } from '../services';
import type { Bolt } from './bolts';
import type { LessonStep } from './lesson';
import styles from './practice.module.css';
import {
  type KeyNames,
  seenPast,
  stepWords,
  waysOf,
  practiceWords as words,
} from './practiceWords';

interface Props {
  readonly step: LessonStep;
  readonly bolt: Bolt | null;
}

/** What is to be done next, why, and how by key, pedal and voice. */
export function LessonPanel({ step, bolt }: Props) {
  const strip = useStore(useServices().keys, (keys) => keys.strip);
  const keyFor: KeyNames = (meaning) => {
    const label = strip.find((item) => item.meaning === meaning)?.label;
    return label === undefined ? null : firstTwo(label);
  };
  const { title, why } = stepWords(step);
  const ways = waysOf(step, bolt, keyFor);
  return (
    <section className={styles.lesson} aria-label={words.next} data-step={step}>
      <h2 aria-live="polite">{title}</h2>
      <p>{step === 'how far' && bolt !== null ? `${why} ${seenPast(bolt)}` : why}</p>
      <dl className={styles.ways}>
        {(['key', 'pedal', 'voice'] as const).map((way) =>
          ways[way] === null ? null : (
            <div key={way}>
              <dt>{words.ways[way]}</dt>
              <dd>{ways[way]}</dd>
            </div>
          ),
        )}
      </dl>
    </section>
  );
}

/** The first two keys of a place on the strip: more than that nobody tries. */
function firstTwo(label: string): string {
  return label.split(', ').slice(0, 2).join(words.or);
}
