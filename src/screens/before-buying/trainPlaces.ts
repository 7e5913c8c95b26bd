import type { PartId } from './planDraft';

/** Where a term acts on the drawing: a part, or the plunger for another preload. */
export type TrainPlace = PartId | 'plunger';

export interface PlaceOnDrawing {
  /** Where its label begins. */
  readonly label: readonly [x: number, y: number];
  /** The leader from the label to the part. */
  readonly leader: string;
  /** Where the arrow that shows how it moves stands. */
  readonly arrow: readonly [x: number, y: number];
}

export const trainPlaces: Readonly<Record<TrainPlace, PlaceOnDrawing>> = {
  'rocker cup': { label: [-26, 70], leader: 'M40 92L116 110', arrow: [108, 132] },
  'lifter cup': { label: [-26, 286], leader: 'M40 306L120 330', arrow: [100, 330] },
  plunger: { label: [-26, 344], leader: 'M64 354L112 354', arrow: [128, 372] },
  'base circle': { label: [-26, 404], leader: 'M64 418L92 424', arrow: [170, 418] },
  'pivot shim': { label: [236, 26], leader: 'M232 40L206 86', arrow: [222, 152] },
  'valve tip': { label: [350, 84], leader: 'M346 92L286 108', arrow: [304, 126] },
  'head milled': { label: [350, 218], leader: 'M346 236L322 278', arrow: [332, 262] },
  gasket: { label: [350, 274], leader: 'M346 284L330 286', arrow: [338, 300] },
  'deck milled': { label: [350, 332], leader: 'M346 338L324 294', arrow: [334, 324] },
};
