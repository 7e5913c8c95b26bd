import { expect, inject, test } from 'vitest';
import { metaPolicy, servedHeaders } from '../../scripts/serving-rules.mjs';
import { appUrl, firstPage, openApp, openBrowser } from './harness';
import { demoAtRest } from './steps/demoJob';
import { benchStages, goTo, otherScreens } from './steps/stages';

test('every screen and stage keeps to the policy, and nothing is asked of another origin', async () => {
  const browser = await openBrowser({
    args: ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'],
  });
  const page = await firstPage(browser);
  const asked: string[] = [];
  browser.context.on('request', (request) => asked.push(request.url()));
  const violated: string[] = [];
  await page.exposeFunction('violated', (what: string) => violated.push(what));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      Reflect.get(window, 'violated')(`${event.violatedDirective}: ${event.blockedURI}`);
    });
  });
  await openApp(page);
  await demoAtRest(page);
  for (const stage of benchStages) await stage.to(page);
  for (const { hash } of otherScreens) await goTo(page, hash);

  expect(violated).toEqual([]);
  const origin = new URL(inject('appUrl')).origin;
  const strange = asked.filter((url) => new URL(url).origin !== origin);
  expect(strange).toEqual([]);
  expect(asked.length).toBeGreaterThan(20);
});

test('what the policy is there for is refused: inline script, eval, another origin', async () => {
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await openApp(page, '#/about');
  const tried = await page.evaluate(async () => {
    const inline = document.createElement('script');
    inline.textContent = 'window.ran = "inline"';
    document.body.append(inline);
    const frame = document.createElement('iframe');
    frame.src = 'https://example.org/';
    document.body.append(frame);
    const attempts = {
      fetched: await fetch('https://example.org/').then(
        () => 'fetched',
        () => 'refused',
      ),
      // Later, as what a test itself runs may evaluate.
      evaluated: await new Promise((resolve) => {
        setTimeout(() => {
          try {
            resolve(Reflect.apply(Reflect.get(window, 'eval'), null, ['"evaluated"']));
          } catch {
            resolve('refused');
          }
        });
      }),
      inline: Reflect.get(window, 'ran') ?? 'refused',
    };
    inline.remove();
    frame.remove();
    return attempts;
  });
  expect(tried).toEqual({ fetched: 'refused', evaluated: 'refused', inline: 'refused' });
  const refused = browser.faults.splice(0);
  expect(refused.length).toBeGreaterThanOrEqual(3);
  for (const fault of refused) expect(fault).toMatch(/Content Security Policy/);
});

test('the page and its files carry the headers; the page carries the policy for hosts that send none', async () => {
  const browser = await openBrowser();
  for (const path of ['', 'icon.svg', 'offline.js']) {
    const answer = await browser.context.request.get(appUrl(path));
    const headers = answer.headers();
    for (const [name, value] of Object.entries(servedHeaders())) {
      expect(headers[name.toLowerCase()], `${path} ${name}`).toBe(value);
    }
  }
  const page = await firstPage(browser);
  await openApp(page, '#/about');
  const policy = page.locator('meta[http-equiv="Content-Security-Policy"]');
  expect(await policy.getAttribute('content')).toBe(metaPolicy());
  expect(await page.locator('script:not([src])').count()).toBe(0);
  const missing = await browser.context.request.get(appUrl('assets/not-there.js'));
  expect(missing.status()).toBe(404);
});
