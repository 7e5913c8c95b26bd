import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Bench } from '#bench';
import { systemClock } from '#clock';
import type { Announcement } from '#counting';
import {
  browserMicrophone,
  createEar,
  type EarLog,
  type EarView,
  measureRoom,
  webSpeech,
} from '#hearing';
import type { Settings, SettingsStore } from '#settings';
import type { Speaker } from '#speaking';
import { CARRIER, type EarNotice } from '#words';

export interface EarJoint {
  readonly store: StoreApi<EarView>;
  /** Open when it is shut or dead, shut when it is open: the ear's key. */
  toggle(): void;
  /** The listening key. */
  hold(on: boolean): void;
  /** The builder agrees that speech may leave the device, and opens the ear. */
  agree(): void;
  log(): EarLog;
}

interface EarParts {
  readonly page: Window & typeof globalThis;
  readonly bench: Bench;
  readonly settings: SettingsStore;
  readonly speaker: Speaker;
}

/** The browser's ear joined to the bench, the mouth and the settings. */
export function joinEar({ page, bench, settings, speaker }: EarParts): EarJoint {
  const chosen = () => settings.store.getState().settings;
  const ear = createEar({
    clock: systemClock,
    recogniser: webSpeech(page),
    listener: {
      onCommand: (body, utterance) => bench.submit(body, 'voice', utterance),
      onHush: () => bench.hush(),
      onCaption({ kind }) {
        if (kind === 'missed') speaker.tone('missed');
      },
      onNotice: (notice) => speaker.announce([told(notice)]),
    },
  });
  const store = createStore<EarView>(() => ear.view());
  let room: { stop(): void } | null = null;

  function follow(): void {
    ear.follow(bench.store.getState().job, chosen().carrier ? CARRIER : null);
  }

  function configure({ headset, mayLeave, listens }: Settings): void {
    ear.configure({ headset, mayLeave, listens });
    follow();
  }

  /** The room is measured while the ear is open, where a second open microphone does no harm. */
  function measure({ state }: EarView): void {
    const wanted = state === 'open' && chosen().measuresRoom;
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

  ear.subscribe(() => {
    const view = ear.view();
    store.setState(view);
    measure(view);
  });
  bench.store.subscribe((now, before) => {
    follow();
    const woken = before.resting && !now.resting;
    if (woken && chosen().earOnWaking && ear.view().state === 'shut') ear.start();
  });
  settings.store.subscribe(({ settings: now }) => configure(now));
  configure(chosen());
  tellMouth(speaker, (line) => ear.mouth(line));

  return {
    store,
    toggle() {
      const { state } = ear.view();
      if (state === 'open' || state === 'opening') ear.stop();
      else ear.start();
    },
    hold: (on) => ear.hold(on),
    agree() {
      settings.change({ mayLeave: true });
      ear.start();
    },
    log: () => ear.log(),
  };
}

/** The ear is told when the app's own voice begins a line and when it has ended. */
function tellMouth(speaker: Speaker, tell: (line: string | null) => void): void {
  let saying: string | null = null;
  speaker.subscribe(() => {
    const caption = speaker.state().saying;
    const now = caption?.spoken ? caption.text : null;
    if (now === saying) return;
    saying = now;
    tell(now);
  });
}

function told({ state, why, count48 }: EarNotice): Announcement {
  return {
    fact: { kind: 'ear', state, why, count48 },
    cue: state === 'dead' ? 'refused' : 'soft',
    timing: 'at once',
    keptThrough: 0,
    perishable: false,
  };
}
