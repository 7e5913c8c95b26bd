/** What the offline ear is made of besides its code, in one file: programs, model, dictionary. */
export interface EarPack {
  readonly decoderWasm: Uint8Array<ArrayBuffer>;
  readonly denoiserWasm: Uint8Array<ArrayBuffer>;
  readonly mdef: Uint8Array<ArrayBuffer>;
  readonly means: Uint8Array<ArrayBuffer>;
  readonly variances: Uint8Array<ArrayBuffer>;
  readonly sendump: Uint8Array<ArrayBuffer>;
  readonly transitions: Uint8Array<ArrayBuffer>;
  /** One line a word: the word, then its phones. */
  readonly dictionary: Uint8Array<ArrayBuffer>;
  readonly fillers: Uint8Array<ArrayBuffer>;
  /** How features are computed, as JSON. */
  readonly features: Uint8Array<ArrayBuffer>;
}

/** The parts in the order they stand in the file. */
export const PACK_PARTS: readonly (keyof EarPack)[] = [
  'decoderWasm',
  'denoiserWasm',
  'mdef',
  'means',
  'variances',
  'sendump',
  'transitions',
  'dictionary',
  'fillers',
  'features',
];

const HEADER_BYTES = PACK_PARTS.length * 4;

/** The parts as one file: the length of each as 32 bits, low byte first, then the parts. */
export function packEar(pack: EarPack): Uint8Array<ArrayBuffer> {
  const parts = PACK_PARTS.map((name) => pack[name]);
  const total = parts.reduce((sum, part) => sum + part.length, HEADER_BYTES);
  const packed = new Uint8Array(total);
  const header = new DataView(packed.buffer);
  let at = HEADER_BYTES;
  for (const [i, part] of parts.entries()) {
    header.setUint32(i * 4, part.length, true);
    packed.set(part, at);
    at += part.length;
  }
  return packed;
}

/** The parts of such a file. Throws a RangeError when the lengths do not add up: it is not one. */
export function unpackEar(packed: Uint8Array<ArrayBuffer>): EarPack {
  if (packed.length < HEADER_BYTES) throw new RangeError('too short for the ear’s parts');
  const header = new DataView(packed.buffer, packed.byteOffset, HEADER_BYTES);
  let at = HEADER_BYTES;
  const parts = PACK_PARTS.map((name, i) => {
    const length = header.getUint32(i * 4, true);
    const part = packed.subarray(at, at + length);
    at += length;
    return [name, part] as const;
  });
  if (at !== packed.length) throw new RangeError('the ear’s parts do not fill their file');
  const found = new Map(parts);
  const part = (name: keyof EarPack) => found.get(name) ?? new Uint8Array(0);
  return {
    decoderWasm: part('decoderWasm'),
    denoiserWasm: part('denoiserWasm'),
    mdef: part('mdef'),
    means: part('means'),
    variances: part('variances'),
    sendump: part('sendump'),
    transitions: part('transitions'),
    dictionary: part('dictionary'),
    fillers: part('fillers'),
    features: part('features'),
  };
}
