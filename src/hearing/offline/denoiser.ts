/** Samples of one frame: 10 ms at 48 kHz. */
export const DENOISED_FRAME = 480;
/** The only rate the denoiser knows, per second. */
export const DENOISER_RATE = 48_000;

/** Takes steady noise off a stream of frames. */
export interface Denoiser {
  /** One frame of samples, -1 to 1, in place; gives how likely it holds a voice, 0 to 1. */
  process(frame: Float32Array): number;
}

/** What the program exports, by the names @jitsi/rnnoise-wasm 0.2.1 was built with. */
interface Program {
  /** Memory. */
  readonly c: WebAssembly.Memory;
  /** Runs what must run first. */
  readonly d: () => void;
  /** A new denoiser's address, for the built-in model (0). */
  readonly f: (model: number) => number;
  /** Room for so many bytes. */
  readonly g: (bytes: number) => number;
  /** One frame: denoiser, to, from. */
  readonly j: (denoiser: number, to: number, from: number) => number;
}

/** The program works on 16-bit sizes. */
const FULL_SCALE = 32768;
const PAGE_BYTES = 65_536;

/** Starts RNNoise. Rejects where the bytes are not its program. */
export async function startDenoiser(wasm: Uint8Array<ArrayBuffer>): Promise<Denoiser> {
  let memory: WebAssembly.Memory | null = null;
  const bytesNow = () => new Uint8Array(memory?.buffer ?? new ArrayBuffer(0));
  const { instance } = await WebAssembly.instantiate(wasm, {
    a: {
      a: (wanted: number) => {
        if (memory === null) return 0;
        const more = Math.ceil((wanted - memory.buffer.byteLength) / PAGE_BYTES);
        return memory.grow(more) >= 0 ? 1 : 0;
      },
      b: (to: number, from: number, count: number) => {
        bytesNow().copyWithin(to, from, from + count);
      },
    },
  });
  const program = instance.exports as unknown as Program;
  memory = program.c;
  program.d();
  const denoiser = program.f(0);
  const address = program.g(DENOISED_FRAME * 4);
  return {
    process(frame) {
      const there = () => new Float32Array(program.c.buffer, address, DENOISED_FRAME);
      const before = there();
      for (let i = 0; i < DENOISED_FRAME; i += 1) before[i] = (frame[i] ?? 0) * FULL_SCALE;
      const voice = program.j(denoiser, address, address);
      const after = there();
      for (let i = 0; i < DENOISED_FRAME; i += 1) frame[i] = (after[i] ?? 0) / FULL_SCALE;
      return voice;
    },
  };
}
