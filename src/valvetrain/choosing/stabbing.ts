import type { Span } from './matching';

/**
 * Valves that each take one pushrod from a span of neighbouring lengths. Two classes: those that
 * some length would prove usable, and those that none would.
 */
export interface Taker extends Span {
  readonly provable: boolean;
}

export interface StabbingTask {
  readonly takers: readonly Taker[];
  /** Lengths in rising order, nm, and how many there are of each. */
  readonly lengthsNm: readonly number[];
  readonly quantities: readonly number[];
  /** How many of each class may go without: exactly what the stock can't serve, 0 as a rule. */
  readonly mayMiss: { readonly provable: number; readonly other: number };
  /** The most lengths that may be used. */
  readonly most: number;
}

/** For each taker the place of its length; null for one that goes without. */
export type Stabbing = readonly (number | null)[];

/** Takers waiting (released, not yet served), by deadline; and what it took to come so far. */
interface State {
  readonly waiting: readonly number[];
  readonly missedProvable: number;
  readonly missedOther: number;
  readonly lengths: number;
  readonly totalNm: number;
  readonly last: Use | null;
}

interface Use {
  readonly place: number;
  readonly served: readonly number[];
  readonly before: Use | null;
}

/**
 * Serves the takers from the fewest lengths, and of those ways by the smallest total length; null
 * when `most` lengths are not enough. ('Stabbing': choosing points that hit every span.)
 *
 * Exact, by dynamic programming over the lengths, shortest first. Between lengths all that matters of
 * the past is who is still waiting and how many of each class have gone without; of two ways to the same
 * state the one with fewer lengths, then the smaller total, is kept, both being sums. At each
 * length there is a choice: pass it by, or use it. If it is used, two exchanges show who takes it:
 *
 * - Fill it up. If one is left over and a waiting v takes a longer one later, give v this one instead: as
 *   many are served, no length is added, and the total falls.
 * - Within a class, nearest deadline first. Let v and w of a class wait, v's span ending no later
 *   than w's, and let w be served now and v at a later length or never. Exchange them: v may have this
 *   one, since it waits here; w may have v's, which lies before v's end and so before w's. Lengths
 *   used, total, and the numbers served of each class stay as they were.
 *
 * So only how many of each class take a length is tried where both wait and it does not go round.
 * Where nobody may go without, the classes make no difference and count as one. Bounds cut what
 * can't end within `most`: later spans that must be stabbed, and quantities that must suffice.
 */
export function stab(task: StabbingTask): Stabbing | null {
  const bounds = lowerBounds(task);
  let states = new Map<string, State>([
    ['', { waiting: [], missedProvable: 0, missedOther: 0, lengths: 0, totalNm: 0, last: null }],
  ]);
  const start = [...states.values()].map((state) => dropped(task, state, unservable(task)));
  states = new Map(start.flatMap((state) => (state === null ? [] : [[keyOf(state), state]])));
  for (const [place] of task.lengthsNm.entries()) {
    const next = new Map<string, State>();
    const released = task.takers.flatMap(({ from, to }, taker) =>
      from === place && from <= to ? [taker] : [],
    );
    for (const state of states.values()) {
      const waiting = merged(task, state.waiting, released);
      for (const way of waysAt(task, { ...state, waiting }, place)) {
        const expired = way.waiting.filter((taker) => (task.takers[taker]?.to ?? -1) <= place);
        const kept = dropped(task, way, expired);
        if (kept === null || kept.lengths + bounds(place + 1, kept) > task.most) continue;
        const key = keyOf(kept);
        if (isBetter(kept, next.get(key))) next.set(key, kept);
      }
    }
    states = next;
  }
  const ends = [...states.values()];
  const end = ends.reduce<State | undefined>((a, b) => (isBetter(b, a) ? b : a), undefined);
  return end === undefined ? null : placesOf(task, end);
}

/** Passing the length by, and every sensible way to use it. */
function waysAt(task: StabbingTask, state: State, place: number): readonly State[] {
  const { waiting } = state;
  if (waiting.length === 0) return [state];
  const room = Math.min(task.quantities[place] ?? 0, waiting.length);
  if (room === 0) return [state];
  const using = (served: readonly number[]): State => ({
    ...state,
    waiting: waiting.filter((taker) => !served.includes(taker)),
    lengths: state.lengths + 1,
    totalNm: state.totalNm + served.length * (task.lengthsNm[place] ?? 0),
    last: { place, served, before: state.last },
  });
  const provable = waiting.filter((taker) => task.takers[taker]?.provable);
  const other = waiting.filter((taker) => !task.takers[taker]?.provable);
  const alike = task.mayMiss.provable + task.mayMiss.other === 0;
  if (alike || provable.length === 0 || other.length === 0 || room === waiting.length) {
    return [state, using(waiting.slice(0, room))];
  }
  const ways: State[] = [state];
  for (let first = Math.max(0, room - other.length); first <= room; first += 1) {
    if (first > provable.length) break;
    ways.push(using([...provable.slice(0, first), ...other.slice(0, room - first)]));
  }
  return ways;
}

/** The state without some takers, who go without; null when that is more than may. */
function dropped(task: StabbingTask, state: State, gone: readonly number[]): State | null {
  if (gone.length === 0) return state;
  const provable = gone.filter((taker) => task.takers[taker]?.provable).length;
  const missedProvable = state.missedProvable + provable;
  const missedOther = state.missedOther + gone.length - provable;
  if (missedProvable > task.mayMiss.provable || missedOther > task.mayMiss.other) return null;
  const waiting = state.waiting.filter((taker) => !gone.includes(taker));
  return { ...state, waiting, missedProvable, missedOther };
}

function unservable({ takers }: StabbingTask): readonly number[] {
  return takers.flatMap(({ from, to }, taker) => (from > to ? [taker] : []));
}

/** Waiting takers in order of deadline, then of their number, so that alike states look alike. */
function merged(
  { takers }: StabbingTask,
  waiting: readonly number[],
  released: readonly number[],
): readonly number[] {
  if (released.length === 0) return waiting;
  const deadline = (taker: number) => takers[taker]?.to ?? -1;
  return [...waiting, ...released].sort((a, b) => deadline(a) - deadline(b) || a - b);
}

/**
 * How many further lengths it must at least take from a place on: the larger of the points that stab the
 * spans still to come (greedily, right ends first: exact without quantities), one for anybody
 * waiting, and as many of the largest quantities left as serve all who must be.
 */
function lowerBounds(task: StabbingTask): (place: number, state: State) => number {
  const { takers, quantities } = task;
  const mayMiss = task.mayMiss.provable + task.mayMiss.other;
  const places = [...quantities.keys(), quantities.length];
  const ahead = places.map((place) => takers.filter(({ from, to }) => from >= place && from <= to));
  const points = ahead.map((spans) => Math.max(0, stabbingNumber(spans) - mayMiss));
  const capacities = places.map((place) => capacitiesFrom(quantities.slice(place), takers.length));
  return (place, { waiting, missedProvable, missedOther }) => {
    const left = mayMiss - missedProvable - missedOther;
    const toServe = waiting.length + (ahead[place]?.length ?? 0) - left;
    if (toServe <= 0) return 0;
    const enough = capacities[place]?.findIndex((capacity) => capacity >= toServe) ?? -1;
    if (enough < 0) return Number.POSITIVE_INFINITY;
    return Math.max(points[place] ?? 0, enough + 1);
  };
}

/** What the one, two, three … largest quantities come to, until all takers could be served. */
function capacitiesFrom(quantities: readonly number[], takers: number): readonly number[] {
  const capacities: number[] = [];
  let capacity = 0;
  for (const quantity of quantities.toSorted((a, b) => b - a)) {
    if (capacity >= takers) break;
    capacity += quantity;
    capacities.push(capacity);
  }
  return capacities;
}

/** The fewest points that hit every span, quantities left aside. */
export function stabbingNumber(spans: readonly Span[]): number {
  let points = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (const { from, to } of spans.toSorted((a, b) => a.to - b.to)) {
    if (from <= last) continue;
    last = to;
    points += 1;
  }
  return points;
}

function keyOf({ waiting, missedProvable, missedOther }: State): string {
  return `${waiting.join(' ')};${missedProvable};${missedOther}`;
}

function isBetter(a: State, b: State | undefined): boolean {
  if (b === undefined) return true;
  return a.lengths !== b.lengths ? a.lengths < b.lengths : a.totalNm < b.totalNm;
}

function placesOf({ takers }: StabbingTask, { last }: State): Stabbing {
  const places: (number | null)[] = takers.map(() => null);
  for (let use = last; use !== null; use = use.before) {
    for (const taker of use.served) places[taker] = use.place;
  }
  return places;
}
