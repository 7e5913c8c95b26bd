import type { Turn48 } from '#valvetrain';
import { turn48 } from '#valvetrain';
import { landingOf, tapped } from '../landing';
import { openQuestion } from '../questions';
import type { CountedReading } from '../readings';
import { type JobState, type OpenValve, readingById } from '../state';
import { askBack, type CommandOf, type Draft, happens, refuse, unchanged } from './decision';

/** Zero lash: starts a count on, ends a count off, and is asked again once something is counted (C6). */
export function decideZero(state: JobState, open: OpenValve, command: CommandOf<'zero'>): Draft {
  if (open.phase === 'to start' && open.direction === 'on') return happens({ type: 'zeroTouched' });
  if (open.direction === 'off') return endOff(state, open, command);
  if (open.count48 === 0) return unchanged(open.count48);
  const question = openQuestion(state, command.at);
  if (question?.about === 'zero') return happens({ type: 'restarted', atZero: true });
  return askBack({ about: 'zero', counted48: open.count48 });
}

function endOff(state: JobState, open: OpenValve, command: CommandOf<'zero'>): Draft {
  return doubtedSeat(state, open, command, false) ?? happens({ type: 'zeroTouched' });
}

/** The seat: ends a count on and freezes it (C8), starts a count off. */
export function decideSeat(state: JobState, open: OpenValve, command: CommandOf<'seat'>): Draft {
  const { loose } = command;
  if (open.direction === 'off') {
    return open.phase === 'to start' && !loose
      ? happens({ type: 'seated', loose: false })
      : refuse({ code: 'already counted', counted48: open.count48 });
  }
  if (loose && open.count48 > 0)
    return refuse({ code: 'loose after counting', counted48: open.count48 });
  return doubtedSeat(state, open, command, loose) ?? happens({ type: 'seated', loose });
}

/** While doubtful, a spoken end of the count is asked back with its number (C9). */
function doubtedSeat(
  state: JobState,
  open: OpenValve,
  command: CommandOf<'seat' | 'zero'>,
  loose: boolean,
): Draft | null {
  if (!open.doubtful || command.by !== 'voice') return null;
  if (openQuestion(state, command.at)?.about === 'seat') return null;
  return askBack({ about: 'seat', counted48: open.count48, loose });
}

/** The counted reading whose landing may still be told; undefined for a loose seat. */
export function landingReading(state: JobState): CountedReading | undefined {
  const id = state.open?.reading ?? null;
  const reading = id === null ? undefined : readingById(state, id);
  return reading?.kind === 'counted' ? reading : undefined;
}

/** 'How far?' answered in words; a mark named with it must be this reading's own (C8). */
export function decideLand(reading: CountedReading, command: CommandOf<'land'>): Draft {
  const answer = landingOf(command.word, reading.mark48);
  const mark = command.word === 'just shy' ? reading.count48 + reading.mark48 : reading.count48;
  if (command.of48 !== undefined && command.of48 !== mark) {
    return refuse({
      code: 'landing outside the mark',
      counted48: reading.count48,
      said48: command.of48,
    });
  }
  return happens({ type: 'landed', answer });
}

/** A number at 'how far?' is where it stood: on the mark or short of the next. */
export function landAtCount(reading: CountedReading, to48: Turn48): Draft {
  const past = to48 - reading.count48;
  if (past < 0 || past > reading.mark48) {
    return refuse({ code: 'landing outside the mark', counted48: reading.count48, said48: to48 });
  }
  return happens({
    type: 'landed',
    answer: { told: past === 0 ? 'nothing' : 'in the count', past48: turn48(past) },
  });
}

/** An hour at 'how far?': where the mark on the socket stands, up to a mark past the last. */
export function landAtClock(reading: CountedReading, command: CommandOf<'clock'>): Draft {
  const mark = reading.direction === 'on' ? command.mark48 : (48 - command.mark48) % 48;
  const past = (((mark - reading.count48) % 48) + 48) % 48;
  if (past > reading.mark48) {
    return refuse({
      code: 'landing outside the mark',
      counted48: reading.count48,
      said48: turn48(reading.count48 + past),
    });
  }
  return happens({ type: 'landed', answer: { told: 'clock', past48: turn48(past) } });
}

/** A tap at 'how far?' adds a quarter of the mark's spacing. */
export function landByTap(reading: CountedReading): Draft {
  return happens({ type: 'landed', answer: tapped(reading.landing, reading.mark48) });
}
