import type { EventType } from '#counting';

const known: Readonly<Record<EventType, true>> = {
  jobOpened: true,
  setupChanged: true,
  roundStarted: true,
  pushrodFitted: true,
  cautionsHeard: true,
  handsClear: true,
  positionReached: true,
  overshot: true,
  valveChosen: true,
  valveNamed: true,
  zeroTouched: true,
  counted: true,
  doubted: true,
  askedBack: true,
  seated: true,
  landed: true,
  restarted: true,
  repeatStarted: true,
  readingMoved: true,
  dialRead: true,
  valveLeft: true,
  torqued: true,
  bledDown: true,
  held: true,
  resumed: true,
  takenBack: true,
  noted: true,
  jobDiscarded: true,
  jobRestored: true,
};

/** Every type of event this version knows. A type missing above does not compile. */
export const eventTypes: readonly string[] = Object.keys(known);

export function isEventType(type: string): type is EventType {
  return Object.hasOwn(known, type);
}
