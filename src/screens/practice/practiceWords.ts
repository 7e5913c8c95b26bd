import type { Bolt } from './bolts';
import type { LessonStep } from './lesson';

/** The keys as they now are, by what they do: 'Space', 'Number pad + or Enter'. */
export type KeyNames = (meaning: string) => string | null;

/** How a step is done, a way each; a way that this device or this step has not got is left out. */
export interface Ways {
  readonly key: string | null;
  readonly pedal: string | null;
  readonly voice: string | null;
}

/** Words of the practice run, English. */
export const practiceWords = {
  title: 'Practice run',
  lead: 'Three simulated bolts: the app plays the engine, you count. The bench, its keys, voice and ear are the real ones; nothing of it is kept.',
  opening: 'Setting up the practice run…',
  stepOf: (at: number, of: number) => `Bolt ${at} of ${of}`,
  bolt: 'The simulated bolt',
  counted: 'What the bench has counted',
  noCount: 'Not at zero yet',
  quarters: 'quarters',
  said: 'Said',
  or: ' or ',
  notSaid: 'What the app says stands here too.',
  next: 'What to do',
  touch: 'Touch',
  keys: 'Keys',
  keysOff: 'The keys are switched off in Settings.',
  ways: { key: 'Key', pedal: 'Pedal', voice: 'Voice' },
  listen: 'Open the ear',
  shutEar: 'Shut the ear',
  again: 'Practise again',
  toJobs: 'To the jobs',
  tight: 'TIGHT',
  boltLabel: (clock: string, tight: boolean) =>
    `The socket from above. Its mark stands at ${clock}${tight ? '; the bolt has come up tight' : ''}.`,
  boltAtZero: 'The socket from above, its mark set at twelve. The rocker still has play.',
  done: 'What was right',
  table: 'Each bolt: where it came up tight, and what you read',
  columns: { bolt: 'Bolt', tight: 'Tight at', read: 'You read', judged: 'Judged' },
  seatedLoose: 'seated loose',
  right: 'Right',
  wrong: 'Not where it stood',
  allRight:
    'All three were right. On an engine it is the same: feel for zero lash, count the quarters as they pass, and read where the mark stopped.',
  someWrong:
    'A reading within a quarter of a quarter turn is right. Practise again: the last quarter is where most is lost.',
};

const steps: Readonly<Record<LessonStep, readonly [title: string, why: string]>> = {
  wake: [
    'Press any key',
    'The first press wakes the sound and counts nothing, so that a reload in mid-job can’t add a turn.',
  ],
  'take up': ['Take up the bolt', 'The bench asks which valve is next. Here there is only one.'],
  zero: [
    'The rocker just touches: zero lash',
    'Turned down by hand until the play is gone. The mark on the socket is set at twelve; tell the bench, and the count starts.',
  ],
  turn: [
    'Turn on: one press each quarter',
    'Each press is one more quarter turn, and the bolt turns with you. A tick says it counted; the figure comes when you pause.',
  ],
  number: [
    'Turn on: give each number',
    'A number is the count itself, not one more. Miss three, give four, and it is right again.',
  ],
  clock: [
    'Read the clock',
    'This bolt has been turned already and has come up tight. The mark started at twelve: three is one quarter, six two, nine three.',
  ],
  'too far': [
    'That is past where it stopped',
    'The bolt was tight before that. Take the last one back: the log keeps both.',
  ],
  seat: [
    'It has come up tight: the rocker is seated',
    'Say so at once. The count is frozen there, and the bench asks how far past the last mark it went.',
  ],
  'how far': ['How far past the last mark?', 'Look at the mark.'],
  accept: [
    'That is right',
    'The bench says the preload it makes. Accept it and go on to the next bolt.',
  ],
  mend: [
    'That is not where the mark stands',
    'Take it back and answer again, or accept it as it is: nothing breaks here.',
  ],
  'carry on': ['The bench is held', 'Held, it says and counts nothing until you carry on.'],
  elsewhere: [
    'The bench is somewhere else now',
    'The practice run counts on, from zero lash. Take back until you are there again.',
  ],
  done: ['Three bolts read', 'The run is over: below stands what was right.'],
};

/** What a step is called, and why it is so. */
export function stepWords(step: LessonStep): { readonly title: string; readonly why: string } {
  const [title, why] = steps[step];
  return { title, why };
}

/** What is seen of the mark, where the answer to 'how far?' is read off it. */
export function seenPast(bolt: Bolt): string {
  switch (bolt.teaches) {
    case 'presses':
      return 'It stopped half way to the next quarter.';
    case 'numbers':
      return 'It stopped a bit past: about a quarter of the way to the next quarter.';
    case 'clock':
      return 'It stopped a bit past six, at seven o’clock.';
    default: {
      const never: never = bolt.teaches;
      return never;
    }
  }
}

/** How a step is done by key, pedal and voice. */
export function waysOf(step: LessonStep, bolt: Bolt | null, keyFor: KeyNames): Ways {
  const held = keyFor('pedal');
  const pedal = held ?? keyFor('pedal, taps only');
  const press = (meaning: string, what = '') => {
    const name = keyFor(meaning);
    return name === null ? null : `${name}${what}`;
  };
  const tap = pedal === null ? null : `${pedal}: tap it`;
  const hold = held === null ? null : `${held}: hold until the first tone, let go`;
  const holdLong = held === null ? null : `${held}: hold until the second tone, let go`;
  switch (step) {
    case 'wake':
      return { key: press('one more'), pedal: tap, voice: null };
    case 'take up':
      return { key: press('seat and accept'), pedal: hold, voice: '‘Next valve’' };
    case 'zero':
      return { key: press('zero'), pedal: hold, voice: '‘Zero lash’' };
    case 'turn':
      return { key: press('one more'), pedal: tap, voice: '‘One more’' };
    case 'number':
      return { key: press('number'), pedal: tap, voice: '‘One’, ‘two’, ‘three’ …' };
    case 'clock':
      return {
        key: press('number', ': how many whole quarters does the mark stand past twelve?'),
        pedal: pedal === null ? null : `${pedal}: tap once a whole quarter`,
        voice: 'The hour the mark stands at, with ‘o’clock’',
      };
    case 'too far':
    case 'elsewhere':
      return { key: press('take back'), pedal: holdLong, voice: '‘Take it back’' };
    case 'mend':
      return { key: press('take back'), pedal: holdLong, voice: '‘Take it back’' };
    case 'seat':
      return { key: press('seat and accept'), pedal: hold, voice: '‘Rocker seated’' };
    case 'how far':
      return landingWays(bolt, keyFor);
    case 'accept':
      return { key: press('seat and accept'), pedal: hold, voice: '‘Next valve’' };
    case 'carry on':
      return { key: null, pedal: hold, voice: '‘Carry on’' };
    case 'done':
      return { key: null, pedal: null, voice: null };
    default: {
      const never: never = step;
      return never;
    }
  }
}

function landingWays(bolt: Bolt | null, keyFor: KeyNames): Ways {
  const more = keyFor('one more');
  const pedal = keyFor('pedal') ?? keyFor('pedal, taps only');
  const taps = bolt?.teaches === 'presses' ? 'twice' : 'once';
  const each = 'each is a quarter of a quarter past';
  const half = keyFor('half');
  const halfWay = bolt?.teaches === 'presses';
  return {
    key: halfWay ? half : more === null ? null : `${more}, once: ${each}`,
    pedal: pedal === null ? null : `${pedal}: tap ${taps}; ${each}`,
    voice: halfWay ? '‘Half’' : '‘A hair past’',
  };
}
