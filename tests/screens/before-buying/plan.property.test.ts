import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planInUnits, withPart } from '../../../src/screens/before-buying/planChanges';
import {
  emptyPlan,
  type PartId,
  type PlanDraft,
  partIds,
} from '../../../src/screens/before-buying/planDraft';
import {
  amountText,
  lengthWithGive,
  preloadText,
  pushrodText,
} from '../../../src/screens/before-buying/planFigures';
import { termsShown } from '../../../src/screens/before-buying/planTerms';
import { readHot } from '../../../src/screens/before-buying/readHot';
import { otherWay, readPlan } from '../../../src/screens/before-buying/readPlan';
import { readTipGap } from '../../../src/screens/before-buying/readTipGap';
import { outcomeOf } from '../../../src/screens/before-buying/startLength';
import { checkProperty } from '../../valvetrain/checkProperty';

/** What hands and pasting bring: figures of every size, with units, and no figures at all. */
const text = fc.oneof(
  fc.constantFrom('', ' ', '0', '-0', '1.6', '-3', '99999', '1e9', 'NaN', 'Infinity', '−2,5', '±1'),
  fc.double({ min: -20, max: 20, noNaN: true }).map((value) => value.toFixed(3)),
  fc.double({ min: 50, max: 600, noNaN: true }).map((value) => value.toFixed(2)),
  fc
    .tuple(fc.integer({ min: -900, max: 900 }), fc.constantFrom('mm', 'in', 'thou', '"'))
    .map(([value, unit]) => `${value} ${unit}`),
  fc.string({ maxLength: 6 }),
);

const anyPlan = fc
  .record({
    units: fc.constantFrom<'inch' | 'mm'>('inch', 'mm'),
    parts: fc.array(
      fc.record({
        part: fc.constantFrom<PartId>(...partIds),
        was: text,
        willBe: text,
        amount: text,
        give: text,
      }),
      { maxLength: 6 },
    ),
    pivot: fc.constantFrom<'fixed' | 'raised to match'>('fixed', 'raised to match'),
    ends: fc.tuple(text, text, text, text),
    texts: fc.array(text, { minLength: 8, maxLength: 8 }),
    lifter: fc.constantFrom('', 'other', 'long-travel-roller'),
    step: fc.constantFrom<'25' | '50' | 'half mm' | 'any'>('25', '50', 'half mm', 'any'),
    hot: fc.array(text, { minLength: 9, maxLength: 9 }),
  })
  .map(({ units, parts, texts, hot, ...rest }) => {
    const [ratio, ratioGive, present, preload, preloadGive, target, tipGap, tipTravel] = texts;
    const empty = emptyPlan(units);
    const piece = (at: number) => ({ length: hot[at] ?? '', rise: hot[at + 1] ?? '' });
    const begun = {
      ...empty,
      ...rest,
      ratio: ratio ?? '',
      ratioGive: ratioGive ?? '',
      present: present ?? '',
      preload: preload ?? '',
      preloadGive: preloadGive ?? '',
      target: target ?? '',
      tipGap: tipGap ?? '',
      tipTravel: tipTravel ?? '',
      hot: {
        block: { ...empty.hot.block, ...piece(0) },
        head: { ...empty.hot.head, ...piece(2) },
        pushrod: { ...empty.hot.pushrod, ...piece(4) },
        stemLength: hot[6] ?? '',
        stemRise: hot[7] ?? '',
        stemExpansion: hot[8] ?? '',
      },
    };
    return parts.reduce<PlanDraft>(
      (draft, { part, ...typed }) => withPart(draft, part, { changes: true, ...typed }),
      begun,
    );
  });

const figure = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((value) => String(value / 100));

/** A plan with every figure where figures of its kind lie, in millimetres. */
const soundPlan = fc
  .record({
    part: fc.constantFrom<PartId>(...partIds),
    was: figure(0, 3),
    willBe: figure(0, 3),
    amount: figure(0.05, 3),
    give: figure(0, 0.5),
    ratio: figure(1.4, 1.9),
    present: figure(60, 400),
    preload: figure(0, 4),
    hot: fc.array(figure(1, 30), { minLength: 9, maxLength: 9 }),
  })
  .map(({ part, ratio, present, preload, hot, ...typed }): PlanDraft => {
    const empty = emptyPlan('mm');
    const piece = (at: number) => ({ length: hot[at] ?? '', rise: hot[at + 1] ?? '' });
    return withPart(
      {
        ...empty,
        ratio,
        present,
        preload,
        hot: {
          block: { ...empty.hot.block, ...piece(0) },
          head: { ...empty.hot.head, ...piece(2) },
          pushrod: { ...empty.hot.pushrod, ...piece(4) },
          stemLength: hot[6] ?? '',
          stemRise: hot[7] ?? '',
          stemExpansion: hot[8] ?? '',
        },
      },
      part,
      { changes: true, ...typed },
    );
  });

const plan = fc.oneof(anyPlan, soundPlan);

/** Everything the screen writes of a plan. */
function written(draft: PlanDraft): readonly string[] {
  const { units } = draft;
  const read = readPlan(draft);
  const { planned, start } = outcomeOf(draft, read);
  const hot = readHot(draft, read);
  const gap = readTipGap(draft);
  const { keptPreload } = planned;
  return [
    ...termsShown(planned, read.parts, units).flatMap((term) => [
      term.mark.amount,
      term.entered,
      term.give,
    ]),
    amountText(units, planned.longer.mm),
    keptPreload === null ? '' : preloadText(units, keptPreload),
    ...(start === null
      ? []
      : [
          lengthWithGive(units, start.exact.mm, start.giveMm),
          pushrodText(units, start.nearest.mm),
          pushrodText(units, otherWay(start.nearest, read.ends)?.mm ?? 0),
          start.preload === null ? '' : preloadText(units, start.preload),
        ]),
    ...(hot.estimate === null ? [] : [amountText(units, hot.estimate.preloadChangeMm)]),
    ...(gap.leftMm === null ? [] : [amountText(units, gap.leftMm)]),
    ...(gap.preloadMm === null ? [] : [amountText(units, gap.preloadMm)]),
    ...[...read.problems, ...hot.problems, ...gap.problems].map(({ sentence }) => sentence),
  ];
}

const FIGURE = /NaN|Infinity|undefined/;

describe('whatever is typed', () => {
  test('gives figures or sentences, and never something that is neither', () => {
    const met = {
      'a start length': 0,
      'a problem': 0,
      'no problem': 0,
      'an estimate': 0,
      'a term': 0,
    };
    checkProperty(
      'plans',
      fc.property(plan, (draft) => {
        const read = readPlan(draft);
        met['a start length'] += outcomeOf(draft, read).start === null ? 0 : 1;
        met['a problem'] += read.problems.length > 0 ? 1 : 0;
        met['no problem'] += read.problems.length > 0 ? 0 : 1;
        met['an estimate'] += readHot(draft, read).estimate === null ? 0 : 1;
        met['a term'] += read.parts.length > 0 ? 1 : 0;
        // What was typed is quoted in its sentence, and may be any of these.
        for (const line of written(draft))
          if (!line.startsWith('‘')) expect(line).not.toMatch(FIGURE);
      }),
      met,
      4000,
    );
  });

  // To a hundredth: two lengths that are written alike are the same length from then on.
  test('comes to the same in the other units, as they are switched', () => {
    const met = { 'a start length': 0 };
    checkProperty(
      'plans switched',
      fc.property(plan, (draft) => {
        const there = planInUnits(draft, draft.units === 'mm' ? 'inch' : 'mm');
        const [one, other] = [readPlan(draft).plan, readPlan(there).plan];
        expect(other.changes.length).toBe(one.changes.length);
        for (const [at, { giveMm }] of one.changes.entries())
          expect(other.changes[at]?.giveMm).toBeCloseTo(giveMm, 2);
        const start = outcomeOf(draft, readPlan(draft)).start;
        met['a start length'] += start === null ? 0 : 1;
        expect(outcomeOf(there, readPlan(there)).start?.exact.mm ?? 0).toBeCloseTo(
          start?.exact.mm ?? 0,
          2,
        );
      }),
      met,
    );
  });
});
