/** What one cell of a table holds: a number, a text, yes or no, or nothing. */
export type Cell = number | string | boolean | null;

/** What a spreadsheet would take for the start of a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * A table as CSV by RFC 4180: a comma between cells, CR LF after every line, quotes round a cell that
 * holds a comma, a quote or a line break, a quote inside one doubled.
 *
 * A text that begins as a formula would gets an apostrophe before it, so that no spreadsheet works it out.
 * Numbers stay numbers, a minus before them too: they are written here, not typed by anyone.
 *
 * @throws RangeError for a number that is not finite, and for a row as long as no other.
 */
export function csvOf(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  for (const row of rows) {
    if (row.length !== columns.length)
      throw new RangeError(`A row of ${row.length} cells under ${columns.length} columns.`);
  }
  return [columns, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: Cell): string {
  switch (typeof cell) {
    case 'number':
      if (!Number.isFinite(cell)) throw new RangeError(`${cell} is no figure.`);
      return String(cell);
    case 'boolean':
      return cell ? 'yes' : 'no';
    case 'string':
      return quoted(FORMULA.test(cell) ? `'${cell}` : cell);
    default:
      return '';
  }
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
