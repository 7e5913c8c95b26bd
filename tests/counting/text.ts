const parts: Readonly<Record<number, string>> = {
  0: '',
  1: '1/12',
  2: '1/6',
  3: '¼',
  4: '⅓',
  5: '5/12',
  6: '½',
  7: '7/12',
  8: '⅔',
  9: '¾',
  10: '5/6',
  11: '11/12',
};

/** A count in quarter turns for a table: 54 is '4½'. Half 48ths are written as decimals. */
export function quartersText(count48: number): string {
  const whole = Math.floor(count48 / 12);
  const part = parts[count48 - whole * 12];
  if (part === undefined) return String(Math.round((count48 / 12) * 100) / 100);
  if (part === '') return String(whole);
  const gap = part.includes('/') && whole > 0 ? ' ' : '';
  return `${whole === 0 ? '' : whole}${gap}${part}`;
}
