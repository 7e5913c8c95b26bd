import type { FieldNote } from '../shell/Field';
import { TextField } from '../shell/TextField';
import type { EndsDraft } from './draft';
import { measuringWords as words } from './measuringWords';
import styles from './set-up.module.css';

const fields = [
  { field: 'ends.0', label: words.ball.lifter },
  { field: 'ends.1', label: words.hole.lifter },
  { field: 'ends.2', label: words.ball.rocker },
  { field: 'ends.3', label: words.hole.rocker },
] as const;

interface Props {
  readonly ends: EndsDraft;
  readonly unit: string;
  readonly onChange: (ends: EndsDraft) => void;
  readonly notes?: (field: string) => readonly FieldNote[];
  readonly onLeave?: (field: string) => void;
}

/** A pushrod's balls and the oil holes through them. */
export function EndsFields({ ends, unit, onChange, notes, onLeave }: Props) {
  return (
    <>
      <p className={styles.quiet}>{words.endsHint}</p>
      <div className={styles.windowFigures}>
        {fields.map(({ field, label }, place) => (
          <TextField
            key={field}
            field={field}
            label={label}
            unit={unit}
            figures
            value={ends[place] ?? ''}
            notes={notes?.(field) ?? []}
            onChange={(typed) => {
              const [a, b, c, d] = ends.map((text, at) => (at === place ? typed : text));
              onChange([a ?? '', b ?? '', c ?? '', d ?? '']);
            }}
            {...(onLeave === undefined ? {} : { onLeave: () => onLeave(field) })}
          />
        ))}
      </div>
    </>
  );
}
