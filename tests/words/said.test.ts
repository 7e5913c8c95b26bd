import { describe, expect, test } from 'vitest';
import type { Fact, FactKind } from '#counting';
import { turn48 } from '#valvetrain';
import { caption, say } from '#words';
import { words } from './bench';
import { figures, moments } from './moments';
import { context } from './samples';

const announced = (fact: Fact) =>
  ({ fact, cue: null, timing: 'at once', keptThrough: 0, perishable: false }) as const;
const levels = ['terse', 'plain', 'teaching'] as const;

function said(moment: string, level: (typeof levels)[number], change = {}): string {
  const found = moments.find((one) => one.moment === moment);
  if (found === undefined) throw new Error(`No moment ${moment}.`);
  return say(announced(found.fact), context(level, 'inch', change));
}

/** VOICE's table of lines: terse, then plain; '' is a tick, undefined where the table is silent. */
const table: readonly (readonly [string, string | undefined, string | undefined])[] = [
  [
    'position, with a helper',
    'To eight. Hands clear?',
    'Position two of eight: cylinder eight. Hands clear?',
  ],
  [
    'turn, hands clear',
    'Turn ninety. Watch five cross.',
    "Turn the crank ninety degrees in its running direction. Five is its companion: watch its lifters cross. Say crank's there.",
  ],
  ['valve', 'Eight exhaust.', 'Exhaust of eight: run it down to zero lash.'],
  ['zero', '', 'Zero. Mark the socket at twelve.'],
  ['pause after a count', 'four, seventy-eight', undefined],
  [
    'the verdict changed',
    'four, seventy-eight, fits',
    'Four quarters: seventy-eight thousandths, fits, light side.',
  ],
  ['past the window', 'six, one seventeen, heavy', undefined],
  ['asked back', 'had two, heard nine?', 'Had two, heard nine. Say it again if it is nine.'],
  ['asked back, position', 'two, or six?', undefined],
  ['asked back, zero', 'four counted: start over?', undefined],
  ['asked back, crossing the seat', 'heard five as you seated at four', undefined],
  ['the same count again', 'still four', undefined],
  ['seated', 'How far?', undefined],
  ['result', 'Four and a half, eighty-eight, fits.', undefined],
  ['next on the cylinder', 'Intake.', undefined],
  [
    'cylinder done',
    'Seven to go.',
    'Cylinder one: exhaust seventy-eight, intake eighty-eight. Seven to go.',
  ],
  ['where am I', 'One intake, three counted. Socket at nine.', undefined],
  [
    'resumed',
    'Back at one intake, four and a half. Socket at half past one. Moved? Say start this valve over.',
    undefined,
  ],
  ['all done', 'Sixteen read. One length fits all: eight, one fifty.', undefined],
  ['before the crank moves again', 'Pushrods loose?', undefined],
  ['taken back', 'Taken back. Four, seventy-eight.', undefined],
];

describe('the table of lines, to the letter', () => {
  test.each(table)('%s', (moment, terse, plain) => {
    if (terse !== undefined) expect(said(moment, 'terse')).toBe(terse);
    if (plain !== undefined) expect(said(moment, 'plain')).toBe(plain);
  });

  test('the result in full adds the valve; the limits only where it is outside them', () => {
    expect(said('result', 'plain')).toBe(
      'Exhaust of eight: four and a half, eighty-eight thousandths, fits.',
    );
  });

  test('alone, the turn is told at once, with where to', () => {
    expect(said('turn, hands clear', 'terse', { hands: 'alone' })).toBe(
      'Eight. Turn ninety. Watch five cross.',
    );
  });
});

describe('every moment', () => {
  const kinds = new Set<FactKind>(moments.map(({ fact }) => fact.kind));
  const every = moments.flatMap(({ moment, fact }) =>
    levels.flatMap((level) =>
      (['inch', 'mm'] as const).flatMap((units) =>
        (['shop', 'cardinal'] as const).map((numbers) => {
          const said = context(level, units, { numbers, lengths: numbers });
          return {
            moment,
            fact,
            said: say(announced(fact), said),
            shown: caption(announced(fact), said),
          };
        }),
      ),
    ),
  );

  test('all kinds of fact have one', () => {
    const all: Record<FactKind, true> = {
      'job opened': true,
      cautions: true,
      'hands clear?': true,
      'turn crank': true,
      'pushrods loose?': true,
      'pushrods loose': true,
      valve: true,
      start: true,
      counted: true,
      still: true,
      'asked back': true,
      doubted: true,
      'how far?': true,
      tapped: true,
      read: true,
      'dial read': true,
      'cylinder done': true,
      'all read': true,
      skipped: true,
      restarted: true,
      moved: true,
      torqued: true,
      'taken back': true,
      held: true,
      'back at': true,
      where: true,
      left: true,
      summary: true,
      'how sure': true,
      'set-up changed': true,
      'round started': true,
      'pushrod fitted': true,
      'job discarded': true,
      'job restored': true,
      refused: true,
      'not kept': true,
      'kept again': true,
      'read only': true,
      'no voice': true,
      ear: true,
      'ear lost': true,
      'sound check': true,
    };
    expect([...kinds].sort()).toEqual(Object.keys(all).sort());
  });

  test('is captioned, by its own line where it is spoken, without a broken figure', () => {
    expect(every.length).toBe(moments.length * 12);
    for (const { moment, said, shown } of every) {
      expect(shown, moment).not.toBe('');
      if (said !== '') expect(shown, moment).toBe(said);
      expect(`${said} ${shown}`, moment).not.toMatch(
        /NaN|undefined|null|Infinity|\bminus\b|,,| {2}|\.\./,
      );
    }
  });

  test('names the turning of the crank only as an instruction', () => {
    for (const { fact, said } of every) {
      if (fact.kind !== 'turn crank') expect(said).not.toMatch(/\bturn\b|bring|bar it/i);
    }
  });

  test('teaching is the plain line and one sentence more', () => {
    const plain = every.filter(({ said }) => said !== '');
    expect(plain.length).toBeGreaterThan(0);
    for (const { moment } of moments) {
      const [full, taught] = [said(moment, 'plain'), said(moment, 'teaching')];
      expect(taught.startsWith(full), moment).toBe(true);
      expect(taught.slice(full.length).match(/[.?!]( |$)/g)?.length ?? 0).toBeLessThanOrEqual(1);
    }
  });
});

describe('between counts', () => {
  const counted = (quarters: number, preload: number | null, verdictChanged = true): Fact => ({
    kind: 'counted',
    count48: turn48(quarters * 12),
    figures: figures(preload),
    verdictChanged,
  });

  /** Words of the longest line at any thou up to the plunger's whole travel. */
  function longest(level: 'terse' | 'plain', units: 'inch' | 'mm'): number {
    const lines = Array.from({ length: 200 }, (_, i) =>
      say(announced(counted(Math.ceil((i + 1) / 19.5), i + 1)), context(level, units)),
    );
    return Math.max(...lines.map((line) => words([line])));
  }

  test('a line in thou is at most five words, in full seven', () => {
    expect([longest('terse', 'inch'), longest('plain', 'inch')]).toEqual([5, 7]);
  });

  test('in millimetres, whose figures are longer, it is at most two more', () => {
    expect([longest('terse', 'mm'), longest('plain', 'mm')]).toEqual([8, 9]);
  });

  test('the verdict is said only when it changed', () => {
    expect(say(announced(counted(5, 98, false)), context('plain'))).toBe(
      'Five quarters: ninety-eight thousandths.',
    );
  });

  test('a figure keeps a decimal where rounding would carry it across an edge', () => {
    expect(say(announced(counted(4, 74.6)), context('terse'))).toBe(
      'four, seventy-four point six, light',
    );
    expect(say(announced(counted(4, 78.2)), context('terse', 'mm'))).toBe(
      'four, one point nine nine, fits',
    );
  });

  test('past the plunger’s travel says so, verdict or not', () => {
    const fact = announced(counted(11, 215, false));
    expect(say(fact, context('terse'))).toBe("eleven, past the plunger's travel");
    expect(say(fact, context('plain'))).toBe("Eleven quarters: past the plunger's travel.");
  });

  test('where turns are called they are spoken back as turns', () => {
    const turns = { calling: 'turns' } as const;
    expect(say(announced(counted(5, 98, false)), context('terse', 'inch', turns))).toBe(
      'one and a quarter turns, ninety-eight',
    );
  });
});

test('with an alarm standing, a result ends not kept', () => {
  expect(said('result', 'terse', { unkept: true })).toBe(
    'Four and a half, eighty-eight, fits, not kept.',
  );
});

test('with adjustable rockers nothing is said of lengths or pushrods', () => {
  for (const level of levels) {
    expect(said('all done, adjustable rockers', level)).not.toMatch(/length|pushrod|order/i);
  }
});

test('the cautions are at most 25 words', () => {
  expect(words([said('cautions, once a job', 'terse')])).toBeLessThanOrEqual(25);
});
