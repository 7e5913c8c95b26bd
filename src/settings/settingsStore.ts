import { createStore, type StoreApi } from 'zustand/vanilla';
import { readSettings } from './readSettings';
import { defaultSettings, type Settings } from './settings';

/** Where the settings are kept on this device. */
export interface SettingsKeeper {
  load(): Promise<unknown>;
  save(settings: Settings): Promise<void>;
}

export interface SettingsState {
  readonly settings: Settings;
  /** Loaded from the device: before that the defaults stand. */
  readonly loaded: boolean;
  /** The last change could not be kept: it holds until the page is closed. */
  readonly unkept: boolean;
}

export interface SettingsStore {
  readonly store: StoreApi<SettingsState>;
  load(): Promise<void>;
  change(changes: Partial<Settings>): void;
}

/** The device's settings: changed at once, kept behind. */
export function createSettings(keeper: SettingsKeeper): SettingsStore {
  const store = createStore<SettingsState>(() => ({
    settings: defaultSettings,
    loaded: false,
    unkept: false,
  }));
  return {
    store,
    async load() {
      try {
        store.setState({ settings: readSettings(await keeper.load()), loaded: true });
      } catch {
        store.setState({ loaded: true, unkept: true });
      }
    },
    change(changes) {
      const settings = { ...store.getState().settings, ...changes };
      store.setState({ settings });
      keeper.save(settings).then(
        () => store.setState({ unkept: false }),
        () => store.setState({ unkept: true }),
      );
    },
  };
}
