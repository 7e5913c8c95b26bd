import type { Fact, Figures, Sureness } from '#counting';
import { AGREEMENT_FACTOR, type Recounts, type Remedy, type Settling } from '#valvetrain';
import type { SayingContext } from '../../context';
import { cardinal, sayMm, sayThou } from '../numbers';
import { verdictWords } from './figures';
import { howMany, lines, listed, sentence, valveName } from './pieces';

/** The verdict as a result says it: its word, or 'can't tell from light' near a limit that hurts. */
export function judgedWords({ sure, verdict }: Figures): string {
  return sure?.against ? `can't tell from ${sure.against.word}` : verdictWords(verdict);
}

/** What would settle a reading, as computed: 'Measure the travel, then three more counts.' */
export function settlingWords(settling: Settling | null): string {
  if (settling === null) return '';
  const { first, remedies } = settling;
  if (first === null) return 'It stands on the limit: nothing settles that.';
  const recount = remedies.find((remedy) => remedy.kind === 'recount');
  const alone = first.kind !== 'recount' && first.settles;
  const noCount = alone && recount?.kind === 'recount' && !recount.counts.enough;
  return sentence(noCount ? `no count will: ${remedyWords(first)}` : remedyWords(first));
}

/** One remedy as something to do. */
function remedyWords(remedy: Remedy): string {
  switch (remedy.kind) {
    case 'measure the travel':
      return remedy.recounts?.enough
        ? `measure the travel, then ${moreCounts(remedy.recounts)}`
        : 'measure the travel';
    case 'recount':
      return remedy.counts.enough
        ? `${moreCounts(remedy.counts)}, each from a new zero`
        : 'no count will';
    case 'read by the hour':
      return 'read the mark by the hour';
    case 'dial indicator':
      return 'use a dial indicator';
    default: {
      const never: never = remedy;
      return never;
    }
  }
}

function moreCounts({ more }: Recounts & { enough: true }): string {
  return more === 1 ? 'one more count' : `${cardinal(more)} more counts`;
}

/** 'Give or take nine thousandths, ninety-five in a hundred.' */
export function giveOrTake({ uMm }: Sureness, context: SayingContext): string {
  const mm = AGREEMENT_FACTOR * uMm;
  const figure =
    context.units === 'mm'
      ? `${sayMm(mm)} millimetres`
      : `${sayThou(mm, context.numbers)} thousandths`;
  return `Give or take ${figure}, ninety-five in a hundred.`;
}

/** Whether the reading's verdict is proven, and what would settle it if not. */
export function provenWords({ against, settling }: Sureness): string {
  return against === null
    ? 'The verdict is proven.'
    : lines(`Can't tell from ${against.word}.`, settlingWords(settling));
}

/** Said once, when more valves can't be told than are worth a line each. */
export function manyUnproven(count: number, settlesMost: Remedy['kind'] | null): string {
  const settles = settlesMost === null ? '' : `: ${mostly[settlesMost]}`;
  return `${sentence(`${cardinal(count)} can't be told${settles}`)} From here a tone says so.`;
}

/** The next thing that would settle it as well: 'Or use a dial indicator.' */
export function otherwise(settling: Settling | null): string {
  if (settling === null || settling.first === null) return '';
  const { first } = settling;
  const next = settling.remedies.find((remedy) => remedy.settles && remedy.kind !== first.kind);
  return next === undefined ? '' : `Or ${remedyWords(next)}.`;
}

/** More valves than this are counted, not named. */
const MOST_NAMED = 4;

/** Between valves: how many of those read can't be told, and what settles most of them. */
export function unprovenSoFar({
  summary,
  settlesMost,
}: Extract<Fact, { kind: 'how sure' }>): string {
  const { unproven, read } = summary;
  if (read === 0) return 'Nothing read yet.';
  if (unproven.length === 0) return 'No verdict is in doubt.';
  const names = unproven.length > MOST_NAMED ? '' : `: ${listed(unproven.map(valveName))}`;
  return lines(
    sentence(`${howMany(unproven.length, 'valve')} can't be told${names}`),
    settlesMost === null ? '' : sentence(mostly[settlesMost]),
  );
}

const mostly: Readonly<Record<Remedy['kind'], string>> = {
  'measure the travel': 'measuring the travel settles most',
  recount: 'more counts settle most',
  'read by the hour': 'reading by the hour settles most',
  'dial indicator': 'a dial indicator settles most',
};
