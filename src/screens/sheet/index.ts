export { SheetScreen as default } from './SheetScreen';
