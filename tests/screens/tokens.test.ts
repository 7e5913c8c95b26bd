import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const css = readFileSync(new URL('../../src/screens/tokens.css', import.meta.url), 'utf8');

/** The colours a block of the token file sets. */
function colours(selector: string): Readonly<Record<string, string>> {
  const at = css.indexOf(`${selector} {`);
  if (at < 0) throw new Error(`no block ${selector}`);
  const block = css.slice(at, css.indexOf('}', at));
  return Object.fromEntries(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [
      name,
      hex,
    ]),
  );
}

/** Relative luminance of sRGB, WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const modes = { dark: ':root', paper: ':root [data-paper]', bright: ':root[data-shop="bright"]' };
const grounds = ['plate', 'plate-raised', 'plate-sunk'];

test('the figures of contrast are WCAG’s own: black on white 21, mid grey 4.48', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  // #777777 on white: the best known near miss of 4.5.
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

test.each(Object.entries(modes))('%s: words 7 to 1, lines and shapes 3 to 1', (mode, selector) => {
  const token = colours(selector);
  const ratio = (ink: string, ground: string) => {
    const [a, b] = [token[ink], token[ground]];
    if (a === undefined || b === undefined) throw new Error(`${mode}: ${ink} on ${ground}`);
    return contrast(a, b);
  };
  const found: string[] = [];
  let least = 21;
  const hold = (ink: string, ground: string, atLeast: number) => {
    const is = ratio(ink, ground);
    if (atLeast === 7) least = Math.min(least, is);
    if (is < atLeast) found.push(`${ink} on ${ground}: ${is.toFixed(2)}`);
  };
  for (const ground of grounds) {
    for (const ink of ['ink', 'ink-quiet', 'live', 'short', 'fits', 'past']) hold(ink, ground, 7);
    for (const line of ['rule', 'ghost']) hold(line, ground, 3);
  }
  hold('on-live', 'live', 7);
  // A touch held down is drawn in reverse.
  hold('plate', 'ink', 7);
  console.log(`${mode}: least contrast of words ${least.toFixed(2)} to 1`);
  expect(found).toEqual([]);
});

test('both shops give every colour, and no screen brings one of its own', () => {
  const names = Object.keys(colours(':root')).sort();
  expect(names.length).toBe(12);
  for (const selector of Object.values(modes))
    expect(Object.keys(colours(selector)).sort()).toEqual(names);
  const screens = new URL('../../src/screens/', import.meta.url);
  const sheets = readdirSync(screens, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.css') && name !== 'tokens.css',
  );
  expect(sheets.length).toBeGreaterThan(20);
  const own = sheets.filter((name) =>
    /#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|oklch|color-mix)\(/i.test(
      readFileSync(new URL(name, screens), 'utf8'),
    ),
  );
  expect(own).toEqual([]);
});
