import {
  adjusterProblems,
  engineProblems,
  groupProblems,
  type Problem,
  type PushrodLength,
  windowProblems,
} from '#valvetrain';
import { buyingProblems, checkingProblems, travelProblems } from './moreProblems';
import type { SetUp } from './setUp';
import { crankProblems } from './walk/walkProblems';

const SHORTEST_MM = 50;
const LONGEST_MM = 500;
const MOST_DIAL_MM = 25;

/** What is wrong or odd with a pushrod's length, mm: outside 50 to 500 mm it is refused. */
export function lengthProblems({ mm }: PushrodLength): readonly Problem[] {
  if (Number.isFinite(mm) && mm >= SHORTEST_MM && mm <= LONGEST_MM) return [];
  return [
    {
      field: 'testPushrod',
      code: 'length out of range',
      severity: 'refused',
      sentence: 'That is not a pushrod’s length. Enter 50 to 500 mm (1.969 to 19.685 in).',
    },
  ];
}

/** What is wrong with a dial reading of a plunger's travel, mm: 0 to 25 is taken. */
export function dialProblems(travelMm: number): readonly Problem[] {
  if (Number.isFinite(travelMm) && travelMm >= 0 && travelMm <= MOST_DIAL_MM) return [];
  const sentence = 'That is no plunger’s travel. Enter 0 to 25 mm (0 to 984 thou).';
  return [{ field: 'dial', code: 'travel out of range', severity: 'refused', sentence }];
}

/** Everything refused or odd about a set-up, each with a sentence that says what would be right. */
export function setUpProblems(setUp: SetUp): readonly Problem[] {
  return [
    ...(setUp.engine === null ? [] : engineProblems(setUp.engine)),
    ...(setUp.adjuster === null ? [] : adjusterProblems(setUp.adjuster)),
    ...setUp.groups.flatMap(({ window }) => windowProblems(window)),
    ...(setUp.engine === null || setUp.groups.length === 0
      ? []
      : groupProblems(setUp.groups, setUp.engine)),
    ...(setUp.testPushrod === null ? [] : lengthProblems(setUp.testPushrod)),
    ...buyingProblems(setUp),
    ...checkingProblems(setUp),
    ...travelProblems(setUp),
    ...scopeProblems(setUp),
    ...crankProblems(setUp),
  ];
}

function scopeProblems({ engine, scope }: SetUp): readonly Problem[] {
  if (engine === null) return [];
  const stray = scope.filter(({ cylinder }) => !engine.firingOrder.includes(cylinder));
  const problems: Problem[] = stray.map(({ cylinder, valve }) => ({
    field: 'scope',
    code: 'valve not in the engine',
    severity: 'refused',
    sentence: `The ${valve} of cylinder ${cylinder} is on the list, but the engine has no cylinder ${cylinder}. Take it off the list.`,
  }));
  if (scope.length === 0) {
    problems.push({
      field: 'scope',
      code: 'no valves',
      severity: 'refused',
      sentence: 'No valve is on the list. Choose at least one to count.',
    });
  }
  return problems;
}
