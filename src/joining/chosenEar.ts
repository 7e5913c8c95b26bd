import type { StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import { type EarListener, webSpeech } from '#hearing';
import { browserParts, canRunOffline, createOfflineEar } from '#hearing-offline';
import type { EarShown } from '#screens';
import { browserEar, joinedEar } from './browserEar';
import type { EarParts, LoadedEar } from './earParts';

/**
 * The ear that is used: the browser's own where it understands speech on this device, else the one
 * that needs no network, else the browser's service, which asks first.
 */
export async function chosenEar(parts: EarParts, store: StoreApi<EarShown>): Promise<LoadedEar> {
  const { page } = parts;
  if (!canRunOffline(page)) return browserEar(parts, store);
  const { place } = await webSpeech(page).where();
  return place === 'on device' ? browserEar(parts, store) : offlineEar(parts, store);
}

function offlineEar(parts: EarParts, store: StoreApi<EarShown>): LoadedEar {
  const make = (listener: EarListener) =>
    createOfflineEar({ clock: systemClock, listener, ...browserParts(parts.page) });
  return joinedEar(parts, store, { make, tellsLevel: true });
}
