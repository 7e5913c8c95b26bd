import { unitOf } from '#counting';
import type { Grammar, Hearing } from '#words';

/** How likely a phrase is now, before anything was heard. Smaller is likelier. */
export type Tier =
  /** What the work leads to next. */
  | 'expected'
  /** The one after the next: a call may have been missed. */
  | 'ahead'
  /** Would make sense. */
  | 'near'
  /** A number away from the count: the bench asks before it takes it. */
  | 'far'
  /** One so far away that work does not come to it. */
  | 'remote'
  /** Known, but makes no sense now. */
  | 'not now';

/** Nats each tier is handicapped by, as measured on recorded numbers. */
export const HANDICAP: Readonly<Record<Tier, number>> = {
  expected: 0,
  ahead: 12,
  near: 26,
  far: 40,
  remote: 46,
  'not now': 36,
};

/** Marks a builder may be off by after calls that were not heard. */
const FAR_UNITS = 5;

/** Where a phrase stands, by its meaning in the grammar of this moment. */
export function tierOf(hearing: Hearing, grammar: Grammar): Tier {
  if (hearing.kind !== 'meaning') return 'not now';
  const [meaning] = hearing.meanings;
  if (meaning === undefined) return 'not now';
  if (meaning.kind !== 'command') return 'near';
  const { command } = meaning;
  if (!grammar.allowed.includes(command.type)) {
    return command.type === 'call' ? 'remote' : 'not now';
  }
  if (command.type === 'call') return tierOfCall(command.to48, grammar);
  if (grammar.stage === 'landing') return command.type === 'land' ? 'expected' : 'near';
  return 'near';
}

function tierOfCall(to48: number, { count48, calling, stage }: Grammar): Tier {
  if (stage !== 'counting') return 'remote';
  const units = (to48 - count48) / unitOf(calling);
  if (units === 1) return 'expected';
  if (units === 2) return 'ahead';
  // Said again it changes nothing: it may not stand in the next count's way.
  if (units >= 0 && units < 2) return 'near';
  return Math.abs(units) <= FAR_UNITS ? 'far' : 'remote';
}
