import { useId } from 'react';
import { Field, type FieldNote, noteId } from './Field';
import styles from './field.module.css';
import { useLeaving } from './useLeaving';

interface Props {
  readonly field: string;
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly onLeave?: () => void;
  readonly notes?: readonly FieldNote[];
  readonly hint?: string;
  /** Shown behind the figure: 'thou'. */
  readonly unit?: string;
  /** Figures get the figure keypad and a narrow field. */
  readonly figures?: boolean;
}

/** One line of text or one figure. */
export function TextField(props: Props) {
  const { field, label, value, onChange, onLeave, notes = [], hint, unit, figures } = props;
  const id = useId();
  const leave = useLeaving(onLeave);
  const refused = notes.some(({ keep }) => keep === undefined);
  return (
    <Field field={field} notes={notes}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <span className={styles.line}>
        <input
          id={id}
          className={figures ? `${styles.input} ${styles.figures}` : styles.input}
          type="text"
          inputMode={figures ? 'decimal' : 'text'}
          autoComplete="off"
          value={value}
          aria-invalid={refused}
          aria-describedby={noteId(field)}
          onChange={(change) => onChange(change.target.value)}
          onBlur={leave}
        />
        {unit && <span className={styles.unit}>{unit}</span>}
      </span>
      {hint && <p className={styles.hint}>{hint}</p>}
    </Field>
  );
}
