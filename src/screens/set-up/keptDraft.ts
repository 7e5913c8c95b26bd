import { type Draft, emptyDraft } from './draft';

/** Version of the shape below: a draft kept by another is not read. */
const SHAPE = 2;

function keyOf(jobId: string | null): string {
  return `set-up draft ${jobId ?? 'new'}`;
}

/** Where a draft was left: in this form, or by a plan of parts that begins a job. */
export type LeftBy = 'set-up' | 'before buying';

/** Keeps a half-filled form through a reload of this tab. */
export function keepDraft(
  storage: Storage,
  jobId: string | null,
  draft: Draft,
  leftBy: LeftBy = 'set-up',
): void {
  try {
    storage.setItem(keyOf(jobId), JSON.stringify({ shape: SHAPE, draft, leftBy }));
  } catch {
    // A full or forbidden storage costs only the draft's survival of a reload.
  }
}

export function dropDraft(storage: Storage, jobId: string | null): void {
  try {
    storage.removeItem(keyOf(jobId));
  } catch {
    // As above.
  }
}

/** The draft kept in this tab; null when there is none that this version can read. */
export function keptDraft(storage: Storage, jobId: string | null): Draft | null {
  const kept = keptRecord(storage, jobId);
  return isDraft(kept?.draft) ? kept.draft : null;
}

/** Where the draft kept in this tab was left. */
export function draftLeftBy(storage: Storage, jobId: string | null): LeftBy {
  return keptRecord(storage, jobId)?.leftBy === 'before buying' ? 'before buying' : 'set-up';
}

function keptRecord(
  storage: Storage,
  jobId: string | null,
): { readonly draft: unknown; readonly leftBy: unknown } | null {
  try {
    const kept: unknown = JSON.parse(storage.getItem(keyOf(jobId)) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return null;
    if (!('shape' in kept) || kept.shape !== SHAPE || !('draft' in kept)) return null;
    return { draft: kept.draft, leftBy: 'leftBy' in kept ? kept.leftBy : null };
  } catch {
    return null;
  }
}

/** This tab alone writes the record, under its shape's number: its fields' types are checked. */
function isDraft(value: unknown): value is Draft {
  if (typeof value !== 'object' || value === null) return false;
  const fields = new Map<string, unknown>(Object.entries(value));
  return Object.entries(emptyDraft('inch')).every(
    ([name, empty]) =>
      typeof fields.get(name) === typeof empty &&
      Array.isArray(fields.get(name)) === Array.isArray(empty),
  );
}
