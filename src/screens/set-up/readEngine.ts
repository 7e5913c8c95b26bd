import {
  type Engine,
  engineFromPreset,
  engineProblems,
  engines,
  makeEngine,
  outOfScope,
  type RunningDirection,
  withBanksSwapped,
} from '#valvetrain';
import { degreesIn } from './degreesText';
import { type Draft, NOT_KNOWN } from './draft';
import { numbersIn, readNumber } from './draftText';
import { asFormProblems, type FormProblem, refusedField } from './formProblem';
import { setUpWords as words } from './setUpWords';

export interface EngineRead {
  /** Null while it can't be told, and when it is left out. */
  readonly engine: Engine | null;
  readonly problems: readonly FormProblem[];
}

/** The engine of a draft. Its running direction is asked, never presumed. */
export function readEngine(draft: Draft): EngineRead {
  if (draft.engine === NOT_KNOWN) return { engine: null, problems: [] };
  if (draft.engine === '') return fails('engine', words.problems.engineMissing);
  if (draft.engine === 'overhead cam') return fails('engine', outOfScope('overhead cam'));
  const direction =
    draft.direction === '' ? [refusedField('direction', words.problems.directionMissing)] : [];
  const engine = engineOf(draft, draft.direction === '' ? 'clockwise' : draft.direction);
  if (engine === null) return fails('engine', words.problems.engineMissing);
  return { engine, problems: [...typedProblems(draft, engine), ...direction] };
}

/** The engine as far as it can be drawn; null while nothing is chosen. */
export function engineOf(draft: Draft, runningDirection: RunningDirection): Engine | null {
  const running = { runningDirection, seenFrom: draft.seenFrom };
  const preset = engines.find(({ id }) => id === draft.engine);
  if (preset !== undefined) return sided(draft, engineFromPreset(preset, running));
  if (draft.engine !== 'typed') return null;
  const cylinders = readNumber(draft.cylinders);
  const firingOrder = numbersIn(draft.order);
  const input = {
    layout: draft.layout,
    numbering: draft.numbering,
    cylinders: cylinders.kind === 'value' ? cylinders.value : Number.NaN,
    firingOrder,
    ...(draft.firing === 'typed' ? { firingAnglesDeg: degreesIn(draft.firingAngles) } : {}),
    ...running,
  };
  if (draft.numbering !== 'typed') return sided(draft, makeEngine(input));
  return makeEngine({ ...input, banks: draft.banks.split('/').map(numbersIn) });
}

function sided(draft: Draft, engine: Engine): Engine {
  return draft.firstBank === 'right' && engine.banks.length === 2
    ? withBanksSwapped(engine)
    : engine;
}

function typedProblems(draft: Draft, engine: Engine): readonly FormProblem[] {
  if (draft.engine === 'typed' && draft.order.trim() === '') {
    return [refusedField('order', words.problems.orderMissing(engine.cylinders))];
  }
  return asFormProblems(engineProblems(engine), (field) => {
    if (draft.engine !== 'typed') return 'engine';
    if (field === 'firingOrder') return 'order';
    if (field === 'firingAnglesDeg') return 'firingAngles';
    return field === 'banks' && draft.numbering !== 'typed' ? 'numbering' : field;
  });
}

function fails(field: string, sentence: string): EngineRead {
  return { engine: null, problems: [refusedField(field, sentence)] };
}
