import { DEBOUNCE_MS } from './timings';

/** The last edge of one key, and why it is down if it is. */
export interface KeyEdge {
  /** When its press began. */
  readonly downAt: number;
  /** When its press began or, later, ended. */
  readonly at: number;
  readonly held: 'no' | 'press' | 'bounce';
}

export type KeyEdges = Readonly<Record<string, KeyEdge>>;

function edgeOf(edges: KeyEdges, key: string): KeyEdge | undefined {
  return Object.hasOwn(edges, key) ? edges[key] : undefined;
}

/**
 * Takes a key going down. `bounced` when it follows the key's last edge so closely that it is the
 * same press. A key that is down already counts as pressed anew, since its key-up was lost.
 */
export function edgeDown(
  edges: KeyEdges,
  key: string,
  at: number,
): { readonly edges: KeyEdges; readonly bounced: boolean } {
  const last = edgeOf(edges, key);
  if (last === undefined || Math.abs(at - last.at) >= DEBOUNCE_MS) {
    return { edges: pressed(edges, key, at), bounced: false };
  }
  // A contact that bounces as it closes is still closing: the key-up to come is the press's own.
  const closing = last.held === 'press' || Math.abs(at - last.downAt) < DEBOUNCE_MS;
  const held = closing ? 'press' : 'bounce';
  return { edges: { ...edges, [key]: { ...last, held } }, bounced: true };
}

/** The edges with this key down as a press. */
export function pressed(edges: KeyEdges, key: string, at: number): KeyEdges {
  return { ...edges, [key]: { downAt: at, at, held: 'press' } };
}

/** Takes a key going up. `wasDown` is false when its down was never taken here. */
export function edgeUp(
  edges: KeyEdges,
  key: string,
  at: number,
): { readonly edges: KeyEdges; readonly wasDown: boolean } {
  const last = edgeOf(edges, key);
  if (last === undefined || last.held === 'no') return { edges, wasDown: false };
  const lastAt = last.held === 'press' ? at : last.at;
  return { edges: { ...edges, [key]: { ...last, at: lastAt, held: 'no' } }, wasDown: true };
}

/** Forgets which keys are down, keeping when they last moved. */
export function releaseAll(edges: KeyEdges): KeyEdges {
  return Object.fromEntries(
    Object.entries(edges).map(([key, edge]) => [key, { ...edge, held: 'no' as const }]),
  );
}
