import styles from './field.module.css';

interface Props {
  readonly label: string;
  readonly ticked: boolean;
  readonly onChange: (ticked: boolean) => void;
}

/** Yes or no. */
export function Tick({ label, ticked, onChange }: Props) {
  return (
    <label className={styles.option}>
      <input
        type="checkbox"
        checked={ticked}
        onChange={(change) => onChange(change.target.checked)}
      />
      <span>{label}</span>
    </label>
  );
}
