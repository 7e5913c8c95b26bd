// How soon a speech service that is there and dead is noticed and said, in a real Chromium. The
// service of this Chromium fails at once by itself; a silent one, which answers nothing, is put in
// its place for the second figure. The aim is 5 s.
import { servedApp } from './bench/app.mjs';

const AIM_S = 5;

/** Leaves the browser with its own service: the ear that needs no network can't run. */
function withoutOfflineEar() {
  Reflect.deleteProperty(globalThis, 'AudioWorkletNode');
}

/** A service that takes the call and never says a word. */
function silence() {
  class Silent {
    start() {}
    stop() {}
    abort() {}
  }
  Object.assign(globalThis, { webkitSpeechRecognition: Silent });
  Object.defineProperty(globalThis, 'SpeechRecognition', { value: undefined });
}

/**
 * @param {import('./bench/app.mjs').App} app
 * @param {boolean} silent
 * @returns {Promise<number>} seconds from opening the ear to its caption
 */
async function toldAfter(app, silent) {
  const device = await app.device();
  try {
    const { page } = device;
    await page.context().grantPermissions(['microphone']);
    await page.addInitScript(withoutOfflineEar);
    if (silent) await page.addInitScript(silence);
    await page.goto(app.url);
    await page.locator('main[data-stage]').waitFor();
    await page.keyboard.press('Space');
    await page.waitForTimeout(200);
    await page.keyboard.press('NumpadDivide');
    const agree = page.getByRole('button', { name: 'Agree, and listen' });
    await agree.waitFor();
    const from = performance.now();
    await agree.click();
    await page
      .getByText(/no ear at three\. Use the pedal or the keys\./)
      .first()
      .waitFor();
    return (performance.now() - from) / 1000;
  } finally {
    await device.close();
  }
}

const app = await servedApp();
try {
  for (const silent of [false, true]) {
    const s = await toldAfter(app, silent);
    const what = silent ? 'a service that answers nothing' : 'this Chromium’s own dead service';
    console.log(
      `${what}: said after ${s.toFixed(2)} s (aim ${AIM_S} s: ${s <= AIM_S ? 'met' : 'missed'})`,
    );
  }
} finally {
  await app.close();
}
