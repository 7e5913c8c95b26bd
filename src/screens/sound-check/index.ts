export { SoundCheckScreen as default } from './SoundCheckScreen';
