import { PRINT_SHAPE, type WordPrint } from './wordPrint';

/** One word may be said up to this many times as slowly as the other. */
const MOST_STRETCH = 2.5;

/**
 * How far apart two prints are: the mean distance of their frames, laid along each other as well as
 * can be (dynamic time warping: H. Sakoe, S. Chiba, 1978). Infinite where one is far longer.
 */
export function wordDistance(a: WordPrint, b: WordPrint): number {
  const rows = a.shape.length / PRINT_SHAPE;
  const columns = b.shape.length / PRINT_SHAPE;
  const stretch = Math.max(rows, columns) / Math.max(1, Math.min(rows, columns));
  if (rows < 1 || columns < 1 || stretch > MOST_STRETCH) return Number.POSITIVE_INFINITY;
  let above = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
  for (let row = 0; row < rows; row += 1) {
    const now = new Float64Array(columns);
    for (let column = 0; column < columns; column += 1) {
      const apart = frameDistance(a, row, b, column);
      const across = (above[column - 1] ?? Number.POSITIVE_INFINITY) + 2 * apart;
      const down = (above[column] ?? Number.POSITIVE_INFINITY) + apart;
      const along = (now[column - 1] ?? Number.POSITIVE_INFINITY) + apart;
      now[column] = row === 0 && column === 0 ? 2 * apart : Math.min(across, down, along);
    }
    above = now;
  }
  return (above[columns - 1] ?? Number.POSITIVE_INFINITY) / (rows + columns);
}

function frameDistance(a: WordPrint, row: number, b: WordPrint, column: number): number {
  let sum = 0;
  for (let k = 0; k < PRINT_SHAPE; k += 1) {
    const apart = (a.shape[row * PRINT_SHAPE + k] ?? 0) - (b.shape[column * PRINT_SHAPE + k] ?? 0);
    sum += apart * apart;
  }
  return Math.sqrt(sum);
}
