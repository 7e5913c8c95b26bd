import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ path: string, name: string, version: string, licence: string | undefined, shipped: boolean }} Package
 */

/**
 * Every package of the lock file, those not installed on this machine too. Shipped is what the
 * project's own dependencies lead to; optional peers are not followed, as nothing of them is built in.
 * @param {string} root a folder with package.json and package-lock.json
 * @returns {Package[]} sorted by path
 */
export function licenceTree(root) {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const shipped = shippedPaths(packages);
  return Object.keys(packages)
    .filter((path) => path !== '')
    .sort()
    .map((path) => {
      const manifest = join(root, path, 'package.json');
      const own = existsSync(manifest) ? JSON.parse(readFileSync(manifest, 'utf8')) : {};
      return {
        path,
        name: path.replace(/^.*node_modules\//, ''),
        version: packages[path].version,
        // Older packages list their licences instead.
        licence: own.license ?? own.licenses?.[0]?.type ?? packages[path].license,
        shipped: shipped.has(path),
      };
    });
}

/**
 * @param {Record<string, any>} packages
 * @returns {Set<string>}
 */
function shippedPaths(packages) {
  const seen = new Set();
  const waiting = Object.keys(packages[''].dependencies ?? {}).map((name) => ({ from: '', name }));
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const path = resolve(packages, next.from, next.name);
    if (!path || seen.has(path)) continue;
    seen.add(path);
    const { dependencies = {}, peerDependencies = {}, peerDependenciesMeta = {} } = packages[path];
    const peers = Object.keys(peerDependencies).filter(
      (peer) => !peerDependenciesMeta[peer]?.optional,
    );
    waiting.push(...[...Object.keys(dependencies), ...peers].map((name) => ({ from: path, name })));
  }
  return seen;
}

/**
 * Node's own way of looking: the nearest node_modules upwards.
 * @param {Record<string, any>} packages
 * @param {string} from
 * @param {string} name
 */
function resolve(packages, from, name) {
  for (let folder = from; ; folder = folder.replace(/(^|\/)node_modules\/(@[^/]+\/)?[^/]+$/, '')) {
    const path = folder === '' ? `node_modules/${name}` : `${folder}/node_modules/${name}`;
    if (packages[path]) return path;
    if (folder === '') return undefined;
  }
}

/**
 * The licence and notice texts a package comes with; where it leaves some out, those its makers
 * publish beside it, kept in docs/licences.
 * @param {string} root
 * @param {Package} one
 * @returns {string} '' where there is none
 */
export function licenceText(root, one) {
  const folder = join(root, one.path);
  const own = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
    .sort()
    .map((file) => join(folder, file));
  const beside = join(root, 'docs/licences', `${one.name.replace('/', '+')}.txt`);
  return [...own, ...(existsSync(beside) ? [beside] : [])]
    .map((file) => readFileSync(file, 'utf8').trim())
    .join('\n\n');
}
