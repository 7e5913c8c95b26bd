import { describe, expect, test } from 'vitest';
import { replay } from '#counting';
import { turn48 } from '#valvetrain';
import { v8SetUp } from '../fakes/setUps';
import { openRig, type Rig } from './rig';
import { ended, final, interim, speech } from './scriptedRecogniser';

/** A job just at zero, then taken to a count by presses. */
async function at(count48: number): Promise<Rig> {
  const rig = await openRig('to start');
  rig.says('zero lash');
  for (let i = 0; i < Math.floor(count48 / 12); i += 1) rig.press({ type: 'step', size: 'step' });
  if (count48 % 12 === 6) rig.press({ type: 'step', size: 'half quarter' });
  expect(rig.count48()).toBe(count48);
  rig.came();
  return rig;
}

const options = ({ bench }: Rig) => {
  const question = bench.state().asked?.question;
  return question?.about === 'count' ? question.options : question?.about;
};

describe('positions and the clock', () => {
  test('C3: ‘half turn’ after three is asked: two, or six', async () => {
    const rig = await at(36);
    rig.says('half turn');
    expect(rig.came()).toEqual(['askedBack']);
    expect(options(rig)).toEqual([24, 72]);
    rig.says('six');
    expect(rig.came()).toEqual(['counted']);
    expect(rig.count48()).toBe(72);
  });

  test('C3: ‘quarter turn’ at one is asked: it lands on the present count', async () => {
    const rig = await at(12);
    rig.says('quarter turn');
    expect(rig.came()).toEqual(['askedBack']);
    expect(options(rig)).toEqual([12, 60]);
  });

  test('C4: ‘one o’clock’ at four and a half is behind by half an hour, and taken', async () => {
    const rig = await at(54);
    rig.says("one o'clock");
    expect(rig.came()).toEqual(['counted']);
    expect(rig.count48()).toBe(52);
  });

  test('C4: ‘twelve o’clock’ at zero is asked', async () => {
    const rig = await at(0);
    rig.says("12 o'clock");
    expect(rig.came()).toEqual(['askedBack']);
    expect(options(rig)).toEqual([48]);
    rig.says('four');
    expect(rig.came()).toEqual(['counted']);
  });

  test('C4: where the handle is read, the clock is off, and that is answered', async () => {
    const rig = await openRig('counting', { setUp: v8SetUp({ clock: 'off' }) });
    rig.says("one o'clock");
    expect(rig.came()).toEqual(['refused: clock is off']);
  });
});

describe('a number asked back', () => {
  test('C5: ‘nine’ first after zero is asked; the same again takes it', async () => {
    const rig = await at(0);
    rig.says('nine');
    expect(rig.came()).toEqual(['askedBack']);
    rig.says('9');
    expect(rig.came()).toEqual(['counted']);
    expect(rig.count48()).toBe(108);
  });

  test('C5: the same wrong word twice takes it, and take-back undoes it', async () => {
    const rig = await at(24);
    rig.says('nine');
    rig.says('nine');
    expect(rig.came()).toEqual(['askedBack', 'counted']);
    rig.says('scratch that');
    expect(rig.count48()).toBe(24);
  });

  test('C5: an interim and a final of one utterance do not answer its own question', async () => {
    const rig = await at(24);
    rig.recogniser.plays([500, speech], [300, interim(0, 'nine')], [900, final(0, '9')]);
    expect(rig.came()).toEqual(['askedBack']);
    expect(rig.count48()).toBe(24);
  });

  test('C5: a press drops the question and counts from the last taken count', async () => {
    const rig = await at(24);
    rig.says('nine');
    rig.press({ type: 'step', size: 'step' });
    expect(rig.came()).toEqual(['askedBack', 'counted']);
    expect(rig.count48()).toBe(36);
    expect(options(rig)).toBeUndefined();
  });

  test('C5: take-back says no and undoes nothing else', async () => {
    const rig = await at(24);
    rig.says('nine');
    rig.says('take it back');
    expect(rig.came()).toEqual(['askedBack', 'takenBack']);
    expect(rig.count48()).toBe(24);
  });

  test('C5: after a reload the question is still open, and the same value takes it', async () => {
    const rig = await at(24);
    rig.says('nine');
    const reloaded = replay(rig.bench.log);
    expect(reloaded).toEqual(rig.bench.state());
    rig.ear.close();
    rig.says('nine');
    expect(rig.came()).toEqual(['askedBack']);
    expect(reloaded.asked?.question).toMatchObject({ about: 'count', options: [108] });
  });

  test('C5: after ten seconds it has lapsed', async () => {
    const rig = await at(24);
    rig.says('nine');
    rig.clock.advance(10_001);
    rig.says('nine');
    expect(rig.came()).toEqual(['askedBack', 'askedBack']);
  });
});

describe('zero and the seat', () => {
  test('C6: zero twice: at nought a soft tick, at more it is asked, and again starts over', async () => {
    const rig = await at(0);
    rig.says('zero lash');
    expect(rig.came()).toEqual(['unchanged']);
    rig.says('one');
    rig.says('zero lash now');
    rig.says('zero lash now');
    expect(rig.came()).toEqual(['counted', 'askedBack', 'restarted']);
    expect(rig.count48()).toBe(0);
  });

  test('C6: a recount without its zero is refused', async () => {
    const rig = await openRig('read');
    rig.says('count it again');
    rig.says('one');
    expect(rig.came()).toEqual(['repeatStarted', 'refused: not now']);
  });

  test('C11: a count said before the seat and heard after it is asked', async () => {
    const rig = await at(48);
    rig.recogniser.plays([500, speech], [200, interim(0, 'five and')]);
    rig.press({ type: 'seat', loose: false });
    rig.recogniser.plays([700, final(0, 'five and a half')]);
    expect(rig.came()).toEqual(['seated', 'askedBack']);
    expect(rig.bench.state().asked?.question).toMatchObject({ why: 'began before the seat' });
  });

  test('C8: ‘how far?’ by voice: half, an hour, a number, and just shy', async () => {
    for (const [said, past48] of [
      ['half', 6],
      ['half past one', 6],
      ['four and a quarter', 3],
      ['just shy of five', 9],
      ['nothing', 0],
    ] as const) {
      const rig = await openRig('landing');
      rig.says(said);
      const reading = rig.bench.state().readings.at(-1);
      expect(reading?.kind === 'counted' ? reading.landing?.past48 : null).toBe(past48);
    }
  });

  test('C8: at ‘how far?’ a number waits for its end, since it may go on', async () => {
    const rig = await openRig('landing');
    rig.recogniser.plays(
      [500, speech],
      [300, interim(0, 'four')],
      [900, final(0, 'four and a half')],
    );
    const reading = rig.bench.state().readings.at(-1);
    expect(rig.came()).toEqual(['landed']);
    expect(reading?.kind === 'counted' ? reading.landing?.past48 : null).toBe(6);
  });
});

describe('bad input', () => {
  test('numbers out of range, phrases in the wrong stage, two in one breath, silence, babble', async () => {
    const rig = await at(24);
    rig.says('forty-one');
    rig.says('99');
    rig.says('hands clear');
    rig.says('three four five');
    rig.says('rocker bottomed');
    rig.says('');
    rig.says('well I never saw such a thing in all my days');
    rig.recogniser.plays([100, ended]);
    rig.clock.advance(1000);
    expect(rig.came()).toEqual([
      'refused: past the most',
      'refused: past the most',
      'refused: not now',
    ]);
    expect(rig.captions.slice(1).map(({ kind }) => kind)).toEqual([
      'taken',
      'taken',
      'taken',
      'missed',
      'outside',
      'outside',
    ]);
    expect(rig.count48()).toBe(24);
  });

  test('mended by voice: the cylinder, then a pause, then on', async () => {
    const rig = await openRig('read');
    rig.says("wrong cylinder, it's 8");
    expect(rig.bench.state().readings.at(-1)?.valve).toEqual({ cylinder: 8, valve: 'exhaust' });
    rig.says('hold on');
    rig.says('one more');
    rig.says('carry on');
    expect(rig.came()).toEqual(['readingMoved', 'held', 'refused: not now', 'resumed']);
  });

  test('with a carrier word set, a bare number counts nothing and says what to say', async () => {
    const rig = await openRig('counting', { carrier: 'count' });
    rig.says('five');
    rig.says('count five');
    expect(rig.came()).toEqual(['counted']);
    expect(rig.captions).toMatchObject([
      { kind: 'missed', why: 'carrier', understood: 'count five' },
      { kind: 'taken', understood: 'count five' },
    ]);
    expect(rig.count48()).toBe(turn48(60));
  });
});
