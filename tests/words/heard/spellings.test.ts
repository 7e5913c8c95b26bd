import { describe, expect, test } from 'vitest';
import type { Calling } from '#counting';
import { type Grammar, type Hearing, hear } from '#words';
import { GROUPS } from '../../../src/words/en/heard/groups';
import { plainTokens } from '../../../src/words/en/heard/plainTokens';
import { callings, counting, grammarAt } from './grammars';

/** What was heard in one line: 'call 60', 'clock 16', 'missed near: zero lash', 'outside'. */
function inLine(hearing: Hearing): string {
  switch (hearing.kind) {
    case 'meaning':
      return hearing.meanings
        .map((meaning) => {
          if (meaning.kind !== 'command') return JSON.stringify(meaning);
          const { type, ...rest } = meaning.command;
          return [type, ...Object.values(rest)].join(' ');
        })
        .join(' + ');
    case 'missed':
      return `missed ${hearing.why}`;
    case 'outside':
      return 'outside';
  }
}

const heard = (text: string, grammar: Grammar = counting()) => inLine(hear(text, grammar));

describe('what recognisers write', () => {
  test.each([
    ['5', 'call 60 bare'],
    ['five', 'call 60 bare'],
    ['Five.', 'call 60 bare'],
    ['um, five', 'call 60 bare'],
    ['for', 'call 48 bare'],
    ['to', 'call 24 bare'],
    ['won', 'call 12 bare'],
    ['ate', 'call 96 bare'],
    ['5 1/2', 'call 66 bare'],
    ['5½', 'call 66 bare'],
    ['5.5', 'call 66 bare'],
    ['for and a half', 'call 54 bare'],
    ['four and a quarter', 'call 51 bare'],
    ['4 and 3/4', 'call 57 bare'],
    ['3/4', 'call 36 bare'],
    ['a quarter', 'call 12 bare'],
    ['four quarters', 'call 48 bare'],
    ['for quarters', 'call 48 bare'],
    ["4 o'clock", 'clock 16'],
    ['4:00', 'clock 16'],
    ['16:00', 'clock 16'],
    ['half past one', 'clock 6'],
    ['1:30', 'clock 6'],
    ['quarter to 12', 'clock 47'],
    ["12 o'clock", 'clock 0'],
    ['1/2 turn', 'positionInTurn 24'],
    ['3/4 of a turn', 'positionInTurn 36'],
    ['a full turn', 'positionInTurn 48'],
    ['one turn', 'call 48 turns'],
    ['to turns', 'call 96 turns'],
    ['1.5 turns', 'call 72 turns'],
    ['0 lash', 'zero'],
    ['zero last', 'zero'],
    ['Rocker seeded.', 'seat false'],
    ['it’s down', 'seat false'],
    ['its down', 'seat false'],
    ['1 more', 'step step'],
    ['another 1/2', 'step half quarter'],
    ['wrong cylinder it is 5', 'moveReading 5'],
    ['wrong cylinder, it’s five.', 'moveReading 5'],
    ['five, rocker seated', 'call 60 bare + seat false'],
    ['5 rocker seeded', 'call 60 bare + seat false'],
    ['for valve seated', 'call 48 bare + seat false'],
    ['half past one rocker seated', 'clock 6 + seat false'],
    ['one more rocker seated', 'step step + seat false'],
  ])('‘%s’ is %s', (text, meaning) => {
    expect(heard(text)).toBe(meaning);
  });

  test.each([
    ['zero', 'missed near'],
    ['seated', 'missed near'],
    ['skip', 'missed near'],
    ['wrong cylinder', 'missed unfinished'],
    ['just shy of', 'missed unfinished'],
    ['four five', 'missed two'],
    ['rocker seated rocker seated', 'missed two'],
    ['five rocker seated half', 'missed two'],
    ['five take it back', 'missed two'],
    ['five seated loose', 'missed two'],
    ['rocker seated five', 'missed two'],
    ['rocker heated', 'missed near'],
    ['scratch cat', 'missed near'],
    ['rocker bottomed', 'outside'],
    ['it bottomed', 'outside'],
    ['bottomed', 'outside'],
    ['five bottomed', 'outside'],
    ['', 'outside'],
    ['...', 'outside'],
    ['-5', 'outside'],
    ['one hundred', 'outside'],
    ['five hundred and six', 'outside'],
    ['half one', 'missed two'],
    ['one thirty', 'missed two'],
    ['a third', 'outside'],
    ['a sixteenth of a turn', 'outside'],
    ['pass me the half inch socket', 'outside'],
    ['that one is for you', 'outside'],
    ['what a day', 'outside'],
  ])('‘%s’ is %s', (text, meaning) => {
    expect(heard(text)).toBe(meaning);
  });

  test('what is near a phrase is taken with its cost; what ends a count must be nearer', () => {
    const taken = hear('read the sumary', counting());
    expect(taken).toMatchObject({ kind: 'meaning', phrase: 'read the summary' });
    expect(taken.kind === 'meaning' && taken.cost).toBeLessThanOrEqual(0.1);
    const seat = hear('rocker sated', counting());
    expect(seat).toMatchObject({ kind: 'meaning', phrase: 'rocker seated' });
    expect(heard('rocker seater')).toBe('missed near');
  });

  test('two phrases as near as each other are a tie, never a guess', () => {
    const tie = hear('next cylive', grammarAt('read'));
    expect(tie.kind).not.toBe('meaning');
    expect(heard('valker seated')).toMatch(/^missed (tie|near)$/);
  });

  test('only phrases that make sense now are taken by likeness', () => {
    expect(heard('hands cleer', grammarAt('hands clear'))).toBe('handsClear');
    expect(heard('hands cleer', counting())).toBe('outside');
    expect(heard('hands clear', counting())).toBe('handsClear');
  });
});

describe('ways of calling', () => {
  const by = (calling: Calling) => counting({ calling });

  test('turns: numbers are turns, quarters stay counts of quarters', () => {
    const turns = by({ way: 'turns' });
    expect(heard('one', turns)).toBe('call 48 bare');
    expect(heard('one and a quarter', turns)).toBe('call 60 bare');
    expect(heard('five quarters', turns)).toBe('call 60 bare');
    expect(heard('four and a bit', turns)).toBe('call 195 bare');
    expect(heard('half turn', turns)).toBe('positionInTurn 24');
  });

  test('strokes: numbers are strokes of the set angle', () => {
    const strokes = by({ way: 'strokes', degrees: 60 });
    expect(heard('six', strokes)).toBe('call 48 bare');
    expect(heard('six strokes', strokes)).toBe('call 48 bare');
    expect(heard('four quarters', strokes)).toBe('call 48 bare');
    expect(heard('six strokes')).toBe('outside');
  });

  test('a bare half is always the landing, whatever is called', () => {
    for (const calling of callings) {
      for (const text of ['half', 'a half', '1/2']) {
        expect(heard(text, counting({ calling }))).toBe('land half');
        expect(heard(text, grammarAt('landing', { calling }))).toBe('land half');
      }
    }
  });
});

describe('with a carrier word', () => {
  const carried = counting({ carrier: 'count' });

  test('a count needs it, other phrases do not', () => {
    expect(heard('count five', carried)).toBe('call 60 bare');
    expect(heard('count five and a half', carried)).toBe('call 66 bare');
    expect(heard('count four quarters', carried)).toBe('call 48 bare');
    expect(heard('count five rocker seated', carried)).toBe('call 60 bare + seat false');
    expect(heard('rocker seated', carried)).toBe('seat false');
    expect(heard('half turn', carried)).toBe('positionInTurn 24');
    expect(heard('one more', carried)).toBe('step step');
  });

  test('a count without it is missed, and what to say is told', () => {
    expect(hear('five', carried)).toMatchObject({
      kind: 'missed',
      why: 'carrier',
      near: 'count five',
    });
    expect(heard('for', carried)).toBe('missed carrier');
    expect(heard('count', carried)).toBe('outside');
  });

  test('the word begins a longer phrase', () => {
    expect(hear('count', carried).waits).toBe(true);
    expect(hear('count five', carried).waits).toBe(true);
  });
});

describe('what waits for its end', () => {
  test.each([
    ['rocker', true],
    ['rocker seated', false],
    ['five', true],
    ['one', true],
    ['half turn', false],
    ["four o'clock", false],
    ['wrong cylinder', true],
    ["wrong cylinder it's one", true],
    ['scratch that', false],
    ['zero lash', false],
    ['stop', false],
    ['hands', false],
    ['banana', false],
    ['', false],
  ])('counting, ‘%s’: %s', (text, waits) => {
    expect(hear(text, counting()).waits).toBe(waits);
  });

  test('only for what makes sense now', () => {
    expect(hear('next', grammarAt('read')).waits).toBe(true);
    expect(hear('next', counting()).waits).toBe(false);
    expect(hear('half', grammarAt('landing')).waits).toBe(true);
  });
});

describe('the phrases themselves', () => {
  test('no spelling belongs to two phrases', () => {
    const spellings = GROUPS.flatMap(({ fixed }) =>
      fixed.flatMap(({ said, written = [] }) =>
        [...new Set([said, ...written].map((text) => plainTokens(text).join(' ')))].map((text) => ({
          text,
          said,
        })),
      ),
    );
    const twice = spellings.filter(({ text, said }) =>
      spellings.some((other) => other.text === text && other.said !== said),
    );
    expect(twice).toEqual([]);
    expect(spellings.length).toBeGreaterThan(100);
  });

  test('every fixed phrase and every example is heard as its own group means it', () => {
    const grammars = callings.flatMap((calling) => [
      counting({ calling }),
      grammarAt('landing', { calling }),
    ]);
    for (const { name, fixed, numbers } of GROUPS) {
      const commands = [...fixed, ...numbers].flatMap((phrase) => phrase.commands);
      const texts = [
        ...fixed.flatMap(({ said, written = [] }) => [said, ...written]),
        ...numbers.flatMap(({ examples }) => examples),
      ];
      for (const text of texts) {
        const found = grammars.map((grammar) => hear(text, grammar));
        const types = found.flatMap((hearing) =>
          hearing.kind === 'meaning' && hearing.cost === 0
            ? hearing.meanings.map((m) => (m.kind === 'command' ? m.command.type : m.kind))
            : [],
        );
        const allowed: readonly string[] = [...commands, 'talk', 'ear', 'land'];
        expect([name, text, types.length > 0]).toEqual([name, text, true]);
        expect(allowed).toEqual(expect.arrayContaining(types));
      }
    }
  });

  test('one syllable is a number, ‘stop’, ‘half’, and nothing else', () => {
    const short = GROUPS.flatMap(({ fixed }) => fixed.map(({ said }) => said)).filter(
      (said) => said.length <= 5,
    );
    expect(short).toEqual(['half', 'stop']);
  });
});
