import { expect, test } from 'vitest';
import { firstPage, openApp, openBrowser } from './harness';
import { differences, saidSoFar } from './steps/bench';
import { type ByVoice, begunByVoice } from './steps/byVoice';
import { crankLines as crank, line } from './steps/crankLines';
import type { Valve } from './steps/figures';
import { plainLines as lines } from './steps/lines';
import { scriptedEar } from './steps/scriptedEar';
import type { HandSetUp } from './steps/setUpByHand';
import { spelled } from './steps/spelled';

/** A job set up on a fresh device, with the ear open and the cautions due. */
async function begun(job: HandSetUp): Promise<ByVoice> {
  const page = await firstPage(await openBrowser());
  const ear = await scriptedEar(page);
  await openApp(page, '#/set-up');
  return begunByVoice(page, ear, job);
}

/** Exhausts and intakes by cylinder, an exhaust before its intake. */
function valvesOf(exhausts: readonly number[], intakes: readonly number[]): readonly Valve[] {
  return [
    ...exhausts.map((cylinder) => ({ cylinder, kind: 'exhaust' as const })),
    ...intakes.map((cylinder) => ({ cylinder, kind: 'intake' as const })),
  ].sort((a, b) => a.cylinder - b.cylinder || a.kind.localeCompare(b.kind));
}

const both = (cylinder: number) => valvesOf([cylinder], [cylinder]);

/** Every line said up to now is a line that was due, in order. */
async function expectSaid({ page, bench }: ByVoice): Promise<void> {
  const said = (await saidSoFar(page)).filter((text) => !text.startsWith('No voice here'));
  expect(differences(said, bench.expected)).toEqual([]);
}

/**
 * Counts the valves of a place one after the other; after each that completes its cylinder, that
 * cylinder's line. Ends with 'next valve' said after the last.
 */
async function countPlace(
  job: ByVoice,
  valves: readonly Valve[],
  read: Valve[],
  cylinders: number,
): Promise<void> {
  const whole = (cylinder: number) => read.filter((one) => one.cylinder === cylinder).length === 2;
  for (const [nth, valve] of valves.entries()) {
    // After a cylinder's line it comes in a pause, and may be overtaken.
    const before = valves[nth - 1];
    if (before !== undefined && whole(before.cylinder)) job.bench.maySay(lines.valve(valve));
    else await job.bench.says(lines.valve(valve));
    await job.count(valve, read.length === 0);
    read.push(valve);
    await job.ear.says('next valve');
    const done = [...new Set(read.map(({ cylinder }) => cylinder))].filter(whole).length;
    if (whole(valve.cylinder))
      await job.bench.says(lines.cylinderDone(valve.cylinder, 4.5, 4.5, cylinders - done));
    if (nth === valves.length - 1) return;
  }
}

/** The bleed-down reminder; overtaken where a cylinder's line goes before it. */
async function pushrodsLoose({ ear, bench }: ByVoice, certain: boolean): Promise<void> {
  if (certain) await bench.says(crank.loose);
  else bench.maySay(crank.loose);
  await ear.says('pushrods loose');
  bench.expected.push({ text: 'Pushrods loose.', may: true });
}

const V8 = 'V8, numbered alternately, 1-8-4-3-6-5-7-2';

test('an eight counted in two positions by voice alone, log line by line', async () => {
  const job = await begun({
    name: 'Harrow Fen pump engine 11',
    engine: V8,
    walk: 'Fewest stops: several cylinders at each',
  });
  const { ear, bench } = job;
  // Valve clearance by two positions, service manual, maker withheld: the second takes the rest.
  const places = [
    valvesOf([1, 3, 4, 8], [1, 2, 5, 7]),
    valvesOf([2, 5, 6, 7], [3, 4, 6, 8]),
  ] as const;
  const read: Valve[] = [];
  await ear.says('cautions heard');
  await bench.says(
    line(
      crank.place({ nth: 1, of: 2, valves: places[0] }),
      crank.firstTo('stop one'),
      crank.crossing(6),
      crank.there,
    ),
  );
  await ear.says("crank's there");
  await countPlace(job, places[0], read, 8);
  await pushrodsLoose(job, true);
  await bench.says(
    line(
      crank.place({ nth: 2, of: 2, valves: places[1] }),
      crank.turn(360),
      crank.crossing(1),
      crank.there,
    ),
  );
  await ear.says("crank's there");
  await countPlace(job, places[1], read, 8);
  await bench.says(lines.allRead(read.map((valve) => ({ ...valve, quarters: 4.5 }))));
  expect(read).toHaveLength(16);
  await expectSaid(job);
});

test('an inline six, each valve as the other of its cylinder tells: twelve stops sixty degrees apart', async () => {
  const job = await begun({
    name: 'Harrow Fen sluice engine 2',
    engine: 'Inline 6, 1-5-3-6-2-4',
    walk: 'Exhaust opening, intake closing: one stop a valve',
  });
  const { ear, bench } = job;
  // Open 320° about 110°, an exhaust opens at 180 − 90 and an intake shuts at 540 + 90 after its own
  // firing TDC, and the six fire 120 apart.
  const stops = [1, 5, 3, 6, 2, 4]
    .flatMap((cylinder, nth) => [
      { at: (120 * nth + 90) % 720, cylinder, kind: 'intake' as const },
      { at: (120 * nth + 630) % 720, cylinder, kind: 'exhaust' as const },
    ])
    .sort((a, b) => a.at - b.at);
  const read: Valve[] = [];
  await ear.says('cautions heard');
  for (const [nth, { at, cylinder, kind }] of stops.entries()) {
    const name = `${spelled(cylinder)} ${kind}`;
    const before = stops[nth - 1]?.at;
    await bench.says(
      line(
        crank.place({ nth: nth + 1, of: 12, valves: [{ cylinder, kind }] }),
        before === undefined ? crank.firstTo(name) : crank.turn(at - before),
        kind === 'intake' ? crank.exhaustOpening(cylinder) : crank.intakeClosing(cylinder),
        crank.there,
      ),
    );
    await ear.says("crank's there");
    await countPlace(job, [{ cylinder, kind }], read, 6);
    const whole = read.filter((one) => one.cylinder === cylinder).length === 2;
    if (nth < stops.length - 1) await pushrodsLoose(job, !whole);
  }
  await bench.says(lines.allRead(read.map((valve) => ({ ...valve, quarters: 4.5 }))));
  await expectSaid(job);
});

test('an odd-fire V6 with a helper: its own angles, its own valves watched, hands clear each time', async () => {
  const order = [1, 6, 5, 4, 3, 2];
  const angles = [0, 90, 240, 330, 480, 570];
  const job = await begun({
    name: 'Harrow Fen weed cutter',
    engine: {
      order,
      layout: 'V',
      numbering: 'Alternately: odd on one bank, even on the other',
      angles: angles.join(' '),
    },
    hands: 'A helper turns the crank',
  });
  const { ear, bench, page } = job;
  const read: Valve[] = [];
  await ear.says('cautions heard');
  for (const [nth, cylinder] of order.entries()) {
    const place = crank.place({ nth: nth + 1, of: 6, valves: both(cylinder) });
    await bench.says(line(place, crank.handsClear));
    expect(await page.locator('body').textContent()).not.toMatch(/turn the crank/i);
    await ear.says('hands clear');
    const on = (angles[nth] ?? 0) - (angles[nth - 1] ?? 0);
    await bench.says(
      line(
        nth === 0 ? crank.firstTdc(spelled(cylinder)) : crank.turn(on),
        crank.watching(cylinder),
        crank.there,
      ),
    );
    await ear.says("crank's there");
    await countPlace(job, both(cylinder), read, 6);
    if (nth < order.length - 1) await pushrodsLoose(job, false);
  }
  await bench.says(lines.allRead(read.map((valve) => ({ ...valve, quarters: 4.5 }))));
  await expectSaid(job);
});

test('overshot: never back, round again by two turns, and only once hands are clear', async () => {
  const job = await begun({
    name: 'Harrow Fen pump engine 12',
    engine: V8,
    hands: 'A helper turns the crank',
  });
  const { ear, bench, page } = job;
  const read: Valve[] = [];
  await ear.says('cautions heard');
  await bench.says(line(crank.place({ nth: 1, of: 8, valves: both(1) }), crank.handsClear));
  await ear.says('hands clear');
  await bench.says(line(crank.firstTdc('one'), crank.companion(6), crank.there));
  await ear.says("crank's there");
  await countPlace(job, both(1), read, 8);
  await pushrodsLoose(job, false);
  await bench.says(line(crank.place({ nth: 2, of: 8, valves: both(8) }), crank.handsClear));
  await ear.says('hands clear');
  await bench.says(line(crank.turn(90), crank.companion(5), crank.there));
  await ear.says('overshot');
  await bench.says(`Round again to eight. ${crank.handsClear}`);
  await expect.poll(() => page.locator('main').getAttribute('data-stage')).toBe('hands clear');
  expect(await page.locator('body').textContent()).not.toMatch(/round again: two turns/i);
  await ear.says('hands clear');
  await bench.says(line(crank.again, crank.companion(5), crank.there));
  await page.getByText(/^Gone past: round again, two turns in its running direction\./).waitFor();
  await ear.says("crank's there");
  await bench.says(lines.valve({ cylinder: 8, kind: 'exhaust' }));
  await expectSaid(job);
});

test('a reload at hands clear: the turn is neither said nor shown until hands are clear anew', async () => {
  const job = await begun({
    name: 'Harrow Fen pump engine 13',
    engine: V8,
    hands: 'A helper turns the crank',
  });
  const { ear, bench, page, press } = job;
  await ear.says('cautions heard');
  await bench.says(line(crank.place({ nth: 1, of: 8, valves: both(1) }), crank.handsClear));
  await page.getByText('Kept', { exact: true }).waitFor();
  await page.reload();
  await page.getByText('Press any key to go on').waitFor();
  await press('NumpadAdd');
  const stage = page.locator('main[data-stage]');
  await expect.poll(() => stage.getAttribute('data-stage')).toBe('hands clear');
  // Longer than any line takes to come.
  await page.waitForTimeout(3000);
  expect(await page.locator('body').textContent()).not.toMatch(/\b(turn the crank|bring one)\b/i);
  await press('PageDown', 650);
  await expect.poll(() => stage.getAttribute('data-stage')).toBe('turning');
  const turn = line(crank.firstTdc('one'), crank.companion(6), crank.there);
  await expect
    .poll(() => page.locator('section[aria-label="Said"] [aria-live]').textContent())
    .toBe(turn);
  const said = await saidSoFar(page);
  const at = said.findIndex((text) => /\b(turn|bring)\b.*\b(crank|dead centre)\b/i.test(text));
  expect(said[at]).toBe(turn);
  expect(at).toBe(said.length - 1);
});
