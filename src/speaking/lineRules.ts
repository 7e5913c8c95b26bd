import type { FactKind } from '#counting';

/** How a line behaves among others. The whole order of the mouth is in this one table. */
export interface LineRule {
  /** Higher stays when not both can be said. 3 is never replaced, 4 only by the same kind. */
  readonly rank: 0 | 1 | 2 | 3 | 4;
  /** Older waiting lines up to this rank are dropped when the line is offered; null drops none. */
  readonly replacesUpTo: 0 | 1 | 2 | null;
  /** The app itself does not break it off for an alarm or an instruction to turn the crank. */
  readonly firm: boolean;
  /** A press, or a voice with a headset, breaks it off. */
  readonly cuttable: boolean;
  /** The longest it may last, ms; null leaves it to the watchdog. */
  readonly mostMs: number | null;
}

/** A line between counts: the next one, or any other news of the valve, takes its place. */
const COUNT: LineRule = { rank: 0, replacesUpTo: 0, firm: false, cuttable: true, mostMs: 2000 };
/** Answers something that changed nothing, so a count still waiting stays true. */
const ASIDE: LineRule = { rank: 1, replacesUpTo: null, firm: false, cuttable: true, mostMs: null };
const TALK: LineRule = { rank: 1, replacesUpTo: 1, firm: false, cuttable: true, mostMs: null };
/** A question, and what makes an earlier question pointless. Never lost to a count or to talk. */
const QUESTION: LineRule = { rank: 2, replacesUpTo: 2, firm: false, cuttable: true, mostMs: null };
/** A reading: always said, and let finish unless the builder presses on. */
const RESULT: LineRule = { rank: 3, replacesUpTo: 2, firm: true, cuttable: true, mostMs: null };
/** What may cost the builder data: goes first, waits for no keeping, and no press breaks it off. */
const ALARM: LineRule = { rank: 4, replacesUpTo: null, firm: true, cuttable: false, mostMs: null };

/** The builder calls into a deaf ear until it is said: it goes first, and a press may break it off. */
const LOSS: LineRule = { rank: 4, replacesUpTo: null, firm: true, cuttable: true, mostMs: null };

const RULES: Readonly<Record<FactKind, LineRule>> = {
  counted: COUNT,
  tapped: COUNT,
  still: COUNT,

  doubted: ASIDE,
  refused: ASIDE,
  'no voice': ASIDE,

  'job opened': TALK,
  cautions: TALK,
  'pushrods loose': TALK,
  valve: TALK,
  start: TALK,
  skipped: TALK,
  moved: TALK,
  torqued: TALK,
  where: TALK,
  left: TALK,
  summary: TALK,
  'how sure': TALK,
  'set-up changed': TALK,
  'round started': TALK,
  'pushrod fitted': TALK,
  'job discarded': TALK,
  'job restored': TALK,

  'asked back': QUESTION,
  'how far?': QUESTION,
  'hands clear?': QUESTION,
  'turn crank': QUESTION,
  'pushrods loose?': QUESTION,
  restarted: QUESTION,
  'taken back': QUESTION,
  held: QUESTION,
  'back at': QUESTION,
  'read only': QUESTION,

  read: RESULT,
  'dial read': RESULT,
  'cylinder done': RESULT,
  'all read': RESULT,

  ear: TALK,
  'ear lost': LOSS,
  'sound check': QUESTION,

  'not kept': ALARM,
  'kept again': ALARM,
};

/** The rule of a fact's line. */
export function ruleOf(kind: FactKind): LineRule {
  return RULES[kind];
}

/** Whether offering the newer line drops the older one, which still waits. */
export function replaces(newer: FactKind, older: FactKind): boolean {
  const { rank } = ruleOf(older);
  if (rank === 3) return false;
  return newer === older || rank <= (ruleOf(newer).replacesUpTo ?? -1);
}

/** Whether the newer line, ready to be said, breaks off the one being said. */
export function breaksOff(newer: FactKind, perishable: boolean, said: FactKind): boolean {
  const { rank, firm } = ruleOf(said);
  if (firm) return false;
  const urgent = perishable || ruleOf(newer).rank === 4;
  return urgent || (rank === 0 && ruleOf(newer).rank >= 2);
}
