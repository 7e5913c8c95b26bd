import type { JobEvent, JobState, Reading } from '#counting';
import { UNDOABLE } from '#counting';

/** Freezes a value all through, and throws where a number in it is none. */
export function frozen<T>(value: T): T {
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new Error(`A number is ${value}.`);
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const part of Object.values(value)) {
    if (part === undefined) throw new Error('A field is undefined.');
    frozen(part);
  }
  return value;
}

/** Whether two values are alike all through; the same object is, without a look inside. */
export function alike(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  return names.every((name) => alike(Reflect.get(a, name), Reflect.get(b, name)));
}

/** Whether two states are alike but for the way back. */
export function alikeNow(a: JobState, b: JobState): boolean {
  return alike({ ...a, past: null }, { ...b, past: null });
}

/** Whether two states are alike, the whole way back included. */
export function alikeAllTheWay(a: JobState, b: JobState): boolean {
  let [one, other]: [JobState, JobState] = [a, b];
  for (;;) {
    if (!alikeNow(one, other)) return false;
    if (one.past === null || other.past === null) return one.past === other.past;
    const { before, ...rest } = one.past;
    const { before: otherBefore, ...otherRest } = other.past;
    if (!alike(rest, otherRest)) return false;
    [one, other] = [before, otherBefore];
  }
}

/** What may be taken back, without what the bench can't undo: a doubt, an answer, a pressed-in lifter. */
export function undoablePart({
  open,
  crank,
  readings,
  setUps,
  round,
  pushrod,
  fitted,
  skipped,
}: JobState) {
  return {
    open: open && { ...open, doubtful: false },
    crank: { at: crank.at, heading: crank.heading, valve: crank.headingValve },
    readings,
    setUps,
    round,
    pushrod,
    fitted,
    skipped,
  };
}

/** The fields of a reading that an event may touch. */
const touches: Partial<Record<JobEvent['type'], readonly (keyof Reading | 'landing')[]>> = {
  landed: ['landing'],
  readingMoved: ['valve', 'repeatOf'],
  valveNamed: ['valve'],
  torqued: ['torqued'],
  setupChanged: ['setUp', 'takenOn'],
};

/** Readings that changed where the event had no leave to: none, unless something is wrong. */
export function wronglyChanged(
  before: JobState,
  event: JobEvent,
  after: JobState,
): readonly number[] {
  if (event.type === 'takenBack' || before.readings === after.readings) return [];
  const may = touches[event.type] ?? [];
  return before.readings
    .filter((reading) => {
      const now = after.readings.find(({ id }) => id === reading.id);
      if (now === undefined) return true;
      return Object.keys(reading).some(
        (name) =>
          !may.some((field) => field === name) &&
          !alike(Reflect.get(reading, name), Reflect.get(now, name)),
      );
    })
    .map(({ id }) => id);
}

/** The log with what was taken back left out, worked out without the code under test. */
export function effective(events: readonly JobEvent[]): readonly JobEvent[] {
  const undone = new Set(events.flatMap((e) => (e.type === 'takenBack' ? [e.undoes] : [])));
  return events.filter(
    ({ seq, type }) => type !== 'takenBack' && !(undone.has(seq) && UNDOABLE.has(type)),
  );
}

/** What a plain walk through the effective log finds: counts before zero, and readings made. */
export function walked(events: readonly JobEvent[]) {
  let counting = false;
  let direction = 'on';
  let early = 0;
  let readings = 0;
  for (const event of effective(events)) {
    switch (event.type) {
      case 'valveChosen':
        direction = event.direction;
        counting = false;
        break;
      case 'positionReached':
      case 'overshot':
      case 'repeatStarted':
      case 'valveLeft':
      case 'roundStarted':
        direction = 'on';
        counting = false;
        break;
      case 'zeroTouched':
      case 'seated': {
        const begins = (event.type === 'zeroTouched') === (direction === 'on');
        if (!begins) readings += 1;
        counting = begins;
        break;
      }
      case 'restarted':
        counting = event.atZero;
        break;
      case 'dialRead':
        readings += 1;
        break;
      case 'counted':
        if (!counting) early += 1;
        break;
      default:
    }
  }
  return { early, readings };
}
