import type { CountParts } from './countParts';
import styles from './dial.module.css';

/** Advance of one numeral of the typeface, in ems, and the height of its figures. */
const ADVANCE_EM = 0.59;
const FIGURE_EM = 0.67;
/** Air between the whole number and its fraction, in ems. */
const AIR_EM = 0.06;
/** Numerals of the fraction beside a whole number, and standing alone, as a share of the size. */
const BESIDE = 0.5;
const ALONE = 0.72;

interface Props {
  readonly parts: CountParts;
  /** The middle of the numeral. */
  readonly y: number;
  readonly widest: number;
  readonly tallest: number;
  readonly ghost?: boolean;
}

/** A count as large as its place allows; the fraction stands as a stack, so that it stays readable. */
export function CountNumeral({ parts, y, widest, tallest, ghost = false }: Props) {
  const { whole, num, den } = parts;
  const alone = whole === 0 && num > 0;
  const wholeText = alone ? '' : String(whole);
  const share = alone ? ALONE : BESIDE;
  const longest = num === 0 ? 0 : Math.max(String(num).length, String(den).length);
  const air = num > 0 && !alone ? AIR_EM : 0;
  const wideEm = wholeText.length * ADVANCE_EM + air + longest * ADVANCE_EM * share;
  const size = Math.min(tallest, widest / wideEm);
  const wholeWide = wholeText.length * ADVANCE_EM * size;
  const left = (-wideEm * size) / 2;
  const middle = left + wholeWide + air * size + (longest * ADVANCE_EM * share * size) / 2;
  const part = share * size;
  const tall = FIGURE_EM * part;
  const gap = size * 0.035;
  return (
    <g className={ghost ? styles.ghostNumeral : styles.numeral} data-numeral="">
      {wholeText === '' ? null : (
        <text
          x={left + wholeWide / 2}
          y={y + (FIGURE_EM * size) / 2}
          fontSize={size}
          data-figure=""
        >
          {wholeText}
        </text>
      )}
      {num === 0 ? null : (
        <>
          <text x={middle} y={y - gap * 1.6} fontSize={part}>
            {num}
          </text>
          <rect
            x={middle - (longest * ADVANCE_EM * part) / 2}
            y={y - gap / 2}
            width={longest * ADVANCE_EM * part}
            height={gap}
          />
          <text x={middle} y={y + gap * 1.6 + tall} fontSize={part}>
            {den}
          </text>
        </>
      )}
    </g>
  );
}
