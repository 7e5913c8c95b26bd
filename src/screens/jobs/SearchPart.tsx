import { SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import styles from './jobs.module.css';
import { jobsWords as words } from './jobsWords';

interface Props {
  readonly text: string;
  readonly tag: string | null;
  readonly tags: readonly string[];
  /** Jobs found, and all there are. */
  readonly found: number;
  readonly of: number;
  readonly onText: (text: string) => void;
  readonly onTag: (tag: string | null) => void;
}

/** Finds a job among many, by words and by tag. */
export function SearchPart({ text, tag, tags, found, of, onText, onTag }: Props) {
  return (
    <div className={styles.search}>
      <TextField
        field="search"
        label={words.search}
        hint={words.searchHint}
        value={text}
        onChange={onText}
      />
      {tags.length > 0 && (
        <SelectField
          field="tag"
          label={words.tag}
          value={tag ?? ''}
          onChange={(value) => onTag(value === '' ? null : value)}
          unchosen={words.anyTag}
          groups={[{ label: '', options: tags.map((one) => ({ value: one, label: one })) }]}
        />
      )}
      <p role="status">{text.trim() === '' && tag === null ? '' : words.found(found, of)}</p>
    </div>
  );
}
