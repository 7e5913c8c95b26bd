// npm run replay-ear FILE: what the ear made of a session, from its own saved log, in plain Node.
import { readFileSync } from 'node:fs';
import { ensureInstalled } from './installed.mjs';

const [file] = process.argv.slice(2);
if (!file) {
  console.error('Usage: npm run replay-ear FILE   (a log saved under Settings, Ear)');
  process.exit(2);
}
ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const { replayEar } = await loadTs('src/hearing/index.ts');

/** @returns {any} */
function readLog() {
  try {
    const log = JSON.parse(readFileSync(file ?? '', 'utf8'));
    if (Array.isArray(log.inputs) && typeof log.from === 'object') return log;
  } catch {
    // Said below, with what would be right.
  }
  console.error(`${file} is no ear log. Save one under Settings, Ear, and give its file here.`);
  process.exit(1);
}

const { state, effects } = replayEar(readLog());
for (const effect of effects) {
  if (effect.do === 'submit') console.log(`command   ${JSON.stringify(effect.body)}`);
  if (effect.do === 'caption') {
    const { kind, heard, understood } = effect.caption;
    console.log(`${kind.padEnd(9)} '${heard}'${understood === null ? '' : ` -> ${understood}`}`);
  }
  if (effect.do === 'notice') console.log(`ear       ${effect.notice.state}, ${effect.notice.why}`);
}
console.log(`${effects.length} effects; the ear ended ${state.phase}.`);
