import { describe, expect, test } from 'vitest';
import { outlierCauses, outliers } from '#valvetrain';
import { THOU } from '../samples';

const at = (thou: readonly number[], ownThou = 3.3) =>
  thou.map((each) => ({ preloadMm: each * THOU, ownMm: ownThou * THOU }));
const off = (thou: readonly number[], ownThou?: number) => {
  const result = outliers(at(thou, ownThou));
  return result.judged ? result.outliers.map(({ offMm }) => Math.round(offMm / THOU)) : null;
};

describe('outliers', () => {
  test('one far from its fellows is found, whichever side, and not the fellows it would drag along', () => {
    expect(off([83, 88, 88, 83, 93, 88, 83, 148])).toEqual([60]);
    expect(off([83, 88, 88, 83, 93, 88, 88, 28])).toEqual([-60]);
  });

  test('readings a mark or two apart are none, though most are equal and their MAD is 0', () => {
    expect(off([88, 88, 88, 88, 88, 93, 83, 98])).toEqual([]);
  });

  test('wide scatter widens what is let pass', () => {
    expect(off([60, 70, 80, 90, 100, 110, 120, 130])).toEqual([]);
  });

  test('three can be judged, two can’t', () => {
    expect(off([88, 90, 150])).toEqual([60]);
    expect(outliers(at([88, 150]))).toEqual({
      judged: false,
      because: 'fewer than three readings',
    });
  });

  test('the reading is distrusted before a part', () => {
    const result = outliers(at([88, 90, 150]));
    expect(result.judged && result.outliers[0]?.causes).toEqual(outlierCauses);
    expect(outlierCauses[0]).toBe('off base circle');
    expect(outlierCauses[outlierCauses.length - 1]).toBe('part');
  });
});
