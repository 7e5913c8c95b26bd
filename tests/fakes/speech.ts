import type { Clock } from '#clock';
import type { SpeechEngine, UtteranceEvents, VoiceInfo } from '#speaking';

/** What the scripted browser does with one utterance; an empty script is an utterance that is lost. */
export type Script = readonly {
  readonly afterMs: number;
  readonly event: 'start' | 'end' | { readonly error: string };
}[];

/** Begins at once, ends after `ms`. */
export const spoken = (ms: number): Script => [
  { afterMs: 0, event: 'start' },
  { afterMs: ms, event: 'end' },
];

export const voice = (over: Partial<VoiceInfo> = {}): VoiceInfo => ({
  voiceURI: 'local-gb',
  name: 'Bench',
  lang: 'en-GB',
  localService: true,
  default: false,
  ...over,
});

export interface FakeSpeech extends SpeechEngine {
  readonly said: readonly { readonly text: string; readonly voice: string; readonly at: number }[];
  cancels(): number;
  primed(): number;
  arrive(voices: readonly VoiceInfo[]): void;
}

/** The browser's speech, playing scripts in order; the last one goes on for ever. */
export function fakeSpeech(
  clock: Clock,
  scripts: readonly Script[],
  voices: readonly VoiceInfo[] = [voice()],
): FakeSpeech {
  const said: { text: string; voice: string; at: number }[] = [];
  const onChange: (() => void)[] = [];
  let present = voices;
  let cancels = 0;
  let primed = 0;
  let live: UtteranceEvents | null = null;

  return {
    said,
    cancels: () => cancels,
    primed: () => primed,
    arrive(next) {
      present = next;
      for (const fn of onChange) fn();
    },
    say(text, by, _rate, events) {
      const script = scripts[Math.min(said.length, scripts.length - 1)] ?? [];
      said.push({ text, voice: by.voiceURI, at: clock.now() });
      if (script.length > 0) live = events;
      for (const { afterMs, event } of script) {
        clock.after(afterMs, () => {
          // Like real browsers, an utterance cancelled may still tell of its end.
          if (event === 'start') events.onStart();
          else {
            if (live === events) live = null;
            if (event === 'end') events.onEnd();
            else events.onError(event.error);
          }
        });
      }
    },
    cancel() {
      cancels += 1;
      const cut = live;
      live = null;
      if (cut !== null) clock.after(1, () => cut.onError('canceled'));
    },
    busy: () => live !== null,
    voices: () => present,
    onVoicesChanged: (fn) => void onChange.push(fn),
    prime() {
      primed += 1;
    },
  };
}
