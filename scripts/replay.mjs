// npm run replay FILE: reads a job's file in plain Node, without a browser, by the app's own rooms.
import { readFileSync } from 'node:fs';
import { ensureInstalled } from './installed.mjs';

const [file] = process.argv.slice(2);
if (!file) {
  console.error('Usage: npm run replay FILE');
  process.exit(2);
}
ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { events } = JSON.parse(readFileSync(file, 'utf8'));
await loadTs('src/counting/index.ts');
await loadTs('src/words/index.ts');
console.error(`${events.length} events read, but counting and words do not replay a log yet.`);
process.exitCode = 1;
