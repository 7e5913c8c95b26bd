import { initial, type JobState, type SetUp, type Stage } from '#counting';
import { turn48 } from '#valvetrain';
import { setUp, valve } from './samples';

const job: JobState = { ...initial, status: 'open', cautionsHeard: true };

const on = (jobSetUp: SetUp): JobState => ({ ...job, setUps: [{ seq: 1, setUp: jobSetUp }] });

const phase = (of: 'to start' | 'counting' | 'landing' | 'read'): JobState => ({
  ...on(setUp()),
  open: {
    valve: valve(8, 'exhaust'),
    direction: 'on',
    phase: of,
    count48: turn48(of === 'to start' ? 0 : 48),
    lastHow: null,
    doubtful: false,
    repeatOf: null,
    reading: null,
    endedAt: null,
  },
});

const walking = on(setUp());

/** A state standing at each stage. */
export const stateAt: Readonly<Record<Stage, JobState>> = {
  'not opened': initial,
  discarded: { ...job, status: 'discarded' },
  held: { ...job, held: true },
  cautions: { ...job, cautionsHeard: false },
  'pushrods loose': { ...walking, crank: { ...walking.crank, loaded: true } },
  'hands clear': on(setUp({ hands: 'with helper' })),
  turning: walking,
  'choose valve': on(setUp({ engine: null })),
  'to start': phase('to start'),
  counting: phase('counting'),
  landing: phase('landing'),
  read: phase('read'),
  'all read': on(setUp({ scope: [] })),
};
