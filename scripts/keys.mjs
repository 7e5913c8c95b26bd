// npm run docs:keys: writes docs/keys.md from the keys themselves.
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureInstalled } from './installed.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { keyList } = await import('./key-list.mjs');
const { root } = await import('./root.mjs');
const { defaultKeymap, stripOf } = await loadTs('src/pressing/index.ts');
const { shown } = await loadTs('src/words/index.ts');
writeFileSync(resolve(root, 'docs/keys.md'), keyList(stripOf(defaultKeymap), shown.keys));
