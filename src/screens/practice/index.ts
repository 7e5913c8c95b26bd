export { PracticeScreen as default } from './PracticeScreen';
