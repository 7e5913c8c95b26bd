/** An open microphone, its sound going to the port it was opened with. */
export interface CapturedMicrophone {
  /** Samples a second. */
  readonly rate: number;
  /** Called once when it is taken away. */
  onLost(fn: () => void): void;
  close(): void;
}

/** Opens the microphone; rejects with a DOMException as the browser gives it. */
export type OpenCapture = (to: MessagePort) => Promise<CapturedMicrophone>;

/** The browser's microphone, untouched by its own clean-up, through a worklet to the port. */
export function captureMicrophone(
  window: Window & typeof globalThis,
  workletUrl: string,
): OpenCapture {
  return async (to) => {
    const { mediaDevices } = window.navigator;
    if (mediaDevices === undefined) throw new DOMException('no microphones', 'NotFoundError');
    const stream = await mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
    });
    const context = new window.AudioContext();
    const close = () => {
      for (const track of stream.getTracks()) track.stop();
      void context.close().catch(() => undefined);
    };
    try {
      await context.audioWorklet.addModule(workletUrl);
      const capture = new window.AudioWorkletNode(context, 'capture', { channelCount: 1 });
      capture.port.postMessage(to, [to]);
      // Only a node that leads somewhere is sure to run; this one leads to silence.
      const silence = new window.GainNode(context, { gain: 0 });
      context.createMediaStreamSource(stream).connect(capture).connect(silence);
      silence.connect(context.destination);
      void context.resume().catch(() => undefined);
    } catch (failed) {
      close();
      throw failed;
    }
    return {
      rate: context.sampleRate,
      onLost(fn) {
        for (const track of stream.getAudioTracks()) {
          track.addEventListener('ended', fn, { once: true });
        }
      },
      close,
    };
  };
}
