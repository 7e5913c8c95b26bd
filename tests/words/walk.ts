import type { SetUp } from '#counting';
import type { SayingContext } from '#words';
import { bench } from './bench';

/** Quarters and taps past the last mark for each valve, in the order of the walk. */
const readings: readonly (readonly [number, number])[] = [
  [4, 2],
  [4, 3],
  [4, 1],
  [4, 2],
  [4, 2],
  [4, 3],
  [4, 2],
  [5, 0],
  [4, 1],
  [4, 2],
  [4, 3],
  [4, 2],
  [4, 2],
  [4, 1],
  [4, 3],
  [4, 2],
];

/** The whole walk by keys, with the landing tapped in; `pauses`: long before every seat. */
export function walk(setUp: SetUp, context: SayingContext, pauses: boolean) {
  const run = bench(setUp, context);
  const go = (afterS: number) => run.act({ type: 'advance' }, afterS);
  go(10);
  readings.forEach(([quarters, taps], i) => {
    if (i % 2 === 0) {
      if (i > 0) go(300);
      if (setUp.hands === 'with helper') go(3);
      go(20);
    }
    go(8);
    for (let count = 0; count < quarters; count += 1) {
      run.act({ type: 'step', size: 'step' }, 1);
    }
    go(pauses ? 3 : 1.2);
    for (let tap = 0; tap < taps || (taps === 0 && tap < 4); tap += 1) {
      run.act({ type: 'step', size: 'step' }, 0.5);
    }
    go(2);
  });
  return run;
}
