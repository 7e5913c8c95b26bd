import { servedEarPack } from './ear-pack.mjs';

const MODULE = 'virtual:ear-pack';
const RESOLVED = `\0${MODULE}`;
const DEV_URL = '/ear-pack.bin';

/**
 * The decoder's code names its program's file, and the build would put that beside the page a second
 * time: it comes in the pack.
 * @returns {import('vite').Plugin}
 */
export function leanDecoder() {
  return {
    name: 'lean-decoder',
    enforce: 'pre',
    transform(code, id) {
      if (!id.includes('soundswallower.web.js')) return undefined;
      const named = /new URL\(["']soundswallower\.web\.wasm["'],\s*import\.meta\.url\)\.href/g;
      return { code: code.replace(named, "''"), map: null };
    },
  };
}

/**
 * Puts the offline ear's pack beside the built page, and tells the app where it is and what it must be.
 * @returns {import('vite').Plugin}
 */
export function earFiles() {
  /** @type {ReturnType<typeof servedEarPack> | undefined} */
  let made;
  const pack = () => {
    made ??= servedEarPack();
    return made;
  };
  let building = false;
  return {
    name: 'ear-files',
    configResolved({ command }) {
      building = command === 'build';
    },
    resolveId: (id) => (id === MODULE ? RESOLVED : undefined),
    async load(id) {
      if (id !== RESOLVED) return undefined;
      const { file, sha256, bytes } = await pack();
      const url = building
        ? `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'asset', name: 'ear.bin', source: file })}`
        : JSON.stringify(DEV_URL);
      return `export const url = ${url};
export const sha256 = '${sha256}';
export const bytes = ${bytes};
`;
    },
    configureServer({ middlewares }) {
      middlewares.use(DEV_URL, (_request, response, next) => {
        pack().then(({ file }) => response.end(file), next);
      });
    },
  };
}
