import type { GiveOrTake } from '#valvetrain';
import { figureInches, figureMm, figureThou, type Units, writeInches, writeMm } from '#words';
import { figureIn } from '../pieces/figureIn';
import { shortUnit } from '../set-up/draftText';
import { planWords as words } from './planWords';

/** A short length, bare, finer than it is measured: a half of something is still seen. */
export function amount(units: Units, mm: number): string {
  return units === 'mm' ? figureMm(mm, 1) : figureThou(mm, 1);
}

/** The same with its sign: '+0.381', '−15.0', '0.000'. */
export function signedAmount(units: Units, mm: number): string {
  const figure = amount(units, mm);
  return mm > 0 && Number(figure) !== 0 ? `+${figure}` : figure;
}

/** The unit of short lengths. */
export function amountUnit(units: Units): string {
  return words.unit[shortUnit(units)];
}

/** A short length with its unit. */
export function amountText(units: Units, mm: number): string {
  return `${amount(units, mm)} ${amountUnit(units)}`;
}

/** A preload with its unit and its ±, as fine as preloads are told. */
export function preloadText(units: Units, { mm, giveMm }: GiveOrTake): string {
  const give = giveMm === 0 ? '' : ` ${words.giveOrTake(figureIn(units, giveMm))}`;
  return `${figureIn(units, mm)}${give} ${amountUnit(units)}`;
}

/** A pushrod's length with its unit and its ±. */
export function lengthWithGive(units: Units, mm: number, giveMm: number): string {
  if (giveMm === 0) return pushrodText(units, mm);
  const bare = units === 'mm' ? figureMm(mm) : figureInches(mm);
  return `${bare} ${words.giveOrTake(pushrodText(units, giveMm))}`;
}

/** A pushrod's length with its unit. */
export function pushrodText(units: Units, mm: number): string {
  return units === 'mm' ? writeMm(mm) : writeInches(mm);
}

/** ' ± 0.05' behind a figure; empty where nothing is known to be off. */
export function giveText(units: Units, { giveMm }: Pick<GiveOrTake, 'giveMm'>): string {
  return giveMm === 0 ? '' : ` ${words.giveOrTake(amount(units, giveMm))}`;
}
