import type { Remedy, ValveId } from '#valvetrain';
import type { Figures } from '../figures';

/** A valve with its figures. */
interface Judged {
  readonly valve: ValveId;
  readonly figures: Figures | null;
}

/** The valves whose verdict can't be told from the one across a limit that hurts. */
export function unprovenValves(lines: readonly Judged[]): readonly ValveId[] {
  return lines.flatMap(({ valve, figures }) => (figures?.sure?.against ? [valve] : []));
}

/** The remedy that is the first enough for most of them; null where none is. */
export function settlesMost(lines: readonly Judged[]): Remedy['kind'] | null {
  const firsts = lines.flatMap(({ figures }) => figures?.sure?.settling?.first?.kind ?? []);
  const times = (kind: Remedy['kind']) => firsts.filter((other) => other === kind).length;
  return [...firsts].sort((a, b) => times(b) - times(a))[0] ?? null;
}
