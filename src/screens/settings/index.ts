export { SettingsScreen as default } from './SettingsScreen';
