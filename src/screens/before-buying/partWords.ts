import type { PartsChange } from '#valvetrain';
import type { PartId } from './planDraft';

/** What each part of a plan is called and asked, English. */
export interface PartAsked {
  /** The tick that says it changes. */
  readonly tick: string;
  readonly name: string;
  readonly was?: string;
  readonly willBe?: string;
  readonly amount?: string;
  readonly hint: string;
}

const difference = 'Only the difference known? Give 0 and the difference.';

export const partsAsked: Readonly<Record<PartId, PartAsked>> = {
  'base circle': {
    tick: 'The cam: another base circle',
    name: 'Cam base circle',
    was: 'Diameter now',
    willBe: 'With the new cam',
    hint: 'The diameter, not the radius. A reground cam has a smaller one.',
  },
  'lifter cup': {
    tick: 'The lifters: another cup height',
    name: 'Lifter cup',
    was: 'Cup over foot now',
    willBe: 'In the new lifter',
    hint: `Plunger up against its retainer, in both. ${difference}`,
  },
  'deck milled': {
    tick: 'The block’s deck is milled',
    name: 'Deck',
    amount: 'Taken off the deck',
    hint: 'What is taken off, not what is left.',
  },
  gasket: {
    tick: 'Another head gasket',
    name: 'Head gasket',
    was: 'Thickness now',
    willBe: 'Of the new one',
    hint: `Compressed, in both. ${difference}`,
  },
  'head milled': {
    tick: 'The heads are milled, or other heads',
    name: 'Head face',
    amount: 'Taken off the face',
    hint: 'Other heads: how much nearer to the face their rocker stands are; below 0 where further.',
  },
  'rocker cup': {
    tick: 'Other rockers: the pushrod’s cup sits elsewhere',
    name: 'Rocker’s cup',
    amount: 'Cup higher by',
    hint: 'Measured with pivot and valve tip where they are; below 0 where lower. Another ratio has no rule of its own: it moves the cup by what you measure.',
  },
  'pivot shim': {
    tick: 'Shims or other stands under the rockers',
    name: 'Rocker pivot',
    amount: 'Pivot higher by',
    hint: 'The shim’s thickness; below 0 where one is taken out.',
  },
  'valve tip': {
    tick: 'The valve tips stand higher or lower',
    name: 'Valve tip',
    was: 'Tip height now',
    willBe: 'Tip height to be',
    hint: `Over the spring’s seat. Valve seats cut deeper raise the tip; a ground tip lowers it. ${difference}`,
  },
};

/** What a term's factor rests on. */
export const bases: Readonly<Record<PartsChange['kind'], string>> = {
  'head or deck milled': 'Brings the rocker nearer by as much: one to one.',
  'gasket thicker': 'Takes the rocker further off by as much: one to one.',
  'base circle smaller': 'The lifter sits lower by the radius: half of the diameter.',
  'lifter cup higher': 'The cup comes to meet the pushrod: one to one.',
  'rocker cup higher': 'The cup moves away from the pushrod: one to one, as measured.',
  'pivot shim': 'The pivot goes up, and the lever about the valve’s tip adds to it.',
  'valve tip higher, pivot fixed': 'The rocker tips over its pivot and its cup comes down.',
  'valve tip higher, pivot raised to match': 'The rocker goes up as a whole: one to one.',
};

export const formulas: Readonly<Record<PartsChange['kind'], string>> = {
  'head or deck milled': '− m',
  'gasket thicker': '+ g',
  'base circle smaller': '+ D / 2',
  'lifter cup higher': '− s',
  'rocker cup higher': '+ c',
  'pivot shim': '+ s × (1 + 1/R)',
  'valve tip higher, pivot fixed': '− v / R',
  'valve tip higher, pivot raised to match': '+ v',
};
