import { type ChangeEvent, useRef } from 'react';
import { Action } from '../shell/Action';

interface Props {
  readonly label: string;
  /** Files larger than this are not read at all, bytes. */
  readonly most: number;
  readonly onText: (text: string) => Promise<void>;
  /** The file is too large, or the browser can't read it. */
  readonly onUnreadable: (why: 'too big' | 'unreadable') => void;
}

/** A button that has the builder choose a file, and hands over its text. */
export function FileAction({ label, most, onText, onUnreadable }: Props) {
  const input = useRef<HTMLInputElement>(null);

  async function take(event: ChangeEvent<HTMLInputElement>): Promise<void> {
    const file = event.target.files?.[0];
    if (file === undefined) return;
    if (file.size > most) onUnreadable('too big');
    else {
      const text = await file.text().catch(() => null);
      if (text === null) onUnreadable('unreadable');
      else await onText(text);
    }
    if (input.current !== null) input.current.value = '';
  }

  return (
    <>
      <Action onPress={() => input.current?.click()}>{label}</Action>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        aria-label={label}
        hidden
        onChange={(event) => void take(event)}
      />
    </>
  );
}
