import { describe, expect, test } from 'vitest';
import {
  answerTo,
  type SessionEvent,
  type WebRecogniser,
  type WebSpeechWindow,
  webSpeech,
} from '#hearing';
import { settled } from './rig';

type Result = { readonly final: boolean; readonly texts: readonly string[] };

/** The browser's recogniser, by hand. */
class FakeRecogniser implements WebRecogniser {
  static made: FakeRecogniser[] = [];
  lang = '';
  continuous = false;
  interimResults = false;
  maxAlternatives = 1;
  processLocally = false;
  phrases: WebRecogniser['phrases'] & object = [];
  onstart: WebRecogniser['onstart'] = null;
  onaudiostart: WebRecogniser['onaudiostart'] = null;
  onspeechstart: WebRecogniser['onspeechstart'] = null;
  onspeechend: WebRecogniser['onspeechend'] = null;
  onresult: WebRecogniser['onresult'] = null;
  onerror: WebRecogniser['onerror'] = null;
  onend: WebRecogniser['onend'] = null;
  readonly calls: string[] = [];

  constructor() {
    FakeRecogniser.made.push(this);
  }
  start() {
    this.calls.push('start');
  }
  stop() {
    this.calls.push('stop');
  }
  abort() {
    this.calls.push('abort');
  }
  tell(resultIndex: number, ...results: readonly Result[]) {
    const made = results.map(({ final, texts }) =>
      Object.assign(
        texts.map((transcript) => ({ transcript, confidence: 0.5 })),
        { isFinal: final },
      ),
    );
    this.onresult?.({ resultIndex, results: made });
  }
}

class Hint {
  constructor(
    readonly phrase: string,
    readonly boost: number,
  ) {}
}

const nowhere: WebSpeechWindow = { navigator: {} };
const plain: WebSpeechWindow = { webkitSpeechRecognition: FakeRecogniser, navigator: {} };

function started(window: WebSpeechWindow, onDevice = false, hints: readonly string[] = []) {
  const told: SessionEvent[] = [];
  const session = webSpeech(window).start({ language: 'en-GB', onDevice, hints }, (event) =>
    told.push(event),
  );
  const web = FakeRecogniser.made.at(-1);
  if (web === undefined) throw new Error('no recogniser was made');
  return { told, session, web };
}

function onDeviceWindow(available: string, install = async () => true): WebSpeechWindow {
  class OnDevice extends FakeRecogniser {
    static available = async () => available;
    static install = install;
  }
  return { SpeechRecognition: OnDevice, SpeechRecognitionPhrase: Hint, navigator: {} };
}

describe('where speech is understood', () => {
  test.each([
    ['no recognition at all', nowhere, 'nowhere'],
    ['an older browser', plain, 'elsewhere'],
    ['a model here', onDeviceWindow('available'), 'on device'],
    ['a model to be had', onDeviceWindow('downloadable'), 'elsewhere'],
    [
      'a download that hangs',
      onDeviceWindow('downloadable', () => new Promise<boolean>(() => undefined)),
      'elsewhere',
    ],
    ['no model', onDeviceWindow('unavailable'), 'elsewhere'],
  ])('%s', async (_, window, place) => {
    expect(await webSpeech(window).where()).toEqual({ place, asksFirst: false });
  });

  test('whether the browser will ask for the microphone first', async () => {
    const asking = (state: string): WebSpeechWindow => ({
      ...plain,
      navigator: { permissions: { query: async () => ({ state }) } },
    });
    expect((await webSpeech(asking('prompt')).where()).asksFirst).toBe(true);
    expect((await webSpeech(asking('granted')).where()).asksFirst).toBe(false);
    const unknown: WebSpeechWindow = {
      ...plain,
      navigator: { permissions: { query: () => Promise.reject(new TypeError('microphone')) } },
    };
    expect((await webSpeech(unknown).where()).asksFirst).toBe(false);
  });
});

describe('a session of the browser’s recogniser', () => {
  test('it goes on, tells interims and several readings, and its events are handed on', () => {
    const { told, web, session } = started(plain);
    expect(web).toMatchObject({
      lang: 'en-GB',
      continuous: true,
      interimResults: true,
      maxAlternatives: 3,
      calls: ['start'],
    });
    web.onstart?.();
    web.onaudiostart?.();
    web.onspeechstart?.();
    web.onspeechend?.();
    web.onerror?.({ error: 'no-speech' });
    web.onend?.();
    expect(told.map((event) => (event.type === 'error' ? event.code : event.type))).toEqual([
      'started',
      'audio started',
      'speech started',
      'speech ended',
      'no-speech',
      'ended',
    ]);
    session.finish();
    session.abort();
    expect(web.calls).toEqual(['start', 'stop', 'abort']);
  });

  test('an interim in pieces is one text; finals are told one by one', () => {
    const { told, web } = started(plain);
    web.tell(0, { final: false, texts: ['rocker'] }, { final: false, texts: [' seated'] });
    web.tell(
      0,
      { final: true, texts: ['rocker seated', 'rock it'] },
      { final: false, texts: ['half'] },
    );
    expect(
      told.map((e) => (e.type === 'result' ? [e.index, e.final, e.alternatives] : [])),
    ).toEqual([
      [0, false, [{ text: 'rocker seated', confidence: 0 }]],
      [
        0,
        true,
        [
          { text: 'rocker seated', confidence: 0.5 },
          { text: 'rock it', confidence: 0.5 },
        ],
      ],
      [1, false, [{ text: 'half', confidence: 0 }]],
    ]);
  });

  test('on the device, with hints, where both are offered', () => {
    const { web } = started(onDeviceWindow('available'), true, ['zero lash', 'four']);
    expect(web.processLocally).toBe(true);
    expect(web.phrases).toEqual([new Hint('zero lash', 4), new Hint('four', 4)]);
    expect(started(plain, false, ['zero lash']).web.phrases).toEqual([]);
  });

  test('a start that throws is an error and an end, told a turn later', async () => {
    class Throws extends FakeRecogniser {
      override start() {
        throw new DOMException('already started', 'InvalidStateError');
      }
    }
    const { told } = started({ SpeechRecognition: Throws, navigator: {} });
    expect(told).toEqual([]);
    await settled();
    expect(told).toEqual([{ type: 'error', code: 'start-failed' }, { type: 'ended' }]);
  });
});

test('every code the specification has is answered in its own way', () => {
  const codes = [
    'no-speech',
    'aborted',
    'audio-capture',
    'network',
    'not-allowed',
    'service-not-allowed',
    'bad-grammar',
    'language-not-supported',
    'phrases-not-supported',
  ];
  const answers = codes.map((code) => answerTo(code));
  expect(answers).not.toContainEqual({ answer: 'retry', why: 'unknown' });
  expect(answerTo('toString')).toEqual({ answer: 'retry', why: 'unknown' });
});
