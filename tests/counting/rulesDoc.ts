import type { Step } from './given';
import { rules } from './rules';
import type { Outcome, Row, Rule, Standing, Told } from './rules/row';
import { quartersText } from './text';

const HEAD = `# Counting rules

What a command at the bench comes to, as tables that are also tests: \`tests/counting/rules\` holds the rows, \`npm run docs:rules\` writes this page, and a test fails when the two differ.

Every row starts at cylinder one of an eight-cylinder engine, its exhaust valve still to start: counted alone, called by quarter turns, M8 × 1.25 bolts, rocker ratio 1.7, usable preload 75 to 110 thou. Where a row changes that, it says so first. Each step comes a second after the one before. Counts are quarter turns.
`;

const TAIL = `## Which room proves the rest

| rule | proved by |
|---|---|
| C9, speech over the app's own voice | counting (the table above); speaking and hearing for when speech overlaps |
| C10, a tick means counted, a word means kept | bench, keeping and speaking |
| C11, one utterance, one change | counting (the table above); hearing for interims and the 300 ms |
| C12, a word and a shape for every sound and colour | counting (the table above); words for captions, screens for shapes |
| C13, the bench rests after opening | bench |
`;

/** docs/counting-rules.md, whole. */
export function rulesDoc(): string {
  return [HEAD, ...rules.map(ruleText), TAIL].join('\n');
}

function ruleText({ number, sentence, rows }: Rule): string {
  return [
    `## ${number}`,
    '',
    sentence,
    '',
    '| rule | given | when | then |',
    '|---|---|---|---|',
    ...rows.map((row) => `| ${number}: ${row.title} | ${cells(row).join(' | ')} |`),
    '',
  ].join('\n');
}

function cells(row: Row): readonly string[] {
  const start = [
    ...(row.job ? [row.job.text] : []),
    ...(row.from === 'opened' ? ['just opened'] : []),
  ];
  const before = [...start, ...steps(row.given)].join(', ');
  const after = [...row.comes.map(outcomeText), ...standingTexts(row.leaves)].join('; ');
  const told = (row.tells ?? []).map(toldText).join(', ');
  return [
    before === '' ? 'nothing yet' : before,
    steps(row.when).join(', then '),
    told === '' ? after : `${after}; tells ${told}`,
  ];
}

function steps(list: readonly Step[]): readonly string[] {
  return list.map(({ text }) => text);
}

function outcomeText(outcome: Outcome): string {
  if ('counted' in outcome) return `counted ${quarters(outcome.counted)}`;
  if ('askedBack' in outcome) {
    return `asked back (${outcome.why}): ${outcome.askedBack.map(quarters).join(', or ')}?`;
  }
  if ('asked' in outcome) {
    return outcome.asked === 'zero' ? 'asked: start over?' : 'asked: seated at this count?';
  }
  if ('landed' in outcome) return `landed ${quarters(outcome.past)} past (${outcome.landed})`;
  if ('refused' in outcome) return `refused: ${outcome.refused}`;
  if ('still' in outcome) return `nothing happened, still ${quarters(outcome.still)}`;
  return eventTexts[outcome.event] ?? outcome.event;
}

const eventTexts: Readonly<Record<string, string>> = {
  zeroTouched: 'zero touched',
  takenBack: 'taken back',
  valveLeft: 'valve left',
  valveChosen: 'valve chosen',
  repeatStarted: 'a repeat begun',
  readingMoved: 'reading moved',
  setupChanged: 'set-up changed',
  pushrodFitted: 'pushrod fitted',
  dialRead: 'read by dial',
  bledDown: 'bled down',
};

function standingTexts(leaves: Standing = {}): readonly string[] {
  const { counted, stage, valve, read, resolves, readings, thou, asking } = leaves;
  const said = [
    valve,
    counted === undefined ? undefined : `count ${quarters(counted)}`,
    read === undefined ? undefined : `reading ${read === 'loose' ? 'loose' : quarters(read)}`,
    resolves === undefined ? undefined : `resolves ${quarters(resolves)}`,
    thou === undefined ? undefined : `${thou} thou`,
    readings === undefined ? undefined : `${readings} ${readings === 1 ? 'reading' : 'readings'}`,
    stage === undefined ? undefined : `stage '${stage}'`,
    asking === undefined ? undefined : asking ? 'question open' : 'no question open',
  ].filter((text) => text !== undefined);
  return said.length === 0 ? [] : [`stands at ${said.join(', ')}`];
}

function toldText({ fact, cue, verdict, timing }: Told): string {
  const more = [cue && `${cue} tick`, verdict, timing].filter((text) => text !== undefined);
  return `'${fact}'${more.length === 0 ? '' : ` (${more.join(', ')})`}`;
}

function quarters(count: number): string {
  return quartersText(Math.round(count * 48) / 4);
}
