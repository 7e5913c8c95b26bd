import { describe, expect, test } from 'vitest';
import { openRig } from './rig';
import { ended, final, interim, speech } from './scriptedRecogniser';

describe('interims', () => {
  test('C11: an interim is a ghost: no event before it has stood 300 ms', async () => {
    const { recogniser, ear, clock, came, count48 } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'five')]);
    expect(ear.view().ghost).toEqual({ heard: 'five', understood: 'five' });
    clock.advance(299);
    expect(came()).toEqual([]);
    clock.advance(1);
    expect(came()).toEqual(['counted']);
    expect(count48()).toBe(60);
    recogniser.plays([400, final(0, '5')]);
    expect(came()).toEqual([]);
    expect(ear.view().ghost).toBeNull();
  });

  test('C11: interims that change are not taken while they change', async () => {
    const { recogniser, came, count48 } = await openRig('counting');
    recogniser.plays(
      [0, speech],
      [200, interim(0, 'fi')],
      [150, interim(0, 'five')],
      [250, interim(0, 'five and')],
      [150, interim(0, 'five and a')],
      [150, interim(0, 'five and a half')],
      [100, final(0, 'five and a half')],
    );
    expect(came()).toEqual(['counted']);
    expect(count48()).toBe(66);
  });

  test('C11: a count that grew after it was taken replaces its own', async () => {
    const { recogniser, came, count48 } = await openRig('counting');
    recogniser.plays(
      [0, speech],
      [300, interim(0, 'four')],
      [200, interim(0, '4')],
      [200, interim(0, '4 and')],
      [300, final(0, 'four and a half')],
    );
    expect(came()).toEqual(['unchanged', 'counted']);
    recogniser.plays([800, speech], [300, interim(1, 'five')], [900, final(1, '5 1/2')]);
    expect(came()).toEqual(['counted', 'takenBack counted']);
    expect(count48()).toBe(66);
  });

  test('C11: a count that ended as another command is withdrawn for it', async () => {
    const { recogniser, came, count48, given } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'five')], [900, final(0, "five o'clock")]);
    expect(given()).toEqual(['call', 'takeBack', 'clock']);
    expect(came()).toEqual(['counted', 'takenBack', 'counted']);
    expect(count48()).toBe(48 + 20);
  });

  test('C11: a count that ended as talk is withdrawn, and said so', async () => {
    const { recogniser, came, count48, captions } = await openRig('counting');
    recogniser.plays(
      [0, speech],
      [300, interim(0, 'five')],
      [900, final(0, 'five of those old nuts')],
    );
    expect(came()).toEqual(['counted', 'takenBack']);
    expect(count48()).toBe(48);
    expect(captions.map(({ kind }) => kind)).toEqual(['taken', 'withdrawn']);
  });

  test('C11: a press after it: a count that ended otherwise is not withdrawn but doubted', async () => {
    const { recogniser, came, count48, press, bench } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'five')], [400, interim(0, 'five o')]);
    press({ type: 'step', size: 'step' });
    recogniser.plays([400, final(0, "five o'clock")]);
    expect(came()).toEqual(['counted', 'counted', 'doubted']);
    expect(count48()).toBe(72);
    expect(bench.state().open?.doubtful).toBe(true);
  });

  test('C11: a number that only sounds like one waits for its end', async () => {
    const { recogniser, came } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'for')], [900, interim(0, 'for crying out')]);
    expect(came()).toEqual([]);
    recogniser.plays([300, final(0, 'for crying out loud')]);
    expect(came()).toEqual([]);
    recogniser.plays([900, speech], [300, interim(1, 'for')], [600, final(1, 'for')]);
    expect(came()).toEqual(['unchanged']);
  });

  test('C11: any other phrase waits until it stood 300 ms and begins no longer one', async () => {
    const { recogniser, clock, came, given } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'one more')]);
    clock.advance(299);
    expect(came()).toEqual([]);
    clock.advance(1);
    expect(given()).toEqual(['step']);
    recogniser.plays([500, final(0, 'one more')]);
    expect(given()).toEqual(['step']);
  });

  test.each([
    ['counting', 'scratch that', 'scratch that bit of rust', 'takenBack'],
    ['hands clear', 'hands clear', 'hands clear of the fan', 'handsClear'],
    ['pushrods loose', 'pushrods loose', 'pushrods loose in the box', 'bledDown'],
    ['cautions', 'cautions heard', 'cautions heard it all before', 'cautionsHeard'],
    ['held', 'carry on', 'carry on luggage', 'resumed'],
  ] as const)(
    'what nothing undoes waits for its end: %s, ‘%s’',
    async (stage, said, talk, came) => {
      const talked = await openRig(stage);
      talked.recogniser.plays([0, speech], [300, interim(0, said)], [2000, final(0, talk)]);
      expect(talked.came()).toEqual([]);
      const meant = await openRig(stage);
      meant.recogniser.plays([0, speech], [300, interim(0, said)], [900, final(0, said)]);
      expect(meant.came()).toEqual([came]);
    },
  );

  test('a command that ended as talk is withdrawn too, while it is the last thing done', async () => {
    const { recogniser, came, bench, captions } = await openRig('counting');
    recogniser.plays(
      [0, speech],
      [300, interim(0, "it's down")],
      [900, final(0, "it's down by the plug")],
    );
    expect(came()).toEqual(['seated', 'takenBack']);
    expect(bench.state().open?.phase).toBe('counting');
    expect(captions.map(({ kind }) => kind)).toEqual(['taken', 'withdrawn']);
  });

  test('C11: a phrase that begins a longer one waits for the end', async () => {
    const { recogniser, given } = await openRig('landing');
    recogniser.plays([0, speech], [300, interim(0, 'half')]);
    recogniser.plays([2000, interim(0, 'half past')]);
    expect(given()).toEqual([]);
    recogniser.plays([300, final(0, 'half past one')]);
    expect(given()).toEqual(['clock']);
  });

  test('C11: a count and its seat are two, in order, also when the count came first', async () => {
    const rig = await openRig('counting');
    rig.recogniser.plays([0, speech], [400, interim(0, 'five rocker seated')]);
    rig.clock.advance(300);
    expect(rig.came()).toEqual([]);
    rig.recogniser.plays([300, final(0, 'five, rocker seated')]);
    expect(rig.came()).toEqual(['counted', 'seated']);
    const grown = await openRig('counting');
    grown.recogniser.plays(
      [0, speech],
      [300, interim(0, 'five')],
      [700, final(0, 'five rocker seated')],
    );
    expect(grown.came()).toEqual(['counted', 'seated']);
    expect(grown.given()).toEqual(['call', 'seat']);
  });

  test('C11: an utterance makes one change: what is harmless is not followed by another', async () => {
    const { recogniser, given, captions } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'where am i')], [500, final(0, 'one more')]);
    expect(given()).toEqual(['ask']);
    expect(captions.map(({ kind }) => kind)).toEqual(['taken', 'missed']);
  });

  test('C11: what an utterance does itself changes nothing of what it means', async () => {
    const { recogniser, came, given } = await openRig('landing');
    recogniser.plays(
      [0, speech],
      [300, interim(0, 'four and a bit')],
      [900, final(0, 'for and a bit')],
    );
    expect(came()).toEqual(['landed']);
    expect(given()).toEqual(['land']);
  });

  test('a session that ends without a final gives what was last said', async () => {
    const { recogniser, came, count48 } = await openRig('counting');
    recogniser.plays([0, speech], [300, interim(0, 'five and a half')], [100, ended]);
    expect(came()).toEqual(['counted']);
    expect(count48()).toBe(66);
  });

  test('an empty text is nothing', async () => {
    const { recogniser, captions, ear } = await openRig('counting');
    recogniser.plays([300, interim(0, ' ')], [300, final(0, '')]);
    expect(captions).toEqual([]);
    expect(ear.view().ghost).toBeNull();
  });
});

describe('the end of an utterance', () => {
  test('C11: a count that began before the seat is asked, not taken', async () => {
    const { recogniser, press, came } = await openRig('counting');
    recogniser.plays([0, speech], [500, { type: 'speech ended' }]);
    press({ type: 'seat', loose: false });
    recogniser.plays([400, final(0, 'five')]);
    expect(came()).toEqual(['seated', 'askedBack']);
  });

  test('without a notice of speech, a text began as long ago as its words take', async () => {
    const { recogniser, commands, clock } = await openRig('counting');
    recogniser.plays([3000, final(0, 'one and a half turns')]);
    expect(commands).toHaveLength(1);
    expect(clock.now() - (commands[0]?.utterance.beganAt ?? 0)).toBe(300 + 4 * 120);
  });

  test('two finals for one utterance: the second is nothing', async () => {
    const { recogniser, given, captions } = await openRig('counting');
    recogniser.plays([0, speech], [400, final(0, 'one more')], [50, final(0, 'one more')]);
    expect(given()).toEqual(['step']);
    expect(captions).toHaveLength(1);
  });

  test('a final given again as if it were new is told apart by no speech having begun', async () => {
    const { recogniser, given, captions } = await openRig('counting');
    recogniser.plays([0, speech], [400, final(0, 'one more')], [200, final(1, 'one more')]);
    expect(given()).toEqual(['step']);
    expect(captions.map(({ kind }) => kind)).toEqual(['taken', 'repeat']);
    recogniser.plays([300, speech], [400, final(2, 'one more')]);
    expect(given()).toEqual(['step', 'step']);
  });

  test('a final that comes again longer is the same utterance grown', async () => {
    const { recogniser, given, came, count48, commands } = await openRig('counting');
    recogniser.plays(
      [0, speech],
      [400, final(0, 'five')],
      [200, final(1, 'five and a half')],
      [100, final(2, 'five and a half')],
    );
    expect(given()).toEqual(['call', 'call']);
    expect(new Set(commands.map(({ utterance }) => utterance.id)).size).toBe(1);
    expect(came()).toEqual(['counted', 'takenBack counted']);
    expect(count48()).toBe(66);
  });

  test('a new session that begins with what the last one ended with repeats itself', async () => {
    const { recogniser, given, clock } = await openRig('counting');
    recogniser.plays([0, speech], [1200, final(0, 'one more')], [100, ended]);
    clock.advance(150);
    expect(recogniser.sessions).toHaveLength(2);
    recogniser.opens();
    recogniser.plays([100, final(0, 'one more')]);
    expect(given()).toEqual(['step']);
    recogniser.plays([900, speech], [400, final(1, 'one more')]);
    expect(given()).toEqual(['step', 'step']);
  });

  test('of several readings a command may be picked, a count never', async () => {
    const { recogniser, given } = await openRig('counting');
    recogniser.plays([0, speech], [400, final(0, 'hive', 'five', 'dive')]);
    expect(given()).toEqual([]);
    recogniser.plays([900, speech], [400, final(1, 'rocket sealed', 'rocker seated', 'rock it')]);
    expect(given()).toEqual(['seat']);
  });

  test('an utterance has an id of its own, and a beginning before its end', async () => {
    const rig = await openRig('counting');
    for (const text of ['five', 'six', 'seven']) rig.says(text);
    expect(rig.came()).toEqual(['counted', 'counted', 'counted']);
    const utterances = rig.commands.map(({ utterance }) => utterance);
    expect(new Set(utterances.map(({ id }) => id)).size).toBe(3);
    const began = utterances.map(({ beganAt }) => beganAt);
    expect(began).toEqual([...began].sort((a, b) => a - b));
  });
});
