import type { Place, SessionEvent } from './earInput';
import type { SessionOptions } from './earState';
import type { Recogniser, RecogniserSession } from './recogniser';
import {
  type PhraseHint,
  type SpeechResultEvent,
  type WebRecogniser,
  type WebSpeechWindow,
  webRecogniserOf,
} from './webSpeechTypes';

/** Readings asked for of each utterance. */
const READINGS = 3;
/** How much more likely than other words a hinted phrase is; the API takes 0 to 10. */
const BOOST = 4;
/** The language asked about: the first that is tried. */
const ASKED_LANGUAGE = 'en-GB';

/** The browser's own speech recognition (Web Speech API), on the device where that is offered. */
export function webSpeech(window: WebSpeechWindow): Recogniser {
  return {
    async where() {
      const [place, asksFirst] = await Promise.all([placeOf(window), asksFirstOf(window)]);
      return { place, asksFirst };
    },
    start: (options, tell) => startWeb(window, options, tell),
  };
}

async function placeOf(window: WebSpeechWindow): Promise<Place | 'nowhere'> {
  const Maker = webRecogniserOf(window);
  if (Maker === undefined) return 'nowhere';
  if (Maker.available === undefined) return 'elsewhere';
  const asked = { langs: [ASKED_LANGUAGE], processLocally: true };
  const here = await Maker.available(asked).catch(() => 'unavailable');
  // A download may hang for ever: it is begun for the next time and never waited for.
  if (here === 'downloadable') void Maker.install?.(asked).catch(() => false);
  return here === 'available' ? 'on device' : 'elsewhere';
}

async function asksFirstOf({ navigator }: WebSpeechWindow): Promise<boolean> {
  const status = await navigator.permissions
    ?.query({ name: 'microphone' })
    .catch(() => ({ state: 'denied' }));
  return status?.state === 'prompt';
}

function startWeb(
  window: WebSpeechWindow,
  options: SessionOptions,
  tell: (event: SessionEvent) => void,
): RecogniserSession {
  const Maker = webRecogniserOf(window);
  if (Maker === undefined) return failing(tell, 'service-not-allowed');
  try {
    const web = new Maker();
    setUp(web, options, window);
    listen(web, tell);
    web.start();
    return { finish: () => web.stop(), abort: () => web.abort() };
  } catch {
    return failing(tell, 'start-failed');
  }
}

function failing(tell: (event: SessionEvent) => void, code: string): RecogniserSession {
  // Told a turn later, as a service would: whoever started the session must know it first.
  queueMicrotask(() => {
    tell({ type: 'error', code });
    tell({ type: 'ended' });
  });
  return { finish: () => undefined, abort: () => undefined };
}

function setUp(web: WebRecogniser, options: SessionOptions, window: WebSpeechWindow): void {
  web.lang = options.language;
  web.continuous = true;
  web.interimResults = true;
  web.maxAlternatives = READINGS;
  if (options.onDevice && 'processLocally' in web) web.processLocally = true;
  const Hint = window.SpeechRecognitionPhrase;
  if (Hint === undefined || !('phrases' in web) || options.hints.length === 0) return;
  try {
    web.phrases = options.hints.map((phrase): PhraseHint => new Hint(phrase, BOOST));
  } catch {
    // Some services have the property and refuse it: speech is understood without hints too.
    web.phrases = [];
  }
}

function listen(web: WebRecogniser, tell: (event: SessionEvent) => void): void {
  web.onstart = () => tell({ type: 'started' });
  web.onaudiostart = () => tell({ type: 'audio started' });
  web.onspeechstart = () => tell({ type: 'speech started' });
  web.onspeechend = () => tell({ type: 'speech ended' });
  web.onerror = ({ error }) => tell({ type: 'error', code: error });
  web.onend = () => tell({ type: 'ended' });
  web.onresult = (event) => {
    for (const result of resultsOf(event)) tell(result);
  };
}

/** New results: each final by itself, what is not final yet joined into one text of one utterance. */
function resultsOf({ resultIndex, results }: SpeechResultEvent): readonly SessionEvent[] {
  const told: SessionEvent[] = [];
  const pending: { index: number; text: string }[] = [];
  for (let index = resultIndex; index < results.length; index += 1) {
    const result = results[index];
    if (result === undefined) continue;
    const alternatives = Array.from({ length: result.length }, (_, i) => ({
      text: result[i]?.transcript ?? '',
      confidence: result[i]?.confidence ?? 0,
    }));
    if (result.isFinal) told.push({ type: 'result', index, final: true, alternatives });
    else pending.push({ index, text: alternatives[0]?.text ?? '' });
  }
  const [first] = pending;
  if (first === undefined) return told;
  const text = pending.map((piece) => piece.text).join('');
  return [
    ...told,
    { type: 'result', index: first.index, final: false, alternatives: [{ text, confidence: 0 }] },
  ];
}
