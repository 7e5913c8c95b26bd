export { SetUpScreen as default } from './SetUpScreen';
