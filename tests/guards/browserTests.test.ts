import { expect, test } from 'vitest';
import { lint, plant } from './planted';

test('a browser test takes types from src and no code', () => {
  const { status, findings } = lint(
    plant({
      'tests/browser/planted.test.ts': [
        "import type { JobEvent } from '#counting';",
        "import type { Reading } from '../../src/counting/readings';",
        "export { decide } from '#counting';",
        "export * from '../../src/counting/index';",
        "import '#counting';",
        "import { fakeClock } from '../fakes/clock';",
        "export const late = () => import('../../src/main');",
        "export { findChromium } from '../../scripts/chromium.mjs';",
        "export { chromium } from 'playwright-core';",
        "export { openApp } from './harness';",
        'export const used: [JobEvent?, Reading?] = [fakeClock];',
      ].join('\n'),
    }),
  );
  const refused = findings
    .filter((finding) => finding.message.startsWith('A browser test imports only types from src'))
    .map((finding) => finding.line);
  expect(refused.sort()).toEqual([3, 4, 5, 6, 7]);
  expect(status).not.toBe(0);
});
