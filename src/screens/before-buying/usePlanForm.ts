import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { FieldNote } from '../shell/Field';
import type { PlanDraft } from './planDraft';
import { planWords as words } from './planWords';
import { type HotRead, readHot } from './readHot';
import { type PlanRead, readPlan } from './readPlan';
import { readTipGap, type TipGapRead } from './readTipGap';

/** The form as its parts see it. */
export interface PlanForm {
  readonly draft: PlanDraft;
  readonly read: PlanRead;
  readonly hot: HotRead;
  readonly gap: TipGapRead;
  readonly place: RefObject<HTMLDivElement | null>;
  /** Everything was asked for once: what is missing shows, wherever it is. */
  readonly asked: boolean;
  change(changes: Partial<PlanDraft>): void;
  update(change: (draft: PlanDraft) => PlanDraft): void;
  /** A field was left: what is wrong with it shows from now on. */
  leave(field: string): void;
  notes(field: string): readonly FieldNote[];
  /** Shows everything missing and goes to the first of it; true when nothing is. */
  ask(): boolean;
  goTo(field: string): void;
}

/** Holds a plan while it is filled in; `onDraft` is told of every change, not of the start. */
export function usePlanForm(start: PlanDraft, onDraft: (draft: PlanDraft) => void): PlanForm {
  const [begun] = useState(start);
  const [draft, setDraft] = useState(start);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  const read = useMemo(() => readPlan(draft), [draft]);
  const hot = useMemo(() => readHot(draft, read), [draft, read]);
  const gap = useMemo(() => readTipGap(draft), [draft]);
  useEffect(() => {
    if (draft !== begun) onDraft(draft);
  }, [draft, begun, onDraft]);

  function goTo(field: string): void {
    const found = place.current?.querySelector<HTMLElement>(`[data-field="${field}"]`);
    for (let fold = found?.closest('details'); fold; fold = fold.parentElement?.closest('details'))
      fold.open = true;
    const control = found?.querySelector<HTMLElement>('input, select, button');
    control?.focus();
    control?.scrollIntoView({ block: 'center' });
  }

  return {
    draft,
    read,
    hot,
    gap,
    place,
    asked,
    change: (changes) => setDraft((before) => ({ ...before, ...changes })),
    update: setDraft,
    leave: (field) => setLeft((before) => new Set([...before, field])),
    notes(field) {
      if (!asked && !left.has(field)) return [];
      return [...read.problems, ...hot.problems, ...gap.problems]
        .filter(
          // The ratio is asked for by three, once is enough.
          (problem, at, all) =>
            problem.field === field &&
            all.findIndex((one) => one.field === field && one.sentence === problem.sentence) === at,
        )
        .map(({ sentence, severity }) =>
          severity === 'refused'
            ? { sentence }
            : {
                sentence,
                keep: {
                  words: words.keep,
                  onKeep: () =>
                    setDraft((before) => ({ ...before, kept: [...before.kept, sentence] })),
                },
              },
        );
    },
    ask() {
      setAsked(true);
      const [first] = read.problems;
      if (first !== undefined) goTo(first.field);
      return first === undefined;
    },
    goTo,
  };
}
