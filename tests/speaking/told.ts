import type { Announcement, Fact, FactKind, Figures } from '#counting';
import { createSpeaker, type Wording } from '#speaking';
import { turn48 } from '#valvetrain';
import type { SayingContext } from '#words';
import { fakeClock } from '../fakes/clock';
import { fakeSynth } from '../fakes/synth';
import { fakeTicker } from '../fakes/ticker';

const figures: Figures = {
  preloadMm: 2,
  verdict: 'fits',
  window: null,
  pastTravel: false,
  sure: null,
};
const position = { angleDeg: 0, cylinder: 1, valves: [] };
const place = { position, index: 1, of: 8 };

/** One fact of each kind the tests of the mouth tell. */
export const facts = {
  counted: (quarters: number): Fact => ({
    kind: 'counted',
    count48: turn48(12 * quarters),
    figures,
    verdictChanged: false,
  }),
  start: { kind: 'start', direction: 'on' } as Fact,
  valve: {
    kind: 'valve',
    valve: null,
    direction: 'on',
    sameCylinder: false,
    repeat: false,
  } as Fact,
  doubted: { kind: 'doubted' } as Fact,
  howFar: { kind: 'how far?', count48: turn48(48) } as Fact,
  askedBack: {
    kind: 'asked back',
    question: { about: 'zero', counted48: turn48(48) },
  } as Fact,
  read: {
    kind: 'read',
    valve: null,
    count48: turn48(54),
    landing: null,
    figures,
    repeat: 1,
  } as Fact,
  cylinderDone: {
    kind: 'cylinder done',
    cylinder: { cylinder: 1, lines: [], done: true },
    left: 7,
  } as Fact,
  loose: { kind: 'pushrods loose?' } as Fact,
  handsClear: { kind: 'hands clear?', ...place } as Fact,
  turn: { kind: 'turn crank', ...place, turnDeg: 90, companion: 5 } as Fact,
  refused: { kind: 'refused', refusal: { code: 'nothing to take back' } } as Fact,
  notKept: { kind: 'not kept', why: 'slow' } as Fact,
  keptAgain: { kind: 'kept again' } as Fact,
  torqued: { kind: 'torqued', valve: null } as Fact,
};

/** An announcement as counting makes them. */
export function tell(fact: Fact, keptThrough = 0, over: Partial<Announcement> = {}): Announcement {
  return {
    fact,
    cue: null,
    timing: fact.kind === 'counted' || fact.kind === 'tapped' ? 'at a pause' : 'at once',
    keptThrough,
    perishable: fact.kind === 'turn crank',
    ...over,
  };
}

const LINES: Partial<Record<FactKind, string>> = {
  start: 'Zero.',
  valve: 'Eight exhaust.',
  doubted: 'Missed that.',
  'how far?': 'How far?',
  'asked back': 'Start over?',
  read: 'Four and a half, eighty-eight, fits.',
  'cylinder done': 'Seven to go.',
  'pushrods loose?': 'Pushrods loose?',
  'hands clear?': 'Hands clear?',
  'turn crank': 'Turn ninety.',
  refused: 'Nothing to take back.',
  'not kept': 'Not kept. The disk does not answer.',
  'kept again': 'Kept again.',
  'no voice': 'No voice here.',
  ear: 'Ear open.',
  'ear lost': 'Too loud, ear shut at four. Use the pedal.',
};

/** Short words of the tests' own; 'torqued' has none, only a tick. */
export const testWords: Wording = {
  said({ fact }, { unkept }) {
    if (fact.kind === 'counted') return `${fact.count48 / 12}, seventy.`;
    const line = LINES[fact.kind] ?? '';
    return unkept && fact.kind === 'read' ? `${line} Not kept.` : line;
  },
  caption: (announcement, context) => testWords.said(announcement, context) || 'tick',
  lapsed: () => 'not called',
};

/** Terse, in inches, with a helper. */
export const plainContext: SayingContext = {
  level: 'terse',
  units: 'inch',
  numbers: 'shop',
  lengths: 'shop',
  hands: 'with helper',
  unkept: false,
};

/** A speaker on a clock that stands still, with a voice and ticks that write down. */
export function onBench() {
  const clock = fakeClock();
  const synth = fakeSynth(clock);
  const ticker = fakeTicker(clock);
  const speaker = createSpeaker({
    clock,
    synth,
    ticker,
    context: () => plainContext,
    words: testWords,
  });
  const startMs = clock.now();
  return {
    clock,
    synth,
    ticker,
    speaker,
    /** What the voice was given so far, as 'ms after the start: text'. */
    spoken: () =>
      synth.calls.flatMap((one) =>
        one.call === 'speak' ? [`${one.at - startMs}: ${one.text}`] : [],
      ),
    texts: () => synth.calls.flatMap((one) => (one.call === 'speak' ? [one.text] : [])),
    captions: () => speaker.log().map(({ text, spoken }) => (spoken ? text : `(${text})`)),
    count(quarters: number, seq = 0) {
      speaker.announce([tell(facts.counted(quarters), seq, { cue: 'in' })]);
    },
  };
}
