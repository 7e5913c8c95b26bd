import { sameValve, type ValveId } from '#valvetrain';
import type { Direction } from '../events';
import type { SetUp } from '../setUp';
import type { JobState } from '../state';
import { firstValveAt, nextStop, nextValveHere, positionFor, standsAt, valvesLeft } from '../walk';
import { type CommandOf, type Draft, happens, refuse } from './decision';

/** Refuses a valve that is not of this engine or not in this job. */
export function outside(setUp: SetUp, valve: ValveId): Draft | null {
  if (setUp.engine === null) return null;
  const { cylinders, firingOrder } = setUp.engine;
  if (!firingOrder.includes(valve.cylinder)) {
    return refuse({ code: 'no such cylinder', cylinder: valve.cylinder, cylinders });
  }
  if (setUp.scope.some((id) => sameValve(id, valve))) return null;
  return refuse({ code: 'not in this job', valve });
}

/** Takes up the valve named, by a cylinder, a kind, both or neither. */
export function decideChoose(
  state: JobState,
  setUp: SetUp,
  command: CommandOf<'chooseValve'>,
): Draft {
  const cylinder =
    command.cylinder ?? state.open?.valve?.cylinder ?? state.crank.at?.cylinder ?? undefined;
  if (command.cylinder === undefined && command.valve === undefined) {
    return chooseNext(state, setUp, 'on');
  }
  if (cylinder === undefined) {
    return setUp.engine === null
      ? chooseNext(state, setUp, 'on')
      : refuse({ code: 'say which valve' });
  }
  const valve = command.valve ?? firstOf(state, setUp, cylinder);
  return valve === null
    ? refuse({ code: 'say which valve' })
    : choose(state, setUp, { cylinder, valve }, 'on');
}

/** Takes up what is next: by the walk, or a valve without a name where there is no engine to walk. */
export function chooseNext(state: JobState, setUp: SetUp, direction: Direction): Draft {
  if (setUp.engine === null)
    return happens({ type: 'valveChosen', valve: null, direction, heading: null });
  const position = nextStop(state)?.position;
  const valve = nextValveHere(state) ?? (position && firstValveAt(state, position));
  return valve === undefined || valvesLeft(state).length === 0
    ? refuse({ code: 'nothing left here' })
    : choose(state, setUp, valve, direction);
}

/** Takes up a valve: here, or by sending the crank to where it may be counted. */
export function choose(state: JobState, setUp: SetUp, valve: ValveId, direction: Direction): Draft {
  const position = positionFor(setUp, valve) ?? null;
  const heading = standsAt(state, position) ? null : position;
  return outside(setUp, valve) ?? happens({ type: 'valveChosen', valve, direction, heading });
}

/** The valve of a cylinder that comes first: one still to be read, else any in the job. */
function firstOf(state: JobState, setUp: SetUp, cylinder: number): ValveId['valve'] | null {
  if (setUp.engine === null) return null;
  const left = valvesLeft(state).find((id) => id.cylinder === cylinder);
  const inJob = setUp.scope.find((id) => id.cylinder === cylinder);
  return (left ?? inJob)?.valve ?? 'exhaust';
}
