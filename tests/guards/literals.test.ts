import { expect, test } from 'vitest';
import { lint, plant } from './planted';

/** Each line that shows a word of its own, and lines that only look so. */
const lines = [
  ['<h1>Spoken in the open</h1>', true],
  ['<p aria-label="A dial" role="img" />', true],
  ["<p title={'of the job'}>{name}</p>", true],
  [`<input placeholder={\`Job \${name}\`} type="text" />`, true],
  ['<img alt="" src="a.png" />', false],
  ["<p>{on ? 'Right' : name}</p>", true],
  ["<p>{on ? name : 'Wrong'}</p>", true],
  ["<p>{name ?? 'No name'}</p>", true],
  [`<p>{\`Bolt \${name}\`}</p>`, true],
  ["<p>{'Sure'}</p>", true],
  ['<p>· – 3</p>', false],
  [`<p aria-label={\`\${name} · \${name}\`}>{\`\${name} \${name}\`}</p>`, false],
  [
    '<p role={on ? \'alert\' : \'status\'} data-stage="x" aria-labelledby="part-a">{name}</p>',
    false,
  ],
  ['<p>{name === \'x\' && <i className="x">{name}</i>}</p>', false],
  ["<p>{named[on ? 'this' : 'that']}</p>", false],
] as const;

test('no words stand in a screen’s own file: planted ones are refused, what only looks so is not', () => {
  const source = [
    'const named = { this: null, that: null };',
    'interface Props { readonly on: boolean; readonly name: string | null }',
    'export function Planted({ on, name }: Props) {',
    '  return (<main>',
    ...lines.map(([line]) => `    ${line}`),
    '  </main>);',
    '}',
  ].join('\n');
  const { status, findings } = lint(plant({ 'src/screens/planted/Planted.tsx': source }));
  const refused = findings
    .filter(({ message }) => message.startsWith('Words shown stand in a *Words.ts'))
    .map(({ line }) => lines[line - 5]?.[0]);
  expect(refused).toEqual(lines.filter(([, shows]) => shows).map(([line]) => line));
  expect(status).not.toBe(0);
});
