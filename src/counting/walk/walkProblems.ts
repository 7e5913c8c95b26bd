import {
  camProblems,
  engineProblems,
  fewestStops,
  hasRefusal,
  type Problem,
  type Shortfall,
  walkFor,
} from '#valvetrain';
import type { SetUp } from '../setUp';
import { camCardOf, timingOf, walkChoiceOf } from './choice';

/**
 * What is wrong with the cam card, and with the walk asked for on that cam: refused where no position
 * gives the margin, or the engine has no companions to watch; odd where a valve falls short of it.
 */
export function crankProblems(setUp: SetUp): readonly Problem[] {
  const ofCam = camProblems(camCardOf(setUp));
  return hasRefusal(ofCam) ? ofCam : [...ofCam, ...walkProblems(setUp)];
}

function walkProblems(setUp: SetUp): readonly Problem[] {
  const { engine, scope } = setUp;
  if (engine === null || hasRefusal(engineProblems(engine))) return [];
  const valves = scope.filter(({ cylinder }) => engine.firingOrder.includes(cylinder));
  if (valves.length === 0) return [];
  const { method, marginDeg, at, prefer } = walkChoiceOf(setUp);
  const timing = timingOf(setUp);
  const finding = walkFor(engine, timing, method, { marginDeg, at, prefer, valves });
  if (!finding.found) return [finding.problem];
  const { shortfalls } = finding.walk;
  if (shortfalls.length === 0) return [];
  const anywhere = fewestStops(engine, timing, { marginDeg, at: 'any angle', valves });
  return anywhere.found ? [shortOf(shortfalls)] : [anywhere.problem];
}

/** The worst in a sentence of its own, the others by name and degrees. */
function shortOf(shortfalls: readonly Shortfall[]): Problem {
  const [worst, ...others] = shortfalls.toSorted((a, b) => b.shortByDeg - a.shortByDeg);
  const named = others.map(
    ({ valve, shortByDeg }) =>
      `${valve.cylinder} ${valve.valve} by ${Math.round(shortByDeg * 10) / 10}°`,
  );
  const also = named.length === 0 ? '' : ` Short too: ${named.join(', ')}.`;
  return {
    field: 'walk',
    code: 'short of margin',
    severity: 'odd',
    sentence: `${worst?.sentence ?? ''}${also}`,
  };
}
