// Runs in the sound's own thread: hands the microphone's samples to the worker, about 20 ms at a time.

declare const registerProcessor: (
  name: string,
  processor: new () => { process(inputs: Float32Array[][]): boolean },
) => void;
declare const AudioWorkletProcessor: new () => { readonly port: MessagePort };

const BATCH = 1024;

class Capture extends AudioWorkletProcessor {
  private to: MessagePort | null = null;
  private batch = new Float32Array(BATCH);
  private filled = 0;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.to = data;
    };
  }

  process([input]: Float32Array[][]): boolean {
    for (const sample of input?.[0] ?? []) {
      this.batch[this.filled] = sample;
      this.filled += 1;
      if (this.filled === BATCH) this.send();
    }
    return true;
  }

  private send(): void {
    this.to?.postMessage(this.batch, [this.batch.buffer]);
    this.batch = new Float32Array(BATCH);
    this.filled = 0;
  }
}

registerProcessor('capture', Capture);
