// What the offline ear is made of, taken from the installed packages and put into one file. The
// dictionary is cut down to the words the phrases have.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { loadTs } from './load-ts.mjs';
import { root } from './root.mjs';

/** @param {string} path below node_modules */
function bytes(path) {
  return new Uint8Array(readFileSync(join(root, 'node_modules', path)));
}

/** @returns {Promise<import('../src/hearing/offline/earPack').EarPack>} */
export async function earPack() {
  const { trimmedDictionary } = await loadTs('src/hearing/offline/dictionary.ts');
  const model = 'soundswallower/model/en-us';
  const general = new TextDecoder().decode(bytes(`${model}/dict.txt`));
  return {
    decoderWasm: bytes('soundswallower/soundswallower.web.wasm'),
    denoiserWasm: bytes('@jitsi/rnnoise-wasm/dist/rnnoise.wasm'),
    mdef: bytes(`${model}/mdef`),
    means: bytes(`${model}/means`),
    variances: bytes(`${model}/variances`),
    sendump: bytes(`${model}/sendump`),
    transitions: bytes(`${model}/transition_matrices`),
    dictionary: new TextEncoder().encode(trimmedDictionary(general)),
    fillers: bytes(`${model}/noisedict.txt`),
    features: bytes(`${model}/feat_params.json`),
  };
}

/**
 * The pack as it is served: one file, compressed, so that it is small from any host.
 * @returns {Promise<{ file: Buffer, sha256: string, bytes: number }>} the file, the hash of what is
 * in it, and how large that is
 */
export async function servedEarPack() {
  const { packEar } = await loadTs('src/hearing/offline/earPack.ts');
  const packed = packEar(await earPack());
  return {
    file: gzipSync(packed, { level: 9 }),
    sha256: createHash('sha256').update(packed).digest('hex'),
    bytes: packed.length,
  };
}
