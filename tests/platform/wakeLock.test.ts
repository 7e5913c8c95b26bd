import { expect, test } from 'vitest';
import { keepScreenOn } from '#platform';

function page(refuse = false) {
  let shown = (): void => undefined;
  const asked: string[] = [];
  const document = {
    visibilityState: 'visible' as DocumentVisibilityState,
    addEventListener: (_: string, fn: () => void) => {
      shown = fn;
    },
    removeEventListener: () => {
      shown = () => undefined;
    },
  };
  const locks = {
    async request() {
      asked.push('asked');
      if (refuse) throw new Error('not now');
      return {
        async release() {
          asked.push('released');
        },
      };
    },
  };
  const show = (state: DocumentVisibilityState) => {
    document.visibilityState = state;
    shown();
  };
  return { asked, locks, document: document as unknown as Document, show };
}

test('asked at once, asked again each time the page is shown, let go at the end', async () => {
  const { asked, locks, document, show } = page();
  const letGo = keepScreenOn({ locks, document });
  show('hidden');
  show('visible');
  expect(asked).toEqual(['asked', 'asked']);
  letGo();
  await new Promise((resolve) => setImmediate(resolve));
  expect(asked).toEqual(['asked', 'asked', 'released']);
  show('visible');
  expect(asked).toHaveLength(3);
});

test('a refusal, or no lock at all, is no error', async () => {
  const { locks, document } = page(true);
  keepScreenOn({ locks, document })();
  keepScreenOn({ locks: null, document })();
  await new Promise((resolve) => setImmediate(resolve));
  expect(document.visibilityState).toBe('visible');
});
