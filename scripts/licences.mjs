// Usage: node scripts/licences.mjs [folder]. Fails on a licence the project does not allow.
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { licenceAllowed } from './licence-rules.mjs';
import { licenceText, licenceTree } from './licence-tree.mjs';
import { root } from './root.mjs';

const folder = resolve(process.argv[2] ?? root);
const packages = licenceTree(folder);
const faults = packages.flatMap((one) => {
  const use = one.shipped ? 'shipped' : 'build';
  const called = `${one.name} ${one.version} (${use})`;
  if (!licenceAllowed(one.licence, use)) return [`${called}: licence ${one.licence ?? 'unknown'}`];
  if (one.shipped && existsSync(join(folder, one.path)) && licenceText(folder, one) === '') {
    return [`${called}: comes without its licence's text, which the notices need`];
  }
  return [];
});

for (const fault of faults) console.error(`not allowed: ${fault}`);
const shipped = packages.filter((one) => one.shipped);
console.log(
  `licences: ${packages.length} packages, ${shipped.length} shipped, ${faults.length} not allowed`,
);
process.exitCode = faults.length === 0 && packages.length > 0 ? 0 : 1;
