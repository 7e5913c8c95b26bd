/**
 * Settings: this device's own choices (units, voice, talk level, keys, headset, screen). No events,
 * no job. Where they are kept comes through a port handed in by main.
 */

export { LONGEST_WINDOW_NAME, type NamedWindow, withNamedWindow } from './namedWindows';
export { readSettings } from './readSettings';
export {
  defaultSettings,
  type EarChoice,
  type KeySettings,
  type Settings,
  type TalkLevel,
} from './settings';
export {
  createSettings,
  type SettingsKeeper,
  type SettingsState,
  type SettingsStore,
} from './settingsStore';
