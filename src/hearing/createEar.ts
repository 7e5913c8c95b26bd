import type { Cancel, Clock } from '#clock';
import { grammarFor } from '#words';
import type { Ear, EarListener, EarView } from './ear';
import type { EarInput } from './earInput';
import { logged, noLog, type RollingLog, wholeLog } from './earLog';
import { reduceEar } from './earReducer';
import { type EarCaption, type EarEffect, type EarState, shutEar } from './earState';
import type { Recogniser, RecogniserSession } from './recogniser';

export interface EarParts {
  readonly clock: Clock;
  readonly recogniser: Recogniser;
  readonly listener: EarListener;
}

/** Captions that are kept for the screen. */
const CAPTIONS = 8;

type Untimed<T> = T extends unknown ? Omit<T, 'at'> : never;

/** Joins the ear's reducer to a clock and a recogniser: keeps its state, sets its timers, does what it wants done. */
export function createEar({ clock, recogniser, listener }: EarParts): Ear {
  let state: EarState = shutEar;
  let log: RollingLog = noLog;
  let cancelTimer: Cancel | null = null;
  let captions: readonly EarCaption[] = [];
  let view: EarView = viewOf(state, captions);
  let closed = false;
  const sessions = new Map<number, RecogniserSession>();
  const watchers = new Set<() => void>();

  function feed(untimed: Untimed<EarInput>): void {
    if (closed) return;
    const input = { ...untimed, at: clock.now() } as EarInput;
    cancelTimer?.();
    cancelTimer = null;
    log = logged(log, state, input);
    const outcome = reduceEar(state, input);
    state = outcome.state;
    if (outcome.wakeAt !== undefined) {
      cancelTimer = clock.after(Math.max(1, outcome.wakeAt - clock.now()), () =>
        feed({ type: 'time' }),
      );
    }
    for (const effect of outcome.effects) perform(effect);
    refresh();
  }

  function refresh(): void {
    view = viewOf(state, captions);
    for (const fn of watchers) fn();
  }

  function perform(effect: EarEffect): void {
    switch (effect.do) {
      case 'ask where':
        recogniser.where().then(
          (answer) => feed({ type: 'place', ...answer }),
          () => feed({ type: 'place', place: 'elsewhere', asksFirst: false }),
        );
        return;
      case 'start':
        startSession(effect);
        return;
      case 'finish':
        sessions.get(effect.session)?.finish();
        return;
      case 'abort':
        sessions.get(effect.session)?.abort();
        sessions.delete(effect.session);
        return;
      case 'submit':
        listener.onCommand(effect.body, effect.utterance);
        return;
      case 'hush':
        listener.onHush();
        return;
      case 'caption':
        captions = [...captions, effect.caption].slice(-CAPTIONS);
        listener.onCaption(effect.caption);
        return;
      case 'notice':
        listener.onNotice(effect.notice);
        return;
      default:
        effect satisfies never;
    }
  }

  function startSession({ session, options }: EarEffect & { do: 'start' }): void {
    const started = recogniser.start(options, (event) => {
      if (event.type === 'ended') sessions.delete(session);
      feed({ type: 'session', session, event });
    });
    sessions.set(session, started);
  }

  return {
    start: () => feed({ type: 'open' }),
    stop: () => feed({ type: 'shut' }),
    hold: (on) => feed({ type: 'hold', on }),
    configure: (settings) => feed({ type: 'configure', settings }),
    follow(job, carrier) {
      const grammar = grammarFor(job, { carrier });
      if (JSON.stringify(grammar) !== JSON.stringify(state.grammar)) {
        feed({ type: 'grammar', grammar });
      }
    },
    mouth: (saying) => feed({ type: 'mouth', saying }),
    level: (db) => feed({ type: 'level', db }),
    view: () => view,
    subscribe(fn) {
      watchers.add(fn);
      return () => watchers.delete(fn);
    },
    log: () => wholeLog(log),
    close() {
      feed({ type: 'shut' });
      closed = true;
      cancelTimer?.();
      watchers.clear();
    },
  };
}

function viewOf(state: EarState, captions: readonly EarCaption[]): EarView {
  const { phase, why, place, ghost, level, settings } = state;
  return {
    state: phase,
    why,
    byKey: settings.listens === 'while held',
    place: place === 'on device' || place === 'elsewhere' ? place : null,
    ghost,
    captions,
    level,
  };
}
