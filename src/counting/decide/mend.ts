import { sameValve, type ValveId, type ValveKind } from '#valvetrain';
import type { SetUp } from '../setUp';
import { type JobState, readingById } from '../state';
import { outside } from './choose';
import { type CommandOf, type Draft, happens, refuse } from './decision';

const other = (valve: ValveKind): ValveKind => (valve === 'intake' ? 'exhaust' : 'intake');

/** 'Wrong cylinder, it's five': moves the open valve, or the last reading, to the right name. */
export function decideMoveReading(
  state: JobState,
  setUp: SetUp,
  command: CommandOf<'moveReading'>,
): Draft {
  const last = state.open === null ? state.readings.at(-1) : undefined;
  if (state.open === null && last === undefined) return refuse({ code: 'no reading' });
  const from = state.open === null ? (last?.valve ?? null) : state.open.valve;
  const to = rightValve(from, command);
  if (to === null) return refuse({ code: 'say which valve' });
  if (from !== null && sameValve(from, to))
    return refuse({ code: 'already that valve', valve: to });
  return outside(setUp, to) ?? happens({ type: 'readingMoved', reading: last?.id ?? 'open', to });
}

/** What isn't said stays as it was; null when it was not known either. */
function rightValve(
  from: ValveId | null,
  { cylinder = from?.cylinder, valve }: CommandOf<'moveReading'>,
): ValveId | null {
  const kind = valve === 'other' ? from && other(from.valve) : (valve ?? from?.valve ?? null);
  return cylinder === undefined || kind === null ? null : { cylinder, valve: kind };
}

/** Names a reading that was counted before its valve had a name. */
export function decideName(
  state: JobState,
  setUp: SetUp,
  { reading: id, valve }: CommandOf<'nameReading'>,
): Draft {
  const reading = readingById(state, id);
  if (reading === undefined) return refuse({ code: 'unknown reading' });
  if (reading.valve !== null && sameValve(reading.valve, valve))
    return refuse({ code: 'already that valve', valve });
  return outside(setUp, valve) ?? happens({ type: 'valveNamed', reading: id, valve });
}
