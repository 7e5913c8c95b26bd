import { expect, test } from 'vitest';
import type { CommandType } from '#counting';
import { hear } from '#words';
import { counting, grammarAt } from './grammars';
import { isPhrase } from './phraseOrNot';
import { seeded, talkLine, wordCount } from './shopTalk';

const LINES = 20_000;
const SEED = 20_251_125;

/** Commands that move a count, begin it or end it. */
const MOVES: ReadonlySet<CommandType> = new Set<CommandType>([
  'call',
  'step',
  'positionInTurn',
  'clock',
  'zero',
  'seat',
  'restart',
  'takeBack',
  'land',
]);

test(`${LINES} lines of shop talk and words thrown together: no count moves but by a phrase`, () => {
  const random = seeded(SEED);
  const grammars = [
    counting(),
    counting({ carrier: 'count' }),
    grammarAt('landing'),
    grammarAt('to start'),
  ];
  const moved: string[] = [];
  const found = { phrases: 0, moves: 0, meanings: 0, missed: 0, near: 0 };
  for (let i = 0; i < LINES; i += 1) {
    const line = talkLine(random);
    const phrase = isPhrase(line);
    if (phrase) found.phrases += 1;
    const hearing = hear(line, grammars[i % grammars.length] ?? counting());
    if (hearing.kind === 'missed') found.missed += 1;
    if (hearing.kind !== 'meaning') continue;
    found.meanings += 1;
    if (hearing.cost > 0) found.near += 1;
    const moves = hearing.meanings.some(
      (meaning) => meaning.kind === 'command' && MOVES.has(meaning.command.type),
    );
    if (moves) found.moves += 1;
    if (moves && !phrase) moved.push(`${line} → ${hearing.phrase}`);
  }
  console.info(
    `seed ${SEED}: ${LINES} lines from ${wordCount} words; ${found.phrases} are phrases, ` +
      `${found.meanings} heard as one (${found.near} by likeness), ${found.moves} move a count, ` +
      `${moved.length} of them no phrase; ${found.missed} missed`,
  );
  expect(moved).toEqual([]);
  expect(found.phrases).toBeGreaterThan(100);
  expect(found.moves).toBeGreaterThan(100);
});
