// npm run docs:browsers: writes docs/browser-support.md from the code that detects.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';

ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { browserFeaturesDoc } = await loadTs('src/platform/featuresDoc.ts');
writeFileSync(join(root, 'docs', 'browser-support.md'), browserFeaturesDoc());
