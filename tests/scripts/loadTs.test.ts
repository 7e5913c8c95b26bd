import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { plant } from '../guards/planted';

const loadIn = (path: string): string => {
  const loader = pathToFileURL(resolve('scripts/load-ts.mjs')).href;
  const program = `
    const { loadTs } = await import(${JSON.stringify(loader)});
    console.log(JSON.stringify(await loadTs(${JSON.stringify(path)})));`;
  const node = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
    encoding: 'utf8',
  });
  return node.stdout + node.stderr;
};

test('a TypeScript module loads in plain Node', () => {
  const folder = plant({ 'one.ts': 'export const quarters: number = 4;\n' });
  expect(loadIn(`${folder}/one.ts`)).toBe('{"quarters":4}\n');
});

test('its doors and extensionless paths are followed', () => {
  const folder = plant({
    'src/words/index.ts': "export { said } from './en/said';\n",
    'src/words/en/said.ts':
      "import { four } from '#counting';\nexport const said: string = four.concat(' counted');\n",
    'src/counting/index.ts': "export const four = 'four' as const;\n",
  });
  expect(loadIn(`${folder}/src/words/index.ts`)).toBe('{"said":"four counted"}\n');
});
