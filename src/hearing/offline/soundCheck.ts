import { initial, type SoundCheckStep, type SoundVerdict } from '#counting';
import { cardinal, type Grammar, grammarFor, hear } from '#words';
import { LEAST_ABOVE_DB } from './roomWatch';
import type { VoicePrint, VoicePrints } from './voicePrints';
import type { WordPrint } from './wordPrint';

/** What the builder is asked to say, in order. */
export const CHECK_NUMBERS: readonly string[] = Array.from({ length: 12 }, (_, i) =>
  cardinal(i + 1),
);
export const CHECK_COMMANDS: readonly string[] = [
  'rocker seated',
  'take it back',
  'say again',
  'hold on',
  'carry on',
  "what's left",
];

export type CheckPhase = 'room' | 'numbers' | 'commands' | 'over';

/** A sound check as far as it has come. Plain data; a fold over what happens. */
export interface SoundCheck {
  readonly phase: CheckPhase;
  /** What is waited for, among the numbers or the commands. */
  readonly index: number;
  /** Since when that is waited for, ms; null while the app itself speaks. */
  readonly since: number | null;
  /** The app's own voice, or its echo, may be heard until then, ms. */
  readonly deafUntil: number;
  /** When the app's voice last ended, ms; null while it speaks or before it has. */
  readonly mouthEndedAt: number | null;
  /** How long after its end the app's own voice was still heard, ms; null where it never was. */
  readonly tailMs: number | null;
  readonly noiseDb: number | null;
  readonly heard: readonly Said[];
  readonly verdict: SoundVerdict | null;
}

/** Something the builder said in answer. */
interface Said {
  readonly asked: string;
  readonly right: boolean;
  readonly db: number;
  readonly print: WordPrint | null;
}

export type CheckInput = { readonly at: number } & (
  | { readonly type: 'begin' }
  /** The app's voice begins, or has ended. */
  | { readonly type: 'mouth'; readonly busy: boolean }
  | { readonly type: 'level'; readonly noiseDb: number }
  | {
      readonly type: 'heard';
      /** What it was taken for; null for nothing. */
      readonly words: string | null;
      /** How long it sounded, ms. */
      readonly lastedMs: number;
      readonly db: number;
      readonly print: WordPrint | null;
    }
  | { readonly type: 'time' }
);

export interface CheckOutcome {
  readonly check: SoundCheck;
  /** To be said. */
  readonly say: SoundCheckStep | null;
}

export const noCheck: SoundCheck = {
  phase: 'over',
  index: 0,
  since: null,
  deafUntil: 0,
  mouthEndedAt: null,
  tailMs: null,
  noiseDb: null,
  heard: [],
  verdict: null,
};

/** How long the room is listened to, ms. */
const ROOM_MS = 3000;
/** A word is given up after this, ms; the first number has longer, until the builder begins. */
const NUMBER_MS = 4000;
const COMMAND_MS = 4500;
const FIRST_MS = 8000;
/** After the app's voice, its echo and a wireless speaker's lag, ms. */
const TAIL_MS = 400;
/** More than any speaker lags, ms: the builder spoke at once. */
const LONGEST_TAIL_MS = 2000;
/** The silence that ends a word, ms. */
const HANG_MS = 220;

/** One more thing that happened. Pure; the worst it takes is a minute. */
export function reduceCheck(check: SoundCheck, input: CheckInput): CheckOutcome {
  const { at } = input;
  switch (input.type) {
    case 'begin':
      return { check: { ...noCheck, phase: 'room' }, say: 'quiet' };
    case 'mouth': {
      const since = input.busy ? null : (check.since ?? at);
      const deafUntil = input.busy ? Number.POSITIVE_INFINITY : at + TAIL_MS;
      const mouthEndedAt = input.busy ? null : at;
      return { check: { ...check, since, deafUntil, mouthEndedAt }, say: null };
    }
    case 'level':
      return roomOver(
        { ...check, noiseDb: check.phase === 'room' ? input.noiseDb : check.noiseDb },
        at,
      );
    case 'heard': {
      const began = at - input.lastedMs - HANG_MS;
      if (began < ownVoiceUntil(check)) return { check: echoHeard(check, at), say: null };
      const answers = check.phase === 'numbers' || check.phase === 'commands';
      if (!answers || check.since === null) return { check, say: null };
      return answered(check, input);
    }
    case 'time':
      return late(check, at);
    default: {
      const never: never = input;
      return never;
    }
  }
}

/** Sound that began before then is the app's own. */
function ownVoiceUntil({ mouthEndedAt, deafUntil }: SoundCheck): number {
  return mouthEndedAt === null ? deafUntil : Math.max(mouthEndedAt, deafUntil);
}

/** The app heard itself: how long after it had ended its line tells how far its speaker lags. */
function echoHeard(check: SoundCheck, at: number): SoundCheck {
  const { mouthEndedAt, tailMs } = check;
  const lag = mouthEndedAt === null ? 0 : at - HANG_MS - mouthEndedAt;
  return { ...check, tailMs: Math.max(tailMs ?? 0, Math.min(LONGEST_TAIL_MS, Math.max(0, lag))) };
}

/** What the builder is to say now; null while nothing is waited for. */
export function askedFor({ phase, index }: SoundCheck): string | null {
  if (phase === 'numbers') return CHECK_NUMBERS[index] ?? null;
  return phase === 'commands' ? (CHECK_COMMANDS[index] ?? null) : null;
}

/** What is listened for now: the number asked for is the likeliest. */
export function checkGrammar({ phase, index }: SoundCheck): Grammar {
  const counting: Grammar = {
    ...grammarFor(initial, { carrier: null }),
    stage: 'counting',
    allowed: ['call', 'seat', 'takeBack', 'hold', 'carryOn', 'ask'],
  };
  const before = phase === 'numbers' ? CHECK_NUMBERS[index - 1] : undefined;
  const hearing = before === undefined ? null : hear(before, counting);
  const [meaning] = hearing?.kind === 'meaning' ? hearing.meanings : [];
  return meaning?.kind === 'command' && meaning.command.type === 'call'
    ? { ...counting, count48: meaning.command.to48 }
    : counting;
}

function roomOver(check: SoundCheck, at: number): CheckOutcome {
  const { phase, since } = check;
  if (phase !== 'room' || since === null || at - since < ROOM_MS) return { check, say: null };
  return { check: { ...check, phase: 'numbers', index: 0, since: at }, say: 'count' };
}

function answered(
  check: SoundCheck,
  { words, db, print, at }: Extract<CheckInput, { type: 'heard' }>,
): CheckOutcome {
  const asked = askedFor(check);
  if (asked === null) return { check, say: null };
  const ahead = words === null ? -1 : CHECK_NUMBERS.indexOf(words);
  // One number was not noticed at all: the count goes on from the one that was.
  const skips = check.phase === 'numbers' && ahead > check.index && ahead <= check.index + 2;
  const index = skips ? ahead : check.index;
  const said: Said = {
    asked: skips ? (words ?? asked) : asked,
    right: skips || words === asked,
    db,
    print,
  };
  return onFrom({ ...check, index, heard: [...check.heard, said] }, at);
}

function late(check: SoundCheck, at: number): CheckOutcome {
  const { phase, since, index } = check;
  if (since === null || phase === 'over' || phase === 'room') return { check, say: null };
  const first = phase === 'numbers' && index === 0 ? FIRST_MS : NUMBER_MS;
  if (at - since < (phase === 'commands' ? COMMAND_MS : first)) return { check, say: null };
  // Whoever does not count now is not going to.
  return onFrom(phase === 'numbers' ? { ...check, index: CHECK_NUMBERS.length - 1 } : check, at);
}

function onFrom(check: SoundCheck, at: number): CheckOutcome {
  const index = check.index + 1;
  if (check.phase === 'numbers' && index < CHECK_NUMBERS.length) {
    return { check: { ...check, index, since: at }, say: null };
  }
  if (check.phase === 'numbers' && check.heard.length === 0) return over(check);
  const next = check.phase === 'numbers' ? 0 : index;
  const command = CHECK_COMMANDS[next];
  if (command === undefined) return over(check);
  return {
    check: { ...check, phase: 'commands', index: next, since: at },
    say: { command },
  };
}

function over(check: SoundCheck): CheckOutcome {
  const verdict = verdictOf(check);
  return { check: { ...check, phase: 'over', verdict }, say: verdict };
}

/** In a room this much above the noise, dB, a count without its carrier word is seldom made of noise. */
const BARE_ABOVE_DB = 18;
const FEW = 0.6;
const MOST = 0.85;

function verdictOf({ heard, noiseDb }: SoundCheck): SoundVerdict {
  const asked = CHECK_NUMBERS.length + CHECK_COMMANDS.length;
  if (heard.length === 0) return 'nothing heard';
  const right = heard.filter((one) => one.right).length / asked;
  const above = levelOf(heard) - (noiseDb ?? Number.NEGATIVE_INFINITY);
  if (right < FEW || above < LEAST_ABOVE_DB) return 'pedal';
  return right < MOST || above < BARE_ABOVE_DB ? 'carrier' : 'good';
}

function levelOf(heard: readonly Said[]): number {
  const sorted = heard.map(({ db }) => db).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/**
 * The builder's own words out of a check that is over; null where there are too few. Where every
 * number was noticed, their order says which is which, heard rightly or not.
 */
export function printsOf({ heard, verdict, tailMs }: SoundCheck): VoicePrints | null {
  if (verdict !== 'good' && verdict !== 'carrier') return null;
  const counted = heard.filter(({ asked }) => CHECK_NUMBERS.includes(asked)).length;
  const inOrder = counted === CHECK_NUMBERS.length;
  const words = heard.flatMap(({ asked, right, print }): readonly VoicePrint[] => {
    const sure = right || (inOrder && CHECK_NUMBERS.includes(asked));
    return sure && print !== null ? [{ words: asked, print }] : [];
  });
  if (words.length < 2) return null;
  return { v: 1, words, db: levelOf(heard), ...(tailMs === null ? {} : { tailMs }) };
}
