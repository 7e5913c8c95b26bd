/** Millimetres in an inch, exact by definition (1959). */
export const MM_PER_INCH = 25.4;

/** Thousandths of an inch in millimetres, for figures published in thou. */
export function mmFromThou(thou: number): number {
  return (thou * MM_PER_INCH) / 1000;
}

/** A length as sentences write it, in both units: '0.50 mm (0.020 in)'. */
export function lengthFigure(lengthMm: number): string {
  return `${fixed(lengthMm, 2)} mm (${fixed(lengthMm / MM_PER_INCH, 3)} in)`;
}

/** A plain number with up to three decimals and no trailing noughts: 1.5, 0.067, 12. */
export function plainFigure(value: number): string {
  return String(Number(fixed(value, 3)));
}

/** Cylinder numbers, or any others, as a sentence lists them: '1, 4 and 6'. */
export function listFigure(values: readonly (number | string)[]): string {
  if (values.length < 2) return values.join('');
  return `${values.slice(0, -1).join(', ')} and ${values.slice(-1).join('')}`;
}

/** Fixed decimals without a minus in front of nought. */
function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
