import { type SetUp, type WalkChoice, walkChoiceOf } from '#counting';
import type { CamCard, LobeFigures, StatedLift, ValveEvents, WalkMethod } from '#valvetrain';

/** A cam card as typed, crank degrees. */
export interface CamDraft {
  readonly form: CamCard['form'];
  readonly statedAt: StatedLift;
  readonly events: Readonly<Record<keyof ValveEvents, string>>;
  /** In the durations form the card itself; in the events form what it prints besides. */
  readonly lobes: Readonly<Record<keyof LobeFigures, string>>;
  /** What places the cam: the intake centreline, or how far the cam is advanced. */
  readonly placedBy: 'centreline' | 'advance';
  readonly advance: string;
}

/** How the crank is walked, as typed. */
export interface WalkDraft {
  readonly method: WalkMethod;
  readonly margin: string;
  readonly at: 'TDCs' | 'any angle' | 'marked';
  /** Angles marked on the crank, from the first firing TDC. */
  readonly marks: string;
  readonly prefer: WalkChoice['prefer'];
}

/** What the form asks about the crank. */
export interface CrankDraft {
  readonly cam: CamDraft;
  readonly walk: WalkDraft;
}

const noEvents: CamDraft['events'] = {
  intakeOpensBeforeTdcDeg: '',
  intakeClosesAfterBdcDeg: '',
  exhaustOpensBeforeBdcDeg: '',
  exhaustClosesAfterTdcDeg: '',
};

const noLobes: CamDraft['lobes'] = {
  intakeDurationDeg: '',
  exhaustDurationDeg: '',
  lobeSeparationDeg: '',
  intakeCentrelineDeg: '',
};

const noCard: CamDraft = {
  form: 'not known',
  statedAt: 'not known',
  events: noEvents,
  lobes: noLobes,
  placedBy: 'centreline',
  advance: '',
};

/** The crank of a set-up as the form shows it; of an empty one, the cam is not known. */
export function crankDraft(setUp: Pick<SetUp, 'cam' | 'walk'>): CrankDraft {
  const { method, marginDeg, at, prefer } = walkChoiceOf(setUp);
  const marked = typeof at === 'string' ? null : at;
  return {
    cam: setUp.cam === undefined ? noCard : camDraft(setUp.cam),
    walk: {
      method,
      margin: String(marginDeg),
      at: typeof at === 'string' ? at : 'marked',
      marks: marked === null ? '' : marked.join(' '),
      prefer,
    },
  };
}

function camDraft(card: CamCard): CamDraft {
  switch (card.form) {
    case 'not known':
      return noCard;
    case 'events': {
      const { form, statedAt, events, alsoPrinted } = card;
      return {
        ...noCard,
        form,
        statedAt,
        events: written(events),
        lobes: { ...noLobes, ...(alsoPrinted === undefined ? {} : written(alsoPrinted)) },
      };
    }
    case 'durations': {
      const { form, statedAt, lobes } = card;
      return { ...noCard, form, statedAt, lobes: written(lobes) };
    }
    default: {
      const never: never = card;
      return never;
    }
  }
}

/** Exact figures as text: reading them back gives them again. */
function written<T extends object>(figures: T): { readonly [K in keyof T]: string } {
  const texts = Object.entries(figures).map(([name, value]) => [name, String(value)]);
  return Object.fromEntries(texts);
}
