import { expect, test } from 'vitest';
import { createNoticeLog, faultOf, MOST_NOTICES } from '#platform';

test('the last 500 notices are kept, oldest first', () => {
  let at = 0;
  const log = createNoticeLog(() => {
    at += 1;
    return at;
  });
  for (let i = 1; i <= MOST_NOTICES + 20; i += 1) log.add(`notice ${i}`);
  expect(log.list().length).toBe(500);
  expect(log.list()[0]).toEqual({ at: 21, what: 'notice 21' });
  expect(log.list().at(-1)).toEqual({ at: 520, what: 'notice 520' });
});

test('a fault is told by its kind and place, never by its message', () => {
  const error = new TypeError('no such job: Harrow Fen');
  error.stack =
    'TypeError: no such job: Harrow Fen\n at x (http://a.test/assets/index-1a2b.js:12:345)';
  expect(faultOf(error)).toBe('TypeError at index-1a2b.js:12:345');
  error.stack = '';
  expect(faultOf(error)).toBe('TypeError');
  error.name = 'Harrow Fen 4';
  expect(faultOf(error)).toBe('Error');
  expect(faultOf('Harrow Fen')).toBe('string');
});
