import { expect } from 'vitest';
import { benchHands, differences, saidSoFar } from './bench';
import { walk } from './figures';
import { keyboard } from './keyboard';
import { ways } from './keyboardWays';
import { plainLines as lines } from './lines';
import type { Counted } from './oneLength';
import { expectResults } from './results';
import { setUpByKeys } from './setUpByKeys';
import type { StoryPage } from './storyPage';

/**
 * A whole engine by keyboard alone, from an open set-up screen to the results: what was said, line by
 * line, and every figure, held to what is worked out in this folder.
 */
export async function keyboardStory(page: StoryPage): Promise<void> {
  await setUpByKeys(page, 'Harrow Fen pump engine 7');
  const bench = benchHands(page);
  const keys = keyboard(page, bench);

  // The bench rests: the first press says where it is and counts nothing.
  await keys.press('NumpadAdd');
  await bench.says('Back. Cautions to be heard.');
  await keys.nextStage();
  await bench.says(lines.position(1));

  const readings: Counted[] = [];
  for (const [place, valve] of walk.entries()) {
    const { cylinder, kind } = valve;
    if (kind === 'exhaust') await keys.nextStage();
    await bench.says(lines.valve(valve));
    const way = ways[`${cylinder} ${kind}`];
    if (!way) throw new Error(`no way for ${cylinder} ${kind}`);
    await keys.zero();
    await way.count(keys, bench, valve);
    const { quarters, resolves = 0.5 } = way;
    readings.push({ ...valve, quarters, resolves });
    const asked = `${cylinder} ${kind}` !== '1 intake' && `${cylinder} ${kind}` !== '4 exhaust';
    const waited = `${cylinder} ${kind}` === '4 intake';
    if (asked && !waited) await keys.accept();
    if (`${cylinder} ${kind}` === '5 exhaust') {
      // On to the intake, back across the valves, and on again.
      await bench.says(lines.valve({ cylinder, kind: 'intake' }));
      await keys.press('Backspace');
      await bench.says('Taken back. Five exhaust, read at four and a half, eighty-eight.');
      await keys.accept();
    }
    if (kind === 'exhaust') continue;
    const exhaust = readings.at(-2)?.quarters ?? 0;
    const left = (walk.length - 1 - place) / 2;
    await bench.says(lines.cylinderDone(cylinder, exhaust, way.quarters, left));
    if (left === 0) break;
    bench.maySay('Pushrods loose?');
    await keys.nextStage();
    bench.expected.push({ text: 'Pushrods loose.', may: false });
    await bench.says(lines.position(walk[place + 1]?.cylinder ?? 0));
  }
  await bench.says(lines.allRead(readings));

  const said = (await saidSoFar(page)).filter((line) => !line.startsWith('No voice here'));
  expect(differences(said, bench.expected)).toEqual([]);
  expect(said.length).toBeGreaterThan(80);
  await expectResults(page, readings);
}
