import { type RefObject, useEffect, useRef, useState } from 'react';
import type { FieldNote } from './Field';

/** Something wrong or odd about one field of a form. */
interface FieldProblem {
  readonly field: string;
  readonly severity: 'refused' | 'odd';
  readonly sentence: string;
}

/** A form being filled in, as its parts see it. */
export interface DraftForm<Draft> {
  readonly draft: Draft;
  /** Everything was asked for once: what is missing shows, wherever it is. */
  readonly asked: boolean;
  readonly place: RefObject<HTMLDivElement | null>;
  change(changes: Partial<Draft>): void;
  update(change: (draft: Draft) => Draft): void;
  /** A field was left: what is wrong with it shows from now on. */
  leave(field: string): void;
  notes(field: string): readonly FieldNote[];
  /** Shows everything missing and goes to the first of it; true when nothing is. */
  ask(): boolean;
  goTo(field: string): void;
}

/** What of a form waits for its draft to be read. */
export interface DraftFormBase<Draft> extends Omit<DraftForm<Draft>, 'notes' | 'ask'> {
  /** What stands beside a field once it was left; `keepWords` of the button that keeps an odd one. */
  notesOf(
    problems: readonly FieldProblem[],
    field: string,
    keepWords: string,
  ): readonly FieldNote[];
  askFor(problems: readonly FieldProblem[]): boolean;
}

/** Holds a draft while it is filled in; `onDraft` is told of every change, not of the start. */
export function useDraftForm<Draft extends { readonly kept: readonly string[] }>(
  start: Draft,
  onDraft: (draft: Draft) => void,
): DraftFormBase<Draft> {
  const [begun] = useState(start);
  const [draft, setDraft] = useState(start);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState(false);
  const place = useRef<HTMLDivElement>(null);
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

  const keep = (sentence: string) => () =>
    setDraft((before) => ({ ...before, kept: [...before.kept, sentence] }));

  return {
    draft,
    asked,
    place,
    change: (changes) => setDraft((before) => ({ ...before, ...changes })),
    update: setDraft,
    leave: (field) => setLeft((before) => new Set([...before, field])),
    notesOf(problems, field, keepWords) {
      if (!asked && !left.has(field)) return [];
      return problems
        .filter((problem) => problem.field === field)
        .map(({ sentence, severity }) =>
          severity === 'refused'
            ? { sentence }
            : { sentence, keep: { words: keepWords, onKeep: keep(sentence) } },
        );
    },
    askFor([first]) {
      setAsked(true);
      if (first !== undefined) goTo(first.field);
      return first === undefined;
    },
    goTo,
  };
}
