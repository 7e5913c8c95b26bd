import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { FieldNote } from '../shell/Field';
import type { Draft } from './draft';
import { type DraftRead, readDraft } from './readDraft';
import { setUpWords as words } from './setUpWords';

/** The form as its steps see it. */
export interface SetUpForm {
  readonly draft: Draft;
  readonly read: DraftRead;
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

/** Holds a draft while it is filled in; `onDraft` is told of every change, not of the start. */
export function useSetUpForm(start: Draft, onDraft: (draft: Draft) => void): SetUpForm {
  const [begun] = useState(start);
  const [draft, setDraft] = useState(start);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  const read = useMemo(() => readDraft(draft), [draft]);
  useEffect(() => {
    if (draft !== begun) onDraft(draft);
  }, [draft, begun, onDraft]);

  function update(change: (draft: Draft) => Draft): void {
    setDraft(change);
  }

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
    asked,
    place,
    change: (changes) => update((before) => ({ ...before, ...changes })),
    update,
    leave: (field) => setLeft((before) => new Set([...before, field])),
    notes(field) {
      if (!asked && !left.has(field)) return [];
      return read.problems
        .filter((problem) => problem.field === field)
        .map(({ sentence, severity }) =>
          severity === 'refused'
            ? { sentence }
            : {
                sentence,
                keep: {
                  words: words.keep(textOf(draft, field)),
                  onKeep: () =>
                    update((before) => ({ ...before, kept: [...before.kept, sentence] })),
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

/** What is typed in a field, for asking it back. */
function textOf(draft: Draft, field: string): string {
  const [name, place, figure] = field.split('.');
  if (name === 'groups') {
    const window = draft.groups[Number(place)]?.window;
    return Object.entries(window ?? {}).find(([key]) => key === figure)?.[1] ?? '';
  }
  const text = Object.entries(draft).find(([key]) => key === name)?.[1];
  const typed = [
    'ratio',
    'lean',
    'measured',
    'pitch',
    'tpi',
    'order',
    'banks',
    'pushrod',
    'closed',
    'perTurn',
  ];
  return typeof text === 'string' && typed.includes(field) ? text : '';
}
