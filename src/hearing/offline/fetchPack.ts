import { type EarPack, unpackEar } from './earPack';
import type { LoadFailure } from './workerMessages';

/** Where the pack is and what it must be. */
export interface PackSource {
  readonly url: string;
  readonly sha256: string;
  /** Its size once unpacked. */
  readonly bytes: number;
}

/** A pack, or why there is none. */
export type Fetched =
  | { readonly ok: true; readonly pack: EarPack }
  | { readonly ok: false; readonly why: LoadFailure };

/** Fetches the pack, telling how much of it is there (0 to 1), and checks that it is whole. */
export async function fetchPack(
  { url, sha256, bytes }: PackSource,
  onProgress: (part: number) => void,
): Promise<Fetched> {
  const response = await fetch(url).catch(() => null);
  if (response === null || !response.ok || response.body === null) {
    return { ok: false, why: 'missing' };
  }
  try {
    const packed = new Uint8Array(bytes);
    const end = await readInto(packed, unzipped(response.body), onProgress);
    if (end !== bytes || (await hashOf(packed)) !== sha256) return { ok: false, why: 'corrupt' };
    return { ok: true, pack: unpackEar(packed) };
  } catch {
    return { ok: false, why: 'corrupt' };
  }
}

type Bytes = ReadableStream<Uint8Array<ArrayBuffer>>;

const unzipped = (body: Bytes): Bytes => body.pipeThrough(new DecompressionStream('gzip'));

/** How many bytes came; more than there is room for are an error. */
async function readInto(
  packed: Uint8Array,
  stream: Bytes,
  onProgress: (part: number) => void,
): Promise<number> {
  const reader = stream.getReader();
  let at = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return at;
    packed.set(value, at);
    at += value.length;
    onProgress(at / packed.length);
  }
}

async function hashOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
