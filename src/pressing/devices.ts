import type { Clock } from '#clock';
import { listenForPads } from './pads';
import type { PressInput } from './pressInput';
import { listenForKeys } from './windowKeys';

/** Hands everything that can be pressed, keys and pad buttons, to `feed`. Returns what stops it. */
export function listenForPresses(
  window: Window,
  clock: Clock,
  feed: (input: PressInput) => boolean,
): () => void {
  const stopKeys = listenForKeys(window, clock, feed);
  const stopPads = listenForPads(window, clock, feed);
  return () => {
    stopKeys();
    stopPads();
  };
}
