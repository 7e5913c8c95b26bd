import { unitOf } from '#counting';
import type { Grammar, Hearing } from '#words';

/** How likely a phrase is now, before anything was heard. Smaller is likelier. */
export type Tier =
  /** What the work leads to next. */
  | 'expected'
  /** The count again, or the one after the next: one call may have been missed. */
  | 'ahead'
  /** Would make sense. */
  | 'near'
  /** A number far from the count. */
  | 'far'
  /** Known, but makes no sense now. */
  | 'not now';

/** Nats each tier is handicapped by, as measured on recorded numbers. */
export const HANDICAP: Readonly<Record<Tier, number>> = {
  expected: 0,
  ahead: 8,
  near: 12,
  far: 24,
  'not now': 20,
};

/** Where a phrase stands, by its meaning in the grammar of this moment. */
export function tierOf(hearing: Hearing, grammar: Grammar): Tier {
  if (hearing.kind !== 'meaning') return 'not now';
  const [meaning] = hearing.meanings;
  if (meaning === undefined) return 'not now';
  if (meaning.kind !== 'command') return 'near';
  const { command } = meaning;
  if (!grammar.allowed.includes(command.type)) {
    return command.type === 'call' ? 'far' : 'not now';
  }
  if (command.type === 'call') return tierOfCall(command.to48, grammar);
  if (grammar.stage === 'landing') return command.type === 'land' ? 'expected' : 'near';
  return 'near';
}

function tierOfCall(to48: number, { count48, calling, stage }: Grammar): Tier {
  if (stage !== 'counting') return 'far';
  const units = (to48 - count48) / unitOf(calling);
  if (units === 1) return 'expected';
  if (units === 0 || units === 2) return 'ahead';
  return units > 0 && units < 2 ? 'near' : 'far';
}
