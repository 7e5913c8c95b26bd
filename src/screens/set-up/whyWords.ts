import { kinds } from './setUpNames';

/** Words of 'why this figure', English. */
export const whyWords = {
  why: 'Why this figure',
  whyPerQuarter: 'Pushrod travel per quarter turn',
  whyByLever: 'By pitch and lever: what is used',
  whyByLeverUnused: 'By pitch and lever',
  whyByPitch: 'By the pitch alone',
  whyMeasured: 'Measured: what is used',
  perQuarter: 'per quarter turn',
  perTurn: 'per turn',
  whyConflict: (lever: string, pitch: string) =>
    `Much trade text takes the pitch alone as the preload: ${pitch} a turn here. The rocker is a lever about the valve’s tip, so the pushrod really goes ${lever}. Verdicts here go by the lever.`,
  whySame: 'Here pitch and lever give the same: this screw moves the pushrod by its pitch.',
  whyKinds: kinds,
  whyMeasuredOff: (percent: number) =>
    percent === 0
      ? 'Measured and geometry agree.'
      : `Measured is ${Math.abs(percent)} % ${percent < 0 ? 'below' : 'above'} what pitch and lever give. Geometry is good for about 7 % either way.`,
  whyUnmeasured:
    'Geometry is good for about 7 % either way. A dial indicator on the pushrod settles it.',
  whyNotYet: 'Choose the thread and give the rocker ratio: the figure is worked out here.',
  lever: {
    label: 'The rocker as a lever',
    pushrod: 'pushrod',
    valve: 'valve, seated',
    pitch: 'pitch p',
    travel: 'travel',
    arm: 'arm 1',
    ratioIs: (ratio: number) => `R = ${ratio}`,
    ratioArm: 'arm R',
  },
  formula: { pivot: 'p × (1 + 1/R)', 'pushrod-end screw': 'p', 'valve-end screw': 'p / R' },
  formulaLean: 'p × (cos φ + 1/R)',
};
