// npm run bench: what a press costs in a real Chromium, at full speed and slowed four times, and how
// many bytes of script stand before the first count. Then the other benches, scripts/bench-*.mjs.
// With -- --write the tables go to docs/measured.md too.
import { spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { servedApp } from './bench/app.mjs';
import { latencies } from './bench/latencies.mjs';
import { scriptBytes } from './bench/scriptBytes.mjs';
import { table } from './bench/table.mjs';
import { root } from './root.mjs';

const { values: asked } = parseArgs({ options: { write: { type: 'boolean', default: false } } });

const app = await servedApp();
const parts = [];
try {
  const bytes = await scriptBytes(app);
  parts.push(['Script before the first count', table(['what', 'kB gz', 'aim'], bytes)]);
  const rows = [];
  for (const slowed of [1, 4]) rows.push(...(await latencies(app, slowed)));
  const heads = ['what, ms', 'CPU', 'median', 'p95', 'most', 'aim for p95', 'presses'];
  parts.push(['From a press', table(heads, rows)]);
} finally {
  await app.close();
}

const where = `Chromium ${app.version}, Node ${process.versions.node}, ${cpus().length} cores (${cpus()[0]?.model.trim()}).`;
const text = parts.map(([title, rows]) => `## ${title}\n\n${rows}`).join('\n\n');
console.log(`${where}\n\n${text}`);

const others = readdirSync(join(root, 'scripts')).filter((name) => /^bench-.*\.mjs$/.test(name));
const printed = others.map((name) => {
  console.log(`\n== ${name}`);
  const { stdout, status } = spawnSync(process.execPath, [join(root, 'scripts', name)], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  console.log(stdout.trimEnd());
  if (status !== 0) {
    process.exitCode = 1;
    return `## ${name.replace(/\.mjs$/, '')}\n\nDid not finish.`;
  }
  return `## ${name.replace(/\.mjs$/, '')}\n\n\`\`\`text\n${stdout.trimEnd()}\n\`\`\``;
});

if (asked.write) {
  const day = new Date().toISOString().slice(0, 10);
  const head = `# Measured\n\nMade by \`npm run bench -- --write\` on ${day}. ${where}\nTimes are of that machine as it then was, busy or not: look at them beside the aims, not alone.`;
  writeFileSync(join(root, 'docs/measured.md'), `${[head, text, ...printed].join('\n\n')}\n`);
}
