import type { ReactNode } from 'react';
import { Action } from './Action';
import styles from './field.module.css';

/** What stands beside a field that can't be taken as it is. */
export interface FieldNote {
  readonly sentence: string;
  /** Odd, not refused: the words of the button that keeps it, and what that does. */
  readonly keep?: { readonly words: string; readonly onKeep: () => void };
}

interface Props {
  /** Name of the field: how a missing one is found again. */
  readonly field: string;
  readonly notes: readonly FieldNote[];
  readonly children: ReactNode;
}

/** The id of what stands beside a field. */
export function noteId(field: string): string {
  return `note-${field.replaceAll('.', '-')}`;
}

/** A control with the sentences about it underneath. */
export function Field({ field, notes, children }: Props) {
  return (
    <div className={styles.field} data-field={field}>
      {children}
      <div id={noteId(field)} className={styles.notes} aria-live="polite">
        {notes.map(({ sentence, keep }) => (
          <div key={sentence} className={styles.note}>
            <span className={styles.noteMark} aria-hidden="true">
              {keep ? '?' : '!'}
            </span>
            <p>{sentence}</p>
            {keep && <Action onPress={keep.onKeep}>{keep.words}</Action>}
          </div>
        ))}
      </div>
    </div>
  );
}
