import type { Synth } from './synth';

/**
 * A voice that can be switched off: it then counts as locked, so lines are shown for as long as they
 * would take and nothing is reported missing.
 */
export function switchedSynth(synth: Synth, isOn: () => boolean): Synth {
  return {
    ...synth,
    status: () => (isOn() || synth.status() === 'none' ? synth.status() : 'locked'),
  };
}
