import { createHash } from 'node:crypto';

/**
 * Which lines of a file are taken: each by a hash of the seed, the file and its number, so that a
 * change elsewhere moves no other line in or out.
 * @param {string} file
 * @param {number} lines how many it has
 * @param {number} share percent, over 0 to 100
 * @param {number} seed
 * @returns {number[]} counted from 1
 */
export function sampledLines(file, lines, share, seed) {
  return Array.from({ length: lines }, (_, index) => index + 1).filter((line) => {
    const hash = createHash('sha256').update(`${seed} ${file} ${line}`).digest();
    return hash.readUInt32BE(0) / 2 ** 32 < share / 100;
  });
}
