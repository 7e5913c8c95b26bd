import type { ValveLine } from '../summary';
import type { Compared } from '../sure/standingFigure';
import type { Repeated } from './announcement';

/** What stands for a valve read more than once; null where it has a single reading. */
export function repeatedOf({ standing, readings }: ValveLine): Repeated | null {
  if (standing === null || readings < 2) return null;
  return {
    figures: standing.figures,
    readings: standing.readings.length,
    compared: worstOf(standing.compared),
  };
}

/** The judgement that is furthest over what is allowed. */
function worstOf(compared: readonly Compared[]): Compared | null {
  const over = ({ agreement }: Compared) => Math.abs(agreement.differenceMm) - agreement.allowedMm;
  return compared.toSorted((a, b) => over(b) - over(a))[0] ?? null;
}
