import type { Turn48 } from '#valvetrain';
import type { AskedFor, Command } from '../commands';
import type { EventBody, JobEvent, Question } from '../events';
import type { Refusal } from '../refusals';

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

/** Narrows a command by its type. */
export type CommandOf<T extends Command['type']> = Extract<Command, { type: T }>;
