// npm run docs:lines: writes docs/spoken-lines.md from the words.
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { linesPage } = await loadTs('tests/words/linesPage.ts');
writeFileSync(resolve(root, 'docs/spoken-lines.md'), linesPage());
