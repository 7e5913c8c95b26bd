import { expect, test } from 'vitest';
import { lint, plant } from './planted';

const category = (path: string, text: string): string[] =>
  lint(plant({ [path]: text })).findings.map((finding) => finding.category);

test('any, a non-null assertion, a forgotten promise, a switched-off check: refused in src', () => {
  expect(category('src/bench/planted.ts', 'export const loose: any = 1;\n')).toContain(
    'lint/suspicious/noExplicitAny',
  );
  expect(
    category('src/bench/planted.ts', 'export const sure = (a?: number) => a! + 1;\n'),
  ).toContain('lint/style/noNonNullAssertion');
  expect(
    category(
      'src/bench/planted.ts',
      'async function append() {}\nexport function seat() {\n  append();\n}\n',
    ),
  ).toContain('lint/nursery/noFloatingPromises');
  expect(
    category('src/bench/planted.ts', "// @ts-ignore\nexport const wrong: number = 'one';\n"),
  ).toContain('lint/suspicious/noTsIgnore');
});

test('a skipped or a lone test is refused', () => {
  const text = (call: string): string =>
    `import { expect, test } from 'vitest';\ntest.${call}('four', () => {\n  expect(4).toBe(4);\n});\n`;
  expect(category('tests/planted.test.ts', text('skip'))).toEqual([
    'lint/suspicious/noSkippedTests',
  ]);
  expect(category('tests/planted.test.ts', text('only'))).toEqual([
    'lint/suspicious/noFocusedTests',
  ]);
});
