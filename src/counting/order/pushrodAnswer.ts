import {
  type Answer,
  type Choice,
  choosePushrods,
  EDGE_TOLERANCE_MM,
  type Offer,
  type OrderLine,
  orderList,
  type Scheme,
} from '#valvetrain';
import { type Buying, buyingOf } from '../setUp';
import { type JobState, setUpOf } from '../state';
import { choosable, type LeftOut } from './choosable';

/** Which pushrods to buy, and what else was thought of. */
export interface PushrodAnswer {
  readonly choice: Choice;
  /** The answer taken: the suggested one, unless another was asked for. */
  readonly taken: Answer;
  readonly order: readonly OrderLine[];
  readonly buying: Buying;
  /** Valves read that no length can be chosen for. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * Which pushrods to buy by the newest round that measures. Null with adjustable rockers, whose answer is
 * where to stop, without an engine, and while no valve has all that choosing needs.
 *
 * @param scheme an answer other than the suggested one.
 */
export function pushrodAnswer(state: JobState, scheme?: Scheme): PushrodAnswer | null {
  const setUp = setUpOf(state);
  if (setUp?.rockers !== 'bolt-down' || setUp.engine === null) return null;
  const { valves, leftOut } = choosable(state);
  const buying = buyingOf(setUp);
  const choice = choosePushrods(valves, buying.offer, setUp.engine);
  if (choice === null) return null;
  const wanted = scheme ?? choice.suggestion.scheme;
  const taken = choice.answers.find((answer) => answer.scheme === wanted) ?? choice.answers[0];
  if (taken === undefined) return null;
  return { choice, taken, order: orderList(taken, buying.offer, buying.spares), buying, leftOut };
}

/** Whether a length is none of those on offer, mm: a test pushrod may be, a bought one can't. */
export function offGrid(offer: Offer, mm: number): boolean {
  switch (offer.kind) {
    case 'grid': {
      const steps = (mm - offer.offsetMm) / offer.stepMm;
      return Math.abs(steps - Math.round(steps)) * offer.stepMm > STATED_TO_MM;
    }
    case 'stock':
      return !offer.lines.some(({ lengthMm }) => Math.abs(lengthMm - mm) <= STATED_TO_MM);
    default: {
      const never: never = offer;
      return never;
    }
  }
}

/** Lengths are stated to a thou or a hundredth: half of that is no other length. */
const STATED_TO_MM = 0.005 + EDGE_TOLERANCE_MM;
