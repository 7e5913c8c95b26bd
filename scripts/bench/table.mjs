/**
 * A table that reads well on a terminal and is one in Markdown.
 * @param {string[]} heads
 * @param {string[][]} rows
 */
export function table(heads, rows) {
  const widths = heads.map((head, at) =>
    Math.max(head.length, ...rows.map((row) => row[at]?.length ?? 0)),
  );
  /** @param {string[]} cells */
  const line = (cells) => `| ${widths.map((w, at) => (cells[at] ?? '').padEnd(w)).join(' | ')} |`;
  const rule = `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`;
  return [line(heads), rule, ...rows.map(line)].join('\n');
}
