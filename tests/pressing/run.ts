import type { Keymap, Press, PressCue, PressInput, PressState } from '#pressing';
import { defaultKeymap, initialPressState, reduce } from '#pressing';

/** One line of a test's table: when, what, which key. */
export type KeyEvent =
  | readonly [at: number, what: 'down' | 'up' | 'repeat', code: string]
  | readonly [at: number, what: 'blur' | 'look'];

export interface Told {
  readonly at: number;
  readonly press: string;
}

export interface Ran {
  readonly presses: readonly Told[];
  readonly cues: readonly Told[];
  readonly consumed: readonly boolean[];
  readonly state: PressState;
  readonly wakeAt: number | undefined;
}

export interface World {
  readonly keymap?: Keymap;
  readonly active?: (at: number) => boolean;
  /** The count the number keys are judged against; it follows the presses taken. */
  readonly count?: number;
  /** False leaves timers unfired until the next event, as on a stalled page. */
  readonly timers?: boolean;
}

export function pressText(press: Press): string {
  if (press.kind === 'number') return `number ${press.value}`;
  if (press.kind === 'listen') return press.on ? 'listen on' : 'listen off';
  return press.kind;
}

function cueText(cue: PressCue): string {
  return cue.kind === 'hold' ? cue.reached : cue.kind;
}

function inputOf(event: KeyEvent): PressInput {
  const [at, what, code = ''] = event;
  switch (what) {
    case 'blur':
      return { type: 'blur', at };
    case 'look':
      return { type: 'time', at };
    case 'repeat':
      return { type: 'down', code, repeat: true, at };
    default:
      return { type: what, code, repeat: false, at };
  }
}

/** Runs events through the reducer, waking it whenever it asks, up to and after the last event. */
export function run(events: readonly KeyEvent[], world: World = {}): Ran {
  const { keymap = defaultKeymap, active = () => true, timers = true } = world;
  let count = world.count ?? 0;
  let state = initialPressState;
  let wakeAt: number | undefined;
  const presses: Told[] = [];
  const cues: Told[] = [];
  const consumed: boolean[] = [];

  function feed(input: PressInput): boolean {
    const withinStep = (value: number) => value === count || value === count + 1;
    const result = reduce(state, input, { keymap, active: active(input.at), withinStep });
    state = result.state;
    wakeAt = result.wakeAt;
    for (const press of result.presses) {
      presses.push({ at: input.at, press: pressText(press) });
      if (press.kind === 'step') count += 1;
      if (press.kind === 'number' && withinStep(press.value)) count = press.value;
    }
    for (const cue of result.cues) cues.push({ at: input.at, press: cueText(cue) });
    return result.consumed;
  }

  function wakeUntil(at: number): void {
    while (timers && wakeAt !== undefined && wakeAt < at) {
      const asked = wakeAt;
      feed({ type: 'time', at: asked });
      if (wakeAt === asked) throw new Error(`woken at ${asked}, it asks for the same again`);
    }
  }

  for (const event of events) {
    wakeUntil(event[0]);
    consumed.push(feed(inputOf(event)));
  }
  wakeUntil(Number.POSITIVE_INFINITY);
  return { presses, cues, consumed, state, wakeAt };
}

/** The presses alone, in order. */
export function pressed(events: readonly KeyEvent[], world: World = {}): readonly string[] {
  return run(events, world).presses.map((told) => told.press);
}
