import type { Figures } from '../figures';
import type { Cue } from './announcement';

type Zone = 'short' | 'in' | 'past' | 'plain';

function zoneOf(figures: Figures | null): Zone {
  switch (figures?.verdict) {
    case undefined:
    case null:
      return 'plain';
    case 'lash':
    case 'light':
      return 'short';
    case 'heavy':
    case 'near bottom':
      return 'past';
    default:
      return 'in';
  }
}

/** The tick of a count: its pitch by where the preload stands, its shape by an edge just crossed. */
export function countCue(before: Figures | null, after: Figures): Cue {
  const from = zoneOf(before);
  const to = zoneOf(after);
  if (to === 'in' && from !== 'in' && from !== 'plain') return 'enter';
  if (from === 'in' && to !== 'in' && to !== 'plain') return 'leave';
  return to;
}
