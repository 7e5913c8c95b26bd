import { describe, expect, test } from 'vitest';
import { createSpeaker, switchedSynth } from '#speaking';
import { fakeClock } from '../fakes/clock';
import { fakeSynth } from '../fakes/synth';
import { fakeTicker } from '../fakes/ticker';
import { facts, onBench, plainContext, tell, testWords } from './told';

describe('C10 a tick means counted, a word means kept', () => {
  test('the tick comes in the same instant, before anything is kept', () => {
    const { speaker, ticker, clock, texts } = onBench();
    speaker.announce([tell(facts.read, 7, { cue: 'seat' })]);
    expect(ticker.ticks).toMatchObject([{ tick: 'seat', askedAt: clock.now() }]);
    expect(texts()).toEqual([]);
  });

  test('words and caption wait until the log is kept through their seq', () => {
    const { speaker, clock, texts, captions } = onBench();
    speaker.announce([tell(facts.read, 7)]);
    speaker.kept(6);
    clock.advance(60_000);
    expect(texts()).toEqual([]);
    expect(captions()).toEqual([]);
    speaker.kept(7);
    expect(texts()).toEqual(['Four and a half, eighty-eight, fits.']);
    expect(captions()).toEqual(['Four and a half, eighty-eight, fits.']);
  });

  test('a lower seq is another job: its words wait for its own log', () => {
    const { speaker, texts } = onBench();
    speaker.kept(50);
    speaker.hush();
    speaker.kept(0);
    speaker.announce([tell(facts.howFar, 3)]);
    expect(texts()).toEqual([]);
    speaker.kept(3);
    expect(texts()).toEqual(['How far?']);
  });

  test('a standing alarm lets words go unkept, and results say so', () => {
    const { speaker, clock, texts } = onBench();
    speaker.announce([tell(facts.read, 7)]);
    speaker.alarm(true);
    speaker.announce([tell(facts.notKept)]);
    clock.advance(20_000);
    expect(texts().join(' ')).toContain('fits. Not kept.');
    expect(texts()).toContain('Not kept. The disk does not answer.');
  });

  test('a line that waited when the alarm came says what is so when it is said', () => {
    const { speaker, texts } = onBench();
    speaker.announce([tell(facts.read, 7)]);
    speaker.alarm(true);
    expect(texts()).toEqual(['Four and a half, eighty-eight, fits. Not kept.']);
  });
});

describe("words wait for the builder's pause", () => {
  test('1.2 s before there is an interval', () => {
    const { count, clock, spoken } = onBench();
    count(1);
    clock.advance(1199);
    expect(spoken()).toEqual([]);
    clock.advance(1);
    expect(spoken()).toEqual(['1200: 1, seventy.']);
  });

  test.each([
    { everyMs: 1000, pauseMs: 1600 },
    { everyMs: 300, pauseMs: 700 },
    { everyMs: 2300, pauseMs: 2500 },
  ])('counts every $everyMs ms: a pause of $pauseMs ms', ({ everyMs, pauseMs }) => {
    const { count, clock, speaker, synth } = onBench();
    for (const quarters of [1, 2, 3, 4]) {
      speaker.cut();
      count(quarters);
      if (quarters < 4) clock.advance(everyMs);
    }
    const restedFrom = clock.now();
    clock.advance(pauseMs);
    expect(synth.calls.at(-1)).toEqual({
      call: 'speak',
      text: '4, seventy.',
      at: restedFrom + pauseMs,
    });
  });

  test('a new count restarts the pause and takes the place of the waiting line', () => {
    const { count, clock, spoken } = onBench();
    count(1);
    clock.advance(1000);
    count(2);
    clock.advance(1599);
    expect(spoken()).toEqual([]);
    clock.advance(10_000);
    expect(spoken()).toEqual(['2600: 2, seventy.']);
  });

  test('another valve forgets the rhythm of the last', () => {
    const { count, clock, speaker, synth } = onBench();
    for (const quarters of [1, 2, 3]) {
      count(quarters);
      clock.advance(300);
    }
    speaker.announce([tell(facts.start)]);
    clock.advance(10_000);
    count(1);
    const countedAt = clock.now();
    clock.advance(10_000);
    expect(synth.calls).toContainEqual({
      call: 'speak',
      text: '1, seventy.',
      at: countedAt + 1200,
    });
  });

  test('a doubtful noise does not cost the waiting count', () => {
    const { count, clock, speaker, texts } = onBench();
    count(3);
    speaker.announce([tell(facts.doubted)]);
    clock.advance(10_000);
    expect(texts()).toEqual(['Missed that.', '3, seventy.']);
  });

  test('a line between counts lasts at most 2 s', () => {
    const { count, clock, speaker, synth } = onBench();
    synth.setManner(() => ({ startsAfterMs: 0, lastsMs: 9000 }));
    count(3);
    clock.advance(1200 + 2000);
    expect(synth.saying()).toBeNull();
    expect(speaker.state().saying).toBeNull();
  });
});

describe('what goes first', () => {
  test('seating speaks at once and the waiting count is dropped', () => {
    const { count, speaker, clock, spoken } = onBench();
    count(4);
    clock.advance(300);
    speaker.announce([tell(facts.howFar)]);
    clock.advance(10_000);
    expect(spoken()).toEqual(['300: How far?']);
  });

  test('a count and a seat of one utterance: only the seat is said', () => {
    const { speaker, clock, texts } = onBench();
    speaker.announce([tell(facts.counted(5)), tell(facts.howFar)]);
    clock.advance(10_000);
    expect(texts()).toEqual(['How far?']);
  });

  test('several facts of one command are said in order, a breath apart', () => {
    const { speaker, clock, spoken } = onBench();
    speaker.announce([tell(facts.read), tell(facts.cylinderDone), tell(facts.loose)]);
    clock.advance(20_000);
    expect(spoken()).toEqual([
      '0: Four and a half, eighty-eight, fits.',
      '2340: Seven to go.',
      '3240: Pushrods loose?',
    ]);
  });

  test('a question and a result are never lost to a count', () => {
    const { speaker, clock, count, texts } = onBench();
    speaker.announce([tell(facts.read, 5)]);
    speaker.announce([tell(facts.askedBack, 6)]);
    count(1, 7);
    speaker.kept(7);
    clock.advance(20_000);
    expect(texts()).toEqual(['Four and a half, eighty-eight, fits.', 'Start over?', '1, seventy.']);
  });

  test('a newer question takes the place of one still waiting', () => {
    const { speaker, clock, texts } = onBench();
    speaker.announce([tell(facts.loose, 5)]);
    speaker.announce([tell(facts.handsClear, 6)]);
    speaker.kept(6);
    clock.advance(20_000);
    expect(texts()).toEqual(['Hands clear?']);
  });

  test('an alarm goes before what waits and breaks off talk, not a result', () => {
    const { speaker, clock, texts } = onBench();
    speaker.announce([tell(facts.valve)]);
    speaker.announce([tell(facts.read)]);
    speaker.announce([tell(facts.notKept)]);
    expect(texts()).toEqual(['Eight exhaust.', 'Not kept. The disk does not answer.']);
    clock.advance(20_000);
    speaker.announce([tell(facts.read)]);
    speaker.announce([tell(facts.keptAgain)]);
    expect(texts().at(-1)).toBe('Four and a half, eighty-eight, fits.');
    clock.advance(20_000);
    expect(texts().at(-1)).toBe('Kept again.');
  });
});

test('an alarm waiting is replaced by a newer one of its kind only', () => {
  const { speaker, clock, texts } = onBench();
  speaker.announce([tell(facts.read)]);
  speaker.announce([tell(facts.notKept)]);
  speaker.announce([tell(facts.notKept)]);
  speaker.announce([tell(facts.keptAgain)]);
  clock.advance(20_000);
  expect(texts().slice(1)).toEqual(['Not kept. The disk does not answer.', 'Kept again.']);
});

describe('a press', () => {
  test('cuts the line off; what the press brings is said at once, what waited later', () => {
    const { speaker, clock, texts, synth } = onBench();
    speaker.announce([tell(facts.cylinderDone), tell(facts.read)]);
    clock.advance(100);
    speaker.cut();
    expect(synth.saying()).toBeNull();
    speaker.announce([tell(facts.loose)]);
    expect(texts()).toEqual(['Seven to go.', 'Pushrods loose?']);
    clock.advance(20_000);
    expect(texts().at(-1)).toBe('Four and a half, eighty-eight, fits.');
  });

  test('does not cut an alarm off', () => {
    const { speaker, synth } = onBench();
    speaker.announce([tell(facts.notKept)]);
    speaker.cut();
    expect(synth.saying()).toBe('Not kept. The disk does not answer.');
  });
});

describe('an instruction to turn the crank', () => {
  test('is said when fresh', () => {
    const { speaker, clock, spoken } = onBench();
    speaker.announce([tell(facts.turn, 4)]);
    clock.advance(999);
    speaker.kept(4);
    expect(spoken()).toEqual(['999: Turn ninety.']);
  });

  test('is dropped when not kept within 1 s, and its caption says so', () => {
    const { speaker, clock, spoken, captions } = onBench();
    speaker.announce([tell(facts.turn, 4)]);
    clock.advance(1000);
    speaker.kept(4);
    clock.advance(60_000);
    expect(spoken()).toEqual([]);
    expect(captions()).toEqual(['(not called)']);
    expect(speaker.log()).toMatchObject([{ outcome: 'lapsed' }]);
  });

  test('is dropped when an uncuttable line is still being said', () => {
    const { speaker, clock, texts, captions } = onBench();
    speaker.announce([tell(facts.notKept)]);
    speaker.announce([tell(facts.turn)]);
    clock.advance(60_000);
    expect(texts()).toEqual(['Not kept. The disk does not answer.']);
    expect(captions().at(-1)).toBe('(not called)');
  });

  test('breaks off ordinary talk rather than wait', () => {
    const { speaker, texts } = onBench();
    speaker.announce([tell(facts.valve)]);
    speaker.announce([tell(facts.turn)]);
    expect(texts()).toEqual(['Eight exhaust.', 'Turn ninety.']);
  });

  test.each(['hush', 'cut'] as const)('is never said after %s', (act) => {
    const { speaker, clock, texts, captions } = onBench();
    speaker.announce([tell(facts.turn, 4)]);
    speaker[act]();
    speaker.kept(4);
    clock.advance(60_000);
    expect(texts()).toEqual([]);
    expect(captions()).toEqual(['(not called)']);
  });

  test('goes before the other facts of its command, which would make it late', () => {
    const { speaker, clock, texts, captions } = onBench();
    speaker.announce([tell(facts.read, 4), tell(facts.cylinderDone, 4), tell(facts.turn, 4)]);
    speaker.kept(4);
    clock.advance(60_000);
    expect(texts()).toEqual([
      'Turn ninety.',
      'Four and a half, eighty-eight, fits.',
      'Seven to go.',
    ]);
    expect(captions()).toEqual(texts());
  });

  test('is not called when the voice can not begin in time', () => {
    const { speaker, clock, synth, captions } = onBench();
    synth.setManner(() => ({ startsAfterMs: 3000, lastsMs: 500 }));
    speaker.announce([tell(facts.turn)]);
    clock.advance(60_000);
    expect(captions()).toEqual(['(not called)']);
    expect(synth.saying()).toBeNull();
  });
});

describe("'stop'", () => {
  test('ends the talk and all that waits; what was kept is still written', () => {
    const { speaker, clock, synth, texts, captions, count } = onBench();
    speaker.announce([tell(facts.valve)]);
    speaker.announce([tell(facts.cylinderDone)]);
    speaker.announce([tell(facts.loose, 9)]);
    count(2);
    speaker.hush();
    expect(synth.saying()).toBeNull();
    speaker.kept(9);
    clock.advance(60_000);
    expect(texts()).toEqual(['Eight exhaust.']);
    expect(captions()).toEqual(['Eight exhaust.', '(Seven to go.)']);
  });
});

describe('captions (C12)', () => {
  test('a tick without words has a caption once it is kept, and does not wait for the mouth', () => {
    const { speaker, captions } = onBench();
    speaker.announce([tell(facts.read)]);
    speaker.announce([tell(facts.torqued, 3, { cue: 'soft' })]);
    expect(captions()).toHaveLength(1);
    speaker.kept(3);
    expect(captions()).toEqual(['Four and a half, eighty-eight, fits.', '(tick)']);
  });

  test('the last 500 stay readable', () => {
    const { speaker } = onBench();
    for (let i = 0; i < 600; i += 1) speaker.announce([tell(facts.torqued)]);
    expect(speaker.log()).toHaveLength(500);
    expect(speaker.log().at(-1)?.token).toBe(600);
  });

  test('a caption is told to those who follow, with the state', () => {
    const { speaker, clock } = onBench();
    const seen: (string | null)[] = [];
    const leave = speaker.subscribe(() => seen.push(speaker.state().saying?.text ?? null));
    speaker.announce([tell(facts.howFar)]);
    clock.advance(5000);
    expect(seen).toEqual(['How far?', null]);
    leave();
    speaker.announce([tell(facts.howFar)]);
    expect(seen).toHaveLength(2);
  });
});

describe('without a voice', () => {
  test('ticks and captions carry on, the state says so, and it is told once', () => {
    const { speaker, synth, ticker, clock, texts, captions } = onBench();
    synth.setStatus('none');
    synth.setStatus('none');
    clock.advance(5000);
    speaker.announce([tell(facts.howFar, 0, { cue: 'seat' })]);
    expect(speaker.state().voice).toBe('none');
    expect(texts()).toEqual([]);
    expect(ticker.ticks).toHaveLength(1);
    expect(captions()).toEqual(['(No voice here.)', '(How far?)']);
  });

  test('a caption stands for the time its line would take', () => {
    const { speaker, synth, clock, captions } = onBench();
    synth.setStatus('locked');
    speaker.announce([tell(facts.cylinderDone), tell(facts.loose)]);
    clock.advance(500);
    expect(captions()).toEqual(['(Seven to go.)']);
    clock.advance(5000);
    expect(captions()).toEqual(['(Seven to go.)', '(Pushrods loose?)']);
  });

  test('a line the voice fails at stands as a caption and the next one still comes', () => {
    const { speaker, synth, clock, captions } = onBench();
    synth.setManner(() => ({ startsAfterMs: 0, lastsMs: null, failsAfterMs: 2 }));
    speaker.announce([tell(facts.cylinderDone), tell(facts.loose)]);
    clock.advance(20_000);
    expect(captions()).toEqual(['(Seven to go.)', '(Pushrods loose?)']);
  });
});

describe('C9 until when the mouth is busy', () => {
  test('while a line is said and for a tail after it', () => {
    const { speaker, clock } = onBench();
    expect(speaker.busyUntil()).toBe(0);
    speaker.announce([tell(facts.howFar)]);
    expect(speaker.busyUntil()).toBeGreaterThan(clock.now() + 400);
    clock.advance(480);
    const ended = clock.now();
    expect(speaker.busyUntil()).toBe(ended + 400);
    clock.advance(5000);
    expect(speaker.busyUntil()).toBe(ended + 400);
  });

  test('a line that drags on keeps it busy', () => {
    const { speaker, synth, clock } = onBench();
    synth.setManner(() => ({ startsAfterMs: 0, lastsMs: 2400 }));
    speaker.announce([tell(facts.howFar)]);
    clock.advance(2000);
    expect(speaker.busyUntil()).toBe(clock.now() + 400);
  });

  test('a caption without a voice leaves it free', () => {
    const { speaker, synth } = onBench();
    synth.setStatus('none');
    speaker.announce([tell(facts.howFar)]);
    expect(speaker.busyUntil()).toBe(0);
  });
});

test('a voice whose end never comes is over by the watchdog, and the next line is said', () => {
  const { speaker, synth, clock, texts } = onBench();
  synth.setManner(() => ({ startsAfterMs: 0, lastsMs: null }));
  speaker.announce([tell(facts.cylinderDone), tell(facts.loose)]);
  clock.advance(60_000);
  expect(texts()).toEqual(['Seven to go.', 'Pushrods loose?']);
  expect(synth.saying()).toBeNull();
});

test('a voice switched off: lines stand as captions, and nothing is reported missing', () => {
  const clock = fakeClock();
  const synth = fakeSynth(clock);
  const speaker = createSpeaker({
    clock,
    synth: switchedSynth(synth, () => false),
    ticker: fakeTicker(clock),
    context: () => plainContext,
    words: testWords,
  });
  speaker.announce([tell(facts.cylinderDone), tell(facts.loose)]);
  clock.advance(5000);
  expect(synth.calls).toEqual([]);
  expect(speaker.log().map(({ text, spoken }) => [text, spoken])).toEqual([
    ['Seven to go.', false],
    ['Pushrods loose?', false],
  ]);
});

test('a voice that neither starts nor ends does not hold the mouth', () => {
  const { speaker, synth, clock, texts } = onBench();
  synth.setManner(() => ({ startsAfterMs: 10_000_000, lastsMs: null }));
  speaker.announce([tell(facts.cylinderDone), tell(facts.loose)]);
  clock.advance(60_000);
  expect(texts()).toEqual(['Seven to go.', 'Pushrods loose?']);
});

test('a device without a voice tells it after the speaker is built, not while', () => {
  const clock = fakeClock();
  const synth = fakeSynth(clock);
  synth.setStatus('none');
  const told: string[] = [];
  createSpeaker({
    clock,
    synth,
    ticker: fakeTicker(clock),
    context: () => plainContext,
    words: testWords,
    onCaption: ({ text }) => told.push(text),
  });
  expect(told).toEqual([]);
  clock.advance(0);
  expect(told).toEqual(['No voice here.']);
});

test("the app's own words are said when no others are given", () => {
  const clock = fakeClock();
  const synth = fakeSynth(clock);
  const ticker = fakeTicker(clock);
  const speaker = createSpeaker({ clock, synth, ticker, context: () => plainContext });
  speaker.announce([tell(facts.keptAgain), tell(facts.turn, 9)]);
  clock.advance(5000);
  expect(speaker.log().map(({ text }) => text)).toEqual([
    'Kept again.',
    'Turn not called: it came too late. Hands clear calls it again.',
  ]);
});

test('a screen that throws on a caption does not strike the mouth dumb', () => {
  const { speaker, clock, texts } = onBench();
  const leave = speaker.subscribe(() => {
    throw new Error('screen');
  });
  expect(() => speaker.announce([tell(facts.cylinderDone)])).toThrow('screen');
  leave();
  clock.advance(5000);
  speaker.announce([tell(facts.loose)]);
  expect(texts()).toEqual(['Seven to go.', 'Pushrods loose?']);
});
