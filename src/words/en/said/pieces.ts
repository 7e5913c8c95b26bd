import type { ValveId } from '#valvetrain';
import type { SayingContext } from '../../context';
import { cardinal } from '../numbers';

/** True where whole sentences are said: plain and teaching. */
export function isFull({ level }: SayingContext): boolean {
  return level !== 'terse';
}

/** The first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Words as a sentence: 'four, seventy-eight' is 'Four, seventy-eight.' */
export function sentence(text: string): string {
  return /[.?!]$/.test(text) ? capital(text) : `${capital(text)}.`;
}

/** Words joined by commas, the empty ones left out. */
export function commas(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(', ');
}

/** Sentences one after another, the empty ones left out. */
export function lines(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(' ');
}

/** A list with 'and': 'one, two and three'. */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}

/** A valve in two words: 'eight exhaust'; 'this valve' while it has no name. */
export function valveName(valve: ValveId | null): string {
  return valve === null ? 'this valve' : `${cardinal(valve.cylinder)} ${valve.valve}`;
}

/** A valve in a whole sentence: 'exhaust of eight'; 'this valve' while it has no name. */
export function valveOf(valve: ValveId | null): string {
  return valve === null ? 'this valve' : `${valve.valve} of ${cardinal(valve.cylinder)}`;
}

/** How many of a thing: 'one reading', 'four readings'. */
export function howMany(n: number, one: string, many = `${one}s`): string {
  return `${cardinal(n)} ${n === 1 ? one : many}`;
}

/** Words in a line, as a voice says them: 'half-past' and 'seventy-eight' are one each. */
export function wordCount(text: string): number {
  return text.split(/\s+/).filter((word) => /\w/.test(word)).length;
}
