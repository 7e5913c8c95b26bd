import { useStore } from 'zustand';
import {
  engineSummary,
  type JobState,
  markOf,
  nextStop,
  setUpOf,
  stageOf,
  standingOf,
} from '#counting';
import { TURN } from '#valvetrain';
import { sayClock } from '#words';
import { ClockDial } from '../pieces/ClockDial';
import { CrankDial } from '../pieces/CrankDial';
import { useBench, useServices } from '../services';
import { countLine, countUnitWord, unitOfJob } from './benchFigures';
import { benchWords } from './benchWords';
import { degrees } from './crankWords';
import { stopName, stopNamed } from './stopNamed';

/** The dial: the socket's mark while a valve is open, else the crank. */
export function BenchDial({ turnShown }: { readonly turnShown: boolean }) {
  const job = useBench((state) => state.job);
  return job.open === null ? <Crank job={job} turnShown={turnShown} /> : <Socket job={job} />;
}

function Socket({ job }: { readonly job: JobState }) {
  const { count48, direction } = standingOf(job);
  const phase = job.open?.phase ?? 'to start';
  const ghost48 = useStore(useServices().ear, ({ ghost }) => ghost?.count48 ?? null);
  const calling = setUpOf(job)?.calling ?? { way: 'quarters' };
  const started = phase !== 'to start';
  const under = started ? countUnitWord(job, count48) : notStarted(direction);
  const label = started
    ? benchWords.dialLabel(countLine(job, count48), under, sayClock(count48, direction))
    : under;
  return (
    <ClockDial
      count48={started ? count48 : null}
      direction={direction}
      mark48={markOf(calling)}
      unit={unitOfJob(job)}
      ghost48={phase === 'counting' ? ghost48 : null}
      label={label}
      under={under}
      beside={besideCount(job, count48)}
    />
  );
}

function notStarted(direction: 'on' | 'off'): string {
  return direction === 'on' ? benchWords.notAtZero : benchWords.onItsStand;
}

function besideCount(job: JobState, count48: number): string {
  const { open } = job;
  switch (open?.phase) {
    case 'landing':
      return benchWords.howFar;
    case 'read': {
      const reading = job.readings.find(({ id }) => id === open.reading);
      return reading?.kind === 'seated loose' ? benchWords.seatedLooseAt : benchWords.seated;
    }
    case 'counting':
      if (open.doubtful) return benchWords.inDoubt;
      if (open.direction === 'off') return benchWords.countingOff;
      return count48 > TURN && unitOfJob(job) === 'quarters'
        ? benchWords.turn(Math.ceil(count48 / TURN))
        : '';
    default:
      return '';
  }
}

function Crank({ job, turnShown }: { readonly job: JobState; readonly turnShown: boolean }) {
  const stage = stageOf(job);
  const engine = setUpOf(job)?.engine ?? null;
  const stop = nextStop(job);
  const way = engine?.runningDirection ?? 'clockwise';
  const running = engine === null ? [] : benchWords.running(engine);
  const still = (figure: string, under: string) => (
    <CrankDial
      turnDeg={null}
      way={way}
      figure={figure}
      under={under}
      beside={[]}
      label={`${figure} ${under}`}
    />
  );
  if (turnShown && stop !== null) {
    const { turnDeg, again } = stop;
    const known = turnDeg !== null && turnDeg > 0;
    const name = stopName(job, stop.position);
    const figure = known ? degrees(turnDeg) : name.figure;
    const under = known
      ? benchWords[again ? 'roundTo' : 'crankTo'](stopNamed(job, stop.position))
      : benchWords.stopWords[name.word];
    return (
      <CrankDial
        turnDeg={known ? turnDeg : null}
        way={way}
        figure={figure}
        under={under}
        beside={running}
        label={`${figure} ${under}, ${running.join(', ')}`}
      />
    );
  }
  if (stage === 'all read') return still(String(engineSummary(job).read), benchWords.read);
  if (stage === 'choose valve' || stage === 'held' || stop === null) {
    const { at } = job.crank;
    if (at === null)
      return still('–', engine === null ? benchWords.unnamed : benchWords.crankUnknown);
    const { figure, word } = stopName(job, at);
    return still(figure, word === 'cylinder' ? benchWords.standsAt : benchWords.stopWords[word]);
  }
  const { figure, word } = stopName(job, stop.position);
  return still(figure, `${benchWords.stopWords[word]} ${benchWords.nextIs}`);
}
