/** One group of cautions: a heading and its sentences. */
export interface Caution {
  readonly heading: string;
  readonly sentences: readonly string[];
}

/** Shown in full once a job, and acknowledged; the spoken line is only its start. */
export const cautions: readonly Caution[] = [
  {
    heading: 'Before anything moves',
    sentences: [
      'Disconnect the battery. Disable ignition and fuel. Take the plugs out. Gear in neutral, engine cold.',
      'Move the crank by hand only, with a bar on its own bolt, in the engine’s running direction and only where that also tightens the bolt.',
      'Take the bar off before anything is connected again.',
    ],
  },
  {
    heading: 'Seating can hit a piston',
    sentences: [
      'A lifter full of oil may not give way. Then seating the rocker opens the valve instead, by the preload times the rocker ratio: 100 thou at 1.7 is 170 thou, with the piston at the top.',
      'Go a quarter at a time. If it goes heavy early, stop and wait.',
    ],
  },
  {
    heading: 'Before the crank moves again',
    sentences: [
      'After seating, wait until the lifters have bled down: the pushrod spins in your fingers again. Five to ten minutes is one published figure, but time alone is no proof.',
      'Moving the crank too soon bends valves and pushrods.',
    ],
  },
  {
    heading: 'With a helper at the crank',
    sentences: [
      'The app asks ‘hands clear?’ each time, and names the move only on a fresh answer. It never calls one late, over talk or after a break.',
      'If you did not hear it just now, nobody moves the crank.',
    ],
  },
  {
    heading: 'At the rockers',
    sentences: [
      'By hand, no power tool.',
      'Oil in a blind bolt hole feels like a seat and can crack the casting: clear it out.',
      'Stuff rag into oil drains and pushrod holes. Count tools and nuts out again.',
      'Wear eye protection: springs hold energy.',
      'Run the pedal’s cable clear of the floor path. Wear a headset on one ear only.',
    ],
  },
  {
    heading: 'What this does not tell you',
    sentences: [
      'Torque, tightening sequence, clearances and lifter limits come from the makers’ own service information; none are built in.',
      'An order for parts is no leave to start the engine: recheck clearances, geometry and torque, and ask a qualified engine builder.',
    ],
  },
];
