import type { Problem, Turn48, ValveId } from '#valvetrain';
import type { Stage } from './allowed';
import type { CommandType } from './commands';
import type { Direction } from './events';

/** Why a command was not taken. A value with what the words need; never an exception. */
export type Refusal =
  /** Known, but not at this stage. */
  | {
      readonly code: 'not now';
      readonly command: CommandType;
      readonly stage: Stage;
      readonly count48: Turn48 | null;
      readonly direction: Direction;
      readonly hands: 'alone' | 'with helper';
    }
  | { readonly code: 'nothing to take back' }
  | { readonly code: 'past the most'; readonly most48: Turn48; readonly counted48: Turn48 }
  | { readonly code: 'clock is off' }
  | { readonly code: 'not in this job'; readonly valve: ValveId }
  | { readonly code: 'no such cylinder'; readonly cylinder: number; readonly cylinders: number }
  | { readonly code: 'say which valve' }
  | { readonly code: 'already that valve'; readonly valve: ValveId }
  | { readonly code: 'already counted'; readonly counted48: Turn48 }
  | { readonly code: 'loose after counting'; readonly counted48: Turn48 }
  | {
      readonly code: 'landing outside the mark';
      readonly counted48: Turn48;
      readonly said48: Turn48;
    }
  | { readonly code: 'no reading' }
  | { readonly code: 'unknown reading' }
  | { readonly code: 'already torqued'; readonly valve: ValveId | null }
  | { readonly code: 'nothing left here' }
  | { readonly code: 'bad set-up'; readonly problems: readonly Problem[] }
  | { readonly code: 'bad length'; readonly problems: readonly Problem[] }
  | { readonly code: 'bad dial reading'; readonly problems: readonly Problem[] };

export type RefusalCode = Refusal['code'];
