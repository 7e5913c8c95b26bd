import { plainFigure } from '../figures';
import { hasRefusal, odd, type Problem, refused } from '../problems';
import {
  type CamCard,
  eventsFromLobes,
  type LobeFigures,
  lobesFromEvents,
  type StatedLift,
  type ValveEvents,
} from './camCard';
import { SAME_DEG } from './cycle';
import { centreProblems, durationProblems, usualProblems } from './lobeProblems';
import { FIFTY_THOU_WIDENING_DEG, wideningDeg } from './seatTiming';

/** A card's rounding explains a difference up to this, not more. */
const CARD_ROUNDING_DEG = 1;

const eventNames: Readonly<Record<keyof ValveEvents, string>> = {
  intakeOpensBeforeTdcDeg: 'intake opening, before TDC',
  intakeClosesAfterBdcDeg: 'intake closing, after BDC',
  exhaustOpensBeforeBdcDeg: 'exhaust opening, before BDC',
  exhaustClosesAfterTdcDeg: 'exhaust closing, after TDC',
};

const lobeNames: Readonly<Record<keyof LobeFigures, string>> = {
  intakeDurationDeg: 'intake duration',
  exhaustDurationDeg: 'exhaust duration',
  lobeSeparationDeg: 'lobe separation',
  intakeCentrelineDeg: 'intake centreline',
};

/**
 * What is wrong with a cam card. Refused: a figure missing, an event more than 180° from its dead
 * centre, a valve that shuts before it opens, a duration over 400° (widened as `seatTiming` widens
 * it), printed figures that contradict the events by more than a degree. Odd: durations under 180°,
 * centrelines or a separation far from the usual, a lift that is not known.
 */
export function camProblems(card: CamCard): readonly Problem[] {
  switch (card.form) {
    case 'not known':
      return [];
    case 'events': {
      const { events, statedAt } = card;
      return inStages(
        () => missingProblems(events, eventNames),
        () => eventProblems(events),
        () => [
          ...durationProblems(lobesFromEvents(events), wideningDeg(statedAt)),
          ...printedProblems(card),
        ],
        () => [...usualProblems(lobesFromEvents(events)), ...liftProblems(statedAt)],
      );
    }
    case 'durations': {
      const { lobes, statedAt } = card;
      return inStages(
        () => missingProblems(lobes, lobeNames),
        () => centreProblems(lobes),
        () => durationProblems(lobes, wideningDeg(statedAt)),
        () => eventProblems(eventsFromLobes(lobes)),
        () => [...usualProblems(lobes), ...liftProblems(statedAt)],
      );
    }
    default:
      return unknownForm(card);
  }
}

/** The problems of each stage in turn, as far as the first with a refusal: the rest would echo it. */
function inStages(...stages: readonly (() => readonly Problem[])[]): readonly Problem[] {
  const found: Problem[] = [];
  for (const stage of stages) {
    const problems = stage();
    if (hasRefusal(problems)) return problems;
    found.push(...problems);
  }
  return found;
}

function missingProblems<T extends { readonly [K in keyof T]: number }>(
  figures: T,
  names: Readonly<Record<keyof T & string, string>>,
): readonly Problem[] {
  return keysOf(names)
    .filter((field) => !Number.isFinite(figures[field]))
    .map((field) =>
      refused(field, 'missing', `The cam card lacks the ${names[field]}: give crank degrees.`),
    );
}

function eventProblems(events: ValveEvents): readonly Problem[] {
  return keysOf(eventNames)
    .filter((field) => Math.abs(events[field]) > 180)
    .map((field) =>
      refused(
        field,
        'cannot be',
        `${plainFigure(events[field])}° can’t be the ${eventNames[field]}: it would lie past the next dead centre, 180° away.`,
      ),
    );
}

function printedProblems(card: CamCard & { readonly form: 'events' }): readonly Problem[] {
  const fromEvents = lobesFromEvents(card.events);
  return keysOf(lobeNames).flatMap((field) => {
    const printed = card.alsoPrinted?.[field];
    if (printed === undefined) return [];
    if (!Number.isFinite(printed)) {
      return [
        refused(
          field,
          'missing',
          `The cam card lacks the ${lobeNames[field]}: give crank degrees.`,
        ),
      ];
    }
    const apart = Math.abs(printed - fromEvents[field]);
    if (apart <= CARD_ROUNDING_DEG + SAME_DEG) return [];
    return [
      refused(
        field,
        'contradicts the events',
        `The card’s ${lobeNames[field]} is ${plainFigure(printed)}°, but its events give ${plainFigure(fromEvents[field])}°: they are ${plainFigure(apart)}° apart. One of them is misread.`,
      ),
    ];
  });
}

function liftProblems(statedAt: StatedLift): readonly Problem[] {
  if (statedAt !== 'not known') return [];
  return [
    odd(
      'statedAt',
      'lift not known',
      `At what lift are the durations stated? Until that is known ${FIFTY_THOU_WIDENING_DEG}° is added on each side, as for figures at 0.050 in.`,
    ),
  ];
}

function keysOf<K extends string>(names: Readonly<Record<K, string>>): readonly K[] {
  return Object.keys(names) as K[];
}

function unknownForm(card: never): never {
  throw new RangeError(`Unknown card: ${JSON.stringify(card)}.`);
}
