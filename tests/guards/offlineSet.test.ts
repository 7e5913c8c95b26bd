import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';
import { afterEach, expect, test } from 'vitest';
import { missingOffline } from '../../scripts/offline-guard.mjs';
import { offline } from '../../scripts/offline-plugin.mjs';
import { filesIn, MOST_OFFLINE_BYTES } from '../../scripts/offline-set.mjs';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** The project's page with a small script, built with the offline part and what is planted. */
async function built(...planted: readonly Plugin[]): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'turncaller-offline-'));
  folders.push(outDir);
  const small: Plugin = {
    name: 'small',
    enforce: 'pre',
    load: (id) => (id.endsWith('src/main.tsx') ? 'document.title = "small";' : null),
  };
  await build({
    configFile: false,
    base: './',
    logLevel: 'silent',
    plugins: [small, offline(), ...planted],
    build: { outDir, emptyOutDir: true },
  });
  return outDir;
}

const writesLate = (name: string, text: string): Plugin => {
  let folder = '';
  return {
    name: 'writes late',
    configResolved(config) {
      folder = config.build.outDir;
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler: () => writeFileSync(join(folder, name), text),
    },
  };
};

test('every file of a build is in the offline set', async () => {
  const folder = await built();
  expect(filesIn(folder)).toEqual(expect.arrayContaining(['index.html', 'offline.js', 'icon.svg']));
  expect(missingOffline(folder, MOST_OFFLINE_BYTES)).toEqual([]);
});

test('a build fails when a file is written that the offline set lacks, or changed after it was listed', async () => {
  await expect(built(writesLate('model.bin', 'late'))).rejects.toThrow('model.bin is not kept.');
  await expect(built(writesLate('icon.svg', '<svg/>'))).rejects.toThrow(
    'icon.svg was changed after it was listed.',
  );
});

test('a file left out on purpose is missed when a page names it', async () => {
  const folder = await built();
  writeFileSync(join(folder, 'index.html'), '<script src="./needed.js.map"></script>');
  writeFileSync(join(folder, 'needed.js.map'), '{}');
  expect(missingOffline(folder, MOST_OFFLINE_BYTES)).toContain(
    'needed.js.map is not kept, and index.html needs it.',
  );
});

test('a set larger than was decided on, or with a file that is gone, fails', async () => {
  const folder = await built();
  expect(missingOffline(folder, 100)).toEqual([expect.stringMatching(/more than the 100 allowed/)]);
  rmSync(join(folder, 'icon.svg'));
  expect(missingOffline(folder, MOST_OFFLINE_BYTES)).toEqual(['icon.svg is listed but not there.']);
});
