import type { Turn48 } from '#valvetrain';
import { stageOf } from '../allowed';
import type { AskedFor, Command, CommandType } from '../commands';
import type { EventBody, JobEvent, Question } from '../events';
import type { Refusal } from '../refusals';
import { type JobState, setUpOf } from '../state';

/** What a command came to. */
export type Decision =
  | { readonly kind: 'events'; readonly events: readonly JobEvent[] }
  /** Understood, and nothing changes: 'still four'. At zero count it is a soft tick only. */
  | { readonly kind: 'unchanged'; readonly counted48: Turn48 }
  | { readonly kind: 'answer'; readonly about: AskedFor }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** A decision before its events have an envelope. */
export type Draft =
  | { readonly kind: 'events'; readonly bodies: readonly EventBody[] }
  | Exclude<Decision, { kind: 'events' }>;

export const happens = (...bodies: readonly EventBody[]): Draft => ({ kind: 'events', bodies });
export const unchanged = (counted48: Turn48): Draft => ({ kind: 'unchanged', counted48 });
export const refuse = (refusal: Refusal): Draft => ({ kind: 'refused', refusal });
export const askBack = (question: Question): Draft => happens({ type: 'askedBack', question });

/** Refuses a command that is known but makes no sense at this stage. */
export function notNow(state: JobState, command: CommandType): Draft {
  return refuse({
    code: 'not now',
    command,
    stage: stageOf(state),
    count48: state.open?.count48 ?? null,
    direction: state.open?.direction ?? 'on',
    hands: setUpOf(state)?.hands ?? 'alone',
  });
}

/** Narrows a command by its type. */
export type CommandOf<T extends Command['type']> = Extract<Command, { type: T }>;

/** A command that says how far it has been counted. */
export type CountCommand = CommandOf<'call' | 'step' | 'positionInTurn' | 'clock'>;

/** Whether a command says how far it has been counted. */
export function isCount(command: Command): command is CountCommand {
  switch (command.type) {
    case 'call':
    case 'step':
    case 'positionInTurn':
    case 'clock':
      return true;
    default:
      return false;
  }
}
