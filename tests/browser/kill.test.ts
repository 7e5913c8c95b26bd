import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { appUrl } from './harness';
import { openKillable } from './killable';
import { type Killed, killRound } from './killing';
import { walk } from './steps/figures';
import { plainLines as lines } from './steps/lines';
import { pressesApart } from './steps/pressesApart';
import { setUpByKeys } from './steps/setUpByKeys';

/** How often the browser is killed: KILLS=200 npx vitest run --project browser tests/browser/kill.test.ts */
const KILLS = Number(process.env.KILLS ?? 20);
/** Rounds of the control, which writes as the app must not. */
const CONTROL_KILLS = 6;

const profiles: string[] = [];

async function newProfile(): Promise<string> {
  const profile = await mkdtemp(join(tmpdir(), 'turncaller-kill-'));
  profiles.push(profile);
  return profile;
}

afterAll(() =>
  Promise.all(profiles.map((path) => rm(path, { recursive: true, force: true, maxRetries: 5 }))),
);

/** One press of the builder's: the event it makes, and the line that tells it is kept. */
interface Step {
  readonly code: string;
  readonly heldMs?: number;
  /** As the log has it: its type, and of a count where it stands, in 48ths. */
  readonly event: string;
  readonly line: string;
}

/** The whole job, press by press: three quarters and a mistake on every valve, read at 3½. */
function script(): readonly Step[] {
  const hold = { code: 'PageDown', heldMs: 630 };
  const steps: Step[] = [{ ...hold, event: 'cautionsHeard', line: lines.position(1) }];
  for (const [place, valve] of walk.entries()) {
    const { cylinder, kind } = valve;
    const intake = { cylinder, kind: 'intake' } as const;
    if (kind === 'exhaust')
      steps.push({ ...hold, event: 'positionReached', line: lines.valve(valve) });
    steps.push(
      { code: 'Numpad0', event: 'zeroTouched', line: lines.zero },
      { code: 'Numpad1', event: 'counted 12', line: lines.counted(1, 0) },
      { code: 'Numpad2', event: 'counted 24', line: lines.counted(2, 1) },
      { code: 'Numpad3', event: 'counted 36', line: lines.counted(3, 2) },
      { code: 'Numpad4', event: 'counted 48', line: lines.counted(4, 3) },
      { code: 'Backspace', event: 'takenBack', line: 'Taken back. Three, fifty-nine.' },
      { code: 'NumpadAdd', event: 'seated', line: lines.howFar(3) },
      { code: 'KeyH', event: 'landed 6', line: lines.read(valve, 3.5) },
      {
        code: 'NumpadAdd',
        event: 'valveLeft',
        line:
          kind === 'exhaust'
            ? lines.valve(intake)
            : lines.cylinderDone(cylinder, 3.5, 3.5, (walk.length - 1 - place) / 2),
      },
    );
    const next = walk[place + 1];
    if (kind === 'intake' && next)
      steps.push({ ...hold, event: 'bledDown', line: lines.position(next.cylinder) });
  }
  return steps;
}

interface LoggedEvent {
  readonly seq: number;
  readonly type: string;
  readonly to48?: number;
  readonly answer?: { readonly past48: number };
}

/** An event of the log as the script names it. */
function named({ type, to48, answer }: LoggedEvent): string {
  return [type, to48 ?? answer?.past48].filter((part) => part !== undefined).join(' ');
}

/** The log as it lies in IndexedDB, read by the page with nothing of the app's running. */
async function logOnDisk(page: Page): Promise<readonly LoggedEvent[]> {
  await page.goto(appUrl('notices.txt'));
  return page.evaluate(
    () =>
      new Promise<LoggedEvent[]>((resolve, reject) => {
        const opening = indexedDB.open('turncaller');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const all = db.transaction('events').objectStore('events').getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            db.close();
            resolve(all.result);
          };
        };
      }),
  );
}

/** In the page: how every write to the log was asked to reach the disk. */
function watchDurability(): void {
  const seen: string[] = [];
  Object.assign(globalThis, { __writes: seen });
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function watched(...given) {
    const made = transaction.apply(this, given);
    const stores = [...made.objectStoreNames];
    if (made.mode === 'readwrite' && stores.includes('events')) seen.push(made.durability);
    return made;
  };
}

let profile: string;
let jobId: string;

/** A job of its own on a fresh device. */
async function beginJob(): Promise<void> {
  profile = await newProfile();
  const browser = await openKillable(profile);
  const page = browser.context.pages()[0] ?? (await browser.context.newPage());
  await page.goto(appUrl('#/set-up'));
  await setUpByKeys(page, 'Harrow Fen pump engine 9');
  jobId = decodeURIComponent(page.url().split('#/bench/')[1] ?? '');
  await browser.close();
}

beforeAll(beginJob);

/** With fewer steps than this left, the next kill is on a new job. */
const LAST_STEPS = 20;

test(`killed ${KILLS} times on a kept line's own caption, nothing spoken as kept is missing`, async () => {
  const steps = script();
  const delays: number[] = [];
  const points = new Set<string>();
  /** Steps pressed in all rounds so far, and those that a line has told are kept. */
  let pressed = 0;
  let told = 0;
  let keptLines = 0;
  let jobs = 1;

  for (let round = 0; round <= KILLS; round += 1) {
    if (round < KILLS && told > steps.length - LAST_STEPS) {
      await beginJob();
      pressed = 0;
      told = 0;
      jobs += 1;
    }
    let from = 0;
    const killed: Killed = await killRound({
      profile,
      async prepare(page) {
        const log = (await logOnDisk(page)).slice(1);
        const events = log.map(named);
        expect(events, 'nothing is there that was not pressed').toEqual(
          steps.slice(0, events.length).map(({ event }) => event),
        );
        expect(events.length).toBeLessThanOrEqual(pressed);
        expect(events.length, 'nothing spoken as kept is missing').toBeGreaterThanOrEqual(told);
        from = events.length;
        pressed = from;
        if (round === KILLS) return;
        await page.goto(appUrl(`#/bench/${encodeURIComponent(jobId)}`));
        await page.locator('main[data-stage]').waitFor();
        await page.keyboard.press('NumpadMultiply');
        await page.getByText('Nothing will be counted by it.').waitFor({ state: 'detached' });
      },
      async press(page) {
        if (round === KILLS) return;
        const press = pressesApart(page);
        for (const step of steps.slice(from)) {
          pressed += 1;
          await press(step.code, step.heldMs);
          await page.waitForTimeout(gapAfter(step, round));
        }
      },
      killOn(text, heard) {
        const lineAt = steps.findIndex(({ line }, at) => at >= from && line === text);
        const kept = lineAt >= 0 && lineAt < pressed;
        const already = heard.filter(({ text: one }) => steps.some(({ line }) => line === one));
        if (pauses(round)) return kept && /^(One|Two|Three|Four) quarters?:/.test(text);
        return kept && already.length >= round % 4;
      },
    });
    if (round === KILLS) break;
    expect(killed.on, 'killed on a kept line').not.toBeNull();
    // Each line heard tells the first step not told yet that has it; all of them were pressed.
    told = from;
    for (const { text } of killed.heard) {
      const at = steps.findIndex(({ line }, i) => i >= told && i < pressed && line === text);
      if (at < 0) continue;
      told = at + 1;
      keptLines += 1;
    }
    expect(told, 'at least one kept line each').toBeGreaterThan(from);
    delays.push(killed.on?.delayMs ?? Number.NaN);
    points.add(steps[told - 1]?.event ?? '');
  }
  delays.sort((a, b) => a - b);
  console.log(
    `${KILLS} kills over ${jobs} jobs, ${keptLines} kept lines heard, last events ${[...points].join(', ')}; ` +
      `caption to kill: median ${delays[delays.length >> 1]} ms, most ${delays.at(-1)} ms`,
  );
  expect(points.size).toBeGreaterThan(Math.min(3, KILLS - 1));
});

/** Now and then the builder pauses at a count, and it is that line the browser is killed on. */
function pauses(round: number): boolean {
  return round % 5 === 2;
}

/** Mostly on at once, so that more is under way as it is killed. */
function gapAfter({ event }: Step, round: number): number {
  if (event.startsWith('counted') && pauses(round)) return 1300;
  return event === 'landed 6' || event === 'seated' ? 100 : 40;
}

test('every write of a count asks for strict durability', async () => {
  const browser = await openKillable(await newProfile());
  const page = browser.context.pages()[0] ?? (await browser.context.newPage());
  await page.addInitScript(watchDurability);
  await page.goto(appUrl('#/set-up'));
  await setUpByKeys(page, 'Harrow Fen pump engine 10');
  await page.keyboard.press('NumpadMultiply');
  const press = pressesApart(page);
  for (const { code, heldMs } of script().slice(0, 8)) {
    await press(code, heldMs);
    await page.waitForTimeout(120);
  }
  const writes = await page.evaluate(
    () => (globalThis as unknown as { __writes: string[] }).__writes,
  );
  await browser.close();
  // The job's opening and eight presses.
  expect(writes.length).toBeGreaterThanOrEqual(9);
  expect([...new Set(writes)]).toEqual(['strict']);
});

test('a control that speaks before its relaxed write is awaited loses what it spoke', async () => {
  const control = await newProfile();
  let lost = 0;
  let spoken = 0;
  const delays: number[] = [];
  for (let round = 0; round <= CONTROL_KILLS; round += 1) {
    let highest = 0;
    const killed = await killRound({
      profile: control,
      async prepare(page) {
        await page.goto(appUrl('notices.txt'));
        highest = await page.evaluate(controlPage);
        lost += Math.max(0, spoken - highest);
      },
      async press(page) {
        if (round === CONTROL_KILLS) return;
        for (let n = 0; n < 40; n += 1) {
          await page.keyboard.press('Space');
          await page.waitForTimeout(40);
        }
      },
      killOn: (_text, heard) => heard.length >= round % 4,
    });
    if (round === CONTROL_KILLS) break;
    spoken = Math.max(highest, ...killed.heard.map(({ text }) => Number(text.replace(/\D/g, ''))));
    delays.push(killed.on?.delayMs ?? Number.NaN);
  }
  delays.sort((a, b) => a - b);
  console.log(
    `control: ${lost} spoken and lost in ${CONTROL_KILLS} kills; ` +
      `caption to kill: median ${delays[delays.length >> 1]} ms, most ${delays.at(-1)} ms`,
  );
  expect(lost).toBeGreaterThan(0);
});

/** In the page: presses are captioned as kept while their write is still on its way. Returns what is there. */
function controlPage(): Promise<number> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('control', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('events');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const db = opening.result;
      const keys = db.transaction('events').objectStore('events').getAllKeys();
      keys.onsuccess = () => {
        let seq = Math.max(0, ...keys.result.map(Number));
        const caption = document.createElement('p');
        caption.setAttribute('aria-live', 'polite');
        caption.dataset.length = 'short';
        document.body.append(caption);
        addEventListener('keydown', () => {
          seq += 1;
          caption.textContent = `Kept ${seq}`;
          const write = db.transaction('events', 'readwrite', { durability: 'relaxed' });
          write.objectStore('events').add({ seq }, seq);
        });
        resolve(seq);
      };
    };
  });
}
