export type MaterialId =
  | 'aluminium 356'
  | 'aluminium 6061'
  | 'grey iron'
  | 'steel 4140'
  | 'steel 1020';

/**
 * Linear expansion per kelvin, about room temperature: a materials-science text, table B.6. Alloys
 * differ by a few per cent, and the figure rises with temperature.
 */
export const expansionPerK: Readonly<Record<MaterialId, number>> = {
  'aluminium 356': 21.5e-6,
  'aluminium 6061': 23.6e-6,
  'grey iron': 11.4e-6,
  'steel 4140': 12.3e-6,
  'steel 1020': 11.7e-6,
};
