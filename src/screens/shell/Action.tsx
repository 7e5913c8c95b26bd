import type { ReactNode } from 'react';
import styles from './action.module.css';

interface Props {
  readonly children: ReactNode;
  readonly onPress: () => void;
  /** The one thing to do next on a screen. */
  readonly main?: boolean;
  readonly disabled?: boolean;
  /** Says which of several alike it is, where its own words don't. */
  readonly label?: string;
  /** Whether a button that stays down is down; absent for any other. */
  readonly pressed?: boolean;
}

/** A button, large enough for a gloved thumb. */
export function Action({
  children,
  onPress,
  main = false,
  disabled = false,
  label,
  pressed,
}: Props) {
  return (
    <button
      type="button"
      className={main ? `${styles.action} ${styles.main}` : styles.action}
      onClick={onPress}
      disabled={disabled}
      aria-label={label}
      aria-pressed={pressed}
    >
      {children}
    </button>
  );
}
