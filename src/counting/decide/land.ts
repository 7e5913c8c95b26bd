import { TURN, type Turn48, turn48 } from '#valvetrain';
import { landingOf, tapOf, tapped } from '../landing';
import type { CountedReading } from '../readings';
import { markOf } from '../setUp';
import { type JobState, readingById, setUpOf } from '../state';
import { decideCount } from './count';
import { type CommandOf, type CountCommand, type Draft, happens, notNow, refuse } from './decision';

/** The counted reading whose landing may be told now; undefined when none waits for it. */
export function landingReading(state: JobState): CountedReading | undefined {
  const { open } = state;
  if (open?.phase !== 'landing' || open.reading === null) return undefined;
  const reading = readingById(state, open.reading);
  return reading?.kind === 'counted' ? reading : undefined;
}

/** 'How far?' answered in words; a mark named with it must be this reading's own (C8). */
export function decideLand(reading: CountedReading, { word, of48 }: CommandOf<'land'>): Draft {
  const mark = word === 'just shy' ? reading.count48 + reading.mark48 : reading.count48;
  if (of48 !== undefined && of48 !== mark) return outside(reading, of48);
  return happens({ type: 'landed', answer: landingOf(word, reading.mark48) });
}

/** 'How far?' answered as a count: a number, an hour, or a tap. */
export function landByCount(
  state: JobState,
  reading: CountedReading,
  command: CountCommand,
): Draft {
  switch (command.type) {
    case 'call':
      return landAtCount(reading, command.to48);
    case 'clock':
      return setUpOf(state)?.clock === 'off'
        ? refuse({ code: 'clock is off' })
        : landAtClock(reading, command.mark48);
    case 'step':
      return happens({ type: 'landed', answer: tapped(reading.landing, reading.mark48) });
    case 'positionInTurn':
      return notNow(state, command.type);
    default: {
      const never: never = command;
      return never;
    }
  }
}

/** 'Just shy of five' while counting is a count; without its mark it says nothing yet. */
export function countByLanding(state: JobState, command: CommandOf<'land'>): Draft {
  const setUp = setUpOf(state);
  const { word, of48, ...rest } = command;
  if (setUp === null || of48 === undefined) return notNow(state, command.type);
  const mark48 = markOf(setUp.calling);
  const to48 = word === 'just shy' ? of48 - tapOf(mark48) : of48 + landingOf(word, mark48).past48;
  if (to48 < 0) return notNow(state, command.type);
  return decideCount(state, { ...rest, type: 'call', to48: turn48(to48), form: 'bare' });
}

/** A number is where it stood: on the mark, past it, or on the next. */
function landAtCount(reading: CountedReading, to48: Turn48): Draft {
  const past = to48 - reading.count48;
  if (past < 0 || past > reading.mark48) return outside(reading, to48);
  return happens({
    type: 'landed',
    answer: { told: past === 0 ? 'nothing' : 'in the count', past48: turn48(past) },
  });
}

/** An hour is where the mark on the socket stands, up to a mark past the last. */
function landAtClock(reading: CountedReading, mark48: Turn48): Draft {
  const mark = reading.direction === 'on' ? mark48 : (TURN - mark48) % TURN;
  const past = (((mark - reading.count48) % TURN) + TURN) % TURN;
  if (past > reading.mark48) return outside(reading, turn48(reading.count48 + past));
  return happens({ type: 'landed', answer: { told: 'clock', past48: turn48(past) } });
}

function outside({ count48 }: CountedReading, said48: Turn48): Draft {
  return refuse({ code: 'landing outside the mark', counted48: count48, said48 });
}
