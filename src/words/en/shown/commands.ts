import type { AskedFor, CommandType } from '#counting';

/** What each command is called on a button, and what it does, in a few words. */
export interface CommandWords {
  readonly name: string;
  readonly hint: string;
}

export const commands: Readonly<Record<CommandType, CommandWords>> = {
  openJob: { name: 'Open the job', hint: 'Starts its log.' },
  changeSetUp: { name: 'Change the set-up', hint: 'For all readings, or from here on.' },
  startRound: { name: 'New round', hint: 'Counts every valve again; old readings stay.' },
  fitPushrod: { name: 'Test pushrod fitted', hint: 'Its length goes with the readings.' },
  readDial: { name: 'Dial reading', hint: 'Plunger travel, in place of a count.' },
  cautionsHeard: { name: 'Cautions heard', hint: 'Once a job.' },
  pushrodsLoose: { name: 'Pushrods loose', hint: 'The lifters have bled down.' },
  handsClear: { name: 'Hands clear', hint: 'Nobody’s hands on the engine.' },
  overshot: { name: 'Overshot', hint: 'Gone past: round again, never back.' },
  crankThere: { name: 'Crank’s there', hint: 'It stands where it was sent.' },
  advance: { name: 'Go on', hint: 'Does what is next.' },
  chooseValve: { name: 'Choose a valve', hint: 'By cylinder, intake or exhaust.' },
  loosening: { name: 'Loosening', hint: 'Counts off instead of on.' },
  zero: { name: 'Zero lash', hint: 'Starts the count.' },
  call: { name: 'Count', hint: 'The number is the count itself.' },
  step: { name: 'One more', hint: 'One more quarter, or stroke.' },
  positionInTurn: {
    name: 'Position in the turn',
    hint: 'Half turn, full turn: the nearest ahead.',
  },
  clock: { name: 'Clock hour', hint: 'Where the mark on the socket stands.' },
  seat: { name: 'Rocker seated', hint: 'Ends and freezes the count.' },
  land: { name: 'How far', hint: 'Nothing, a bit past, half, just shy.' },
  next: { name: 'Next valve', hint: 'Accepts this one as it stands.' },
  skip: { name: 'Skip this valve', hint: 'It comes back at the end.' },
  restart: { name: 'Start this valve over', hint: 'From zero; the log is kept.' },
  repeat: { name: 'Count it again', hint: 'A second reading, from a fresh zero.' },
  moveReading: { name: 'Wrong valve', hint: 'Gives the reading to the right one.' },
  nameReading: { name: 'Name the valve', hint: 'For a reading that has none.' },
  torqued: { name: 'Torqued down', hint: 'Ticks it off; the reading stays.' },
  hold: { name: 'Hold on', hint: 'Rests the bench.' },
  carryOn: { name: 'Carry on', hint: 'Where you left off.' },
  takeBack: { name: 'Take back', hint: 'Undoes the last thing, to any depth.' },
  doubt: { name: 'Missed', hint: 'Speech over the app’s voice does not count.' },
  ask: { name: 'Ask', hint: 'Changes nothing.' },
  note: { name: 'Note', hint: 'Who, for whom, and words to find the job by.' },
  discard: { name: 'Discard the job', hint: 'It can be restored.' },
  restore: { name: 'Restore the job', hint: 'Just as it was.' },
};

/** The questions a builder may ask at any time. */
export const questions: Readonly<Record<AskedFor, string>> = {
  again: 'Say again',
  where: 'Where am I?',
  'how sure': 'How sure?',
  left: 'What’s left?',
  summary: 'Read the summary',
};
