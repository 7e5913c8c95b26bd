import { type Buying, LENGTH_GRID_MM } from '#counting';
import type { LengthConvention, Offer, PushrodEnds, StockLine } from '#valvetrain';
import type { Units } from '#words';
import { lengthText, longUnit, readLength, readNumber, shortUnit } from '../set-up/draftText';
import { orderWords as words } from './orderWords';

export type OfferKind = '25' | '50' | 'mm' | 'any' | 'stock';

/** What can be bought while it is typed. */
export interface BuyingDraft {
  readonly kind: OfferKind;
  readonly step: string;
  readonly offset: string;
  readonly stock: string;
  readonly spares: string;
  readonly convention: LengthConvention;
  /** Ball and hole at the lifter, then at the rocker. */
  readonly ends: readonly [string, string, string, string];
}

export type BuyingRead =
  | { readonly ok: true; readonly buying: Buying }
  | { readonly ok: false; readonly sentence: string };

/** The finest step a length is made to order in: one thou. */
const ANY_STEP_MM = 0.0254;

const NOTHING: Readonly<Record<string, number>> = {};

/** What can be bought, as the form shows it. */
export function buyingDraft(buying: Buying, units: Units): BuyingDraft {
  const { offer, spares, convention, ends } = buying;
  const long = (mm: number) => lengthText(mm, longUnit(units));
  return {
    kind: kindOf(offer),
    step: offer.kind === 'grid' ? lengthText(offer.stepMm, 'mm') : '',
    offset: offer.kind === 'grid' && offer.offsetMm !== 0 ? long(offer.offsetMm) : '',
    stock:
      offer.kind === 'stock'
        ? offer.lines.map((line) => `${long(line.lengthMm)} x ${line.quantity}`).join('\n')
        : '',
    spares: String(spares),
    convention,
    ends:
      ends === null
        ? ['', '', '', '']
        : [long(ends[0].ballMm), long(ends[0].holeMm), long(ends[1].ballMm), long(ends[1].holeMm)],
  };
}

/** Reads the form; the counting room judges what the figures come to. */
export function readBuying(draft: BuyingDraft, units: Units): BuyingRead {
  const offer = readOffer(draft, units);
  if (typeof offer === 'string') return { ok: false, sentence: offer };
  const spares = readNumber(draft.spares);
  if (spares.kind === 'not a number') return { ok: false, sentence: words.badFigure(words.spares) };
  const ends = readEnds(draft, units);
  if (typeof ends === 'string') return { ok: false, sentence: ends };
  return {
    ok: true,
    buying: {
      offer,
      spares: spares.kind === 'value' ? spares.value : 0,
      convention: draft.convention,
      ends,
    },
  };
}

function kindOf(offer: Offer): OfferKind {
  if (offer.kind === 'stock') return 'stock';
  if (offer.stepMm === LENGTH_GRID_MM) return '25';
  if (offer.stepMm === 2 * LENGTH_GRID_MM) return '50';
  return offer.stepMm === ANY_STEP_MM ? 'any' : 'mm';
}

function readOffer(draft: BuyingDraft, units: Units): Offer | string {
  if (draft.kind === 'stock') return readStock(draft.stock, units);
  const offset = readLength(draft.offset, longUnit(units), NOTHING);
  if (offset.kind === 'not a number') return words.badFigure(words.offset);
  const stepMm = stepOf(draft);
  if (stepMm === null) return words.badFigure(words.step);
  return { kind: 'grid', stepMm, offsetMm: offset.kind === 'value' ? offset.value : 0 };
}

function stepOf({ kind, step }: BuyingDraft): number | null {
  switch (kind) {
    case '25':
      return LENGTH_GRID_MM;
    case '50':
      return 2 * LENGTH_GRID_MM;
    case 'any':
      return ANY_STEP_MM;
    default: {
      const read = readLength(step, shortUnit('mm'), NOTHING);
      return read.kind === 'value' ? read.value : null;
    }
  }
}

function readStock(text: string, units: Units): Offer | string {
  const lines: StockLine[] = [];
  for (const line of text.split('\n').map((one) => one.trim())) {
    if (line === '') continue;
    const [length = '', count = ''] = line.split(/\s*[x×*]\s*/i);
    const mm = readLength(length, longUnit(units), NOTHING);
    const quantity = readNumber(count);
    if (mm.kind !== 'value' || quantity.kind !== 'value') return words.badStock(line);
    lines.push({ lengthMm: mm.value, quantity: quantity.value });
  }
  return { kind: 'stock', lines };
}

function readEnds({ ends }: BuyingDraft, units: Units): PushrodEnds | null | string {
  if (ends.every((text) => text.trim() === '')) return null;
  const figures = ends.map((text) => readLength(text, longUnit(units), NOTHING));
  const [a, b, c, d] = figures.map((read) => (read.kind === 'value' ? read.value : null));
  if (a == null || b == null || c == null || d == null) return words.bothEnds;
  return [
    { ballMm: a, holeMm: b },
    { ballMm: c, holeMm: d },
  ];
}
