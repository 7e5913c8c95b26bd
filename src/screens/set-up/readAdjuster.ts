import {
  type Adjuster,
  adjusterProblems,
  outOfScope,
  pitchFromThreadsPerInch,
  threadById,
} from '#valvetrain';
import { type Draft, NOT_KNOWN } from './draft';
import { type Read, readLength, readNumber, shortUnit } from './draftText';
import { asFormProblems, type FormProblem, refusedField } from './formProblem';
import { setUpWords as words } from './setUpWords';

export interface AdjusterRead {
  /** Null while it can't be told, and when the thread is left out. */
  readonly adjuster: Adjuster | null;
  readonly problems: readonly FormProblem[];
}

/**
 * The thread and rocker of a draft. With a checking pushrod neither is asked for: they are kept where they
 * can be used.
 */
export function readAdjuster(draft: Draft): AdjusterRead {
  const read = readFastener(draft);
  return draft.counts === 'fastener' ? read : { adjuster: read.adjuster, problems: [] };
}

function readFastener(draft: Draft): AdjusterRead {
  const { turns } = draft;
  if (turns === 'shared rocker shaft or bridge') {
    return { adjuster: null, problems: [refusedField('turns', outOfScope(turns))] };
  }
  if (draft.thread === NOT_KNOWN) return { adjuster: null, problems: [] };
  const pitch = readPitch(draft);
  const ratio = readNumber(draft.ratio.replace(/\s*:\s*1$/, ''));
  const lean = readNumber(draft.lean.replace(/\s*°$/, ''));
  const measured = readLength(draft.measured, shortUnit(draft.units), draft.remembered);
  const adjuster: Adjuster = {
    kind: turns,
    pitchMm: pitch.mm,
    rockerRatio: figureOr(ratio, Number.NaN),
    leanDeg: figureOr(lean, 0),
    ...(measured.kind === 'value' ? { measuredTravelPerQuarterMm: measured.value } : {}),
  };
  const typed = [
    ...pitch.problems,
    ...notANumber('ratio', draft.ratio, ratio),
    ...notANumber('lean', draft.lean, lean),
    ...notANumber('measured', draft.measured, measured),
  ];
  const found = asFormProblems(adjusterProblems(adjuster), (field) => formField(draft, field));
  const problems = [
    ...typed,
    ...found.filter(({ field }) => !typed.some((problem) => problem.field === field)),
  ];
  const refused = problems.some(({ severity }) => severity === 'refused');
  return { adjuster: refused ? null : adjuster, problems };
}

function readPitch(draft: Draft): { mm: number; problems: readonly FormProblem[] } {
  switch (draft.thread) {
    case '':
      return {
        mm: Number.NaN,
        problems: [refusedField('thread', words.problems.threadMissing)],
      };
    case 'pitch': {
      const read = readNumber(draft.pitch.replace(/\s*mm$/i, ''));
      return {
        mm: figureOr(read, Number.NaN),
        problems: notANumber('pitch', draft.pitch, read),
      };
    }
    case 'tpi': {
      const read = readNumber(draft.tpi);
      if (read.kind === 'value' && read.value > 0) {
        return { mm: pitchFromThreadsPerInch(read.value), problems: [] };
      }
      return {
        mm: Number.NaN,
        problems: [
          ...notANumber('tpi', draft.tpi, read),
          ...(read.kind === 'not a number' ? [] : [refusedField('tpi', words.problems.tpi)]),
        ],
      };
    }
    default:
      return { mm: threadById(draft.thread)?.pitchMm ?? Number.NaN, problems: [] };
  }
}

function formField(draft: Draft, field: string): string {
  switch (field) {
    case 'pitchMm':
      return draft.thread === 'pitch' || draft.thread === 'tpi' ? draft.thread : 'thread';
    case 'rockerRatio':
      return 'ratio';
    case 'leanDeg':
      return 'lean';
    case 'measuredTravelPerQuarterMm':
      return 'measured';
    default:
      return 'thread';
  }
}

function figureOr(read: Read, otherwise: number): number {
  return read.kind === 'value' ? read.value : otherwise;
}

/** The finding for a text that is no number. */
export function notANumber(field: string, text: string, read: Read): readonly FormProblem[] {
  return read.kind === 'not a number' ? [refusedField(field, words.problems.notANumber(text))] : [];
}
