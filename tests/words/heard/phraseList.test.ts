import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { phraseList } from '../../../scripts/phrase-list.mjs';
import { GROUPS } from '../../../src/words/en/heard/groups';

test('the list of phrases in docs is made from the phrases as they are', () => {
  expect(readFileSync('docs/phrases.md', 'utf8')).toBe(phraseList(GROUPS));
});
