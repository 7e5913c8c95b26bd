export { BeforeBuyingScreen as default } from './BeforeBuyingScreen';
