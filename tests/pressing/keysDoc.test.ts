import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { defaultKeymap, stripOf } from '#pressing';
import { shown } from '#words';
import { keyList } from '../../scripts/key-list.mjs';

test('docs/keys.md is what the keys do: npm run docs:keys makes it anew', () => {
  const doc = readFileSync(new URL('../../docs/keys.md', import.meta.url), 'utf8');
  expect(doc).toBe(keyList(stripOf(defaultKeymap), shown.keys));
  expect(doc).not.toContain('undefined');
});
