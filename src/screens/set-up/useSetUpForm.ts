import { useMemo } from 'react';
import { type DraftForm, useDraftForm } from '../shell/useDraftForm';
import type { Draft } from './draft';
import { type DraftRead, readDraft } from './readDraft';
import { setUpWords as words } from './setUpWords';

/** The form as its steps see it. */
export interface SetUpForm extends DraftForm<Draft> {
  readonly read: DraftRead;
}

/** Holds a draft while it is filled in; `onDraft` is told of every change, not of the start. */
export function useSetUpForm(start: Draft, onDraft: (draft: Draft) => void): SetUpForm {
  const { notesOf, askFor, ...form } = useDraftForm(start, onDraft);
  const { draft } = form;
  const read = useMemo(() => readDraft(draft), [draft]);
  return {
    ...form,
    read,
    notes: (field) => notesOf(read.problems, field, words.keep(textOf(draft, field))),
    ask: () => askFor(read.problems),
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
