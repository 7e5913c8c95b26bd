import type { StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import { type EarListener, webSpeech } from '#hearing';
import { browserParts, canRunOffline, createOfflineEar } from '#hearing-offline';
import type { EarShown } from '#screens';
import type { EarChoice } from '#settings';
import { browserEar, joinedEar } from './browserEar';
import type { EarParts, LoadedEar } from './earParts';

/** How long the browser may take to say where it would understand speech, ms. */
const WHERE_MS = 1500;

/**
 * The ear that is chosen; left to the app, the browser's own where it understands speech on this
 * device, else the one that needs no network, else the browser's service, which asks first.
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
      const browsers = !canRunOffline(page) || (await understandsHere(page));
      return browsers ? browserEar(parts, store) : offlineEar(parts, store);
    }
    default: {
      const never: never = choice;
      return never;
    }
  }
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

function offlineEar(parts: EarParts, store: StoreApi<EarShown>): LoadedEar {
  const make = (listener: EarListener) =>
    createOfflineEar({ clock: systemClock, listener, ...browserParts(parts.page) });
  return joinedEar(parts, store, { make, tellsLevel: true });
}
