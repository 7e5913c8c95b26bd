import { lengthFigure, plainFigure } from './figures';
import { type Adjuster, travelByGeometryMm, travelByPitchAloneMm } from './lever';
import { hasRefusal, odd, type Problem, refused } from './problems';
import { pitchFromThreadsPerInch } from './threads';

const PITCH_MM = { min: 0.2, max: 3 };
/** Pitches of the listed threads with a little to spare. */
const USUAL_PITCH_MM = { min: 0.7, max: 2 };
const RATIO = { min: 1, max: 2.5 };
/** From memory: stock and aftermarket rockers of pushrod engines, old ones included. */
const USUAL_RATIO = { min: 1.3, max: 2 };
const LEAN_DEG = { min: 0, max: 45 };
const USUAL_LEAN_DEG = 15;
/** Twice the ±7 % that geometry is good for: beyond it one of the two figures is wrong. */
const FAR_OFF = 0.15;
/** How near a figure must come for a mistake to be named. */
const CLOSE = 0.05;

/**
 * What is wrong with an adjuster. Empty when it can be used. Refused: a figure missing, a pitch
 * outside 0.2 to 3 mm, a ratio outside 1 to 2.5, a lean outside 0 to 45°, a measured travel of 0
 * or less. Odd: a figure unlike most engines, or a measured travel more than 15 % off the geometry.
 */
export function adjusterProblems(a: Adjuster): readonly Problem[] {
  const geometry = [...pitchProblems(a), ...ratioProblems(a), ...leanProblems(a)];
  return [...geometry, ...measuredProblems(a, !hasRefusal(geometry))];
}

function pitchProblems({ pitchMm }: Adjuster): readonly Problem[] {
  const usual = `most are ${lengthFigure(USUAL_PITCH_MM.min)} to ${lengthFigure(USUAL_PITCH_MM.max)}`;
  if (!Number.isFinite(pitchMm)) {
    return [
      refused(
        'pitchMm',
        'missing',
        'The thread’s pitch is missing: choose the thread, or give its pitch or threads per inch.',
      ),
    ];
  }
  if (pitchMm < PITCH_MM.min || pitchMm > PITCH_MM.max) {
    return [
      refused(
        'pitchMm',
        'out of range',
        `A pitch of ${lengthFigure(pitchMm)} is out of range: it must be from ${lengthFigure(PITCH_MM.min)} to ${lengthFigure(PITCH_MM.max)}; ${usual}.${threadsPerInchHint(pitchMm)}`,
      ),
    ];
  }
  if (pitchMm < USUAL_PITCH_MM.min || pitchMm > USUAL_PITCH_MM.max) {
    return [
      odd(
        'pitchMm',
        'unusual',
        `A pitch of ${lengthFigure(pitchMm)} is unusual: ${usual}. Confirm it if it is right.`,
      ),
    ];
  }
  return [];
}

function ratioProblems({ rockerRatio }: Adjuster): readonly Problem[] {
  const usual = `most are ${USUAL_RATIO.min} to ${USUAL_RATIO.max}`;
  if (!Number.isFinite(rockerRatio)) {
    return [
      refused(
        'rockerRatio',
        'missing',
        `The rocker ratio is missing: give valve lift over lifter lift; ${usual}.`,
      ),
    ];
  }
  if (rockerRatio < RATIO.min || rockerRatio > RATIO.max) {
    return [
      refused(
        'rockerRatio',
        'out of range',
        `A rocker ratio of ${plainFigure(rockerRatio)} is out of range: it must be from ${RATIO.min} to ${RATIO.max}; ${usual}.${upsideDownHint(rockerRatio)}`,
      ),
    ];
  }
  if (rockerRatio < USUAL_RATIO.min || rockerRatio > USUAL_RATIO.max) {
    return [
      odd(
        'rockerRatio',
        'unusual',
        `A rocker ratio of ${plainFigure(rockerRatio)} is unusual: ${usual}. Confirm it if it is right.`,
      ),
    ];
  }
  return [];
}

function leanProblems({ leanDeg }: Adjuster): readonly Problem[] {
  if (!Number.isFinite(leanDeg)) {
    return [refused('leanDeg', 'missing', 'The pushrod’s lean is missing: give 0° if unknown.')];
  }
  if (leanDeg < LEAN_DEG.min || leanDeg > LEAN_DEG.max) {
    return [
      refused(
        'leanDeg',
        'out of range',
        `A pushrod lean of ${plainFigure(leanDeg)}° is out of range: it must be from ${LEAN_DEG.min}° to ${LEAN_DEG.max}°; give 0° if unknown.`,
      ),
    ];
  }
  if (leanDeg > USUAL_LEAN_DEG) {
    return [
      odd(
        'leanDeg',
        'unusual',
        `A pushrod lean of ${plainFigure(leanDeg)}° is unusual: most are under ${USUAL_LEAN_DEG}°. Confirm it if it is right.`,
      ),
    ];
  }
  return [];
}

function measuredProblems(a: Adjuster, geometryIsSound: boolean): readonly Problem[] {
  const measuredMm = a.measuredTravelPerQuarterMm;
  if (measuredMm === undefined) return [];
  const field = 'measuredTravelPerQuarterMm';
  if (!Number.isFinite(measuredMm) || measuredMm <= 0) {
    const given = Number.isFinite(measuredMm) ? `${lengthFigure(measuredMm)}` : 'no number';
    return [
      refused(
        field,
        'not above 0',
        `The measured travel per quarter turn is ${given}: give a figure above 0, or leave it out to go by pitch and lever.`,
      ),
    ];
  }
  if (!geometryIsSound) return [];
  const geometryMm = travelByGeometryMm(a) / 4;
  const off = measuredMm / geometryMm - 1;
  if (Math.abs(off) <= FAR_OFF) return [];
  return [
    odd(
      field,
      'far from the geometry',
      `The measured travel of ${lengthFigure(measuredMm)} per quarter turn is ${difference(off)} the ${lengthFigure(geometryMm)} that pitch and lever give.${measuredHint(measuredMm, geometryMm, travelByPitchAloneMm(a))} Confirm it if it is right.`,
    ),
  ];
}

/** How far off, in words: '18 % below', '4.0 times'. */
function difference(off: number): string {
  if (off >= 1) return `${(off + 1).toFixed(1)} times`;
  return `${Math.round(Math.abs(off) * 100)} % ${off < 0 ? 'below' : 'above'}`;
}

function measuredHint(measuredMm: number, geometryMm: number, pitchAloneMm: number): string {
  if (isClose(measuredMm, 4 * geometryMm)) return ' It looks like the travel of a whole turn.';
  if (isClose(measuredMm, pitchAloneMm)) {
    return ' It looks like the fastener’s own advance, not the pushrod’s travel.';
  }
  return '';
}

/** '24' typed as a pitch is most often threads per inch. */
function threadsPerInchHint(pitchMm: number): string {
  if (pitchMm <= PITCH_MM.max) return '';
  const asPitchMm = pitchFromThreadsPerInch(pitchMm);
  if (asPitchMm < USUAL_PITCH_MM.min || asPitchMm > USUAL_PITCH_MM.max) return '';
  return ` If ${plainFigure(pitchMm)} is threads per inch, the pitch is ${lengthFigure(asPitchMm)}.`;
}

/** The two arms divided the wrong way round. */
function upsideDownHint(rockerRatio: number): string {
  const turned = 1 / rockerRatio;
  if (!(turned >= USUAL_RATIO.min && turned <= USUAL_RATIO.max)) return '';
  return ` Divided the other way round it is ${plainFigure(turned)}.`;
}

function isClose(value: number, to: number): boolean {
  return Math.abs(value / to - 1) <= CLOSE;
}
