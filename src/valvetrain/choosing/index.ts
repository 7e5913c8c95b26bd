/** Which pushrods to buy or take from stock, or, with adjustable rockers, where to stop turning. */
export type { Answer, GroupAnswer, LengthShare, Prediction, WhyNot } from './answer';
export { type Choice, choosePushrods } from './choosePushrods';
export { type GroupDifference, groupDifferences } from './differences';
export { type Offer, offerProblems, type StockLine } from './offer';
export { type OrderLine, orderList } from './orderList';
export { type Pool, pooledPreload } from './pools';
export type { Factor, FixedScheme, GroupLabel, Scheme } from './schemes';
export type { Reason, Suggestion } from './suggest';
export { type TurnsToStop, turnsToStop } from './turnsToStop';
export type { ChoosableValve } from './valve';
