import { createStore, type StoreApi } from 'zustand/vanilla';
import { systemClock } from '#clock';
import { announceReply, initial, type JobState, setUpOf } from '#counting';
import type { MouthState } from '#screens';
import type { Settings } from '#settings';
import {
  browserSpeech,
  createSpeaker,
  createSynthesiser,
  createTicker,
  type Speaker,
  switchedSynth,
  webAudioBeeper,
} from '#speaking';
import { languageTag, type SayingContext } from '#words';

export interface Mouth {
  readonly speaker: Speaker;
  readonly store: StoreApi<MouthState>;
  /** Takes the voice and rate from the settings. */
  choose(settings: Settings): void;
  /** Words follow this job: who is at the crank, and how turns are called. */
  follow(job: () => JobState): void;
  /** Says one line in the chosen voice. */
  tryVoice(): void;
}

/** Voice, ticks and captions joined, with the state the screens show of them. */
export function joinMouth(page: Window & typeof globalThis, settings: () => Settings): Mouth {
  let job = (): JobState => initial;
  const synth = createSynthesiser({
    clock: systemClock,
    engine: browserSpeech(page),
    language: languageTag,
  });
  const speaker = createSpeaker({
    clock: systemClock,
    synth: switchedSynth(synth, () => settings().speaks),
    ticker: createTicker({
      clock: systemClock,
      beeper: webAudioBeeper(
        () => new page.AudioContext(),
        (wake) =>
          page.document.addEventListener('visibilitychange', () => {
            if (page.document.visibilityState === 'visible') wake();
          }),
      ),
    }),
    context: () => sayingContext(settings(), job()),
    onCaption: () => store.setState(mouthState()),
  });

  function silent(): MouthState['silent'] {
    if (!settings().speaks) return 'switched off';
    const { voice } = speaker.state();
    if (voice === 'none') return 'no voice';
    return voice === 'locked' ? 'not woken' : null;
  }

  function mouthState(): MouthState {
    return {
      captions: speaker.log(),
      silent: silent(),
      voices: synth.voices().map(({ name }) => name),
    };
  }

  const store = createStore<MouthState>(mouthState);
  speaker.subscribe(() => store.setState(mouthState()));
  return {
    speaker,
    store,
    choose({ voice, rate }) {
      const chosen = synth.voices().find(({ name }) => name === voice);
      synth.choose({ voiceUri: chosen?.voiceURI ?? null, rate });
      store.setState(mouthState());
    },
    follow(followed) {
      job = followed;
    },
    tryVoice() {
      speaker.unlock();
      speaker.announce(announceReply(job(), { kind: 'answer', about: 'where' }));
    },
  };
}

function sayingContext(settings: Settings, job: JobState): SayingContext {
  const setUp = setUpOf(job);
  const { level, units, numbers, lengths } = settings;
  return {
    level,
    units,
    numbers,
    lengths,
    hands: setUp?.hands ?? 'alone',
    unkept: false,
    ...(setUp === null ? {} : { calling: setUp.calling.way }),
  };
}
