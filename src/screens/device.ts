import type { StoreApi } from 'zustand/vanilla';

/** How the app itself stands on this device. */
export interface DeviceState {
  /** Whether it opens without its server. */
  readonly offline: 'not offered' | 'fetching' | 'ready' | 'failed';
  /** It became so while this page was open, and the builder has not been told. */
  readonly readyNow: boolean;
  /** A new version waits to be asked for; asked while a count was open, it goes on waiting. */
  readonly update: 'none' | 'here' | 'waits for a count';
  /**
   * Whether jobs can be kept: 'none' where the browser gives no store, 'blocked' while an older
   * window keeps it from opening, 'newer app' once a newer version has it.
   */
  readonly store: 'here' | 'none' | 'blocked' | 'newer app';
  /** Whether the browser has promised not to clear what is kept. */
  readonly lasting: 'yes' | 'no' | 'not asked' | 'not offered';
}

/** The device as the screens meet it. */
export interface Device {
  readonly store: StoreApi<DeviceState>;
  /** Takes the new version of the app, unless a count is open. */
  updateApp(): void;
  /** The builder has read that the app is ready offline. */
  readyTold(): void;
}
