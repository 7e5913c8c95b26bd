import { useId } from 'react';
import { Field, type FieldNote, noteId } from './Field';
import styles from './field.module.css';

export interface Option {
  readonly value: string;
  readonly label: string;
}

export interface OptionGroup {
  readonly label: string;
  readonly options: readonly Option[];
}

interface Props {
  readonly field: string;
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Offered first, before anything is chosen; left out where something always is. */
  readonly unchosen?: string;
  readonly groups: readonly OptionGroup[];
  readonly notes?: readonly FieldNote[];
}

/** One of a long list. A group without a label stands by itself. */
export function SelectField(props: Props) {
  const { field, label, value, onChange, unchosen, groups, notes = [] } = props;
  const id = useId();
  return (
    <Field field={field} notes={notes}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className={styles.input}
        value={value}
        aria-invalid={notes.some(({ keep }) => keep === undefined)}
        aria-describedby={noteId(field)}
        onChange={(change) => onChange(change.target.value)}
      >
        {unchosen && <option value="">{unchosen}</option>}
        {groups.map((group) =>
          group.label === '' ? (
            group.options.map(optionOf)
          ) : (
            <optgroup key={group.label} label={group.label}>
              {group.options.map(optionOf)}
            </optgroup>
          ),
        )}
      </select>
    </Field>
  );
}

function optionOf({ value, label }: Option) {
  return (
    <option key={value} value={value}>
      {label}
    </option>
  );
}
