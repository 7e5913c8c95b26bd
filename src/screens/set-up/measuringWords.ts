import type { LengthConvention, ZeroFeel } from '#valvetrain';
import type { Draft } from './draft';

/** How a pushrod's length is taken. */
export const conventionNames: Readonly<Record<LengthConvention, string>> = {
  'tip to tip': 'Tip to tip, over the oil-hole flats',
  'full ball': 'Full ball, to the uncut poles',
};

/** Words of what is counted, with which pushrod, and how zero is felt for. English. */
export const measuringWords = {
  counts: 'What is counted',
  countsBy: {
    fastener: 'Turns of the bolt, nut or screw, with a test pushrod',
    'checking pushrod': 'Turns of a checking pushrod, rockers torqued down',
  } satisfies Record<Draft['counts'], string>,
  countsHint:
    'Each rocker is torqued down and the pushrod opened to zero lash, in whole turns up to forty. Several rockers on one shaft are measured so too.',

  pushrodSteps: {
    fastener: 'Test pushrod',
    'checking pushrod': 'Checking pushrod',
  } satisfies Record<Draft['counts'], string>,
  pushrod: 'Length of the test pushrod',
  pushrodHint: {
    inch: 'As 7.400. A figure in mm is taken with ‘mm’ behind it.',
    mm: 'As 188.0. A figure in inches is taken with ‘in’ behind it.',
  },
  closed: 'Length screwed right in',
  closedHint: {
    inch: 'As 6.800. A figure in mm is taken with ‘mm’ behind it.',
    mm: 'As 172.7. A figure in inches is taken with ‘in’ behind it.',
  },
  turnOpens: 'One turn opens it by',
  turnOpensHint:
    'Twenty threads per inch open 50 thou (1.27 mm) a turn: common practice. Check the one in hand.',
  convention: 'How that length is taken',
  conventions: conventionNames,
  ends: 'Ball and oil hole, for lengths stated both ways',
  endsHint:
    'The oil hole cuts a flat off each ball: with both known, a length stated one way is worked out the other way.',
  bothWays: (stated: string, other: string) => `${stated} is ${other}.`,
  ball: { lifter: 'Ball at the lifter', rocker: 'Ball at the rocker' },
  hole: { lifter: 'Oil hole at the lifter', rocker: 'Oil hole at the rocker' },

  zeroFeel: 'Zero lash is felt for by',
  zeroFeels: {
    'up-and-down play': 'Up-and-down play of the pushrod',
    spinning: 'Spinning it between the fingers: coarser',
  } satisfies Record<ZeroFeel, string>,
};
