import { EDGE_TOLERANCE_MM, type Window } from '../windows';
import { guard } from './guard';

/** The limits that hurt when crossed. */
export type LimitName = 'lash' | 'usable minimum' | 'usable maximum' | 'keep-out at the bottom';

/** Where a preload stands to one limit. 'in' is the side where the valve runs. */
export type Zone = 'proven in' | "can't tell" | 'proven out';

export interface LimitZone {
  readonly limit: LimitName;
  readonly limitMm: number;
  readonly zone: Zone;
  /** How far inside the limit the plain number is, mm; below 0 beyond it. */
  readonly insideMm: number;
}

/**
 * Zones at every limit that hurts, by rising limit. Inside by the guard 1.65 u is proven in, beyond
 * it by the guard proven out, between the two can't tell; a usable edge itself counts as inside, lash
 * and the keep-out as outside, as in `verdict`. The keep-out at the top has no zone of its own: a
 * usable minimum can't lie above it, and lash is worse.
 */
export function limitZones(preloadMm: number, uMm: number, w: Window): readonly LimitZone[] {
  const zone = (limit: LimitName, limitMm: number, insideMm: number): LimitZone => ({
    limit,
    limitMm,
    insideMm,
    zone: zoneOf(insideMm, guard(uMm), limit.startsWith('usable')),
  });
  const bottomMm = w.plungerTravelMm - w.keepOutBottomMm;
  return [
    zone('lash', 0, preloadMm),
    zone('usable minimum', w.usableMinMm, preloadMm - w.usableMinMm),
    zone('usable maximum', w.usableMaxMm, w.usableMaxMm - preloadMm),
    zone('keep-out at the bottom', bottomMm, bottomMm - preloadMm),
  ];
}

/** Whether a preload is proven usable, proven not to be, or neither. */
export function usableZone(preloadMm: number, uMm: number, w: Window): Zone {
  const zones = limitZones(preloadMm, uMm, w).map(({ zone }) => zone);
  if (zones.includes('proven out')) return 'proven out';
  return zones.includes("can't tell") ? "can't tell" : 'proven in';
}

function zoneOf(insideMm: number, guardMm: number, edgeIsInside: boolean): Zone {
  const slackMm = edgeIsInside ? -EDGE_TOLERANCE_MM : EDGE_TOLERANCE_MM;
  const isInside = (mm: number) => (edgeIsInside ? mm >= slackMm : mm > slackMm);
  if (isInside(insideMm - guardMm)) return 'proven in';
  return isInside(insideMm + guardMm) ? "can't tell" : 'proven out';
}
