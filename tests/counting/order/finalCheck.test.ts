import { describe, expect, test } from 'vitest';
import { finalCheck, finalLineOf, orderTold } from '#counting';
import { begun, counted, dial, finalRound, fitRod, measuringRound } from '../counted';
import { given, when } from '../given';
import { eightCylinders, exhaust, intake, THOU } from '../samples';

const INCH = 25.4;
const two = { ...eightCylinders, scope: [exhaust(1), intake(1)] };
/** 78.2 and 87.9 thou on 8.000, then 8.025 fitted to both. */
const measured = counted(begun(two), [exhaust(1), 4], [intake(1), 4.5]);
const checking = given(measured, [finalRound, fitRod(8.025 * INCH, [exhaust(1), intake(1)])]);

const told = (job: typeof measured) =>
  job.told.flatMap(({ fact }) =>
    (fact.kind === 'read' || fact.kind === 'dial read') && fact.foretold ? [fact.foretold] : [],
  );

describe('a final check', () => {
  test('is predicted valve by valve before anything is read', () => {
    const predicted = finalCheck(checking.state).map((one) => [
      one.line.valve,
      Math.round((one.predicted?.preloadMm ?? 0) / (THOU / 10)) / 10,
      one.agreement,
    ]);
    expect(predicted).toEqual([
      [exhaust(1), 103.2, null],
      [intake(1), 112.9, null],
    ]);
    expect(orderTold(checking.state)).toBeNull();
  });

  test('a reading within the noise of it is as predicted, and the fact says so', () => {
    const job = counted(checking, [exhaust(1), 5.25]);
    expect(told(job)).toEqual([
      { preloadMm: expect.any(Number), agreement: expect.objectContaining({ agrees: true }) },
    ]);
    expect(finalLineOf(job.state, exhaust(1))?.agreement?.agrees).toBe(true);
    expect(orderTold(job.state)).toMatchObject({ kind: 'final', agree: 1, of: 1, differ: [] });
  });

  test('one that reads as before, as if nothing had been fitted, is not', () => {
    const job = counted(checking, [exhaust(1), 4]);
    const [foretold] = told(job);
    expect(foretold?.agreement.agrees).toBe(false);
    expect((foretold?.agreement.differenceMm ?? 0) / THOU).toBeCloseTo(-25, 6);
    expect(orderTold(job.state)).toMatchObject({ agree: 0, of: 1, differ: [exhaust(1)] });
  });

  test('a dial reading is held against it too', () => {
    expect(told(when(checking, dial(1, 'intake', 113 * THOU)))[0]?.agreement.agrees).toBe(true);
  });

  test('a valve that was never measured has no prediction', () => {
    const one = given(counted(begun(two), [exhaust(1), 4]), [finalRound]);
    const job = counted(one, [intake(1), 4]);
    expect(told(job)).toEqual([]);
    expect(finalLineOf(job.state, intake(1))).toMatchObject({ predicted: null, agreement: null });
  });

  test('a round that measures predicts nothing', () => {
    const again = given(checking, [measuringRound]);
    expect(finalCheck(again.state)).toEqual([]);
    expect(told(counted(again, [exhaust(1), 4]))).toEqual([]);
  });
});
