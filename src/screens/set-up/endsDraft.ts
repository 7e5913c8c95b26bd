import type { PushrodEnds } from '#valvetrain';
import type { EndsDraft } from './draft';
import { readLength, type TextUnit } from './draftText';

/** What four fields of balls and oil holes come to. */
export type EndsRead =
  | { readonly kind: 'empty' }
  /** One is missing, or is no length. */
  | { readonly kind: 'unclear' }
  | { readonly kind: 'ends'; readonly ends: PushrodEnds };

/** Both ends of a pushrod as the fields show them; empty where they are not known. */
export function endsDraft(ends: PushrodEnds | null, write: (mm: number) => string): EndsDraft {
  if (ends === null) return ['', '', '', ''];
  const [lifter, rocker] = ends;
  return [write(lifter.ballMm), write(lifter.holeMm), write(rocker.ballMm), write(rocker.holeMm)];
}

/** Reads the four fields: all of them or none. */
export function readEnds(
  draft: EndsDraft,
  unit: TextUnit,
  remembered: Readonly<Record<string, number>>,
): EndsRead {
  if (draft.every((text) => text.trim() === '')) return { kind: 'empty' };
  const [a, b, c, d] = draft.map((text) => {
    const read = readLength(text, unit, remembered);
    return read.kind === 'value' ? read.value : null;
  });
  if (a == null || b == null || c == null || d == null) return { kind: 'unclear' };
  return {
    kind: 'ends',
    ends: [
      { ballMm: a, holeMm: b },
      { ballMm: c, holeMm: d },
    ],
  };
}
