export { CrankScreen as default } from './CrankScreen';
