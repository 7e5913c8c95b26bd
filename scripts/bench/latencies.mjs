/** Aims for the 95th percentile, ms, at full speed and slowed four times. */
const aims = /** @type {const} */ ({
  'press to tick scheduled': { 1: 8, 4: 25 },
  'press to painted': { 1: 50, 4: 100 },
  'press to kept': { 1: 100, 4: 100 },
});
const PRESSES = 120;
/** Between presses, ms: uneven, so that they don't keep step with the frames. */
const gapOf = (/** @type {number} */ n) => 130 + ((n * 37) % 60);

/**
 * In the page: when the last press happened, and from there until its tick is scheduled, its picture
 * painted and its write complete.
 */
function watch() {
  /** @typedef {Record<string, number[]>} Found */
  /** @type {Found} */
  const found = { 'press to tick scheduled': [], 'press to painted': [], 'press to kept': [] };
  /** @type {Set<string>} */
  let open = new Set();
  let pressedAt = 0;
  /** @type {AudioContext | null} */
  let audio = null;
  /** @param {string} what */
  const reached = (what) => {
    if (open.delete(what)) found[what]?.push(performance.now() - pressedAt);
  };
  const audioOf = () => ({
    latency: audio === null ? null : audio.outputLatency * 1000,
    state: audio?.state ?? 'none',
  });
  Object.assign(globalThis, { __found: found, __audio: audioOf });
  addEventListener(
    'keydown',
    ({ timeStamp }) => {
      pressedAt = timeStamp;
      open = new Set(Object.keys(found));
    },
    true,
  );
  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function started(when) {
    audio = /** @type {AudioContext} */ (this.context);
    reached('press to tick scheduled');
    return start.call(this, when);
  };
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function began(...given) {
    const made = transaction.apply(this, given);
    if (made.mode === 'readwrite' && [...made.objectStoreNames].includes('events'))
      made.addEventListener('complete', () => reached('press to kept'));
    return made;
  };
  const painted = new MessageChannel();
  painted.port1.onmessage = () => reached('press to painted');
  // The dial alone: it changes at every press and nothing but a press changes it.
  new MutationObserver((changes) => {
    const dial = changes.some(({ target }) => target instanceof Element && target.closest('svg'));
    // After the frame's own work, when the picture goes to the screen.
    if (dial) requestAnimationFrame(() => painted.port2.postMessage(null));
  }).observe(document, { subtree: true, attributeFilter: ['aria-label'] });
}

/**
 * The time from a press to its tick, its picture and its keeping, on the demo job.
 * @param {import('./app.mjs').App} app
 * @param {number} slowed how many times the processor is slowed
 * @returns {Promise<string[][]>} rows of the table
 */
export async function latencies(app, slowed) {
  const { page, close } = await app.device();
  try {
    await page.addInitScript(watch);
    await page.goto(app.url);
    await page.getByText('Press any key to go on').waitFor();
    await page.keyboard.press('Space');
    await page.waitForTimeout(500);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await page.evaluate(() => {
      for (const list of Object.values(Reflect.get(globalThis, '__found'))) list.length = 0;
    });
    for (let n = 0; n < PRESSES; n += 1) {
      await page.keyboard.press(n % 2 === 0 ? 'Space' : 'Backspace');
      await page.waitForTimeout(gapOf(n) * Math.sqrt(slowed));
    }
    const { found, audio } = await page.evaluate(() => ({
      /** @type {Record<string, number[]>} */
      found: Reflect.get(globalThis, '__found'),
      /** @type {{ latency: number | null, state: string }} */
      audio: Reflect.get(globalThis, '__audio')(),
    }));
    const rows = Object.entries(aims).map(([what, aim]) =>
      row(what, slowed, found[what] ?? [], aim[slowed === 4 ? 4 : 1]),
    );
    const latency = audio.latency === null ? `none (${audio.state})` : audio.latency.toFixed(1);
    return [...rows, ['outputLatency, as the browser tells it', `${slowed}×`, latency]];
  } finally {
    await close();
  }
}

/**
 * @param {string} what
 * @param {number} slowed
 * @param {number[]} times
 * @param {number} aim
 */
function row(what, slowed, times, aim) {
  const sorted = times.toSorted((a, b) => a - b);
  /** @param {number} share */
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  const shown = [at(0.5), at(0.95), sorted.at(-1)].map((ms) => ms?.toFixed(1) ?? 'none');
  const met = (at(0.95) ?? Number.POSITIVE_INFINITY) <= aim ? 'met' : 'missed';
  return [what, `${slowed}×`, ...shown, `${aim} (${met})`, `${times.length} of ${PRESSES}`];
}
