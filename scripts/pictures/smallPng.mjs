import { deflateSync, inflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/**
 * The same picture in at most 256 colours, each pixel in the nearest of them: a screen of a few
 * colours and their soft edges loses nothing that is seen, and most of its bytes.
 * @param {Buffer} png 8 bits a channel, not interlaced, as a browser's screenshot is
 */
export function smallPng(png) {
  const { width, height, pixels } = decoded(png);
  const { palette, nearest } = paletteOf(pixels);
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = 3 * (y * width + x);
      rows[y * (width + 1) + 1 + x] = nearest(
        pixels[at] ?? 0,
        pixels[at + 1] ?? 0,
        pixels[at + 2] ?? 0,
      );
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Bit depth 8, indexed colour.
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flat())),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** @param {Buffer} png */
function decoded(png) {
  let width = 0;
  let height = 0;
  let channels = 3;
  const data = [];
  for (let at = SIGNATURE.length; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    const body = png.subarray(at + 8, at + 8 + length);
    if (type === 'IHDR') {
      width = body.readUInt32BE(0);
      height = body.readUInt32BE(4);
      channels = body[9] === 6 ? 4 : 3;
    }
    if (type === 'IDAT') data.push(body);
    at += length + 12;
  }
  return { width, height, pixels: unfiltered(inflateSync(Buffer.concat(data)), width, channels) };
}

/**
 * Red, green and blue of every pixel: PNG (ISO/IEC 15948), filter types 0 to 4 undone.
 * @param {Buffer} raw
 * @param {number} width
 * @param {number} channels
 */
function unfiltered(raw, width, channels) {
  const stride = width * channels;
  const height = raw.length / (stride + 1);
  const found = Buffer.alloc(height * width * 3);
  let above = Buffer.alloc(stride);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (stride + 1)] ?? 0;
    const row = Buffer.from(raw.subarray(y * (stride + 1) + 1, (y + 1) * (stride + 1)));
    for (let i = 0; i < stride; i += 1) {
      const left = i < channels ? 0 : (row[i - channels] ?? 0);
      const up = above[i] ?? 0;
      const corner = i < channels ? 0 : (above[i - channels] ?? 0);
      const added = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter] ?? 0;
      row[i] = ((row[i] ?? 0) + added) & 255;
    }
    for (let x = 0; x < width; x += 1)
      row.copy(found, 3 * (y * width + x), x * channels, x * channels + 3);
    above = row;
  }
  return found;
}

/**
 * @param {number} left
 * @param {number} up
 * @param {number} corner
 */
function paeth(left, up, corner) {
  const guess = left + up - corner;
  const [a, b, c] = [left, up, corner].map((value) => Math.abs(guess - value));
  if (Number(a) <= Number(b) && Number(a) <= Number(c)) return left;
  return Number(b) <= Number(c) ? up : corner;
}

/**
 * The most used colours, and which of them is nearest to a given one.
 * @param {Buffer} pixels
 */
function paletteOf(pixels) {
  /** @type {Map<number, number>} */
  const uses = new Map();
  for (let at = 0; at < pixels.length; at += 3) {
    const colour = pixels.readUIntBE(at, 3);
    uses.set(colour, (uses.get(colour) ?? 0) + 1);
  }
  const palette = [...uses]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 256)
    .map(([colour]) => [colour >> 16, (colour >> 8) & 255, colour & 255]);
  /** @type {Map<number, number>} */
  const known = new Map();
  /** @type {(r: number, g: number, b: number) => number} */
  const nearest = (r, g, b) => {
    const colour = (r << 16) | (g << 8) | b;
    const before = known.get(colour);
    if (before !== undefined) return before;
    const distances = palette.map(
      ([pr = 0, pg = 0, pb = 0]) => (pr - r) ** 2 + (pg - g) ** 2 + (pb - b) ** 2,
    );
    const at = distances.indexOf(Math.min(...distances));
    known.set(colour, at);
    return at;
  };
  return { palette, nearest };
}

/** Table of CRC-32, as PNG's chunks end with it. */
const crcs = Array.from({ length: 256 }, (_, n) => {
  let crc = n;
  for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? 0xedb88320 ^ (crc >>> 1) : crc >>> 1;
  return crc >>> 0;
});

/**
 * @param {string} type
 * @param {Buffer} body
 */
function chunk(type, body) {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  let crc = 0xffffffff;
  for (const byte of named) crc = (crcs[(crc ^ byte) & 255] ?? 0) ^ (crc >>> 8);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(body.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE((crc ^ 0xffffffff) >>> 0, named.length + 4);
  return framed;
}
