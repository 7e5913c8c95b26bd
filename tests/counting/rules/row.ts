import type { Cue, FactKind, RefusalCode, SetUp, Stage } from '#counting';
import type { Verdict } from '#valvetrain';
import type { Step } from '../given';

/** What one step comes to: an event, told as a table tells it, or no event. */
export type Outcome =
  | { readonly counted: number; readonly how?: string }
  /** The counts asked about, in quarters. */
  | { readonly askedBack: readonly number[]; readonly why: string }
  | { readonly asked: 'zero' | 'seat' }
  | { readonly landed: string; readonly past: number }
  | { readonly event: string }
  | { readonly refused: RefusalCode }
  /** Understood, and nothing happened: the count as it stands, in quarters. */
  | { readonly still: number };

/** How the job stands afterwards; only what the row is about. Counts in quarters. */
export interface Standing {
  readonly counted?: number;
  readonly stage?: Stage;
  readonly valve?: string;
  /** The last reading, and what it resolves. */
  readonly read?: number | 'loose';
  readonly resolves?: number;
  readonly readings?: number;
  /** Preload of the last reading in thou, to the nearest. */
  readonly thou?: number;
  readonly asking?: boolean;
}

export interface Told {
  readonly fact: FactKind;
  readonly cue?: Cue;
  readonly verdict?: Verdict;
  readonly timing?: 'at once' | 'at a pause';
}

/** One line of a rule's table. It starts where the first valve is to start, unless it says. */
export interface Row {
  readonly title: string;
  readonly job?: { readonly text: string; readonly setUp: Partial<SetUp> };
  readonly from?: 'opened';
  readonly given: readonly Step[];
  readonly when: readonly Step[];
  readonly comes: readonly Outcome[];
  readonly leaves?: Standing;
  readonly tells?: readonly Told[];
}

/** A rule: its number, its sentence and its table. */
export interface Rule {
  readonly number: string;
  readonly sentence: string;
  readonly rows: readonly Row[];
}
