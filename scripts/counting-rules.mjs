// npm run docs:rules: writes docs/counting-rules.md from the tables the rules are tested by.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { rulesDoc } = await loadTs('tests/counting/rulesDoc.ts');
writeFileSync(join(root, 'docs', 'counting-rules.md'), rulesDoc());
console.log('docs/counting-rules.md written.');
