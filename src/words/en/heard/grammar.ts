import {
  allowed,
  type Calling,
  type CommandType,
  type JobState,
  type Stage,
  setUpOf,
  stageOf,
} from '#counting';
import type { LengthConvention, Turn48 } from '#valvetrain';
import { turn48 } from '#valvetrain';

/** What an ear listens for now, and what it needs of the job to understand it. Plain data. */
export interface Grammar {
  readonly stage: Stage;
  readonly allowed: readonly CommandType[];
  readonly calling: Calling;
  /** Said before every count ('count five'); null where none is asked for. */
  readonly carrier: string | null;
  /** How a spoken length is meant: as the test pushrod of the job is stated. */
  readonly convention: LengthConvention;
  /** The count standing now, 48ths of a turn. */
  readonly count48: Turn48;
  /** The utterance that the last thing that can be undone came of; `last`: nothing came after it. */
  readonly undoable: { readonly utterance: string; readonly last: boolean } | null;
}

/** What an ear is told besides the job: a carrier word as this device has it set. */
export interface GrammarOptions {
  readonly carrier: string | null;
}

/** The word a carrier is, where one is set. */
export const CARRIER = 'count';

/** The grammar of this moment of a job. */
export function grammarFor(state: JobState, { carrier }: GrammarOptions): Grammar {
  const setUp = setUpOf(state);
  const last = state.past?.event;
  return {
    stage: stageOf(state),
    allowed: allowed(state),
    calling: setUp?.calling ?? { way: 'quarters' },
    carrier,
    convention: state.pushrod?.convention ?? 'tip to tip',
    count48: state.open?.count48 ?? turn48(0),
    undoable:
      last?.utterance !== undefined
        ? { utterance: last.utterance, last: last.seq === state.seq }
        : null,
  };
}
