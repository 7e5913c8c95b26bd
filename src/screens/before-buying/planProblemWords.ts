import type { Units } from '#words';

const otherUnit = (units: Units) =>
  units === 'mm'
    ? 'A figure in thou is taken with ‘thou’ behind it.'
    : 'A figure in inches is taken with ‘in’ behind it, one in millimetres with ‘mm’.';

/** What is said beside a field of a plan, where the trade's own sentences have none. English. */
export const planProblemWords = {
  amountMissing: 'Give how much, or take the tick away.',
  sizeMissing: 'Give both sizes, as it is now and as it will be, or take the tick away.',
  sizeBelow: 'A size is 0 or more.',
  milledBelow: 'Milling takes metal off: give a figure above 0.',
  notANumber: (text: string) => `‘${text.trim()}’ is no figure. Type digits, as 0.8 or 75.`,
  giveBelow: 'How far it may be off either way is 0 or more.',
  giveMuch: (units: Units) => `That is a wide ±. Keep it if it is right. ${otherUnit(units)}`,
  tooMuch: (units: Units) =>
    `That is a change of more than 6.35 mm (0.250 in). Keep it if it is right. ${otherUnit(units)}`,
  impossible: (units: Units) =>
    `No part changes by more than 50 mm (1.969 in). ${otherUnit(units)}`,
  giveImpossible: (units: Units) => `A ± is at most 6.35 mm (0.250 in). ${otherUnit(units)}`,
  tooLittle: (units: Units) =>
    `That is a change of less than 0.02 mm (0.001 in). Keep it if it is right. ${otherUnit(units)}`,
  nothing: 'Tick what you mean to change, and give its figures.',
  presentMissing: 'Without the present pushrod’s length there is a difference, but no length.',
  endsMissing: 'Give ball and oil hole of both ends, or leave all four empty.',
  endsWrong:
    'A ball is above 0 and up to 25 mm (0.984 in), and its oil hole from 0 to less than the ball.',
  targetOdd: 'That is outside the usable window of the lifter kind chosen.',
  targetBelow: 'The preload wanted is above 0.',
  ratioGive: 'How far the ratio may be off is 0 to 0.5.',
  rise: 'Give how much warmer, from −100 to 900 K.',
  pieceLength: 'Give a length above 0 and up to 500 mm (19.685 in).',
  expansion: 'Give its expansion, 1 to 40 millionths per kelvin.',
  hotPushrod: 'Give the pushrod’s length here, or the present pushrod’s length above.',
  gap: 'A gap at the valve’s tip is 0 to 25 mm (0.984 in).',
  gapTravel: 'Give the plunger’s travel, above 0 and up to 25 mm (984 thou).',
  gapOver:
    'That gap leaves more travel than the plunger has: the lifter is not collapsed, the ratio is another, or there is lash.',
};
