import { type Engine, type EngineLayout, makeEngine, type Numbering } from './engine';
import { type CylinderPlace, cylinderPlaces } from './places';

/** An engine as the trade describes one: layout, numbering and firing order. */
export interface EnginePreset {
  readonly id: string;
  /** Layout, numbering and order, no maker: 'V8, numbered alternately, 1-8-4-3-6-5-7-2'. */
  readonly name: string;
  readonly layout: EngineLayout;
  readonly cylinders: number;
  readonly numbering: Numbering;
  readonly firingOrder: readonly number[];
  readonly banks: readonly (readonly number[])[];
  /** Plan-view positions for a drawing. */
  readonly places: readonly CylinderPlace[];
  /** What the order, and its pairing with this numbering, rests on. */
  readonly source: string;
}

const SERVICE_MANUAL = 'Order: service manual, maker withheld. Numbering: from memory.';
const TECHNICAL_MANUAL = 'TM 5-3895-383-24 p. 6-60; TM 5-3805-258-24-1 p. 4-28.';
const COMPANION_LIST =
  'Order: published in a list of companions, title not noted. Numbering: from memory.';
const MEMORY = 'From memory.';

/**
 * Engines to start from. An order typed in goes through `makeEngine` and `engineProblems` instead.
 * Running direction is not part of a preset: it is asked for each engine.
 */
export const engines: readonly EnginePreset[] = [
  preset('inline', 'in line', [1, 3, 4, 2], TECHNICAL_MANUAL),
  preset('inline', 'in line', [1, 2, 4, 3], COMPANION_LIST),
  preset('inline', 'in line', [1, 5, 3, 6, 2, 4], 'Four service manuals, makers withheld.'),
  preset('V', 'by bank', [1, 4, 2, 5, 3, 6], MEMORY),
  preset('V', 'alternating', [1, 2, 3, 4, 5, 6], COMPANION_LIST),
  preset('V', 'alternating', [1, 6, 5, 4, 3, 2], MEMORY),
  preset('V', 'by bank', [1, 3, 7, 2, 6, 5, 4, 8], MEMORY),
  preset('V', 'by bank', [1, 5, 4, 2, 6, 3, 7, 8], MEMORY),
  preset('V', 'alternating', [1, 8, 4, 3, 6, 5, 7, 2], SERVICE_MANUAL),
  preset('V', 'alternating', [1, 8, 7, 2, 6, 5, 4, 3], SERVICE_MANUAL),
  preset('flat', 'by bank', [1, 4, 3, 2], MEMORY),
  preset('flat', 'alternating', [1, 3, 2, 4], COMPANION_LIST),
  preset('flat', 'by bank', [1, 6, 2, 4, 3, 5], MEMORY),
  preset('flat', 'alternating', [1, 4, 5, 2, 3, 6], MEMORY),
];

/** The engine of a preset, once its running direction has been asked. */
export function engineFromPreset(
  chosen: EnginePreset,
  running: Pick<Engine, 'runningDirection' | 'seenFrom'>,
): Engine {
  const { layout, cylinders, numbering, firingOrder } = chosen;
  return makeEngine({ layout, cylinders, numbering, firingOrder, ...running });
}

function preset(
  layout: EngineLayout,
  numbering: Numbering,
  firingOrder: readonly number[],
  source: string,
): EnginePreset {
  const cylinders = firingOrder.length;
  // The banks don't depend on which way the crank runs, so any direction will do here.
  const { banks } = makeEngine({
    layout,
    cylinders,
    numbering,
    firingOrder,
    runningDirection: 'clockwise',
    seenFrom: 'front',
  });
  return {
    id: [layout.toLowerCase(), numbering.replace(' ', '-'), firingOrder.join('-')].join('-'),
    name: `${layoutName(layout, cylinders)}${numberingName(numbering)}, ${firingOrder.join('-')}`,
    layout,
    cylinders,
    numbering,
    firingOrder,
    banks,
    places: cylinderPlaces({ banks }),
    source,
  };
}

function layoutName(layout: EngineLayout, cylinders: number): string {
  switch (layout) {
    case 'V':
      return `V${cylinders}`;
    case 'inline':
      return `Inline ${cylinders}`;
    case 'flat':
      return `Flat ${cylinders}`;
    case 'other':
      return `${cylinders} cylinders`;
    default:
      return unknownValue(layout);
  }
}

function numberingName(numbering: Numbering): string {
  switch (numbering) {
    case 'by bank':
      return ', numbered by bank';
    case 'alternating':
      return ', numbered alternately';
    case 'in line':
    case 'typed':
      return '';
    default:
      return unknownValue(numbering);
  }
}

function unknownValue(value: never): never {
  throw new RangeError(`Unknown value: ${String(value)}.`);
}
