import type { Announcement, Fact, Refusal, Stage } from '#counting';
import { caption, say } from '#words';
import { moments } from './moments';
import { notNow, reasons, refusedAt, stages } from './refusals';
import { context } from './samples';

const announced = (fact: Fact): Announcement => ({
  fact,
  cue: fact.kind === 'doubted' ? 'missed' : 'soft',
  timing: 'at once',
  keptThrough: 0,
  perishable: fact.kind === 'turn crank',
});

/** docs/spoken-lines.md: every line that is spoken, made from the words themselves. */
export function linesPage(): string {
  const rows = moments.map(({ moment, fact }) => {
    const at = announced(fact);
    const terse = context('terse');
    const cell = say(at, terse) || `(${caption(at, terse)})`;
    return row(moment, cell, said(at, 'plain'), taught(at));
  });
  const refused = reasons.map((refusal) => row(refusal.code, refusedLine(refusal)));
  return [
    '# Spoken lines',
    '',
    'Made by `npm run docs:lines` from `src/words`; a test fails when it is out of date. Every line is',
    'also the caption. In brackets: only a tick sounds, and the caption stands alone. The example is',
    'a V8 counted with a helper, in thou, numbers as the shop says them.',
    '',
    row('moment', 'terse', 'plain', 'teaching adds'),
    row('---', '---', '---', '---'),
    ...rows,
    '',
    '## Refusals',
    '',
    'Never in the log. Each says what is in the way and what to do next, the same at every level.',
    '',
    row('why', 'said'),
    row('---', '---'),
    ...refused,
    '',
    'Known, but not now:',
    '',
    row('stage', 'said', 'to'),
    row('---', '---', '---'),
    ...stages.flatMap(notNowRows),
    '',
  ].join('\n');
}

/** One row a sentence, with the commands it answers. */
function notNowRows(stage: Stage): readonly string[] {
  const byLine = new Map<string, string[]>();
  for (const command of refusedAt(stage)) {
    const line = refusedLine(notNow(command, stage));
    byLine.set(line, [...(byLine.get(line) ?? []), command]);
  }
  return [...byLine].map(([line, commands]) => row(stage, line, commands.join(', ')));
}

function refusedLine(refusal: Refusal): string {
  return said(announced({ kind: 'refused', refusal }), 'plain');
}

function said(at: Announcement, level: 'plain' | 'teaching'): string {
  return say(at, context(level));
}

function taught(at: Announcement): string {
  return said(at, 'teaching').slice(said(at, 'plain').length).trim();
}

function row(...cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}
