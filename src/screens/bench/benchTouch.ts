import {
  allowed,
  type CommandBody,
  type CommandType,
  type JobState,
  type LandingWord,
  nextStage,
  stageOf,
} from '#counting';
import { shown } from '#words';
import { benchWords } from './benchWords';

/** A command as a target: what it is called and what it sends. */
export interface TouchCommand {
  readonly id: string;
  readonly label: string;
  readonly command: CommandBody;
  readonly leads?: boolean;
  readonly wide?: boolean;
}

const LANDINGS: readonly LandingWord[] = ['nothing', 'a bit past', 'half', 'just shy'];

/** The commands of the bar: only what makes sense now, the most used first. */
export function barCommands(job: JobState): readonly TouchCommand[] {
  const stage = stageOf(job);
  const may = allowing(job);
  const found: TouchCommand[] = [];
  if (stage === 'counting' && may('step')) {
    found.push({ ...step('step', shown.commands.step.name), wide: true });
  }
  if (stage === 'landing' && may('land')) {
    for (const word of LANDINGS) {
      found.push({ id: word, label: benchWords.landing[word], command: { type: 'land', word } });
    }
  }
  const next = nextStage(job);
  if (next !== null && may('advance')) {
    const label = shown.holdWillDo(next, job.open?.direction ?? 'on');
    found.push({ id: 'advance', label, command: { type: 'advance' }, leads: true });
  }
  if (stage === 'counting' && may('step')) found.push(step('half quarter', benchWords.half));
  if (may('takeBack') && (job.past !== null || job.asked !== null)) {
    found.push(plain('takeBack', { type: 'takeBack' }));
  }
  if (may('skip') && job.open !== null && stage !== 'read' && stage !== 'landing') {
    found.push(plain('skip', { type: 'skip' }));
  }
  if ((stage === 'read' || stage === 'all read') && may('repeat')) {
    found.push(plain('repeat', { type: 'repeat' }));
  }
  if (may('hold') && stage !== 'all read') found.push(plain('hold', { type: 'hold' }));
  return found;
}

/** The rest, under 'More'. */
export function moreCommands(job: JobState): readonly TouchCommand[] {
  const stage = stageOf(job);
  const { open } = job;
  const may = allowing(job);
  const found: TouchCommand[] = [
    question('where'),
    question('left'),
    question('summary'),
    question('again'),
  ].filter(({ command }) => may(command.type));
  if (may('restart') && open !== null) found.push(plain('restart', { type: 'restart' }));
  if (may('loosening') && open?.direction === 'on') {
    found.push(plain('loosening', { type: 'loosening' }));
  }
  if (may('seat') && open?.direction === 'on' && open.count48 === 0) {
    const command = { type: 'seat', loose: true } as const;
    found.push({ id: 'loose', label: benchWords.seatedLoose, command });
  }
  if (may('moveReading') && (open?.valve ?? job.readings.at(-1)?.valve ?? null) !== null) {
    const command = { type: 'moveReading', valve: 'other' } as const;
    found.push({ id: 'other', label: benchWords.otherValve, command });
  }
  if (may('overshot')) found.push(plain('overshot', { type: 'overshot' }));
  if (may('torqued') && job.readings.at(-1)?.torqued === false) {
    found.push(plain('torqued', { type: 'torqued' }));
  }
  if (may('pushrodsLoose') && job.crank.loaded && nextStage(job) !== 'pushrodsLoose') {
    found.push(plain('pushrodsLoose', { type: 'pushrodsLoose' }));
  }
  if (may('next') && (stage === 'read' || stage === 'landing')) {
    const command = { type: 'next', cylinder: true } as const;
    found.push({ id: 'next cylinder', label: benchWords.nextCylinder, command });
  }
  if (stage === 'all read') {
    found.push(plain('startRound', { type: 'startRound', purpose: 'measure' }));
  }
  return found;
}

function allowing(job: JobState): (command: CommandType) => boolean {
  const commands = allowed(job);
  return (command) => commands.includes(command);
}

function plain(type: CommandType, command: CommandBody): TouchCommand {
  return { id: type, label: shown.commands[type].name, command };
}

function step(size: 'step' | 'half quarter', label: string): TouchCommand {
  return { id: size, label, command: { type: 'step', size } };
}

function question(about: 'where' | 'left' | 'summary' | 'again'): TouchCommand {
  return { id: about, label: shown.questions[about], command: { type: 'ask', about } };
}
