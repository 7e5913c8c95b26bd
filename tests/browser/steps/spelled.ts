/** Numbers in words as a British or American voice reads them, spelled out here and nowhere else. */

const small = [
  ...['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'],
  ...['eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen'],
  ...['eighteen', 'nineteen'],
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A whole number from 0 to 199. */
export function spelled(n: number): string {
  if (n < 20) return small[n] ?? '';
  if (n < 100) return [tens[Math.floor(n / 10)], small[n % 10]].slice(0, n % 10 ? 2 : 1).join('-');
  return n === 100 ? 'one hundred' : `one hundred ${spelled(n - 100)}`;
}

/** Quarter turns in quarters of themselves: 4.75 is 'four and three quarters'. */
export function spelledCount(quarters: number): string {
  const whole = Math.floor(quarters);
  const part = ['', 'a quarter', 'a half', 'three quarters'][(quarters - whole) * 4];
  if (part === undefined) throw new Error(`${quarters} is not in quarters of a quarter`);
  return part === '' ? spelled(whole) : `${spelled(whole)} and ${part}`;
}

/** As it stands on the screen: '4¾'. */
export function writtenCount(quarters: number): string {
  const whole = Math.floor(quarters);
  return `${whole}${['', '¼', '½', '¾'][(quarters - whole) * 4]}`;
}

/** As the dial's label reads it: '4 3/4'. */
export function labelledCount(quarters: number): string {
  const whole = Math.floor(quarters);
  const part = ['', ' 1/4', ' 1/2', ' 3/4'][(quarters - whole) * 4];
  return `${whole}${part}`;
}

/** The first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
