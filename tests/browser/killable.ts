import { type ChildProcess, spawn } from 'node:child_process';
import { type BrowserContext, type Browser as Connection, chromium } from 'playwright-core';
import { findChromium } from '../../scripts/chromium.mjs';

const args = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--hide-crash-restore-bubble',
  '--remote-debugging-port=0',
];

/** A Chromium started as a process group of its own, so that all of it can be killed at once. */
export interface Killable {
  readonly context: BrowserContext;
  /** SIGKILL to every process of it, at once; nothing gets to tidy up. */
  kill(): void;
  /** Resolves when it is gone, killed or closed. */
  readonly gone: Promise<void>;
  close(): Promise<void>;
}

/** Opens a profile in a Chromium that can be killed. */
export async function openKillable(profile: string): Promise<Killable> {
  const program = findChromium();
  if (!program) throw new Error('no Chromium found: run npm test, which says how to get one');
  const child = spawn(program, [...args, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const connection = await chromium.connectOverCDP(await addressOf(child));
  const context = connection.contexts()[0];
  if (!context) throw new Error('Chromium opened no context');
  const kill = () => killGroup(child);
  return { context, kill, gone, close: () => closeDown(connection, kill, gone) };
}

function killGroup({ pid }: ChildProcess): void {
  if (pid === undefined) return;
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // Gone already.
  }
}

async function closeDown(connection: Connection, kill: () => void, gone: Promise<void>) {
  const session = await connection.newBrowserCDPSession();
  await session.send('Browser.close').catch(() => undefined);
  await Promise.race([gone, new Promise((resolve) => setTimeout(resolve, 3000))]);
  kill();
}

/** The address Chromium prints once it listens for us. */
function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    child.stderr?.on('data', (chunk) => {
      printed += chunk;
      const found = /DevTools listening on (ws:\S+)/.exec(printed)?.[1];
      if (found) resolve(found);
    });
    child.once('exit', () => reject(new Error(`Chromium ended at once: ${printed}`)));
  });
}
