import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterEach, expect, inject } from 'vitest';
import { findChromium } from '../../scripts/chromium.mjs';

const args = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface BrowserOptions {
  /** Further switches for Chromium. */
  readonly args?: readonly string[];
  /** An existing profile to open again; it is left in place. Without one, a new one is made and removed. */
  readonly profile?: string;
  readonly viewport?: { readonly width: number; readonly height: number };
}

export interface Browser {
  readonly context: BrowserContext;
  /** The profile's folder: pass it on to open the same device again. */
  readonly profile: string;
  /** What pages said went wrong: uncaught errors and console errors, each with its page's address. */
  readonly faults: string[];
  close(): Promise<void>;
}

const open = new Set<Browser>();

/** Starts the system's Chromium with a profile of its own. Closed after the test, if the test did not. */
export async function openBrowser(options: BrowserOptions = {}): Promise<Browser> {
  const executablePath = process.env.CHROMIUM_PATH ?? findChromium();
  if (!executablePath)
    throw new Error('no Chromium found: run npm test, which says how to get one');
  const profile = options.profile ?? (await mkdtemp(join(tmpdir(), 'turncaller-browser-')));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    headless: false,
    args: [...args, ...(options.args ?? [])],
    viewport: options.viewport ?? { width: 1280, height: 800 },
  });
  const faults: string[] = [];
  for (const page of context.pages()) collectFaults(page, faults);
  context.on('page', (page) => collectFaults(page, faults));
  const browser: Browser = {
    context,
    profile,
    faults,
    async close() {
      if (!open.delete(browser)) return;
      await context.close();
      if (!options.profile) await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
  open.add(browser);
  return browser;
}

function collectFaults(page: Page, faults: string[]): void {
  page.on('pageerror', (error) => faults.push(`${page.url()}: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`${page.url()}: ${message.text()}`);
  });
}

/** The context's first page, or a new one where there is none. */
export async function firstPage(browser: Browser): Promise<Page> {
  return browser.context.pages()[0] ?? (await browser.context.newPage());
}

/** The address the build is served at, with a path or hash added. */
export function appUrl(path = ''): string {
  return new URL(path, inject('appUrl')).href;
}

/** Opens the app in a page and waits until it has drawn something. */
export async function openApp(page: Page, path = ''): Promise<void> {
  await page.goto(appUrl(path));
  await page.locator('#app > *').first().waitFor();
}

/** A test that means a fault to happen takes it out of browser.faults itself. */
afterEach(async () => {
  const browsers = [...open];
  const faults = browsers.flatMap((browser) => browser.faults);
  await Promise.all(browsers.map((browser) => browser.close()));
  expect(faults, 'pages reported no faults').toEqual([]);
});
