// npm run replay FILE: prints a job's spoken log in plain Node, by the app's own rooms.
// FILE is a job as the app exports it, or a bare list of events. One line an announcement: its
// event's number, the time since the first event, and the caption.
import { readFileSync } from 'node:fs';
import { ensureInstalled } from './installed.mjs';

const LEVELS = ['terse', 'plain', 'teaching'];
const UNITS = ['inch', 'mm'];
const USAGE = `Usage: npm run replay FILE [${LEVELS.join('|')}] [${UNITS.join('|')}]`;

const [file, ...options] = process.argv.slice(2);
const known = options.every((option) => [...LEVELS, ...UNITS].includes(option));
if (!file || !known) {
  console.error(USAGE);
  process.exit(2);
}

/** @param {string} sentence @returns {never} */
function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

/** @param {string} path */
function textOf(path) {
  try {
    return readFileSync(path, 'utf8').replace(/^\uFEFF/, '');
  } catch {
    return stop(`${path} can't be read. Give the path of a job's file.`);
  }
}

/** @param {string} text @returns {unknown} */
function json(text) {
  try {
    return JSON.parse(text);
  } catch {
    return stop(`${file} is not JSON. Give a job's file as the app exports it.`);
  }
}

/**
 * The events of a job's file or of a bare list, lifted to the newest shape.
 * @param {any} value
 * @returns {Promise<readonly any[]>}
 */
async function eventsOf(value) {
  if (!Array.isArray(value) && value?.format !== 'turncaller job') {
    stop(`${file} is not a job's file. Give one as the app exports it, or a list of events.`);
  }
  const stored = Array.isArray(value) ? value : value.events;
  if (!Array.isArray(stored)) stop(`${file} holds no events.`);
  const { lift } = await loadTs('src/keeping/lift.ts');
  return stored.map((event, i) => {
    const lifted = lift(event);
    if (!lifted.ok)
      stop(`${file} can't be replayed: event ${i + 1} is not to be read (${lifted.why}).`);
    return lifted.event;
  });
}

/** @param {number} ms */
function clock(ms) {
  const seconds = Math.max(0, Math.round(ms / 1000));
  return `+${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

// `| head` closes the pipe early; that is no failure.
process.stdout.on('error', () => process.exit(0));
ensureInstalled();
const { loadTs } = await import('./load-ts.mjs');
const events = await eventsOf(json(textOf(file)));
const { spokenLog } = await loadTs('src/words/index.ts');
const context = {
  level: LEVELS.find((level) => options.includes(level)) ?? 'plain',
  units: UNITS.find((unit) => options.includes(unit)) ?? 'inch',
  numbers: 'shop',
  lengths: 'shop',
};
const first = events[0];
if (first?.type !== 'jobOpened') stop(`${file} holds no job: a job's first event opens it.`);
try {
  for (const { seq, at, caption } of spokenLog(events, context)) {
    console.log(`${String(seq).padStart(4)}  ${clock(at - first.at).padStart(7)}  ${caption}`);
  }
} catch {
  stop(`${file} can't be replayed to its end: what an event holds is damaged.`);
}
