import {
  type Buying,
  buyingOf,
  buyingProblems,
  type CheckingRod,
  checkingProblems,
  lengthProblems,
  type SetUp,
} from '#counting';
import type { PushrodLength } from '#valvetrain';
import type { Draft } from './draft';
import { longUnit, readLength, shortUnit } from './draftText';
import { readEnds } from './endsDraft';
import { asFormProblems, type FormProblem, oddField, refusedField } from './formProblem';
import { notANumber } from './readAdjuster';
import { setUpWords as words } from './setUpWords';

export interface PushrodRead {
  /** The pushrod fitted for the test; none where a checking pushrod is counted. */
  readonly testPushrod: PushrodLength | null;
  readonly checking: CheckingRod | null;
  /** Null where nothing has been said of what can be bought. */
  readonly buying: Buying | null;
  readonly problems: readonly FormProblem[];
}

/** The pushrods of a draft: the test pushrod or a checking pushrod, their balls and holes. */
export function readPushrods(draft: Draft): PushrodRead {
  const ends = readEnds(draft.ends, longUnit(draft.units), draft.remembered);
  const ofEnds = ends.kind === 'unclear' ? [refusedField('ends.0', words.problems.bothEnds)] : [];
  const known = ends.kind === 'ends' ? ends.ends : null;
  const read: Rods =
    draft.counts === 'checking pushrod'
      ? { testPushrod: null, ...readChecking(draft) }
      : { checking: null, ...readTest(draft) };
  const buying = buyingWith(draft, known, read);
  const impossible = buying === null ? [] : buyingProblems({ buying });
  const found = asFormProblems(
    impossible.filter(({ field }) => field === 'ends'),
    () => 'ends.0',
  );
  return { ...read, buying, problems: [...read.problems, ...ofEnds, ...found] };
}

type Rods = Omit<PushrodRead, 'buying'>;

/** What can be bought stays as it was; balls and holes are asked here too. */
function buyingWith(
  { carried }: Draft,
  ends: Buying['ends'],
  { testPushrod, checking }: Rods,
): Buying | null {
  if (carried.buying !== null) return { ...carried.buying, ends };
  if (ends === null) return null;
  const usual = buyingOf({
    testPushrod,
    ...(checking === null ? {} : { checking }),
  });
  return { ...usual, ends };
}

function readTest(draft: Draft): Pick<PushrodRead, 'testPushrod' | 'problems'> {
  const read = readLength(draft.pushrod, longUnit(draft.units), draft.remembered);
  switch (read.kind) {
    case 'empty':
      return {
        testPushrod: null,
        problems:
          draft.rockers === 'bolt-down' ? [oddField('pushrod', words.problems.noPushrod)] : [],
      };
    case 'not a number':
      return { testPushrod: null, problems: notANumber('pushrod', draft.pushrod, read) };
    case 'value': {
      const testPushrod = { mm: read.value, convention: draft.convention };
      return {
        testPushrod,
        problems: asFormProblems(lengthProblems(testPushrod), () => 'pushrod'),
      };
    }
    default: {
      const never: never = read;
      return never;
    }
  }
}

function readChecking(draft: Draft): Pick<PushrodRead, 'checking' | 'problems'> {
  const closed = readLength(draft.closed, longUnit(draft.units), draft.remembered);
  const perTurn = readLength(draft.perTurn, shortUnit(draft.units), draft.remembered);
  const typed = [
    ...notANumber('closed', draft.closed, closed),
    ...notANumber('perTurn', draft.perTurn, perTurn),
  ];
  const checking: CheckingRod = {
    closedMm: closed.kind === 'value' ? closed.value : Number.NaN,
    perTurnMm: perTurn.kind === 'value' ? perTurn.value : Number.NaN,
    convention: draft.convention,
  };
  const calling: SetUp['calling'] =
    draft.calling === 'turns' ? { way: 'turns' } : { way: 'quarters' };
  const found = asFormProblems(checkingProblems({ checking, calling }), (field) => field);
  return {
    checking,
    problems: [
      ...typed,
      ...found.filter(({ field }) => !typed.some((problem) => problem.field === field)),
    ],
  };
}
