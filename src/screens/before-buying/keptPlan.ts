import { emptyPlan, type PlanDraft } from './planDraft';

/** Version of the shape below: a plan kept by another is not read. */
const SHAPE = 1;
const KEY = 'before buying';

/** Keeps the plan on this device: parts are thought about for longer than a page is open. */
export function keepPlan(storage: Storage, draft: PlanDraft): void {
  try {
    storage.setItem(KEY, JSON.stringify({ shape: SHAPE, draft }));
  } catch {
    // A full or forbidden storage costs only the plan's survival of a reload.
  }
}

export function dropPlan(storage: Storage): void {
  try {
    storage.removeItem(KEY);
  } catch {
    // As above.
  }
}

/** The plan kept on this device; null when there is none that this version can read. */
export function keptPlan(storage: Storage): PlanDraft | null {
  try {
    const kept: unknown = JSON.parse(storage.getItem(KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return null;
    if (!('shape' in kept) || kept.shape !== SHAPE || !('draft' in kept)) return null;
    return isPlan(kept.draft) ? kept.draft : null;
  } catch {
    return null;
  }
}

/** The app alone writes the record, under its shape's number: its fields' types are checked. */
function isPlan(value: unknown): value is PlanDraft {
  return isLike(value, { ...emptyPlan('inch'), kept: null, remembered: null });
}

function isLike(value: unknown, model: unknown): boolean {
  if (model === null) return typeof value === 'object' && value !== null;
  if (typeof model !== 'object') return typeof value === typeof model;
  if (typeof value !== 'object' || value === null) return false;
  if (Array.isArray(value) !== Array.isArray(model)) return false;
  const fields = new Map<string, unknown>(Object.entries(value));
  return Object.entries(model).every(([name, field]) => isLike(fields.get(name), field));
}
