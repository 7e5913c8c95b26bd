import { type ChildProcess, spawn } from 'node:child_process';
import { afterEach, expect, test } from 'vitest';
import { firstPage, openBrowser } from './harness';

const started: ChildProcess[] = [];

afterEach(async () => {
  for (const child of started.splice(0)) {
    if (child.exitCode !== null || child.signalCode !== null) continue;
    const gone = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGKILL');
    await gone;
  }
});

interface Start {
  readonly child: ChildProcess;
  /** What it has printed until now. */
  output(): string;
  readonly ended: Promise<number | null>;
}

function start(...args: readonly string[]): Start {
  const child = spawn(process.execPath, ['scripts/start.mjs', ...args], { stdio: 'pipe' });
  started.push(child);
  let output = '';
  child.stdout.on('data', (chunk) => {
    output += chunk;
  });
  child.stderr.on('data', (chunk) => {
    output += chunk;
  });
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  return { child, output: () => output, ended };
}

test('npm start serves the app where it says, on this machine alone, and stops when told', async () => {
  const { child, output, ended } = start('--port', '0');
  await expect.poll(output, { timeout: 60_000 }).toContain('Ctrl-C stops it.');
  const address = /Turncaller is at (http:\/\/127\.0\.0\.1:\d+\/)/.exec(output())?.[1];
  expect(address).toBeDefined();
  expect(output()).not.toMatch(/microphone|and at/);
  const browser = await openBrowser();
  const page = await firstPage(browser);
  await page.goto(String(address));
  await page.locator('main').first().waitFor();
  expect(await page.title()).toMatch(/Turncaller$/);
  await browser.close();
  child.kill('SIGTERM');
  await ended;
  await expect(fetch(String(address))).rejects.toThrow();
});

test('npm start -- --lan says what will not work from another machine', async () => {
  const { output } = start('--lan', '--port', '0');
  await expect.poll(output, { timeout: 60_000 }).toContain('Ctrl-C stops it.');
  for (const lost of ['microphone', 'wake lock', 'locks', 'service worker', 'https']) {
    expect(output()).toContain(lost);
  }
});

test('npm start with an argument it does not know says how it is used', async () => {
  for (const args of [['--wide'], ['--port', 'many']]) {
    const { output, ended } = start(...args);
    expect(await ended).toBe(2);
    expect(output()).toContain('Usage: npm start');
  }
});
