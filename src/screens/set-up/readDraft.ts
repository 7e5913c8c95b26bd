import { type Calling, type CrankPlan, type SetUp, setUpProblems } from '#counting';
import { type Adjuster, type Engine, type ValveId, valvesOf } from '#valvetrain';
import type { Draft } from './draft';
import { readNumber } from './draftText';
import { asFormProblems, type FormProblem, refusedField, valvesNamed } from './formProblem';
import { readAdjuster } from './readAdjuster';
import { crankChoices, readCrank } from './readCrank';
import { readEngine } from './readEngine';
import { readGroups } from './readGroups';
import { readPushrods } from './readPushrod';
import { setUpWords as words } from './setUpWords';

export interface DraftRead {
  /** Null while anything is refused, or odd and not yet kept. */
  readonly setUp: SetUp | null;
  /** In the order of the form. Odd figures already kept are left out. */
  readonly problems: readonly FormProblem[];
  /** Where the crank would stop; null while the engine, the cam or the walk can't be. */
  readonly plan: CrankPlan | null;
}

/** Reads a draft: a set-up ready to be counted on, or what stands in its way, field by field. */
export function readDraft(draft: Draft): DraftRead {
  const { engine, problems: ofEngine } = readEngine(draft);
  const scope = readScope(draft, engine);
  const { adjuster, problems: ofAdjuster } = readAdjuster(draft);
  const { groups, problems: ofGroups } = readGroups(draft, engine);
  const pushrod = readPushrods(draft);
  const setUp: SetUp = {
    name: draft.name.trim() || words.nameOf(engine),
    engine,
    scope: scope.valves,
    adjuster,
    rockers: draft.rockers,
    groups,
    calling: callingOf(draft),
    callsLastOnly: draft.callsLastOnly,
    asksLanding: draft.asksLanding,
    clock: draft.clock,
    hands: draft.hands,
    testPushrod: pushrod.testPushrod,
    ...(draft.zeroFeel === 'up-and-down play' ? {} : { zeroFeel: draft.zeroFeel }),
    ...measuredOf(draft, adjuster),
    ...(pushrod.checking === null ? {} : { checking: pushrod.checking }),
    ...(pushrod.buying === null ? {} : { buying: pushrod.buying }),
    ...crankChoices(draft),
  };
  const crank = readCrank(draft, setUp);
  const found = [
    ...ofEngine,
    ...scope.problems,
    ...ofAdjuster,
    ...ofGroups,
    ...pushrod.problems,
    ...crank.problems,
  ].filter(({ severity, sentence }) => severity === 'refused' || !draft.kept.includes(sentence));
  const problems = found.length > 0 ? found : leftOver(draft, setUp);
  return { setUp: problems.length === 0 ? setUp : null, problems, plan: crank.plan };
}

/** Whatever counting itself would refuse and no field has named: nothing gets past it. */
function leftOver(draft: Draft, setUp: SetUp): readonly FormProblem[] {
  return asFormProblems(setUpProblems(setUp), () => 'form').filter(
    ({ severity, sentence }) => severity === 'refused' || !draft.kept.includes(sentence),
  );
}

function readScope(
  draft: Draft,
  engine: Engine | null,
): { valves: readonly ValveId[]; problems: readonly FormProblem[] } {
  if (engine === null) return { valves: [], problems: [] };
  const all = valvesOf({ cylinders: engine.firingOrder.length });
  switch (draft.which) {
    case 'all':
      return { valves: all, problems: [] };
    case 'one cylinder': {
      const cylinder = readNumber(draft.oneCylinder);
      const valves =
        cylinder.kind === 'value' ? all.filter((id) => id.cylinder === cylinder.value) : [];
      const sentence = words.problems.oneCylinder(engine.firingOrder.length);
      return {
        valves,
        problems: valves.length > 0 ? [] : [refusedField('oneCylinder', sentence)],
      };
    }
    case 'picked': {
      const named = valvesNamed(draft.picked);
      const valves = all.filter((id) =>
        named.some(({ cylinder, valve }) => cylinder === id.cylinder && valve === id.valve),
      );
      return {
        valves,
        problems: valves.length > 0 ? [] : [refusedField('picked', words.problems.noValves)],
      };
    }
    default: {
      const never: never = draft.which;
      return never;
    }
  }
}

/** How sure the measured travel is, while the form still has the travel it was measured as. */
function measuredOf({ carried }: Draft, adjuster: Adjuster | null): Pick<SetUp, 'measuredTravel'> {
  const { measuredTravel } = carried;
  return measuredTravel !== null &&
    adjuster?.measuredTravelPerQuarterMm === measuredTravel.perQuarterMm
    ? { measuredTravel }
    : {};
}

function callingOf({ calling, degrees }: Draft): Calling {
  return calling === 'strokes' ? { way: calling, degrees } : { way: calling };
}
