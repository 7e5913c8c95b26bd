export { ResultsScreen as default } from './ResultsScreen';
