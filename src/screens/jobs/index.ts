export { JobsScreen as default } from './JobsScreen';
