import {
  type CamCard,
  eventsFromLobes,
  type LobeFigures,
  type StatedLift,
  type ValveEvents,
} from './camCard';

/** The timing the crank work rests on: where the valves leave and reach their seats. */
export interface SeatTiming {
  readonly events: ValveEvents;
  readonly basis: 'seat' | 'widened' | 'cautious default';
  /** Degrees added on each side of each lobe; 0 for seat figures. */
  readonly widenedByDeg: number;
  /** What must be said about it once; null where the card's own seat figures are used. */
  readonly note: string | null;
}

/**
 * How far from the seat figures those at 0.050 in of lifter rise may lie, crank degrees a side: 25 to
 * 30, from memory. The wider is used.
 */
export const FIFTY_THOU_WIDENING_DEG = 30;

/**
 * What a cam nobody knows is taken for: each valve open 320° about a centreline of 110°. Derived: it
 * takes in every cam whose half duration plus its centreline's distance from 110 is at most 160, so
 * all up to 300° with centrelines from 100 to 120, and all up to 280° with centrelines from 90 to 130.
 * That cams for the road lie within that is from memory.
 */
export const cautiousCam: LobeFigures = {
  intakeDurationDeg: 320,
  exhaustDurationDeg: 320,
  lobeSeparationDeg: 110,
  intakeCentrelineDeg: 110,
};

/**
 * Seat timing of a card. Figures at 0.050 in, or at a lift nobody knows, are widened by 30° a side;
 * no card at all gives the cautious default. Judge the card with `camProblems` first.
 */
export function seatTiming(card: CamCard): SeatTiming {
  if (card.form === 'not known') {
    return {
      events: eventsFromLobes(cautiousCam),
      basis: 'cautious default',
      widenedByDeg: 0,
      note: 'The cam is not known: each valve is taken to be open for 320° about a centreline of 110°, which takes in cams up to 300° with centrelines from 100° to 120°. A wilder cam needs its card.',
    };
  }
  const events = card.form === 'events' ? card.events : eventsFromLobes(card.lobes);
  switch (card.statedAt) {
    case 'seat':
      return { events, basis: 'seat', widenedByDeg: 0, note: null };
    case '0.050 in':
      return widened(
        events,
        'Figures at 0.050 in hide 25° to 30° of ramp on each side (from memory): 30° is added. Seat durations would be better.',
      );
    case 'not known':
      return widened(
        events,
        'The card does not say at what lift: it is taken to be 0.050 in, and 30° is added on each side (from memory). Seat durations would be better.',
      );
    default:
      return unknownLift(card.statedAt);
  }
}

/** Degrees added on each side of a lobe whose figures are stated at a lift. */
export function wideningDeg(statedAt: StatedLift): number {
  return statedAt === 'seat' ? 0 : FIFTY_THOU_WIDENING_DEG;
}

function widened(events: ValveEvents, note: string): SeatTiming {
  const by = FIFTY_THOU_WIDENING_DEG;
  return {
    events: {
      intakeOpensBeforeTdcDeg: events.intakeOpensBeforeTdcDeg + by,
      intakeClosesAfterBdcDeg: events.intakeClosesAfterBdcDeg + by,
      exhaustOpensBeforeBdcDeg: events.exhaustOpensBeforeBdcDeg + by,
      exhaustClosesAfterTdcDeg: events.exhaustClosesAfterTdcDeg + by,
    },
    basis: 'widened',
    widenedByDeg: by,
    note,
  };
}

function unknownLift(lift: never): never {
  throw new RangeError(`Unknown lift: ${String(lift)}.`);
}
