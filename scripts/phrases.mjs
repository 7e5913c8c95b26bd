// npm run docs:phrases: writes docs/phrases.md from the phrases themselves.
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureInstalled } from './installed.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { phraseList } = await import('./phrase-list.mjs');
const { root } = await import('./root.mjs');
const { GROUPS } = await loadTs('src/words/en/heard/groups.ts');
writeFileSync(resolve(root, 'docs/phrases.md'), phraseList(GROUPS));
