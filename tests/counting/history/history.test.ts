import { describe, expect, test } from 'vitest';
import { compareJobs, historyOf, type JobLengths, jobLengths } from '#counting';
import { afterAll, countAll, openedJob } from '../../fakes/countedJob';
import { oneCylinder, v8SetUp } from '../../fakes/setUps';

const THOU = 0.0254;
const IN = 25.4;
const grid = { kind: 'grid', stepMm: 25 * THOU, offsetMm: 0 } as const;

/** By hand: 1.25 × (1 + 1/1.7) / 4 mm a quarter; target 90 thou; a length on the 25 thou grid. */
const PER_QUARTER_MM = (1.25 * (1 + 1 / 1.7)) / 4;

const counted = countAll(openedJob(), ({ valve }) => (valve === 'intake' ? 4.5 : 4.75)).state;

describe('what lengths a job came to', () => {
  test('needed by kind, by hand; ordered on the grid', () => {
    const lengths = jobLengths(counted)!;
    const [intake, exhaust] = lengths.kinds;
    const zeroLash = (quarters: number) => 8.15 * IN - quarters * PER_QUARTER_MM;
    expect(intake).toMatchObject({ valve: 'intake', valves: 8 });
    expect(intake!.zeroLashMm).toBeCloseTo(zeroLash(4.5), 9);
    expect(exhaust!.zeroLashMm).toBeCloseTo(zeroLash(4.75), 9);
    expect(intake!.targetMm).toBeCloseTo(90 * THOU, 9);
    expect(lengths.lengthsMm.map((mm) => mm / IN)).toEqual([expect.closeTo(8.15, 6)]);
    expect(lengths.fitted).toBe(false);
  });

  test('in a final check it is what was fitted', () => {
    const length = { mm: 8.125 * IN, convention: 'tip to tip' } as const;
    const { state } = afterAll(
      { events: [], state: counted },
      { type: 'startRound', purpose: 'final check' },
      { type: 'fitPushrod', length },
    );
    expect(jobLengths(state)).toMatchObject({ fitted: true, lengthsMm: [length.mm] });
  });

  test('nothing read: no lengths', () => {
    expect(jobLengths(openedJob().state)).toBeNull();
  });
});

/** A past job that needed this much more than the one counted here, thou, and took this length. */
function past(moreThou: number, tookIn: number): JobLengths {
  const now = jobLengths(counted)!;
  return {
    ...now,
    jobId: `past ${moreThou}`,
    kinds: now.kinds.map((kind) => ({ ...kind, zeroLashMm: kind.zeroLashMm + moreThou * THOU })),
    lengthsMm: [tookIn * IN],
  };
}

describe('this job among those of its recipe', () => {
  const now = jobLengths(counted)!;

  test('nine that took 8.225 to 8.250 and this one 8.150: unusual', () => {
    const offs = [78, 80, 82, 84, 86, 88, 90, 92, 94];
    const history = historyOf(
      now,
      offs.map((off, at) => past(off, at % 2 === 0 ? 8.225 : 8.25)),
      grid,
    );
    expect(history.jobs).toBe(9);
    expect(history.took!.leastMm / IN).toBeCloseTo(8.225, 9);
    expect(history.took!.mostMm / IN).toBeCloseTo(8.25, 9);
    expect(history.asks!.leastMm / IN).toBeCloseTo(8.15, 6);
    expect(history.isUnusual).toBe(true);
    // The median of the past is 86 thou more.
    expect(history.kinds.map(({ offMm }) => offMm / THOU)).toEqual([
      expect.closeTo(-86, 6),
      expect.closeTo(-86, 6),
    ]);
  });

  test('within half a step of what can be bought nothing is unusual, however alike the past', () => {
    const alike = (off: number) =>
      historyOf(
        now,
        [off, off, off].map((o) => past(o, 8.15)),
        grid,
      );
    expect(alike(12).isUnusual).toBe(false);
    expect(alike(13).isUnusual).toBe(true);
  });

  test('a past that scatters widely makes less unusual', () => {
    const scattered = [-60, -20, 20, 60, 100].map((off) => past(off, 8.15));
    expect(historyOf(now, scattered, grid).isUnusual).toBe(false);
  });

  test('two past jobs are shown and nothing is judged by them; none is nothing', () => {
    const two = historyOf(now, [past(90, 8.225), past(90, 8.225)], grid);
    expect(two).toMatchObject({ jobs: 2, kinds: [], isUnusual: false });
    expect(two.took).not.toBeNull();
    expect(historyOf(now, [], grid)).toMatchObject({ jobs: 0, took: null, isUnusual: false });
  });

  test('brought to the preload this job aims at: another target is no difference', () => {
    const other = [0, 0, 0].map((off) => past(off, 8.15));
    const aimed = other.map((job) => ({
      ...job,
      kinds: job.kinds.map((kind) => ({ ...kind, targetMm: kind.targetMm + 30 * THOU })),
    }));
    expect(historyOf(now, aimed, grid).kinds.map(({ offMm }) => offMm)).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(0, 9),
    ]);
  });
});

describe('two jobs beside each other', () => {
  test('each valve by the length it needs; a valve that one job lacks stands without a difference', () => {
    const small = countAll(openedJob(oneCylinder()), () => 4).state;
    const compared = compareJobs(counted, small);
    expect(compared.sameRecipe).toBe(true);
    expect(compared.valves).toHaveLength(16);
    const [intake, exhaust, other] = compared.valves;
    expect(intake!.valve).toEqual({ cylinder: 1, valve: 'intake' });
    expect(intake!.differenceMm).toBeCloseTo(0.5 * PER_QUARTER_MM, 9);
    expect(exhaust!.differenceMm).toBeCloseTo(0.75 * PER_QUARTER_MM, 9);
    expect(other).toMatchObject({ secondMm: null, differenceMm: null });
  });

  test('another ratio is another recipe', () => {
    const adjuster = { ...v8SetUp().adjuster!, rockerRatio: 1.5 };
    expect(compareJobs(counted, openedJob(v8SetUp({ adjuster })).state).sameRecipe).toBe(false);
  });
});
