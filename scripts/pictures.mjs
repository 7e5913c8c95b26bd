// npm run pictures: the README's pictures, made from the real app with the demo job.
// With -- --all DIR every screen and every state, at three sizes, in both shops, into DIR, with a
// gallery to look through: DIR/index.html.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { servedApp } from './bench/app.mjs';
import { everything } from './pictures/everything.mjs';
import { typePlan } from './pictures/plan.mjs';
import { smallPng } from './pictures/smallPng.mjs';
import { come, demo, goTo, screens, sizes, stages } from './pictures/walk.mjs';
import { root } from './root.mjs';

/** @typedef {import('playwright-core').Page} Page */

const { values: asked } = parseArgs({ options: { all: { type: 'string' } } });

const README_KB = 150;
/**
 * The README's own.
 * @param {import('./bench/app.mjs').App} app
 */
async function forReadme(app) {
  const folder = join(root, 'docs/pictures');
  mkdirSync(folder, { recursive: true });
  /** @param {Page} page @param {string} name */
  const take = async (page, name) => {
    const path = join(folder, `${name}.png`);
    const png = smallPng(await page.screenshot());
    writeFileSync(path, png);
    console.log(`docs/pictures/${name}.png ${(png.length / 1000).toFixed(0)} kB`);
    if (png.length > README_KB * 1000) process.exitCode = 1;
  };
  for (const size of /** @type {const} */ (['tablet', 'phone', 'shop'])) {
    const { page, close } = await demo(app, sizes[size]);
    for (const stage of stages) {
      await come(page, stage);
      if (stage.name === 'counting') {
        // The count's own line, once the one about the voice has stood its time.
        await page.getByText('Four quarters:').first().waitFor();
        await page.waitForTimeout(200);
        await take(page, `bench-${size}`);
      }
      if (stage.name === 'read' && size === 'tablet') await take(page, 'read-tablet');
      if (stage.name === 'counting' && size !== 'tablet') break;
    }
    if (size === 'tablet') {
      for (const { name, hash } of screens.slice(0, 2)) {
        await goTo(page, hash);
        // Past the job's name, to where there is something to see.
        if (name === 'set-up')
          await page.locator('#step-engine').evaluate((at) => at.scrollIntoView());
        await take(page, `${name}-tablet`);
      }
      await goTo(page, '#/crank/demo-harrow-fen-pump-4');
      await take(page, 'crank-tablet');
      await goTo(page, '#/before');
      await typePlan(page);
      await page.locator('#plan-outcome').evaluate((at) => at.scrollIntoView());
      await take(page, 'before-tablet');
    }
    await close();
  }
}

const app = await servedApp();
try {
  await (asked.all === undefined ? forReadme(app) : everything(app, asked.all));
} finally {
  await app.close();
}
