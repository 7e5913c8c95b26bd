import { describe, expect, test } from 'vitest';
import { usualWalk } from '#counting';
import { say } from '#words';
import { bench, words } from './bench';
import { moments } from './moments';
import { context, setUp } from './samples';

type Line = readonly [moment: string, terse: string, plain: string];

const table: readonly Line[] = [
  [
    'position of many valves',
    'To stop two. Hands clear?',
    'Position two of two: exhausts of two, five, six and seven, intakes of three, four, six and eight. Hands clear?',
  ],
  [
    'turn, to a position of many valves',
    'Turn one full turn. Watch one cross.',
    "Turn the crank one full turn in its running direction. Watch one's lifters cross. Say crank's there.",
  ],
  [
    'position, overshot',
    'Round again to eight. Hands clear?',
    'Round again to eight. Hands clear?',
  ],
  [
    'turn, overshot',
    'Go round again: two turns. Watch five cross.',
    "Go round again: two turns, in the running direction. Five is its companion: watch its lifters cross. Say crank's there.",
  ],
  [
    'turn, by a degree wheel',
    "Turn sixty. Forty-five past six's firing.",
    "Turn the crank sixty degrees in its running direction. Stop forty-five degrees past six's firing top dead centre, by a degree wheel. Say crank's there.",
  ],
  [
    'turn, watching its valves',
    "Turn ninety. Eight's intake shuts, then piston up.",
    "Turn the crank ninety degrees in its running direction. Eight's intake opens, then shuts: its piston's next time up is the place. Say crank's there.",
  ],
  [
    'turn, exhaust opening',
    "Turn sixty. Eight's exhaust starts to open.",
    "Turn the crank sixty degrees in its running direction. Stop as eight's exhaust just starts to open. Say crank's there.",
  ],
  [
    'turn, intake closing',
    "Turn sixty. Eight's intake nearly shut.",
    "Turn the crank sixty degrees in its running direction. Stop when eight's intake is nearly shut. Say crank's there.",
  ],
  [
    'turn, timing dots',
    'Turn ninety. Dots together.',
    "Turn the crank ninety degrees in its running direction. Stop with the timing dots together. Say crank's there.",
  ],
  [
    'first position, past the dots',
    'Bring the dots together, then turn one eighty. Watch five cross.',
    "Bring the timing dots together, then turn the crank one eighty degrees on in its running direction. Five is its companion: watch its lifters cross. Say crank's there.",
  ],
  [
    'wrong valve, not shut where the crank stood',
    'Now five exhaust. Not shut where the crank stood.',
    'Eight exhaust is now five exhaust. Not shut where the crank stood: count it again.',
  ],
];

describe('the crank walk, said', () => {
  test.each(table)('%s', (name, terse, plain) => {
    const fact = moments.find(({ moment }) => moment === name)?.fact;
    if (fact === undefined) throw new Error(`No moment ${name}.`);
    const at = (level: 'terse' | 'plain') =>
      say(
        {
          fact,
          cue: null,
          timing: 'at once',
          keptThrough: 0,
          perishable: fact.kind === 'turn crank',
        },
        context(level),
      );
    expect([at('terse'), at('plain')]).toEqual([terse, plain]);
  });

  test('terse, sixteen valves in two positions take at most 300 words, and two turns', () => {
    const walk = { ...usualWalk, method: 'fewest stops' as const };
    const run = bench(setUp({ walk }), context('terse', 'inch', { hands: 'alone' }));
    run.act({ type: 'advance' }, 10);
    for (let valve = 0; valve < 16; valve += 1) {
      if (valve === 8) run.act({ type: 'advance' }, 300);
      if (valve % 8 === 0) run.act({ type: 'advance' }, 20);
      run.act({ type: 'advance' }, 8);
      for (let count = 0; count < 4; count += 1) run.act({ type: 'step', size: 'step' }, 1);
      run.act({ type: 'advance' }, 1.2);
      run.act({ type: 'step', size: 'step' }, 0.5);
      run.act({ type: 'advance' }, 2);
    }
    const said = run.heard.map(({ line }) => line);
    expect(run.state().readings).toHaveLength(16);
    expect(said.filter((line) => /\bturn\b|bring/i.test(line))).toEqual([
      'Bring the crank round to stop one. Watch six cross.',
      'Stop two. Turn one full turn. Watch one cross.',
    ]);
    console.log(`${words(said)} words for sixteen valves in two positions.`);
    expect(words(said)).toBeLessThanOrEqual(300);
  });
});
