import { createStore, type StoreApi } from 'zustand/vanilla';
import type { EarRecording, isRecording, wavOf } from '#hearing-offline';
import type { Keeping } from '#keeping';
import type { RecordingService, RecordingShown } from '#screens';

/** Where a recorded session is kept: on this device, in no backup. */
const KEPT_AS = 'ear recording';

export interface RecordingJoint {
  readonly service: RecordingService;
  /** Whether the next session is to be taken down. */
  readonly store: StoreApi<RecordingShown>;
  keep(recording: EarRecording): void;
}

/** What is needed of the ear's code once there is a recording. */
interface RecordingCode {
  readonly isRecording: typeof isRecording;
  readonly wavOf: typeof wavOf;
}

/** A session of the ear, taken down only when asked for, handed out or deleted when asked for. */
export function joinEarRecording(
  keeping: Pick<Keeping, 'setting' | 'putSetting'>,
  save: (fileName: string, bytes: Uint8Array<ArrayBuffer>) => void,
  code: () => Promise<RecordingCode> = () => import('#hearing-offline'),
): RecordingJoint {
  const store = createStore<RecordingShown>(() => ({
    wanted: false,
    seconds: null,
    unkept: false,
  }));
  // Held by itself: a store that would not take it loses nothing until the page is closed.
  let recording: EarRecording | null = null;

  function show(): void {
    const seconds = recording === null ? null : recording.samples.length / recording.rate;
    store.setState({ seconds });
  }

  function put(value: EarRecording | null): void {
    recording = value;
    show();
    keeping.putSetting(KEPT_AS, value).then(
      () => store.setState({ unkept: false }),
      () => store.setState({ unkept: value !== null }),
    );
  }

  async function read(): Promise<void> {
    const kept = await keeping.setting(KEPT_AS);
    if (kept === undefined || kept === null) return;
    const ear = await code();
    if (recording === null && ear.isRecording(kept)) {
      recording = kept;
      show();
    }
  }

  return {
    store,
    service: {
      store,
      look: () => void read().catch(() => undefined),
      want: (wanted) => store.setState({ wanted }),
      async hand() {
        if (recording === null) return;
        const ear = await code();
        save('turncaller-ear-session.wav', ear.wavOf(recording));
      },
      forget: () => put(null),
    },
    keep(made) {
      // One session is asked for at a time.
      store.setState({ wanted: false });
      put(made);
    },
  };
}
