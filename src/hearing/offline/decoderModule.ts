import createModule from 'soundswallower';
import type { EarPack } from './earPack';

/** What of the decoder's program is used here besides its own types. */
interface Program {
  readonly HEAPU8: Uint8Array;
  readonly HEAP32: Int32Array;
  readonly Decoder: new (config: Readonly<Record<string, string | number | boolean>>) => RawDecoder;
  _malloc(bytes: number): number;
  _free(address: number): void;
  _s3file_init(address: number, bytes: number): number;
  _s3file_free(file: number): void;
  _decoder_init_feat_s3file(decoder: number, transform: number): number;
  _decoder_init_dict_s3file(decoder: number, dictionary: number, fillers: number): number;
  _decoder_logmath(decoder: number): number;
  _decoder_hyp(decoder: number, score: number): number;
  _bin_mdef_read_s3file(file: number, contextless: number): number;
  _set_mdef(decoder: number, mdef: number): void;
  _tmat_init_s3file(file: number, logmath: number, floor: number): number;
  _set_tmat(decoder: number, tmat: number): void;
  _load_gmm(decoder: number, mean: number, variance: number, weights: number, dump: number): number;
}

/** The package's own decoder; the steps of its start that fetch files are replaced below. */
export interface RawDecoder {
  readonly cdecoder: number;
  set_config(key: string, value: string | number): boolean;
  has_config(key: string): boolean;
  initialize(): Promise<void>;
  start(): void;
  stop(): void;
  process_audio(samples: Float32Array, noSearch: boolean, whole: boolean): number;
  get_text(): string;
  set_grammar(jsgf: string): void;
  init_featparams: () => Promise<void>;
  init_feat: () => Promise<void>;
  load_mdef: () => Promise<void>;
  load_tmat: () => Promise<void>;
  load_gmm: () => Promise<void>;
  init_dict: () => Promise<void>;
}

/** A decoder that is ready, with the score of its last text. */
export interface ReadyDecoder {
  readonly decoder: RawDecoder;
  /** Log likelihood of the whole utterance as last decoded, in the decoder's own units. */
  score(): number;
}

const TRANSITION_FLOOR = 1e-4;

/**
 * Starts the decoder's program and makes decoders that read nothing but the pack. Rejects with an
 * Error where a part is not what it should be.
 */
export async function startDecoderProgram(
  pack: EarPack,
): Promise<(config: Readonly<Record<string, string | number>>) => Promise<ReadyDecoder>> {
  const program = (await createModule({
    wasmBinary: pack.decoderWasm.slice().buffer,
    print: () => undefined,
    printErr: () => undefined,
  })) as unknown as Program;

  function file(bytes: Uint8Array): number {
    const address = program._malloc(bytes.length + 1);
    if (address === 0) throw new Error('no memory for the ear’s model');
    program.HEAPU8.set(bytes, address);
    program.HEAPU8[address + bytes.length] = 0;
    return program._s3file_init(address, bytes.length);
  }

  return async (config) => {
    const decoder = new program.Decoder({ hmm: 'pack', loglevel: 'FATAL' });
    fromPack(program, decoder, pack, file, config);
    await decoder.initialize();
    const scoreAddress = program._malloc(4);
    return {
      decoder,
      score() {
        program._decoder_hyp(decoder.cdecoder, scoreAddress);
        return program.HEAP32[scoreAddress >> 2] ?? 0;
      },
    };
  };
}

function fromPack(
  program: Program,
  decoder: RawDecoder,
  pack: EarPack,
  file: (bytes: Uint8Array) => number,
  config: Readonly<Record<string, string | number>>,
): void {
  const id = decoder.cdecoder;
  const sure = (made: number, what: string) => {
    if (made === 0) throw new Error(`the ear’s ${what} can’t be read`);
    return made;
  };
  decoder.init_featparams = async () => {
    const features: unknown = JSON.parse(new TextDecoder().decode(pack.features));
    const given = { ...Object(features), ...config } as Record<string, string | number>;
    for (const [key, value] of Object.entries(given)) {
      if (decoder.has_config(key)) decoder.set_config(key, value);
    }
  };
  decoder.init_feat = async () => {
    sure(program._decoder_init_feat_s3file(id, 0), 'features');
  };
  decoder.load_mdef = async () => {
    const from = file(pack.mdef);
    const mdef = sure(program._bin_mdef_read_s3file(from, 0), 'model');
    program._s3file_free(from);
    program._set_mdef(id, mdef);
  };
  decoder.load_tmat = async () => {
    const from = file(pack.transitions);
    const logmath = program._decoder_logmath(id);
    const tmat = sure(program._tmat_init_s3file(from, logmath, TRANSITION_FLOOR), 'model');
    program._s3file_free(from);
    program._set_tmat(id, tmat);
  };
  decoder.load_gmm = async () => {
    const parts = [file(pack.means), file(pack.variances), 0, file(pack.sendump)] as const;
    if (program._load_gmm(id, ...parts) < 0) throw new Error('the ear’s model can’t be read');
  };
  decoder.init_dict = async () => {
    const made = program._decoder_init_dict_s3file(id, file(pack.dictionary), file(pack.fillers));
    sure(made, 'dictionary');
  };
}
