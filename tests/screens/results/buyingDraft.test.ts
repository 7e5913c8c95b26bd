import { describe, expect, test } from 'vitest';
import type { Buying } from '#counting';
import {
  type BuyingDraft,
  buyingDraft,
  readBuying,
} from '../../../src/screens/results/buyingDraft';

const usual: Buying = {
  offer: { kind: 'grid', stepMm: 0.635, offsetMm: 0 },
  convention: 'tip to tip',
  spares: 0,
  ends: null,
};

function read(changes: Partial<BuyingDraft>, units: 'inch' | 'mm' = 'inch') {
  return readBuying({ ...buyingDraft(usual, units), ...changes }, units);
}

describe('what can be bought', () => {
  test.each([
    ['25', { stepMm: 0.635 }],
    ['50', { stepMm: 1.27 }],
    ['any', { stepMm: 0.0254 }],
  ] as const)('lengths %s', (kind, offer) => {
    expect(read({ kind })).toMatchObject({ ok: true, buying: { offer } });
  });

  test('so many millimetres from a length', () => {
    expect(read({ kind: 'mm', step: '0,5', offset: '200.4' }, 'mm')).toMatchObject({
      buying: { offer: { stepMm: 0.5, offsetMm: 200.4 } },
    });
    expect(read({ kind: 'mm', step: '' }, 'mm')).toEqual({
      ok: false,
      sentence: 'Step between lengths: that is no figure.',
    });
  });

  test('stock, in the unit of the job or one written behind', () => {
    const found = read({ kind: 'stock', stock: '8.150 x 6\n\n 207.6 mm × 2 ' });
    expect(found).toMatchObject({
      buying: {
        offer: {
          kind: 'stock',
          lines: [
            { lengthMm: expect.closeTo(207.01, 9), quantity: 6 },
            { lengthMm: 207.6, quantity: 2 },
          ],
        },
      },
    });
  });

  test.each(['8.150', 'x 6', 'six of 8.150', '8.150 x'])('‘%s’ is no line of stock', (stock) => {
    expect(read({ kind: 'stock', stock })).toMatchObject({
      ok: false,
      sentence: expect.stringContaining(`‘${stock}’`),
    });
  });

  test('spares and balls that are no figures are told', () => {
    expect(read({ spares: 'two' })).toMatchObject({ ok: false });
    expect(read({ ends: ['7.9', '2.5', '', ''] })).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('both ends'),
    });
  });

  test.each(['inch', 'mm'] as const)('shown and read again in %s it is the same', (units) => {
    const stock: Buying = {
      offer: { kind: 'stock', lines: [{ lengthMm: 207.01, quantity: 6 }] },
      convention: 'full ball',
      spares: 3,
      ends: [
        { ballMm: 7.62, holeMm: 2.54 },
        { ballMm: 7.62, holeMm: 2.54 },
      ],
    };
    const again = readBuying(buyingDraft(stock, units), units);
    expect(again.ok && again.buying.offer).toMatchObject({ lines: [{ quantity: 6 }] });
    expect(again).toMatchObject({
      buying: {
        convention: 'full ball',
        spares: 3,
        ends: [{ ballMm: expect.closeTo(7.62, 6) }, {}],
      },
    });
  });
});
