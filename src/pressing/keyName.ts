const NAMES: Readonly<Record<string, string>> = {
  NumpadAdd: 'Number pad +',
  NumpadSubtract: 'Number pad −',
  NumpadMultiply: 'Number pad ×',
  NumpadDivide: 'Number pad ÷',
  NumpadDecimal: 'Number pad .',
  NumpadComma: 'Number pad ,',
  NumpadEqual: 'Number pad =',
  ArrowRight: 'Right arrow',
  ArrowLeft: 'Left arrow',
  ArrowUp: 'Up arrow',
  ArrowDown: 'Down arrow',
  Period: 'Full stop',
  Minus: 'Minus',
  Equal: 'Equals',
  BracketLeft: 'Left bracket',
  BracketRight: 'Right bracket',
};

function spaced(words: string): string {
  const lower = words
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .trim()
    .toLowerCase();
  return lower.charAt(0).toUpperCase() + lower.slice(1);
}

/** A key's name as a reader says it, from its `code`: 'Page down', 'Number pad +', 'H'. */
export function keyName(code: string): string {
  const named = Object.hasOwn(NAMES, code) ? NAMES[code] : undefined;
  if (named !== undefined) return named;
  if (code === '') return 'Unnamed key';
  if (/^(Key[A-Z]|Digit[0-9])$/.test(code)) return code.slice(-1);
  if (/^F[0-9]{1,2}$/.test(code)) return code;
  if (code.startsWith('Numpad')) return `Number pad ${spaced(code.slice(6)).toLowerCase()}`.trim();
  if (/^Gamepad[0-9]+$/.test(code)) return `Gamepad button ${code.slice(7)}`;
  return spaced(code);
}
