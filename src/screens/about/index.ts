export { AboutScreen as default } from './AboutScreen';
