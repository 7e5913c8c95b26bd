import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { licenceText, licenceTree } from './licence-tree.mjs';
import { root } from './root.mjs';

/** The project's licence, then every shipped package's name, version, licence and its text. */
export function noticesText() {
  const own = `Turncaller\n\n${readFileSync(join(root, 'LICENSE'), 'utf8').trim()}`;
  const others = licenceTree(root)
    .filter((one) => one.shipped)
    .map((one) => `${one.name} ${one.version} (${one.licence})\n\n${licenceText(root, one)}`);
  return `${[own, ...others].join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}

/**
 * Puts notices.txt beside the built page.
 * @returns {import('vite').Plugin}
 */
export function notices() {
  return {
    name: 'notices',
    apply: 'build',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: 'notices.txt', source: noticesText() });
    },
  };
}
