import { expect, test } from 'vitest';
import { outOfScope, outOfScopeKinds } from '#valvetrain';

test.each(outOfScopeKinds)('%s: one sentence that says what to do instead', (kind) => {
  expect(outOfScope(kind)).toMatch(/^[A-Z][^.]+: (set|torque|measure)[^.]+\.$/);
});

test('no two alike', () => {
  expect(new Set(outOfScopeKinds.map(outOfScope)).size).toBe(outOfScopeKinds.length);
});
