import type { Clock } from '#clock';
import type { SpeechListener, Synth, VoiceChoice, VoiceStatus } from '#speaking';

/** What was asked of the voice, in order. */
export type SynthCall =
  | { readonly call: 'speak'; readonly text: string; readonly at: number }
  | { readonly call: 'cancel'; readonly at: number }
  /** A line is over: `heardMs` since the voice began it, 0 if it never did. */
  | { readonly call: 'over'; readonly text: string; readonly at: number; readonly heardMs: number };

/** How a fake voice deals with a line: `null` for an end that never comes. */
export interface Manner {
  readonly startsAfterMs: number;
  readonly lastsMs: number | null;
  /** Fails instead, this long after it was asked. */
  readonly failsAfterMs?: number;
}

export interface FakeSynth extends Synth {
  readonly calls: readonly SynthCall[];
  /** The text being said; null when the voice is quiet. */
  saying(): string | null;
  setStatus(status: VoiceStatus): void;
  /** How lines go from now on. */
  setManner(manner: (text: string) => Manner): void;
}

/** A voice that says a line in 60 ms a letter. Two lines at once throw. */
export function fakeSynth(clock: Clock): FakeSynth {
  const calls: SynthCall[] = [];
  const watchers = new Set<() => void>();
  let status: VoiceStatus = 'ready';
  let choice: VoiceChoice = { voiceUri: null, rate: 1 };
  let manner = (text: string): Manner => ({ startsAfterMs: 0, lastsMs: 60 * text.length });
  let current: { text: string; begunAt: number | null } | null = null;

  function over(): void {
    if (current === null) return;
    const { text, begunAt } = current;
    const at = clock.now();
    calls.push({ call: 'over', text, at, heardMs: begunAt === null ? 0 : at - begunAt });
    current = null;
  }

  return {
    calls,
    saying: () => current?.text ?? null,
    setStatus(next) {
      status = next;
      for (const watcher of [...watchers]) watcher();
    },
    setManner(next) {
      manner = next;
    },
    speak(text: string, listener: SpeechListener, startBy: number | null) {
      if (current !== null) throw new Error(`'${text}' over '${current.text}'`);
      const line = { text, begunAt: null as number | null };
      current = line;
      calls.push({ call: 'speak', text, at: clock.now() });
      const { startsAfterMs, lastsMs, failsAfterMs } = manner(text);
      const end = (tell: () => void) => {
        if (current !== line) return;
        over();
        tell();
      };
      if (failsAfterMs !== undefined) {
        clock.after(failsAfterMs, () => end(() => listener.onError('failed')));
        return;
      }
      clock.after(startsAfterMs, () => {
        if (current !== line) return;
        line.begunAt = clock.now();
        listener.onStart();
      });
      if (startBy !== null) {
        clock.after(startBy - clock.now(), () => {
          if (line.begunAt === null) end(() => listener.onError('late'));
        });
      }
      if (lastsMs !== null) clock.after(startsAfterMs + lastsMs, () => end(listener.onEnd));
    },
    cancel() {
      calls.push({ call: 'cancel', at: clock.now() });
      over();
    },
    unlock() {
      if (status === 'locked') this.setStatus('ready');
    },
    choose(next) {
      choice = next;
    },
    choice: () => choice,
    voices: () => [],
    status: () => status,
    subscribe(onChange) {
      watchers.add(onChange);
      return () => watchers.delete(onChange);
    },
  };
}
