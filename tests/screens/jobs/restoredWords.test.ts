import { expect, test } from 'vitest';
import { restoredWords } from '../../../src/screens/jobs/restoredWords';

const none = { new: 0, longer: 0, here: 0, apart: 0, open: 0 };

test('what became of each job of a backup is said, and nothing of what did not happen', () => {
  expect(restoredWords({ jobs: { ...none, new: 3, here: 1 }, settings: false })).toBe(
    '3 jobs brought in. 1 job here already, left as on this device.',
  );
  expect(restoredWords({ jobs: { ...none, longer: 1, apart: 2, open: 1 }, settings: true })).toBe(
    '1 job taken further. 2 jobs went on otherwise on this device, left as here. 1 job being counted now, left as here: close it and restore again. The settings were taken too.',
  );
  expect(restoredWords({ jobs: none, settings: false })).toBe('The backup holds no jobs.');
});
