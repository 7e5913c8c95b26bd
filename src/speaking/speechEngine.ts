import type { VoiceInfo } from './voices';

/** What the browser tells of one utterance; any of it may never come. */
export interface UtteranceEvents {
  readonly onStart: () => void;
  readonly onEnd: () => void;
  /** The browser's own code: 'synthesis-failed', 'interrupted', 'not-allowed' and others. */
  readonly onError: (code: string) => void;
}

/** What is used of the browser's speech. `pause` is left out: voices may never come back from it. */
export interface SpeechEngine {
  say(text: string, voice: VoiceInfo, rate: number, events: UtteranceEvents): void;
  cancel(): void;
  /** Whether an utterance is being said or waits to be. */
  busy(): boolean;
  voices(): readonly VoiceInfo[];
  onVoicesChanged(fn: () => void): void;
  /** An unheard utterance: some browsers want the first one inside the builder's own gesture. */
  prime(): void;
}

/** The browser's speech; null where there is none. */
export function browserSpeech(window: Window & typeof globalThis): SpeechEngine | null {
  if (!('speechSynthesis' in window) || !('SpeechSynthesisUtterance' in window)) return null;
  const { speechSynthesis, SpeechSynthesisUtterance } = window;
  // Browsers drop an utterance, and with it its end, when nothing holds on to it.
  const held = new Set<SpeechSynthesisUtterance>();
  return {
    say(text, voice, rate, { onStart, onEnd, onError }) {
      const utterance = new SpeechSynthesisUtterance(text);
      const { voiceURI } = voice;
      utterance.voice =
        speechSynthesis.getVoices().find((other) => other.voiceURI === voiceURI) ?? null;
      utterance.lang = voice.lang.replace('_', '-');
      utterance.rate = rate;
      utterance.onstart = onStart;
      utterance.onend = onEnd;
      utterance.onerror = ({ error }) => onError(error);
      held.clear();
      held.add(utterance);
      speechSynthesis.speak(utterance);
    },
    cancel: () => speechSynthesis.cancel(),
    busy: () => speechSynthesis.speaking || speechSynthesis.pending,
    voices: () => speechSynthesis.getVoices(),
    onVoicesChanged(fn) {
      if ('addEventListener' in speechSynthesis) {
        speechSynthesis.addEventListener('voiceschanged', fn);
      }
    },
    prime() {
      const unheard = new SpeechSynthesisUtterance(' ');
      unheard.volume = 0;
      speechSynthesis.speak(unheard);
    },
  };
}
