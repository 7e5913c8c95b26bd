/** What the job has to say, written out here with the figures of this folder and nothing of the app's. */

import {
  cantTellFrom,
  companion,
  figure,
  settling,
  setUp,
  spelledLength,
  type Valve,
  verdict,
} from './figures';
import { type Counted, oneLength, strays } from './oneLength';
import { capital, spelled, spelledCount } from './spelled';

/** Said once, when a fourth valve can't be told: most would be settled by measuring the travel. */
export const MANY_UNPROVEN =
  " Four can't be told: measuring the travel settles most. From here a tone says so.";

/** Said once a job, with its first reading. */
const BIAS = ' True preload is a little more: some drag is there before it is felt.';

/** At the plain talk level, with figures in thou. */
export const plainLines = {
  position(cylinder: number): string {
    const { order } = setUp;
    const at = order.indexOf(cylinder);
    const go =
      at === 0
        ? 'Bring it to firing top dead centre, in the running direction.'
        : `Turn the crank ${spelled(720 / order.length)} degrees in its running direction.`;
    return [
      `Position ${spelled(at + 1)} of ${spelled(order.length)}: cylinder ${spelled(cylinder)}.`,
      go,
      `${capital(spelled(companion(cylinder)))} is its companion: watch its lifters cross.`,
      "Say crank's there.",
    ].join(' ');
  },
  valve: ({ cylinder, kind }: Valve) =>
    `${capital(kind)} of ${spelled(cylinder)}: run it down to zero lash.`,
  zero: 'Zero. Mark the socket at twelve.',
  /** In a pause: the verdict only where it is another than before the count. */
  counted(quarters: number, before: number): string {
    const whole = Number.isInteger(quarters);
    const unit = quarters === 1 ? ' quarter' : whole ? ' quarters' : '';
    const head = `${capital(spelledCount(quarters))}${unit}: ${spelled(figure(quarters))} thousandths`;
    if (before > 0 && verdict(quarters) === verdict(before)) return `${head}.`;
    const full = `${head}, ${verdict(quarters)}.`;
    // Between counts there is time for seven words; then the verdict's side is left out.
    return full.split(' ').length > 7 ? `${head}, ${verdict(quarters).split(',')[0]}.` : full;
  },
  howFar: (quarters: number) => `Seated. How far past ${spelledCount(quarters)}?`,
  tapped: (quarters: number) => `${capital(spelledCount(quarters))}.`,
  /**
   * `fourth`: the fourth valve that can't be told, said with what settles most; `first`: the first
   * reading of the job, said with what no count removes.
   */
  read(
    { cylinder, kind }: Valve,
    quarters: number,
    { asked = true, fourth = false, first = false } = {},
  ): string {
    const unit = Number.isInteger(quarters) ? ' quarters' : '';
    const count = `${asked ? '' : 'about '}${spelledCount(quarters)}${unit}`;
    const [from, to] = setUp.usable;
    // The limits are named only where the figure is outside them.
    const limits = verdict(quarters).startsWith('fits')
      ? ''
      : ` Usable ${spelled(from)} to ${spelled(to)}.`;
    const r = asked ? 0.5 : 1;
    const across = cantTellFrom(quarters, r);
    const word = across === null ? verdict(quarters) : `can't tell from ${across}`;
    const settles = across === null ? '' : fourth ? MANY_UNPROVEN : ` ${settling(quarters, r)}`;
    return (
      `${capital(kind)} of ${spelled(cylinder)}: ${count}, ${spelled(figure(quarters))} thousandths, ` +
      `${word}.${limits}${settles}${first ? BIAS : ''}`
    );
  },
  cylinderDone(cylinder: number, exhaust: number, intake: number, left: number): string {
    const one = (kind: string, quarters: number) => {
      const out = verdict(quarters).startsWith('fits') ? '' : ` ${verdict(quarters)}`;
      return `${kind} ${spelled(figure(quarters))}${out}`;
    };
    const toGo = left === 0 ? '' : ` ${capital(spelled(left))} to go.`;
    return `Cylinder ${spelled(cylinder)}: ${one('exhaust', exhaust)}, ${one('intake', intake)}.${toGo}`;
  },
  allRead(readings: readonly Counted[]): string {
    const out = readings.filter(({ quarters }) => !verdict(quarters).startsWith('fits'));
    const kinds = [...new Set(out.map(({ quarters }) => verdict(quarters)))];
    const named = kinds.map((word) => {
      const valves = out.filter(({ quarters }) => verdict(quarters) === word);
      return `${capital(spelled(valves.length))} ${word}: ${listOf(valves.map(nameOf))}.`;
    });
    const of = readings.length;
    return [
      `${capital(spelled(of))} read.`,
      `${capital(spelled(of - out.length))} fit.`,
      ...named,
      lengthLine(readings),
      ...cantTell(readings),
      ...distrust(readings),
    ].join(' ');
  },
};

/** At the terse talk level. What a tick says alone is a caption all the same. */
export const terseLines = {
  position(cylinder: number): string {
    const { order } = setUp;
    const name = spelled(cylinder);
    const go =
      cylinder === order[0]
        ? `Bring ${name} to firing top dead centre.`
        : `${capital(name)}. Turn ${spelled(720 / order.length)}.`;
    return `${go} Watch ${spelled(companion(cylinder))} cross.`;
  },
  valve: ({ cylinder, kind }: Valve) =>
    kind === 'intake' ? 'Intake.' : `${capital(spelled(cylinder))} exhaust.`,
  zero: 'Zero.',
  counted(quarters: number, before: number): string {
    const head = `${spelledCount(quarters)}, ${spelled(figure(quarters))}`;
    const same = before > 0 && verdict(quarters) === verdict(before);
    return same ? head : `${head}, ${verdict(quarters).split(',')[0]}`;
  },
  howFar: 'How far?',
  tapped: (quarters: number) => `${capital(spelledCount(quarters))}.`,
  read(quarters: number, asked = true): string {
    const across = cantTellFrom(quarters, asked ? 0.5 : 1);
    const word = across === null ? verdict(quarters) : `can't tell from ${across}`;
    const count = `${asked ? '' : 'about '}${spelledCount(quarters)}`;
    return capital(`${count}, ${spelled(figure(quarters))}, ${word}.`);
  },
  cylinderDone: (cylinder: number, left: number) =>
    left === 0 ? `Cylinder ${spelled(cylinder)} done.` : `${capital(spelled(left))} to go.`,
  allRead(readings: readonly Counted[]): string {
    const of = readings.length;
    const named = strays(readings).map(({ valve }) => nameOf(valve));
    return [
      `${capital(spelled(of))} read.`,
      lengthLine(readings),
      ...cantTell(readings),
      ...(named.length === 0 ? [] : [`Distrust ${listOf(named)}.`]),
    ].join(' ');
  },
};

/** The one length, and while they are few the valves it is not proven for, in the order of cylinders. */
function lengthLine(readings: readonly Counted[]): string {
  const { inches, fits, failing } = oneLength(readings);
  const length = spelledLength(inches);
  if (failing.length === 0) return `One length fits all: ${length}.`;
  const some = `${capital(length)} fits ${spelled(fits)} of ${spelled(readings.length)}.`;
  return failing.length > 4 ? some : `${some} Not proven: ${listOf(failing.map(nameOf))}.`;
}

/** The valves that can't be told, named while they are few. */
function cantTell(readings: readonly Counted[]): readonly string[] {
  const valves = readings.filter(
    ({ quarters, resolves = 0.5 }) => cantTellFrom(quarters, resolves) !== null,
  );
  if (valves.length === 0) return [];
  const names = valves.map(nameOf);
  const list = names.length > 4 ? '' : `: ${listOf(names)}`;
  return [`${capital(spelled(valves.length))} can't tell${list}.`];
}

/** Readings far from their fellows: one is told by how much, and what to do. */
function distrust(readings: readonly Counted[]): readonly string[] {
  const found = strays(readings);
  const [first, ...others] = found;
  if (first === undefined) return [];
  if (others.length > 0) return [`Distrust ${listOf(found.map(({ valve }) => nameOf(valve)))}.`];
  const by = spelled(Math.round(Math.abs(first.offThou)));
  return [
    `Distrust ${nameOf(first.valve)}: ${by} thousandths ${first.offThou > 0 ? 'more' : 'less'} than its fellows.`,
    'Check that it was on its base circle, then count it again.',
  ];
}

const nameOf = ({ cylinder, kind }: Valve) => `${spelled(cylinder)} ${kind}`;

function listOf(names: readonly string[]): string {
  return names.length === 1
    ? String(names[0])
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
