/**
 * SHA-256 of a text's UTF-8 bytes, in lower-case hexadecimal (FIPS 180-4, 6.2). Written out because
 * the browser's own is missing on a page over plain http, where files are written too.
 */
export function sha256(text: string): string {
  const state = Uint32Array.from(primes(8), (prime) => fraction(Math.sqrt(prime)));
  const message = padded(new TextEncoder().encode(text));
  for (let offset = 0; offset < message.byteLength; offset += BLOCK_BYTES) {
    compress(state, new DataView(message.buffer, offset, BLOCK_BYTES));
  }
  return Array.from(state, (word) => word.toString(16).padStart(8, '0')).join('');
}

const BLOCK_BYTES = 64;
const ROUNDS = 64;
const K = Uint32Array.from(primes(ROUNDS), (prime) => fraction(Math.cbrt(prime)));

/** The message, a 1 bit, zeros, and its length in bits as 64 bits, to a whole number of blocks. */
function padded(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const blocks = Math.ceil((bytes.length + 9) / BLOCK_BYTES);
  const message = new Uint8Array(blocks * BLOCK_BYTES);
  message.set(bytes);
  message[bytes.length] = 0x80;
  new DataView(message.buffer).setBigUint64(message.length - 8, BigInt(bytes.length) * 8n);
  return message;
}

function compress(state: Uint32Array, block: DataView): void {
  const w = schedule(block);
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let t = 0; t < ROUNDS; t += 1) {
    const choice = (e & f) ^ (~e & g);
    const majority = (a & b) ^ (a & c) ^ (b & c);
    const t1 =
      h + (rotated(e, 6) ^ rotated(e, 11) ^ rotated(e, 25)) + choice + (K[t] ?? 0) + (w[t] ?? 0);
    const t2 = (rotated(a, 2) ^ rotated(a, 13) ^ rotated(a, 22)) + majority;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i] = (state[i] ?? 0) + word;
  });
}

function schedule(block: DataView): Uint32Array {
  const w = new Uint32Array(ROUNDS);
  for (let t = 0; t < ROUNDS; t += 1) {
    w[t] = t < 16 ? block.getUint32(t * 4) : mixed(w, t);
  }
  return w;
}

function mixed(w: Uint32Array, t: number): number {
  const back2 = w[t - 2] ?? 0;
  const back15 = w[t - 15] ?? 0;
  const s1 = rotated(back2, 17) ^ rotated(back2, 19) ^ (back2 >>> 10);
  const s0 = rotated(back15, 7) ^ rotated(back15, 18) ^ (back15 >>> 3);
  return s1 + (w[t - 7] ?? 0) + s0 + (w[t - 16] ?? 0);
}

function rotated(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits));
}

/** The first 32 bits of the fractional part. */
function fraction(root: number): number {
  return Math.floor((root % 1) * 2 ** 32);
}

function primes(count: number): readonly number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n += 1) {
    if (found.every((prime) => n % prime !== 0)) found.push(n);
  }
  return found;
}
