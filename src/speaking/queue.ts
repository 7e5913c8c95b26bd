import { replaces, ruleOf } from './lineRules';
import type {
  Line,
  MouthEffect,
  MouthInput,
  MouthOutcome,
  MouthState,
  OfferedLine,
  Saying,
} from './mouth';
import { FRESH_MS, mayBeTold, nextLine, wakeAt } from './readiness';
import { heard } from './rhythm';

/** The breath between two lines, ms. */
export const BREATH_MS = 180;
/** After a press, how long older lines wait for what the press brings, ms. */
const CUT_HOLD_MS = 150;

interface Step {
  readonly state: MouthState;
  readonly effects: readonly MouthEffect[];
}

/**
 * The mouth: what is said, when, and in whose place. Pure; ticks are not its business, they never
 * wait. Words wait for keeping and for the builder's pause, one line at a time.
 */
export function reduceMouth(before: MouthState, input: MouthInput): MouthOutcome {
  const taken = take(before, input);
  const settled = settle(taken.state, input.at);
  const wake = wakeAt(settled.state, input.at);
  return {
    state: settled.state,
    effects: [...taken.effects, ...settled.effects],
    ...(wake === undefined ? {} : { wakeAt: wake }),
  };
}

function take(state: MouthState, input: MouthInput): Step {
  switch (input.type) {
    case 'offer':
      return offer(state, input.lines, input.at);
    case 'kept':
      return { state: { ...state, keptThrough: input.through }, effects: [] };
    case 'alarm':
      return { state: { ...state, alarm: input.on }, effects: [] };
    case 'cut':
      return cut(state, input.at);
    case 'hush':
      return hush(state);
    case 'started':
      return { state: { ...state, saying: begun(state.saying, input) }, effects: [] };
    case 'ended':
      if (state.saying?.line.token !== input.token) return { state, effects: [] };
      return { state: { ...state, saying: null, freeAt: input.at + BREATH_MS }, effects: [] };
    case 'time':
      return { state, effects: [] };
    default: {
      const never: never = input;
      return never;
    }
  }
}

function offer(state: MouthState, lines: readonly OfferedLine[], at: number): Step {
  const batch = state.batch + 1;
  let { waiting, rhythm } = state;
  const effects: MouthEffect[] = [];
  for (const line of lines) {
    const gone = waiting.filter(
      (older) =>
        (older.batch !== batch || ruleOf(older.kind).rank === 0) && replaces(line.kind, older.kind),
    );
    effects.push(...lapsed(gone));
    waiting = [
      ...waiting.filter((older) => !gone.includes(older)),
      { ...line, offeredAt: at, batch },
    ];
    rhythm = heard(rhythm, line.kind, at);
  }
  return { state: { ...state, waiting, rhythm, batch }, effects };
}

function lapsed(lines: readonly Line[]): readonly MouthEffect[] {
  return lines
    .filter(({ perishable }) => perishable)
    .map((line): MouthEffect => ({ do: 'lapse', line }));
}

/** Breaks off what is being said; nothing to a mouth that is quiet. */
function stop(state: MouthState): Step {
  if (state.saying === null) return { state, effects: [] };
  const { line } = state.saying;
  return { state: { ...state, saying: null }, effects: [{ do: 'stop', line }] };
}

/** A press: the line being said is over, and an instruction still waiting is stale. */
function cut(state: MouthState, at: number): Step {
  const firm = state.saying !== null && !ruleOf(state.saying.line.kind).cuttable;
  const stopped = firm ? { state, effects: [] } : stop(state);
  const stale = state.waiting.filter(({ perishable }) => perishable);
  return {
    state: {
      ...stopped.state,
      waiting: state.waiting.filter((line) => !stale.includes(line)),
      cut: { batch: state.batch, until: at + CUT_HOLD_MS },
    },
    effects: [...stopped.effects, ...lapsed(stale)],
  };
}

/** 'Stop': nothing more is said. What is kept is still written; counts and instructions are not. */
function hush(state: MouthState): Step {
  const stopped = stop(state);
  const written = state.waiting
    .filter((line) => !line.perishable && ruleOf(line.kind).rank > 0 && mayBeTold(state, line))
    .map((line): MouthEffect => ({ do: 'show', line }));
  return {
    state: { ...stopped.state, waiting: [] },
    effects: [...stopped.effects, ...lapsed(state.waiting), ...written],
  };
}

function longest(line: Line): number {
  return Math.min(line.longestMs, ruleOf(line.kind).mostMs ?? line.longestMs);
}

/** The watchdog runs from when the voice is heard, once that is known. */
function begun(saying: Saying | null, input: { token: number; at: number }): Saying | null {
  if (saying?.line.token !== input.token) return saying;
  return { ...saying, overAt: input.at + longest(saying.line) };
}

/** Everything that time, keeping and a free mouth allow by now. */
function settle(before: MouthState, at: number): Step {
  let state = before;
  const effects: MouthEffect[] = [];
  const apply = (step: Step) => {
    state = step.state;
    effects.push(...step.effects);
  };
  const late = state.waiting.filter((line) => line.perishable && at >= line.offeredAt + FRESH_MS);
  const shown = state.waiting.filter((line) => line.silent && mayBeTold(state, line));
  const leaving = new Set([...late, ...shown]);
  state = { ...state, waiting: state.waiting.filter((line) => !leaving.has(line)) };
  effects.push(...lapsed(late));
  for (const line of shown) {
    if (!late.includes(line)) effects.push({ do: 'show', line });
  }
  if (state.saying !== null && at >= state.saying.overAt) {
    apply(stop(state));
    state = { ...state, freeAt: at + BREATH_MS };
  }
  const line = nextLine(state, at);
  if (line === null) return { state, effects };
  apply(stop(state));
  return {
    state: {
      ...state,
      waiting: state.waiting.filter((other) => other !== line),
      saying: { line, overAt: at + longest(line) },
    },
    effects: [...effects, { do: 'say', line }],
  };
}
