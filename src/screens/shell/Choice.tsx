import { useId } from 'react';
import { Field, type FieldNote } from './Field';
import styles from './field.module.css';

interface Props<T extends string> {
  readonly field: string;
  readonly label: string;
  /** '' while nothing is chosen. */
  readonly value: T | '';
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
  readonly notes?: readonly FieldNote[];
}

/** One of a few, all in sight. */
export function Choice<T extends string>(props: Props<T>) {
  const { field, label, value, options, onChange, notes = [] } = props;
  const name = useId();
  return (
    <Field field={field} notes={notes}>
      <fieldset className={styles.choice}>
        <legend className={styles.label}>{label}</legend>
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </fieldset>
    </Field>
  );
}
