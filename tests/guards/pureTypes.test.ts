import { expect, test } from 'vitest';
import { plant, runIn, tsc } from './planted';

const check = (path: string, text: string) =>
  runIn(
    plant({ 'src/valvetrain/index.ts': 'export {};\n', [path]: text }),
    tsc,
    '-p',
    'tsconfig.pure.json',
  );

test('the pure rooms compile without the browser and without Node', () => {
  expect(check('src/counting/planted.ts', 'export const four = Math.max(4, 0);\n')).toEqual({
    status: 0,
    output: '',
  });
});

test.each([
  ['document', 'export const title = document.title;\n'],
  ['window', 'export const wide = window.innerWidth;\n'],
  ['performance', 'export const now = performance.now();\n'],
  ['setTimeout', 'export const later = setTimeout(() => {}, 1);\n'],
  ['localStorage', "export const kept = localStorage.getItem('job');\n"],
  ['process', 'export const node = process.version;\n'],
])('a pure room that uses %s does not compile', (name, text) => {
  for (const room of ['valvetrain', 'counting', 'words']) {
    const { status, output } = check(`src/${room}/planted.ts`, text);
    expect(status).not.toBe(0);
    expect(output).toMatch(new RegExp(`planted\\.ts.*'${name}'`));
  }
});

test('the press reducer is held to the same', () => {
  const { status, output } = check(
    'src/pressing/pressReducer.ts',
    'export const key = (event: KeyboardEvent) => event.code;\n',
  );
  expect(status).not.toBe(0);
  expect(output).toContain("'KeyboardEvent'");
});
