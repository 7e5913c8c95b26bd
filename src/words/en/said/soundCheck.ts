import type { SoundCheckStep } from '#counting';

/** What is said in a sound check, and how it ended. */
export function soundCheck(step: SoundCheckStep): string {
  if (typeof step === 'object') return `Say: ${step.command}.`;
  switch (step) {
    case 'quiet':
      return 'Sound check. Quiet for three seconds, please.';
    case 'count':
      return 'Count aloud from one to twelve, with a pause after each number.';
    case 'good':
      return 'Good: the ear hears you well here.';
    case 'carrier':
      return 'Usable: use the carrier word, count five.';
    case 'pedal':
      return 'Too noisy: use the pedal.';
    case 'nothing heard':
      return 'Nothing was heard. Look at the microphone, then try again.';
    default: {
      const never: never = step;
      return never;
    }
  }
}
