import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sha256 } from '../../src/keeping/jobFile/sha256';

// FIPS 180-4's examples, as in NIST's 'Examples with Intermediate Values' for SHA-256; the empty text and the
// million letters are of NIST's further test vectors.
test.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
])('a published vector', (text, digest) => {
  expect(sha256(text)).toBe(digest);
});

test('any text, as OpenSSL has it', () => {
  let most = 0;
  const text = fc.string({ unit: 'grapheme', maxLength: 300 });
  const property = fc.property(text, (any) => {
    most = Math.max(most, any.length);
    expect(sha256(any)).toBe(createHash('sha256').update(any, 'utf8').digest('hex'));
  });
  const seed = Date.now() % 2 ** 31;
  fc.assert(property, { numRuns: 500, seed });
  console.log(`sha256: 500 texts up to ${most} long, seed ${seed}`);
});

test('every length about the edge of a block', () => {
  for (let length = 0; length <= 130; length += 1) {
    const text = 'q'.repeat(length);
    expect(sha256(text)).toBe(createHash('sha256').update(text).digest('hex'));
  }
});
