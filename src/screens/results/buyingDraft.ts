import { type Buying, LENGTH_GRID_MM } from '#counting';
import type { LengthConvention, Offer, StockLine } from '#valvetrain';
import type { Units } from '#words';
import type { EndsDraft } from '../set-up/draft';
import { lengthText, longUnit, readLength, readNumber, shortUnit } from '../set-up/draftText';
import { endsDraft, readEnds } from '../set-up/endsDraft';
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
  readonly ends: EndsDraft;
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
    ends: endsDraft(ends, long),
  };
}

/** Reads the form; the counting room judges what the figures come to. */
export function readBuying(draft: BuyingDraft, units: Units): BuyingRead {
  const offer = readOffer(draft, units);
  if (typeof offer === 'string') return { ok: false, sentence: offer };
  const spares = readNumber(draft.spares);
  if (spares.kind === 'not a number') return { ok: false, sentence: words.badFigure(words.spares) };
  const ends = readEnds(draft.ends, longUnit(units), NOTHING);
  if (ends.kind === 'unclear') return { ok: false, sentence: words.bothEnds };
  return {
    ok: true,
    buying: {
      offer,
      spares: spares.kind === 'value' ? spares.value : 0,
      convention: draft.convention,
      ends: ends.kind === 'ends' ? ends.ends : null,
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
