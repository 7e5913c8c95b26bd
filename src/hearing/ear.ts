import type { CommandBody, JobState, Utterance } from '#counting';
import type { EarNotice } from '#words';
import type { EarSettings, Place } from './earInput';
import type { EarLog } from './earLog';
import type { EarCaption, EarPhase, EarState, Ghost } from './earState';

/** What the screen shows of an ear. */
export interface EarView {
  readonly state: EarPhase;
  readonly why: EarState['why'];
  /** Open only while the listening key is held. */
  readonly byKey: boolean;
  readonly place: Place | null;
  /** What is being said, before it counts. */
  readonly ghost: Ghost | null;
  /** The last few things heard, newest last. */
  readonly captions: readonly EarCaption[];
  /** Noise of the room, dB of full scale; null while it is not measured. */
  readonly level: number | null;
}

/** What an ear hands on. */
export interface EarListener {
  onCommand(body: CommandBody, utterance: Utterance): void;
  /** 'Stop': ends the app's talk and any pending turn. */
  onHush(): void;
  /** Heard, as heard and as understood; some kinds are a 'missed' tick as well. */
  onCaption(caption: EarCaption): void;
  /** It opened, shut or died: to be said and shown. */
  onNotice(notice: EarNotice): void;
}

/** An ear, whichever way it hears. */
export interface Ear {
  /** The builder opens it. */
  start(): void;
  /** The builder shuts it: nothing restarts it but the builder. */
  stop(): void;
  /** The listening key goes down or comes up. */
  hold(on: boolean): void;
  configure(settings: EarSettings): void;
  /** The job as it now is, with the carrier word in use: sets what is listened for. */
  follow(job: JobState, carrier: string | null): void;
  /** The app's voice begins this line, or has ended (null). */
  mouth(saying: string | null): void;
  /** Noise of the room, dB of full scale. */
  level(db: number): void;
  view(): EarView;
  subscribe(fn: () => void): () => void;
  log(): EarLog;
  /** Takes it down for good. */
  close(): void;
}
