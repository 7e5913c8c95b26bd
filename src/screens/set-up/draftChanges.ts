import { CHECKING_PER_TURN_MM } from '#valvetrain';
import type { Units } from '#words';
import type { Draft, WindowDraft } from './draft';
import { lengthText, longUnit, memoryKey, readLength, shortUnit, type TextUnit } from './draftText';

/** The draft with every length written in other units; a text that is no length stays as typed. */
export function inUnits(draft: Draft, units: Units): Draft {
  if (draft.units === units) return draft;
  const remembered: Record<string, number> = {};
  const rewrite = (text: string, from: TextUnit, to: TextUnit): string => {
    const read = readLength(text, from, draft.remembered);
    if (read.kind !== 'value') return text;
    const shown = lengthText(read.value, to);
    remembered[memoryKey(shown, to)] = read.value;
    return shown;
  };
  const short = (text: string) => rewrite(text, shortUnit(draft.units), shortUnit(units));
  const long = (text: string) => rewrite(text, longUnit(draft.units), longUnit(units));
  const [a, b, c, d] = draft.ends;
  return {
    ...draft,
    measured: short(draft.measured),
    pushrod: long(draft.pushrod),
    closed: long(draft.closed),
    perTurn: short(draft.perTurn),
    ends: [long(a), long(b), long(c), long(d)],
    groups: draft.groups.map((group) => ({ ...group, window: eachField(group.window, short) })),
    remembered,
    units,
  };
}

/** The draft with another thing counted; a checking pushrod is called in whole turns. */
export function withCounts(draft: Draft, counts: Draft['counts']): Draft {
  if (draft.counts === counts) return draft;
  if (counts === 'fastener') return { ...draft, counts, calling: 'quarters' };
  const usual = lengthText(CHECKING_PER_TURN_MM, shortUnit(draft.units));
  const perTurn = draft.perTurn.trim() === '' ? usual : draft.perTurn;
  return { ...draft, counts, rockers: 'bolt-down', calling: 'turns', perTurn };
}

function eachField(window: WindowDraft, change: (text: string) => string): WindowDraft {
  return {
    travel: change(window.travel),
    keepTop: change(window.keepTop),
    keepBottom: change(window.keepBottom),
    usableMin: change(window.usableMin),
    usableMax: change(window.usableMax),
    preferredMin: change(window.preferredMin),
    preferredMax: change(window.preferredMax),
  };
}
