import type { ValveId } from '#valvetrain';
import { cardinal } from '../numbers';
import { listed, sentence, valveName } from './pieces';

const MOST_NAMED = 4;

/** 'Two counted off base circle: one exhaust and three intake.' Empty while there are none. */
export function offBaseLine(valves: readonly ValveId[]): string {
  if (valves.length === 0) return '';
  const named = valves.length > MOST_NAMED ? '' : `: ${listed(valves.map(valveName))}`;
  return sentence(`${cardinal(valves.length)} counted off base circle${named}`);
}
