import type { EngineSummary, Fact } from '#counting';
import type { ValveId } from '#valvetrain';
import type { SayingContext } from '../../context';
import { cardinal, sayWhole } from '../numbers';
import { offBaseLine } from './offBase';
import { distrustedLine, orderLine } from './order';
import { capital, howMany, isFull, lines, listed, sentence, valveName } from './pieces';
import { cylinderLine } from './result';

type SummaryFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** More valves than this are counted, not named, in one breath. */
const MOST_NAMED = 4;

/** 'Sixteen read. One length fits all: eight, one fifty.' */
export function allRead(fact: SummaryFact<'all read'>, context: SayingContext): string {
  const { summary, order } = fact;
  const byVerdict = isFull(context) || order === null;
  return lines(
    readSoFar(summary, context),
    byVerdict ? verdicts(summary, isFull(context)) : '',
    order === null ? '' : orderLine(order, summary.read, context),
    unproven(summary),
    distrustedLine(fact.distrusted, context),
    offBaseLine(fact.offBase ?? []),
    unnamed(summary, context),
  );
}

/** Every cylinder in full, then the engine. */
export function summaryRead(fact: SummaryFact<'summary'>, context: SayingContext): string {
  const { summary, cylinders, order } = fact;
  const begun = cylinders.filter((one) => one.lines.some(({ reading }) => reading !== null));
  return lines(
    ...begun.map((cylinder) => cylinderLine(cylinder, context)),
    readSoFar(summary, context),
    verdicts(summary, true),
    order === null ? '' : orderLine(order, summary.read, context),
    unproven(summary),
    distrustedLine(fact.distrusted, context),
    offBaseLine(fact.offBase ?? []),
    unnamed(summary, context),
  );
}

/** 'Five to go: one intake, three exhaust.' */
export function left(fact: SummaryFact<'left'>, context: SayingContext): string {
  const { left: valves, skipped } = fact;
  if (valves.length === 0) return 'None to go.';
  return lines(
    sentence(`${sayWhole(valves.length, context.numbers)} to go${named(valves)}`),
    skipped.length === 0 ? '' : sentence(`${cardinal(skipped.length)} skipped${named(skipped)}`),
  );
}

function readSoFar({ read, wanted, unnamed: nameless }: EngineSummary, context: SayingContext) {
  if (wanted === 0)
    return nameless === 0 ? 'None read.' : `${capital(howMany(nameless, 'reading'))}.`;
  const said = sayWhole(read, context.numbers);
  return read === wanted
    ? sentence(`${said} read`)
    : sentence(`${said} of ${sayWhole(wanted, context.numbers)} read`);
}

/** How many stand where; valves out of their window are named while they are few. */
function verdicts({ verdicts: found }: EngineSummary, all: boolean): string {
  const fits = found.filter(({ verdict }) => verdict.startsWith('fits'));
  const fitting = fits.reduce((sum, { valves }) => sum + valves.length, 0);
  const out = found
    .filter(({ verdict }) => !verdict.startsWith('fits'))
    .map(({ verdict, valves }) =>
      sentence(`${cardinal(valves.length)} ${verdict}${named(valves)}`),
    );
  return lines(all && fitting > 0 ? sentence(`${cardinal(fitting)} fit`) : '', ...out);
}

function unnamed({ unnamed: nameless, wanted }: EngineSummary, context: SayingContext): string {
  if (nameless === 0 || wanted === 0) return '';
  return isFull(context)
    ? sentence(`${howMany(nameless, 'reading')} without a valve's name`)
    : sentence(`${cardinal(nameless)} unnamed`);
}

/** 'Two can't tell: three intake and eight exhaust.' */
function unproven({ unproven: valves }: EngineSummary): string {
  return valves.length === 0
    ? ''
    : sentence(`${cardinal(valves.length)} can't tell${named(valves)}`);
}

function named(valves: readonly ValveId[]): string {
  return valves.length > MOST_NAMED ? '' : `: ${listed(valves.map(valveName))}`;
}
