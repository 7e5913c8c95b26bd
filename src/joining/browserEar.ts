import type { StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import { type JobState, stageOf } from '#counting';
import {
  browserMicrophone,
  createEar,
  type Ear,
  type EarListener,
  type EarView,
  type Ghost,
  measureRoom,
  webSpeech,
} from '#hearing';
import { readVoicePrints } from '#hearing-offline';
import type { EarShown } from '#screens';
import type { Settings } from '#settings';
import type { Speaker } from '#speaking';
import { CARRIER, type EarKind, type EarNotice, grammarFor, hear } from '#words';
import type { TakesOver } from './automaticEar';
import { type EarParts, type LoadedEar, told } from './earParts';

/** The browser's own ear. */
export function browserEar(
  parts: EarParts,
  store: StoreApi<EarShown>,
  takesOver?: TakesOver,
): LoadedEar {
  const { page } = parts;
  const make = (listener: EarListener) =>
    createEar({ clock: systemClock, recogniser: webSpeech(page), listener });
  return joinedEar(parts, store, { make, tellsLevel: false, takesOver: takesOver ?? noOther });
}

/** The ear was chosen: no other takes over from it. */
export const noOther: TakesOver = () => null;

/** How an ear is made, and whether it measures the room's noise by itself. */
export interface EarMaking {
  make(listener: EarListener): Ear;
  readonly tellsLevel: boolean;
  readonly takesOver: TakesOver;
}

/** An ear joined to the bench, the mouth and the settings; what it shows goes to the store. */
export function joinedEar(
  { page, bench, settings, speaker, prints }: EarParts,
  store: StoreApi<EarShown>,
  { make, tellsLevel, takesOver }: EarMaking,
): LoadedEar {
  const chosen = () => settings.store.getState().settings;
  const carrier = () => (chosen().carrier ? CARRIER : null);
  const job = () => bench.store.getState().job;
  const ear = make({
    onCommand(body, utterance) {
      // What is taken was not said over a voice, or came by a headset: it ends the line, as a press does.
      if (body.type !== 'doubt') speaker.cut();
      bench.submit(body, 'voice', utterance);
    },
    onHush: () => bench.hush(),
    onCaption({ kind }) {
      // While counting the doubt is in the job's log, and ticks from there.
      const unlogged = kind === 'doubt' && stageOf(job()) !== 'counting';
      if (kind === 'missed' || unlogged) speaker.tone('missed');
    },
    onNotice(notice) {
      if (closed) return;
      const instead = takesOver(notice);
      speaker.announce([told(instead === null ? notice : insteadOf(notice, instead))]);
      const noisy = notice.why === 'room louder';
      if (noisy || notice.why === 'room quieter') store.setState({ tooNoisy: noisy });
    },
  });
  let room: { stop(): void } | null = null;
  let closed = false;

  function configure({ headset, mayLeave, listens }: Settings): void {
    const tailMs = readVoicePrints(prints.getState().prints)?.tailMs;
    ear.configure({ headset, mayLeave, listens, ...(tailMs === undefined ? {} : { tailMs }) });
    ear.follow(job(), carrier());
  }

  /** The room is measured while the ear is open, where a second open microphone does no harm. */
  function measure({ state }: EarView): void {
    const wanted = state === 'open' && !tellsLevel && chosen().measuresRoom;
    if (wanted && room === null) {
      room = measureRoom({
        clock: systemClock,
        openMicrophone: () => browserMicrophone(page),
        onLevel: (db) => ear.level(db),
      });
    }
    if (!wanted && room !== null) {
      room.stop();
      room = null;
    }
  }

  const follows = [
    ear.subscribe(() => {
      const view = ear.view();
      store.setState({ ...view, ghost: withCount(view.ghost, job(), carrier()) });
      measure(view);
    }),
    bench.store.subscribe(() => ear.follow(job(), carrier())),
    settings.store.subscribe(({ settings: now }) => configure(now)),
    prints.subscribe(() => configure(chosen())),
    tellMouth(speaker, (line) => ear.mouth(line)),
  ];
  configure(chosen());

  return {
    toggle() {
      const { state, byKey } = ear.view();
      const on = state === 'open' || state === 'opening';
      // Without a key learned to hold, this one holds it open until it is pressed again.
      if (byKey) ear.hold(!on);
      else if (on) ear.stop();
      else ear.start();
    },
    hold: (on) => ear.hold(on),
    start() {
      if (chosen().listens === 'open') ear.start();
    },
    stop: () => ear.stop(),
    log: () => JSON.stringify(ear.log()),
    close() {
      closed = true;
      for (const stop of follows) stop();
      ear.close();
      room?.stop();
    },
  };
}

/** A service that would now send speech elsewhere has failed on this device. */
function insteadOf(notice: EarNotice, instead: EarKind): EarNotice {
  return {
    ...notice,
    state: 'dead',
    why: notice.why === 'notice' ? 'unknown' : notice.why,
    instead,
  };
}

/** The ghost with the count it would be, where it is one. */
function withCount(ghost: Ghost | null, job: JobState, carrier: string | null): EarShown['ghost'] {
  if (ghost === null) return null;
  const hearing = hear(ghost.heard, grammarFor(job, { carrier }));
  const meanings = hearing.kind === 'meaning' ? hearing.meanings : [];
  const call = meanings.find(
    (meaning) => meaning.kind === 'command' && meaning.command.type === 'call',
  );
  const count48 =
    call?.kind === 'command' && call.command.type === 'call' ? call.command.to48 : null;
  return { ...ghost, count48 };
}

/** The ear is told when the app's own voice begins a line and when it has ended. */
function tellMouth(speaker: Speaker, tell: (line: string | null) => void): () => void {
  let saying: string | null = null;
  function look(): void {
    const { saying: caption, voice } = speaker.state();
    // While the device may still bring its voices, nothing sounds that could be heard back.
    const now = caption?.spoken && voice === 'ready' ? caption.text : null;
    if (now === saying) return;
    saying = now;
    tell(now);
  }
  look();
  return speaker.subscribe(look);
}
