import type { StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import { type EarListener, webSpeech } from '#hearing';
import { browserParts, canRunOffline, createOfflineEar, readVoicePrints } from '#hearing-offline';
import type { EarShown } from '#screens';
import type { EarChoice } from '#settings';
import type { EarKind } from '#words';
import { automaticEar, type TakesOver } from './automaticEar';
import { browserEar, joinedEar, noOther } from './browserEar';
import type { EarParts, LoadedEar } from './earParts';

/** How long the browser may take to say where it would understand speech, ms. */
const WHERE_MS = 1500;

/**
 * The ear that is chosen; left to the app, the browser's own where it understands speech on this
 * device, else the one that needs no network, else the browser's service, which asks first. What
 * dies is followed by the next.
 */
export async function chosenEar(
  choice: Exclude<EarChoice, 'none'>,
  parts: EarParts,
  store: StoreApi<EarShown>,
): Promise<LoadedEar> {
  switch (choice) {
    case 'browser':
      return browserEar(parts, store);
    case 'offline':
      return offlineEar(parts, store);
    case 'automatic': {
      const { page } = parts;
      const make = (kind: EarKind, takesOver: TakesOver) =>
        kind === 'browser'
          ? browserEar(parts, store, takesOver)
          : offlineEar(parts, store, takesOver);
      return automaticEar(await likeliestFirst(page), make, (then) => systemClock.after(0, then));
    }
    default: {
      const never: never = choice;
      return never;
    }
  }
}

async function likeliestFirst(page: EarParts['page']): Promise<readonly [EarKind, ...EarKind[]]> {
  if (!canRunOffline(page)) return ['browser'];
  return (await understandsHere(page)) ? ['browser', 'offline'] : ['offline', 'browser'];
}

/** Whether the browser understands speech on this device; one that does not answer does not. */
function understandsHere(page: EarParts['page']): Promise<boolean> {
  return new Promise((resolve) => {
    const giveUp = systemClock.after(WHERE_MS, () => resolve(false));
    function answer(here: boolean): void {
      giveUp();
      resolve(here);
    }
    webSpeech(page)
      .where()
      .then(
        ({ place }) => answer(place === 'on device'),
        () => answer(false),
      );
  });
}

function offlineEar(
  parts: EarParts,
  store: StoreApi<EarShown>,
  takesOver: TakesOver = noOther,
): LoadedEar {
  const onProgress = (part: number) => store.setState({ fetched: part });
  const make = (listener: EarListener) =>
    createOfflineEar({
      clock: systemClock,
      listener,
      onProgress,
      recording: {
        wanted: () => parts.recording.store.getState().wanted,
        subscribe: parts.recording.store.subscribe,
        keep: parts.recording.keep,
      },
      prints: {
        now: () => readVoicePrints(parts.prints.getState().prints),
        subscribe: parts.prints.subscribe,
      },
      ...browserParts(parts.page),
    });
  return joinedEar(parts, store, { make, tellsLevel: true, takesOver });
}
