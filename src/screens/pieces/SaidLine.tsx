import styles from './said.module.css';

interface Props {
  readonly label: string;
  /** Lines said, oldest first. */
  readonly lines: readonly { readonly token: number; readonly text: string }[];
  /** What stands here before anything was said. */
  readonly silent: string;
}

/** Beyond these lengths a line is set smaller, so that it is never cut off. */
const LONG = 34;
const LONGER = 66;
const LONGEST = 140;

/** What was last said, large, with the two lines before it, newest nearest. */
export function SaidLine({ label, lines, silent }: Props) {
  const last = lines.at(-1);
  return (
    <section className={styles.said} aria-label={label}>
      <ol className={styles.before}>
        {lines
          .slice(-3, -1)
          .reverse()
          .map(({ token, text }) => (
            <li key={token}>{text}</li>
          ))}
      </ol>
      <p className={styles.last} data-length={lengthOf(last?.text ?? '')} aria-live="polite">
        {last === undefined ? <span className={styles.silent}>{silent}</span> : last.text}
      </p>
    </section>
  );
}

function lengthOf(text: string): 'short' | 'long' | 'longer' | 'longest' {
  if (text.length > LONGEST) return 'longest';
  if (text.length > LONGER) return 'longer';
  return text.length > LONG ? 'long' : 'short';
}
