import { MM_PER_INCH } from './figures';

/** A single-start screw thread: one turn advances the fastener by its pitch. */
export interface Thread {
  /** Plain ASCII, for files: 'M8x1.25', '5/16-18'. */
  readonly id: string;
  /** As the trade writes it: 'M8 × 1.25', '5/16-18 UNC'. */
  readonly name: string;
  readonly pitchMm: number;
  readonly system: 'metric' | 'unified';
}

/**
 * Pitch in millimetres of a thread given in threads per inch, by 1 in = 25.4 mm exactly.
 * @throws RangeError unless the number of threads is finite and above 0.
 */
export function pitchFromThreadsPerInch(tpi: number): number {
  if (!Number.isFinite(tpi) || tpi <= 0) {
    throw new RangeError(`Threads per inch must be above 0; got ${tpi}.`);
  }
  return MM_PER_INCH / tpi;
}

/**
 * Threads met on rocker bolts, studs and adjusting screws. Metric pitches by ISO 261 (coarse, and
 * the fine ones of its fine series); inch threads by ASME B1.1, UNC and UNF. Both read in secondary tables.
 */
export const threads: readonly Thread[] = [
  metric('M6', 1),
  metric('M8', 1),
  metric('M8', 1.25),
  metric('M10', 1),
  metric('M10', 1.25),
  metric('M10', 1.5),
  metric('M12', 1.75),
  unified('1/4', 20, 'UNC'),
  unified('1/4', 28, 'UNF'),
  unified('5/16', 18, 'UNC'),
  unified('5/16', 24, 'UNF'),
  unified('3/8', 16, 'UNC'),
  unified('3/8', 24, 'UNF'),
  unified('7/16', 14, 'UNC'),
  unified('7/16', 20, 'UNF'),
  unified('1/2', 13, 'UNC'),
  unified('1/2', 20, 'UNF'),
];

/** The listed thread of that id, if there is one. */
export function threadById(id: string): Thread | undefined {
  return threads.find((thread) => thread.id === id);
}

function metric(size: string, pitchMm: number): Thread {
  return { id: `${size}x${pitchMm}`, name: `${size} × ${pitchMm}`, pitchMm, system: 'metric' };
}

function unified(size: string, tpi: number, series: 'UNC' | 'UNF'): Thread {
  const id = `${size}-${tpi}`;
  return { id, name: `${id} ${series}`, pitchMm: pitchFromThreadsPerInch(tpi), system: 'unified' };
}
