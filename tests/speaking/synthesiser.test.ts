import { describe, expect, test } from 'vitest';
import { createSynthesiser, type SpeechEngine } from '#speaking';
import { fakeClock } from '../fakes/clock';
import { fakeSpeech, type Script, spoken, voice } from '../fakes/speech';

function onBrowser(scripts: readonly Script[], voices = [voice()]) {
  const clock = fakeClock(0);
  const engine = fakeSpeech(clock, scripts, voices);
  const synth = createSynthesiser({ clock, engine, language: 'en-GB' });
  const heard: string[] = [];
  const say = (text: string, startBy: number | null = null) =>
    synth.speak(
      text,
      {
        onStart: () => heard.push(`${clock.now()} start ${text}`),
        onEnd: () => heard.push(`${clock.now()} end ${text}`),
        onError: (why) => heard.push(`${clock.now()} ${why} ${text}`),
      },
      startBy,
    );
  return { clock, engine, synth, heard, say };
}

/** Expected for 'Zero.': 250 + 5 × 68 = 590 ms; the watchdog: 2 × 590 + 1000. */
const WATCHDOG_ZERO = 2180;

describe('status', () => {
  test('locked until a gesture, then ready; the first gesture primes the engine', () => {
    const { synth, engine } = onBrowser([spoken(500)]);
    expect(synth.status()).toBe('locked');
    synth.unlock();
    synth.unlock();
    expect(synth.status()).toBe('ready');
    expect(engine.primed()).toBe(1);
  });

  test('a browser without speech has no voice', () => {
    const synth = createSynthesiser({ clock: fakeClock(), engine: null, language: 'en-GB' });
    synth.unlock();
    expect(synth.status()).toBe('none');
  });

  test('voices may come late: a line waits for them', () => {
    const { synth, engine, clock, heard, say } = onBrowser([spoken(500)], []);
    synth.unlock();
    expect(synth.status()).toBe('waiting');
    say('Zero.');
    clock.advance(1000);
    expect(engine.said).toEqual([]);
    engine.arrive([voice()]);
    clock.advance(1000);
    expect(heard).toEqual(['1000 start Zero.', '1500 end Zero.']);
  });

  test('voices that never come: none after 2 s, and the waiting line is given back', () => {
    const { synth, clock, heard, say, engine } = onBrowser([spoken(500)], []);
    synth.unlock();
    say('Zero.');
    clock.advance(2000);
    expect(synth.status()).toBe('none');
    expect(heard).toEqual(['2000 failed Zero.']);
    engine.arrive([voice()]);
    expect(synth.status()).toBe('ready');
  });

  test('three failures in a row mean there is no voice, told once', () => {
    const { synth, clock, heard, say } = onBrowser([
      [{ afterMs: 2, event: { error: 'synthesis-failed' } }],
    ]);
    synth.unlock();
    const seen: string[] = [];
    synth.subscribe(() => seen.push(synth.status()));
    for (const text of ['One.', 'Two.', 'Three.', 'Four.']) {
      say(text);
      clock.advance(100);
    }
    expect(synth.status()).toBe('none');
    expect(seen.filter((status) => status === 'none')).toHaveLength(1);
    expect(heard).toEqual([
      '2 failed One.',
      '102 failed Two.',
      '202 failed Three.',
      '300 failed Four.',
    ]);
  });

  test('failures between spoken lines are forgotten', () => {
    const bad: Script = [{ afterMs: 2, event: { error: 'synthesis-failed' } }];
    const { synth, clock, say } = onBrowser([bad, bad, spoken(100), bad, bad, spoken(100)]);
    synth.unlock();
    for (let i = 0; i < 6; i += 1) {
      say('Zero.');
      clock.advance(1000);
    }
    expect(synth.status()).toBe('ready');
  });

  test('a page not allowed to speak asks for the next gesture', () => {
    const { synth, clock, heard, say } = onBrowser([
      [{ afterMs: 1, event: { error: 'not-allowed' } }],
      spoken(100),
    ]);
    synth.unlock();
    say('One.');
    clock.advance(100);
    expect(synth.status()).toBe('locked');
    synth.unlock();
    say('Two.');
    clock.advance(500);
    expect(heard).toEqual(['1 failed One.', '100 start Two.', '200 end Two.']);
  });
});

describe('one line', () => {
  test('whose end never comes is over by the watchdog', () => {
    const { synth, clock, heard, say, engine } = onBrowser([[{ afterMs: 0, event: 'start' }]]);
    synth.unlock();
    say('Zero.');
    clock.advance(60_000);
    expect(heard).toEqual(['0 start Zero.', `${WATCHDOG_ZERO} end Zero.`]);
    expect(engine.cancels()).toBe(1);
  });

  test('that is lost by the browser is said once more', () => {
    const { synth, clock, heard, say, engine } = onBrowser([[], spoken(500)]);
    synth.unlock();
    say('Zero.');
    clock.advance(5000);
    expect(engine.said.map(({ at }) => at)).toEqual([0, 400]);
    expect(heard).toEqual(['400 start Zero.', '900 end Zero.']);
  });

  test('that is lost twice has failed by the watchdog', () => {
    const { synth, clock, heard, say, engine } = onBrowser([[]]);
    synth.unlock();
    say('Zero.');
    clock.advance(60_000);
    expect(engine.said).toHaveLength(2);
    expect(heard).toEqual([`${WATCHDOG_ZERO} failed Zero.`]);
  });

  test('after a cancel waits a little, and tells nothing of the line cut off', () => {
    const { synth, clock, heard, say, engine } = onBrowser([spoken(500)]);
    synth.unlock();
    say('One.');
    clock.advance(100);
    synth.cancel();
    say('Two.');
    clock.advance(5000);
    expect(engine.said).toMatchObject([
      { text: 'One.', at: 0 },
      { text: 'Two.', at: 150 },
    ]);
    expect(heard).toEqual(['0 start One.', '150 start Two.', '650 end Two.']);
  });

  test('cut off by something else in the browser is over, and no failure', () => {
    const { synth, clock, heard, say } = onBrowser([
      [
        { afterMs: 0, event: 'start' },
        { afterMs: 50, event: { error: 'interrupted' } },
      ],
    ]);
    synth.unlock();
    for (let i = 0; i < 4; i += 1) {
      say('Zero.');
      clock.advance(1000);
    }
    expect(heard.filter((one) => one.includes('end'))).toHaveLength(4);
    expect(synth.status()).toBe('ready');
  });

  test('that must begin by a time and does not is late, and not heard after', () => {
    const { synth, clock, heard, say, engine } = onBrowser([
      [
        { afterMs: 1500, event: 'start' },
        { afterMs: 2000, event: 'end' },
      ],
    ]);
    synth.unlock();
    say('Turn ninety.', 1000);
    clock.advance(60_000);
    expect(heard).toEqual(['1000 late Turn ninety.']);
    expect(engine.cancels()).toBe(1);
  });

  test('that has begun in time is let finish', () => {
    const { synth, clock, heard, say } = onBrowser([spoken(3000)]);
    synth.unlock();
    say('Turn ninety.', 1000);
    clock.advance(60_000);
    expect(heard).toEqual(['0 start Turn ninety.', '3000 end Turn ninety.']);
  });

  test('of many words is said in breaths, and starts and ends once', () => {
    const { synth, clock, heard, say, engine } = onBrowser([spoken(1000)]);
    synth.unlock();
    const long = `${'Cylinder one: exhaust seventy-eight, intake eighty-eight. '.repeat(5)}Done.`;
    say(long);
    clock.advance(60_000);
    expect(engine.said.length).toBeGreaterThan(2);
    expect(engine.said.map(({ text }) => text).join(' ')).toBe(long);
    expect(heard.map((one) => one.split(' ')[1])).toEqual(['start', 'end']);
  });

  test('one breath whose end is lost does not cost the rest of the line', () => {
    const { synth, clock, heard, say, engine } = onBrowser([
      [{ afterMs: 0, event: 'start' }],
      spoken(1000),
    ]);
    synth.unlock();
    say(`${'Four quarters, seventy-eight thousandths. '.repeat(3)}Seven to go.`);
    clock.advance(60_000);
    expect(engine.said.at(-1)?.text).toContain('Seven to go.');
    expect(heard.at(-1)).toContain('end');
  });

  test('an engine that fails inside the call is a failure like any other', () => {
    const clock = fakeClock(0);
    const engine: SpeechEngine = {
      ...fakeSpeech(clock, [spoken(1)]),
      say: (_text, _voice, _rate, { onError }) => onError('synthesis-failed'),
    };
    const synth = createSynthesiser({ clock, engine, language: 'en-GB' });
    synth.unlock();
    let failed = 0;
    for (let i = 0; i < 5; i += 1) {
      synth.speak('One.', { onStart() {}, onEnd() {}, onError: () => (failed += 1) }, null);
      clock.advance(100);
    }
    expect(failed).toBe(5);
    expect(synth.status()).toBe('none');
  });
});

describe('the voice', () => {
  const remote = voice({ voiceURI: 'remote-gb', localService: false, default: true });
  const american = voice({ voiceURI: 'local-us', lang: 'en_US' });
  const german = voice({ voiceURI: 'local-de', lang: 'de-DE' });

  test.each([
    { have: [remote, german, american, voice()], takes: 'local-gb' },
    { have: [remote, german, american], takes: 'local-us' },
    { have: [german, remote], takes: 'remote-gb' },
  ])('of $have.length: $takes', ({ have, takes }) => {
    const { synth, engine, clock, say } = onBrowser([spoken(100)], have);
    synth.unlock();
    say('Zero.');
    clock.advance(500);
    expect(engine.said[0]?.voice).toBe(takes);
  });

  test('of another language only is no voice', () => {
    const { synth, clock } = onBrowser([spoken(100)], [german]);
    synth.unlock();
    clock.advance(2000);
    expect(synth.status()).toBe('none');
    expect(synth.voices()).toEqual([]);
  });

  test('is the one chosen while the device has it', () => {
    const { synth, engine, clock, say } = onBrowser([spoken(100)], [voice(), american]);
    synth.unlock();
    synth.choose({ voiceUri: 'local-us', rate: 1.2 });
    say('Zero.');
    clock.advance(500);
    synth.choose({ voiceUri: 'gone', rate: 1 });
    say('Zero.');
    clock.advance(500);
    expect(engine.said.map((one) => one.voice)).toEqual(['local-us', 'local-gb']);
  });
});
