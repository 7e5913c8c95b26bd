import type { EarKind, EarNotice } from '#words';
import type { LoadedEar } from './earParts';

/** Asked of every notice an ear gives: which other ear takes over now; null where none does. */
export type TakesOver = (notice: EarNotice) => EarKind | null;

/**
 * The ear that is left to the app: of those given, likeliest first, one hears; when it dies of
 * something that another would not die of, the next takes over by itself.
 */
export function automaticEar(
  order: readonly [EarKind, ...EarKind[]],
  make: (kind: EarKind, takesOver: TakesOver) => LoadedEar,
  later: (then: () => void) => void,
): LoadedEar {
  let left: readonly EarKind[] = order.slice(1);
  let held = false;
  let closed = false;

  function takesOver(notice: EarNotice): EarKind | null {
    const [next, ...rest] = left;
    if (next === undefined || closed || !isOfTheEar(notice, next)) return null;
    left = rest;
    // The one that dies is still telling of it.
    later(() => {
      if (closed) return;
      current.close();
      current = make(next, takesOver);
      if (held) current.hold(true);
      else current.start();
    });
    return next;
  }

  let current = make(order[0], takesOver);

  return {
    toggle: () => current.toggle(),
    hold(on) {
      held = on;
      current.hold(on);
    },
    start: () => current.start(),
    stop: () => current.stop(),
    log: () => current.log(),
    close() {
      closed = true;
      current.close();
    },
  };
}

/** Whether another ear may do better: not where there is no microphone, or the builder's leave is missing. */
function isOfTheEar({ state, why }: EarNotice, next: EarKind): boolean {
  if (why === 'notice') return next === 'offline';
  return state === 'dead' && why !== 'denied' && why !== 'no microphone';
}
