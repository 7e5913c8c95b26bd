const MM_PER_INCH = 25.4;
/** A digit is read at two hundred times its height (a rule of sign-making: 15 mm at 3 m). */
const DISTANCE_PER_HEIGHT = 200;

/** A screen as the page sees it. */
export interface ScreenSize {
  /** Its own size in CSS pixels. */
  readonly screenWidthPx: number;
  readonly screenHeightPx: number;
  readonly diagonalIn: number;
}

/**
 * The height in CSS pixels that the bench's count has at least, by the width of the page: what the
 * bench is drawn to.
 */
export function countHeightPx(pageWidthPx: number): number {
  if (pageWidthPx >= 1920) return 120;
  return pageWidthPx >= 1024 ? 96 : 72;
}

/** From how far the count reads, metres, to a tenth below; null when the sizes make no sense. */
export function readingDistanceM(size: ScreenSize, digitPx: number): number | null {
  const diagonalPx = Math.hypot(size.screenWidthPx, size.screenHeightPx);
  const mm = (digitPx * size.diagonalIn * MM_PER_INCH) / diagonalPx;
  if (!Number.isFinite(mm) || mm <= 0) return null;
  return Math.floor((mm * DISTANCE_PER_HEIGHT) / 100) / 10;
}
