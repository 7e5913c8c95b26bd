import type { Verdict } from '#valvetrain';

/** A verdict on the screen: the spoken words, capital first. */
export const verdicts: Readonly<Record<Verdict, string>> = {
  lash: 'Lash',
  light: 'Light',
  'fits, light side': 'Fits, light side',
  fits: 'Fits',
  'fits, heavy side': 'Fits, heavy side',
  heavy: 'Heavy',
  'near bottom': 'Near bottom',
};

/** Beside a reading that can't be judged. */
export const unjudged = {
  noWindow: 'No window set',
  noFigure: 'Count only',
  notAsked: 'Landing not asked',
  pastTravel: 'Past the plunger’s travel',
} satisfies Readonly<Record<string, string>>;
