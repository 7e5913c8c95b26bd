import type { PlannedPosition, WalkChoice } from '#counting';
import type { ValveKind, WalkMethod } from '#valvetrain';
import type { WalkDraft } from './crankDraft';

/** To a tenth: no degree wheel shows more. */
function deg(value: number): string {
  return `${Math.round(value * 10) / 10}°`;
}

const methods: Readonly<Record<WalkMethod, string>> = {
  'firing order': 'Firing order: one stop a cylinder',
  'fewest stops': 'Fewest stops: several cylinders at each',
  'timing dots': 'Timing dots, front cover off',
  'watching the valves': 'Watching each cylinder’s own valves',
  companion: 'Companion: watching its valves rock',
  'exhaust opening, intake closing': 'Exhaust opening, intake closing: one stop a valve',
};

/** Words of the walk's step, English. */
export const walkWords = {
  step: 'Where the crank stops',
  now: (method: WalkMethod, stops: number | null) =>
    stops === null ? method : `${method} (${stops === 1 ? '1 stop' : `${stops} stops`})`,
  method: 'How the crank is walked',
  methods,
  hints: {
    'firing order':
      'Each cylinder at its firing TDC. Needs the firing order; its companion’s lifters cross there.',
    'fewest stops':
      'As few stops as this cam allows, two for most engines. Needs the firing order and, for a long cam, its card.',
    'timing dots':
      'Begins with the dots facing each other. Common practice: check the engine’s own manual.',
    'watching the valves':
      'The intake opens, then shuts; the next time its piston is up is its firing TDC.',
    companion: 'Needs an engine whose cylinders come in pairs a whole turn apart.',
    'exhaust opening, intake closing':
      'As the exhaust just starts to open its intake is counted; as the intake is nearly shut, its exhaust. Best for long cams.',
  } satisfies Record<WalkMethod, string>,
  margin: 'Margin wanted off the ramps',
  marginHint: 'Crank degrees either way. 15 unless there is a reason.',
  unit: '°',
  at: 'The crank may stop',
  ats: {
    TDCs: 'At TDCs only: no degree wheel',
    'any angle': 'At any angle: with a degree wheel',
    marked: 'At marked angles',
  } satisfies Record<WalkDraft['at'], string>,
  marks: 'Marked angles',
  marksHint: 'Crank degrees from the first cylinder’s firing TDC over two turns, as 0 90 450.',
  marksMissing: 'Give the marked angles, each from 0 up to 720, as 0 90 450.',
  prefer: 'Of plans with as few stops',
  prefers: {
    'most margin': 'The most margin',
    'pistons away from TDC': 'Pistons away from TDC: a stiff lifter may open its valve',
  } satisfies Record<WalkChoice['prefer'], string>,

  firing: 'It fires',
  firings: { evenly: 'Evenly', typed: 'At odd angles' },
  firingAngles: 'Firing angles, in firing order',
  firingHint: 'Crank degrees from the first cylinder, as 0 90 240 330 480 570.',

  plan: 'The stops this comes to',
  noPlan: 'The stops show here once engine, cam and walk are sound.',
  stop: 'Stop',
  count: 'Count there',
  least: 'Least margin',
  deg,
  whole: ({ positions }: { readonly positions: readonly PlannedPosition[] }) =>
    `Least margin of all: ${deg(Math.min(...positions.map(({ leastMarginDeg }) => leastMarginDeg)))}.`,
  countAt(valves: PlannedPosition['position']['valves']): string {
    const of = (kind: ValveKind) => {
      const cylinders = valves.filter(({ valve }) => valve === kind);
      return cylinders.length === 0
        ? []
        : [`${kind} ${cylinders.map((id) => id.cylinder).join(' ')}`];
    };
    return [...of('exhaust'), ...of('intake')].join(', ');
  },
};
