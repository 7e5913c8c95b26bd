const shipped = [
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'Unicode-3.0',
  'OFL-1.1',
  '0BSD',
];
const buildOnly = [...shipped, 'MPL-2.0'];

/**
 * Whether an SPDX expression is allowed: of 'A OR B' one must be, of 'A AND B' both. Anything it
 * can't read is not.
 * @param {string | undefined} licence
 * @param {'shipped' | 'build'} use
 * @returns {boolean}
 */
export function licenceAllowed(licence, use) {
  const allowed = use === 'shipped' ? shipped : buildOnly;
  const plain = (licence ?? '').trim().replace(/^\(([^()]*)\)$/, '$1');
  return plain
    .split(/ OR /)
    .some((choice) => choice.split(/ AND /).every((name) => allowed.includes(name.trim())));
}
