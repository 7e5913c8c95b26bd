import type { Engine, PistonAt, ValveId, ValveMotion } from '#valvetrain';
import type { ValveNow } from './crankNow';

/** A figure in degrees as shown: whole, or to a tenth where an engine's are not. */
function deg(value: number): string {
  return `${Math.round(value * 10) / 10}°`;
}

function numbers(cylinders: readonly number[]): string {
  return cylinders.length === 0 ? 'none' : cylinders.join(' ');
}

const motions: Readonly<Record<ValveMotion, string>> = {
  shut: 'shut',
  opening: 'opening',
  open: 'open',
  closing: 'closing',
};

/** Words of the crank's picture, English. */
export const crankWords = {
  title: 'Crank',
  lead: 'A picture to learn from. It moves nothing on the engine and nothing in the log.',
  noEngine: 'This job has no engine yet. Describe it in the set-up, and the crank comes here.',
  toSetUp: 'Go to the set-up',
  toBench: 'Go to the bench',

  scrub: 'Crank angle',
  scrubValue: (angleDeg: number, place: string) => `${deg(angleDeg)}, ${place}`,
  keys: 'Left and right arrows: a degree. Page up and page down, or the pedal: the stop before, the stop after. Home: where the crank stands.',
  back: 'Back 10°',
  on: 'On 10°',
  before: 'Stop before',
  after: 'Stop after',
  home: 'Where it stands',
  homeUnknown: 'To the start',
  bar: 'Move the picture',

  disc: 'The crank as you see it',
  running: (way: 'clockwise' | 'anticlockwise', from: 'front' | 'rear') =>
    `runs ${way}, seen from the ${from}`,
  discBelow: (engine: Engine) =>
    `The crank as you see it: ${crankWords.running(engine.runningDirection, engine.seenFrom)}. Firing order ${engine.firingOrder.join('-')}. Ringed: the planned stops.`,
  angle: deg,
  of720: 'of 720°',
  crosses: (cylinder: number) => `${cylinder} rocks`,
  atFiring: (cylinder: number) => `${cylinder} at its firing TDC`,
  atCrossing: (cylinder: number) => `${cylinder} between exhaust and intake`,
  past: (degrees: number, place: string) => `${deg(degrees)} past ${place}`,
  firingTdc: (cylinder: number) => `${cylinder}’s firing TDC`,
  crossingTdc: (cylinder: number) => `the TDC where ${cylinder}’s valves rock`,

  cylinders: 'Pistons and valves, in firing order',
  cylinder: (cylinder: number) => `Cylinder ${cylinder}`,
  letter: { exhaust: 'E', intake: 'I' },
  valve: { exhaust: 'Exhaust', intake: 'Intake' },
  motions,
  at: { 'firing TDC': 'firing TDC', crossing: 'crossing' },
  companion: 'companion',
  stroke: {
    power: 'power',
    exhaust: 'exhaust',
    intake: 'intake',
    compression: 'compression',
  } satisfies Record<PistonAt['stroke'], string>,
  cardNamed: (cylinder: number, valves: readonly ValveNow[]) =>
    `Cylinder ${cylinder}: ${valves.map((one) => `${one.valve.valve} ${motions[one.motion]}`).join(', ')}`,

  table: 'Every valve at this angle',
  columns: {
    cylinder: 'Cylinder',
    piston: 'Piston',
    exhaust: 'Exhaust',
    intake: 'Intake',
  },
  piston: ({ stroke, fromTdcDeg, downShare }: PistonAt) =>
    `${stroke}, ${deg(fromTdcDeg)} from TDC, ${Math.round(downShare * 100)} % down`,
  offRamp: (marginDeg: number) =>
    marginDeg > 0 ? `${deg(marginDeg)} off its ramp` : `${deg(-marginDeg)} off its base circle`,
  countable: 'may be counted',
  notCountable: 'not here',

  why: (cylinder: number) => `Why: cylinder ${cylinder}`,
  because(now: ValveNow, wantedDeg: number): string {
    const name = `The ${now.valve.valve}`;
    if (now.motion !== 'shut')
      return `${name} must not be counted here: the cam has it ${motions[now.motion]}, and a count would be of the cam’s lift. It is on base circle again ${deg(720 - now.sinceShutDeg)} on.`;
    const stands = `its lifter rests on base circle, ${deg(now.sinceShutDeg)} since it shut and ${deg(now.untilOpensDeg)} before it opens`;
    if (now.countable)
      return `${name} may be counted here: ${stands}. So near this place its pushrod does not move as the crank does.`;
    return `${name} had better not be counted here: ${stands}, and ${deg(wantedDeg)} either way is wanted.`;
  },
  crossingProves: (companion: number, cylinder: number) =>
    `${companion} is its companion: its valves rock here, or with its rockers off its lifters cross. That shows ${cylinder} is at its firing TDC.`,
  proveIt: 'The proof on the valve itself: a little further on, its pushrod has not moved.',
  lobe: (name: string, motion: ValveMotion) => `Lobe of the ${name}, ${motions[motion]}`,

  stops: 'Planned stops',
  method: (method: string) => `Walked by ${method}.`,
  stop: (n: number) => `Stop ${n}`,
  countAt: (valves: readonly ValveId[]) => {
    const of = (kind: ValveId['valve']) =>
      numbers(valves.filter(({ valve }) => valve === kind).map(({ cylinder }) => cylinder));
    return `exhaust ${of('exhaust')}, intake ${of('intake')}`;
  },
  least: (marginDeg: number) => `${deg(marginDeg)} the least margin`,
  bySeatTiming: 'The ramps are taken from the cam card’s seat timing.',
};
