import { useMemo } from 'react';
import { type JobState, jobSheet } from '#counting';
import type { Units } from '#words';
import { FinalPicture } from './FinalPicture';
import { KindsPicture } from './KindsPicture';
import { PreloadPicture } from './PreloadPicture';
import styles from './pictures.module.css';
import { picturesWords as words } from './picturesWords';

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** A job's readings in pictures, each with its table. Nothing while no preload is known. */
export function Pictures({ job, units }: Props) {
  const sheet = useMemo(() => jobSheet(job), [job]);
  if (sheet === null || sheet.valves.every(({ measured }) => measured.figures?.preloadMm == null))
    return null;
  return (
    <section className={styles.pictures} aria-labelledby="in-pictures">
      <h2 id="in-pictures">{words.title}</h2>
      <PreloadPicture sheet={sheet} units={units} />
      <FinalPicture sheet={sheet} units={units} />
      <KindsPicture sheet={sheet} units={units} />
    </section>
  );
}
