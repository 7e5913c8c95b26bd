import type { Window } from '#valvetrain';

/** Where the plunger's top and bottom stops are drawn. */
export const TOP_STOP = 74;
export const BOTTOM_STOP = 372;
/** Labels nearer than this are moved apart. */
const LINE = 31;

/** A limit of the window with what it is; `y` is its line, `labelY` where its label fits. */
export interface LimitLabel {
  readonly kind: 'keepOutTop' | 'usable' | 'preferred' | 'keepOutBottom' | 'bottom';
  readonly mm: number;
  readonly y: number;
  readonly labelY: number;
}

/** A depth of preload as a place in the drawing, kept between the stops. */
export function depthY(mm: number, travelMm: number): number {
  const share = travelMm > 0 ? Math.max(0, Math.min(1, mm / travelMm)) : 0;
  return TOP_STOP + share * (BOTTOM_STOP - TOP_STOP);
}

/** The window's limits from top to bottom, their labels moved apart where they would touch. */
export function limitLabels(window: Window): readonly LimitLabel[] {
  const { plungerTravelMm: travel, usableMinMm, usableMaxMm } = window;
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const found: { kind: LimitLabel['kind']; mm: number }[] = [
    ...(window.keepOutTopMm > 0 && !same(window.keepOutTopMm, usableMinMm)
      ? [{ kind: 'keepOutTop' as const, mm: window.keepOutTopMm }]
      : []),
    { kind: 'usable', mm: usableMinMm },
    ...[window.preferredMinMm, window.preferredMaxMm]
      .filter((mm) => !same(mm, usableMinMm) && !same(mm, usableMaxMm))
      .map((mm) => ({ kind: 'preferred' as const, mm })),
    { kind: 'usable', mm: usableMaxMm },
    ...(window.keepOutBottomMm > 0
      ? [{ kind: 'keepOutBottom' as const, mm: travel - window.keepOutBottomMm }]
      : []),
    { kind: 'bottom', mm: travel },
  ];
  const ys = found.map(({ mm }) => depthY(mm, travel));
  const spread = apart(ys);
  return found.map((limit, i) => ({ ...limit, y: ys[i] ?? 0, labelY: spread[i] ?? 0 }));
}

/** Rising places moved as little as it takes to stand a line apart. */
function apart(ys: readonly number[]): readonly number[] {
  const groups: { places: number[]; start: number }[] = [];
  for (const y of ys) {
    groups.push({ places: [y], start: y });
    for (let last = groups.at(-1), before = groups.at(-2); last && before; ) {
      if (before.start + before.places.length * LINE <= last.start) break;
      const places = [...before.places, ...last.places];
      const middle = places.reduce((sum, place) => sum + place, 0) / places.length;
      groups.splice(-2, 2, { places, start: middle - ((places.length - 1) * LINE) / 2 });
      last = groups.at(-1);
      before = groups.at(-2);
    }
  }
  return groups.flatMap(({ places, start }) => places.map((_, i) => start + i * LINE));
}
