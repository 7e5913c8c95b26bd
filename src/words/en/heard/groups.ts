import { again } from './groups/again';
import { ask } from './groups/ask';
import { clock } from './groups/clock';
import { count, strokes } from './groups/count';
import { crank } from './groups/crank';
import { ear } from './groups/ear';
import { hold } from './groups/hold';
import { landing } from './groups/landing';
import { later } from './groups/later';
import { mend } from './groups/mend';
import { more } from './groups/more';
import { move } from './groups/move';
import { off } from './groups/off';
import { position } from './groups/position';
import { restart } from './groups/restart';
import { rod } from './groups/rod';
import { seat } from './groups/seat';
import { undo } from './groups/undo';
import { zero } from './groups/zero';
import type { PhraseGroup } from './phrase';

/** Everything that can be said, group by group. */
export const GROUPS: readonly PhraseGroup[] = [
  zero,
  count,
  strokes,
  landing,
  more,
  position,
  clock,
  seat,
  later,
  undo,
  restart,
  mend,
  again,
  move,
  crank,
  rod,
  off,
  ask,
  hold,
  ear,
];
