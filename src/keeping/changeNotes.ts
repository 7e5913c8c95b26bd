/** Called when another window has added to a job's log, which now ends at this seq. */
export type OnChange = (jobId: string, seq: number) => void;

/** Which shapes a window of the app writes. */
export interface Schema {
  readonly store: number;
  readonly events: number;
}

export interface ChangeNotes {
  /** Tells the other windows. */
  post(jobId: string, seq: number): void;
  /** Calls back on the other windows' notes. Returns how to stop. */
  listen(onChange: OnChange): () => void;
  /** Tells the other windows which shapes this one writes. */
  introduce(schema: Schema): void;
  close(): void;
}

interface Note {
  readonly jobId: string;
  readonly seq: number;
}

/** Notes between the app's windows over a BroadcastChannel; silent where the browser has none. */
export function changeNotes(
  channel: BroadcastChannel | null,
  onIntroduced: (schema: Schema) => void,
): ChangeNotes {
  const listeners = new Set<OnChange>();
  const hear = ({ data }: MessageEvent<unknown>): void => {
    if (isSchema(data)) onIntroduced(data);
    if (!isNote(data)) return;
    for (const listener of [...listeners]) listener(data.jobId, data.seq);
  };
  channel?.addEventListener('message', hear);
  return {
    post(jobId, seq) {
      const note: Note = { jobId, seq };
      channel?.postMessage(note);
    },
    listen(onChange) {
      listeners.add(onChange);
      return () => {
        listeners.delete(onChange);
      };
    },
    introduce(schema) {
      channel?.postMessage(schema);
    },
    close() {
      listeners.clear();
      channel?.removeEventListener('message', hear);
      channel?.close();
    },
  };
}

function isNote(data: unknown): data is Note {
  return (
    typeof data === 'object' &&
    data !== null &&
    'jobId' in data &&
    typeof data.jobId === 'string' &&
    'seq' in data &&
    Number.isSafeInteger(data.seq)
  );
}

function isSchema(data: unknown): data is Schema {
  return (
    typeof data === 'object' &&
    data !== null &&
    'store' in data &&
    Number.isSafeInteger(data.store) &&
    'events' in data &&
    Number.isSafeInteger(data.events)
  );
}
