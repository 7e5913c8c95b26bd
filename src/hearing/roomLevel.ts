import type { Cancel, Clock } from '#clock';

/** How often the level is told, ms. */
export const LEVEL_EVERY_MS = 250;
/** What silence is told as, dB of full scale. */
const QUIETEST_DB = -100;

/** A microphone that samples can be read from. */
export interface OpenMicrophone {
  /** The newest samples, -1 to 1. */
  samples(): Float32Array;
  close(): void;
}

export interface RoomLevelParts {
  readonly clock: Clock;
  /** Rejects when there is no microphone, or it is not allowed. */
  openMicrophone(): Promise<OpenMicrophone>;
  /** Noise of the room, dB of full scale, a few times a second. */
  onLevel(db: number): void;
}

/** Measures the noise of the room while it runs. Without a microphone it tells nothing. */
export function measureRoom({ clock, openMicrophone, onLevel }: RoomLevelParts): {
  stop(): void;
} {
  let stopped = false;
  let microphone: OpenMicrophone | null = null;
  let cancel: Cancel | null = null;

  function tell(): void {
    if (stopped || microphone === null) return;
    onLevel(levelDb(microphone.samples()));
    cancel = clock.after(LEVEL_EVERY_MS, tell);
  }

  openMicrophone().then(
    (opened) => {
      if (stopped) opened.close();
      else {
        microphone = opened;
        tell();
      }
    },
    // No microphone: the ear itself says so when it is opened.
    () => undefined,
  );

  return {
    stop() {
      stopped = true;
      cancel?.();
      microphone?.close();
    },
  };
}

/** The level of samples, dB of full scale: -100 for silence, 0 for the loudest there is. */
export function levelDb(samples: Float32Array): number {
  const power = samples.reduce((sum, sample) => sum + sample * sample, 0) / (samples.length || 1);
  return Math.max(QUIETEST_DB, 10 * Math.log10(power + 1e-12));
}

/** The browser's microphone, untouched by its own clean-up, which would hide the noise. */
export async function browserMicrophone(
  window: Window & typeof globalThis,
): Promise<OpenMicrophone> {
  const stream = await window.navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  });
  const context = new window.AudioContext();
  const analyser = context.createAnalyser();
  context.createMediaStreamSource(stream).connect(analyser);
  const samples = new Float32Array(analyser.fftSize);
  return {
    samples() {
      analyser.getFloatTimeDomainData(samples);
      return samples;
    },
    close() {
      for (const track of stream.getTracks()) track.stop();
      void context.close();
    },
  };
}
