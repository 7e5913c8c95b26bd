import { expect, test } from 'vitest';
import { browserSpeech } from '#speaking';
import { voice } from '../fakes/speech';

class ScriptedUtterance {
  voice: { voiceURI: string } | null = null;
  lang = '';
  rate = 1;
  volume = 1;
  onstart: (() => void) | null = null;
  onend: (() => void) | null = null;
  onerror: ((event: { error: string }) => void) | null = null;
  constructor(readonly text: string) {}
}

function pageWithSpeech() {
  const queue: ScriptedUtterance[] = [];
  const listeners: (() => void)[] = [];
  const speechSynthesis = {
    speaking: false,
    pending: false,
    cancelled: 0,
    getVoices: () => [voice(), voice({ voiceURI: 'us', lang: 'en_US' })],
    speak: (utterance: ScriptedUtterance) => void queue.push(utterance),
    cancel() {
      this.cancelled += 1;
    },
    addEventListener: (_type: string, fn: () => void) => void listeners.push(fn),
  };
  const page = { speechSynthesis, SpeechSynthesisUtterance: ScriptedUtterance };
  return {
    engine: browserSpeech(page as unknown as Window & typeof globalThis)!,
    speechSynthesis,
    queue,
    listeners,
  };
}

test('a page without speech has no engine', () => {
  expect(browserSpeech({} as Window & typeof globalThis)).toBeNull();
});

test("an utterance carries text, voice, rate and the voice's language, and tells its events", () => {
  const { engine, queue } = pageWithSpeech();
  const told: string[] = [];
  engine.say('Zero.', voice({ voiceURI: 'us', lang: 'en_US' }), 1.2, {
    onStart: () => told.push('start'),
    onEnd: () => told.push('end'),
    onError: (code) => told.push(code),
  });
  const utterance = queue[0]!;
  expect(utterance).toMatchObject({ text: 'Zero.', lang: 'en-US', rate: 1.2, volume: 1 });
  expect(utterance.voice?.voiceURI).toBe('us');
  utterance.onstart?.();
  utterance.onend?.();
  utterance.onerror?.({ error: 'network' });
  expect(told).toEqual(['start', 'end', 'network']);
});

test('busy while an utterance is said or waits; cancel and late voices are passed on', () => {
  const { engine, speechSynthesis, listeners } = pageWithSpeech();
  expect(engine.busy()).toBe(false);
  speechSynthesis.pending = true;
  expect(engine.busy()).toBe(true);
  engine.cancel();
  expect(speechSynthesis.cancelled).toBe(1);
  let changes = 0;
  engine.onVoicesChanged(() => {
    changes += 1;
  });
  listeners[0]?.();
  expect(changes).toBe(1);
});

test('priming is not heard', () => {
  const { engine, queue } = pageWithSpeech();
  engine.prime();
  expect(queue).toMatchObject([{ volume: 0 }]);
});
