import { type Draft, emptyDraft } from './draft';

/** Version of the shape below: a draft kept by another is not read. */
const SHAPE = 2;

function keyOf(jobId: string | null): string {
  return `set-up draft ${jobId ?? 'new'}`;
}

/** Keeps a half-filled form through a reload of this tab. */
export function keepDraft(storage: Storage, jobId: string | null, draft: Draft): void {
  try {
    storage.setItem(keyOf(jobId), JSON.stringify({ shape: SHAPE, draft }));
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
  try {
    const kept: unknown = JSON.parse(storage.getItem(keyOf(jobId)) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return null;
    if (!('shape' in kept) || kept.shape !== SHAPE || !('draft' in kept)) return null;
    return isDraft(kept.draft) ? kept.draft : null;
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
