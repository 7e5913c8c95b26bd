import { type Fact, readingSaid48, SAID_UNPROVEN, type ValveLine } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal, sayWhole } from '../numbers';
import {
  bandWords,
  countWithUnit,
  countWords,
  figureWithUnit,
  figureWords,
  verdictWords,
} from './figures';
import { capital, commas, isFull, lines, sentence, valveName, valveOf } from './pieces';
import { foretoldWords, repeatedWords } from './repeated';
import { judgedWords, manyUnproven, settlingWords } from './sure';

type ResultFact<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** A valve's result: 'Four and a half, eighty-eight, fits.' */
export function read(fact: ResultFact<'read'>, context: SayingContext): string {
  const { figures, repeated } = fact;
  const isMean = repeated !== undefined && repeated.readings > 1;
  const line = commas(
    landed(fact, context),
    figureWithUnit(fact.count48 === null || fact.count48 === 0 ? noFigure(fact) : figures, context),
    isMean ? '' : figures.pastTravel ? "past the plunger's travel" : verdictOf(fact),
    context.unkept ? 'not kept' : '',
  );
  const many =
    fact.unproven === SAID_UNPROVEN + 1 ? manyUnproven(fact.unproven, fact.settlesMost) : '';
  const mean = repeated === undefined ? '' : repeatedWords(repeated, context);
  const foretold = foretoldWords(fact.foretold, context);
  if (!isFull(context)) return lines(sentence(line), mean, foretold, many);
  const again = fact.repeat > 1 ? `, reading ${cardinal(fact.repeat)}` : '';
  const few = fact.unproven > 0 && fact.unproven <= SAID_UNPROVEN;
  return lines(
    sentence(`${valveOf(fact.valve)}${again}: ${line}`),
    isMean ? '' : wanted(figures, context),
    mean,
    foretold,
    few ? settlingWords((repeated?.figures ?? figures).sure?.settling ?? null) : many,
    fact.bias ? BIAS : '',
  );
}

/** Said once a job: it leans one way, and no count removes it. */
const BIAS = 'True preload is a little more: some drag is there before it is felt.';

/** Read by dial indicator: 'Eight exhaust by dial: eighty-eight, fits.' */
export function dialRead(fact: ResultFact<'dial read'>, context: SayingContext): string {
  const { figures, repeated, valve } = fact;
  const isMean = repeated !== null && repeated.readings > 1;
  const line = commas(figureWithUnit(figures, context), isMean ? '' : judgedWords(figures));
  return lines(
    sentence(`${isFull(context) ? valveOf(valve) : valveName(valve)} by dial: ${line}`),
    repeated === null ? '' : repeatedWords(repeated, context),
    foretoldWords(fact.foretold, context),
  );
}

/** The verdict, or that it can't be told; once a tone says so, the plain word again. */
function verdictOf({ figures, unproven }: ResultFact<'read'>): string {
  return unproven > SAID_UNPROVEN + 1 ? verdictWords(figures.verdict) : judgedWords(figures);
}

/** The limits, only where the figure is outside them. */
function wanted(
  { window, verdict }: ResultFact<'read'>['figures'],
  context: SayingContext,
): string {
  if (window === null || verdict === null || verdict.startsWith('fits')) return '';
  return `Usable ${bandWords(window, context)}.`;
}

/** Nothing counted is no preload: a figure of zero would only say it twice. */
function noFigure({ figures }: ResultFact<'read'>): ResultFact<'read'>['figures'] {
  return { ...figures, preloadMm: null };
}

/** The count with its landing; 'about' where 'how far?' was not answered. */
function landed({ count48, landing }: ResultFact<'read'>, context: SayingContext): string {
  if (count48 === null) return isFull(context) ? 'seated loose' : 'loose';
  const count = isFull(context) ? countWithUnit(count48, context) : countWords(count48, context);
  return landing === null ? `about ${count}` : count;
}

/** 'Seven to go.'; whole sentences sum the cylinder up first. */
export function cylinderDone(fact: ResultFact<'cylinder done'>, context: SayingContext): string {
  const { cylinder, left } = fact;
  return lines(
    isFull(context) ? cylinderLine(cylinder, context) : '',
    left === 0 ? '' : sentence(`${sayWhole(left, context.numbers)} to go`),
  );
}

/** 'Cylinder one: exhaust seventy-eight, intake eighty-eight.' */
export function cylinderLine(
  { cylinder, lines: valves }: ResultFact<'cylinder done'>['cylinder'],
  context: SayingContext,
): string {
  const each = valves.map((line) => `${line.valve.valve} ${valveResult(line, context)}`);
  return sentence(`${capital(`cylinder ${cardinal(cylinder)}`)}: ${each.join(', ')}`);
}

/** A valve's figure, or its count while no figure is known; a verdict only where it is out. */
function valveResult({ reading, figures }: ValveLine, context: SayingContext): string {
  if (reading === null || figures === null) return 'not read';
  const out = figures.verdict !== null && !figures.verdict.startsWith('fits');
  const verdict = out ? ` ${verdictWords(figures.verdict)}` : '';
  if (reading.kind === 'seated loose') return `loose${verdict}`;
  const figure = figureWords(figures, context);
  if (figure !== '' || reading.kind === 'dial') return `${figure || 'by dial'}${verdict}`;
  return countWithUnit(readingSaid48(reading), context);
}
