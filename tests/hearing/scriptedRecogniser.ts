import type { Place, Recogniser, SessionEvent, SessionOptions } from '#hearing';
import type { FakeClock } from '../fakes/clock';

/** One session as it was asked for and what became of it. */
export interface ScriptedSession {
  readonly options: SessionOptions;
  readonly tell: (event: SessionEvent) => void;
  finished: boolean;
  aborted: boolean;
}

/** A step of a script: wait so long, ms, then tell this. */
export type Line = readonly [number, SessionEvent];

/** A recogniser that tells what a script says, when it says so. */
export interface ScriptedRecogniser extends Recogniser {
  readonly sessions: ScriptedSession[];
  /** The newest session. */
  now(): ScriptedSession;
  /** The newest session starts to take sound, as services do. */
  opens(): void;
  /** Plays a script in the newest session. */
  plays(...lines: readonly Line[]): void;
}

export const interim = (index: number, text: string): SessionEvent => ({
  type: 'result',
  index,
  final: false,
  alternatives: [{ text, confidence: 0 }],
});

export const final = (index: number, ...texts: readonly string[]): SessionEvent => ({
  type: 'result',
  index,
  final: true,
  alternatives: texts.map((text) => ({ text, confidence: 0.9 })),
});

export const error = (code: string): SessionEvent => ({ type: 'error', code });
export const ended: SessionEvent = { type: 'ended' };
export const speech: SessionEvent = { type: 'speech started' };

export function scriptedRecogniser(
  clock: FakeClock,
  place: Place | 'nowhere' | 'never' = 'elsewhere',
  asksFirst = false,
): ScriptedRecogniser {
  const sessions: ScriptedSession[] = [];
  const now = () => {
    const session = sessions.at(-1);
    if (session === undefined) throw new Error('No session was started.');
    return session;
  };
  return {
    sessions,
    now,
    where: () =>
      place === 'never' ? new Promise(() => undefined) : Promise.resolve({ place, asksFirst }),
    start(options, tell) {
      const session: ScriptedSession = { options, tell, finished: false, aborted: false };
      sessions.push(session);
      return {
        finish: () => {
          session.finished = true;
        },
        abort: () => {
          session.aborted = true;
        },
      };
    },
    opens() {
      now().tell({ type: 'started' });
      now().tell({ type: 'audio started' });
    },
    plays(...lines) {
      const session = now();
      for (const [ms, event] of lines) {
        clock.advance(ms);
        session.tell(event);
      }
    },
  };
}
