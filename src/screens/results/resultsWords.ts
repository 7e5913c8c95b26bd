import type { ValveId, Zone } from '#valvetrain';
import type { Units } from '#words';

interface Rests {
  /** Valves the answer is worked out from, those the job wants, and those of the engine. */
  readonly valves: number;
  readonly wanted: number;
  readonly engine: number;
  readonly cylinders: number;
}

const zoneWords: Readonly<Record<Zone, string>> = {
  'proven in': 'proven usable',
  "can't tell": 'not proven usable',
  'proven out': 'outside the window',
};

/** Words of the results, English. */
export const resultsWords = {
  title: 'Results',
  of: (name: string) => `Results of ${name}`,
  none: '–',
  unit: { inch: 'thou', mm: 'mm' },
  read: (read: number, wanted: number) => `${read} of ${wanted} valves read`,
  finalCheck: 'Final check',
  round: (number: number) => `Round ${number}`,
  nothingYet: 'Nothing is read yet. Count on the bench; each valve comes here as it seats.',
  toBench: 'Go to the bench',
  table: 'Readings',
  cylinder: (cylinder: number) => `Cylinder ${cylinder}`,
  columns: {
    valve: 'Valve',
    count: { fastener: 'Quarters', checking: 'Turns' },
    preload: (units: Units) => `Preload, ${units === 'inch' ? 'thou' : 'mm'}`,
    atZero: 'Length at zero lash',
    verdict: 'Verdict',
  },
  valve: { intake: 'Intake', exhaust: 'Exhaust' },
  letter: { intake: 'I', exhaust: 'E' },
  notRead: 'not read',
  skipped: 'skipped',
  loose: 'loose',
  dial: 'by dial',
  resolution: {
    2: 'to half a stroke of 30°',
    3: 'to a quarter of a quarter',
    4: 'to a clock hour',
    6: 'to half a quarter',
    8: 'to a stroke of 60°',
    12: 'to a whole quarter',
  } as Readonly<Record<number, string>>,
  resolutionDeg: (degrees: number) => `to ${degrees}° of turn`,
  reading: (count: string, preload: string) => `${count}: ${preload}`,
  readings: (count: number, counts: readonly string[]) =>
    `${count} readings, before: ${counts.join(', ')}`,
  earlier: (preload: string, verdict: string) =>
    verdict === '' ? `before the change: ${preload}` : `before the change: ${preload}, ${verdict}`,
  torqued: 'torqued',
  cantTell: (across: string) => `can’t tell from ${across}`,
  giveOrTake: (figure: string) => `± ${figure}`,
  band: 'The ± is the guard: further than that inside a limit, the verdict is proven (one-sided, 95 %).',

  plan: 'Engine from above',
  planFront: 'Front',
  planHere: 'here',
  planWatch: 'watch',
  planState: { open: 'counting', next: 'next', skipped: 'skipped' },

  whereToStop: 'Where to stop',
  testLengths: (lengths: readonly string[]) =>
    lengths.length === 1
      ? `Measured on a test pushrod of ${lengths.join('')}.`
      : `Measured on test pushrods of ${lengths.join(' and ')}.`,
  restsOn: ({ valves, wanted, engine, cylinders }: Rests) => {
    const counted = valves === 1 ? '1 valve' : `${valves} valves`;
    if (valves === engine) return `Rests on all ${counted} of the engine.`;
    const of = cylinders === 1 ? 'one cylinder' : `${cylinders} cylinders`;
    const rest = valves < wanted ? ` ${wanted - valves} still to read.` : '';
    return `Rests on ${counted} of ${of}, not on the whole engine.${rest}`;
  },
  byChecking: 'Measured on a checking pushrod.',
  noLength: {
    nothing: 'No length yet: no valve is read.',
    pushrod: 'No length: the readings have no test pushrod’s length. Give it in the set-up.',
    window: 'No length: the set-up has no thread or no lifter kind yet.',
  },
  adjustable: 'These rockers are adjustable: nothing is ordered.',
  stopAt: (group: string, count: string, preload: string, zone: Zone) =>
    `${group}: stop at about ${count} quarters past zero lash, for ${preload} (${zoneWords[zone]}). Read again once the nut is locked.`,
  caution:
    'An order for parts is no leave to start the engine: recheck clearances, geometry and torque, and ask a qualified engine builder.',

  unnamed: 'Readings without a valve’s name',
  unnamedAt: (count: string, place: number) => `Reading ${place}: ${count} quarters`,
  nameCylinder: 'Cylinder',
  nameValve: 'Valve',
  nameIt: 'Name it',
  nameMissing: (most: number) => `Give a cylinder’s number from 1 to ${most}.`,
  notNamed: 'It could not be named now.',

  exportJob: 'Export this job',
  exportFailed: 'There is nothing to export yet.',
  noUnit: 'no figure',
  valveName: (id: ValveId) => `${id.cylinder} ${id.valve}`,
};
