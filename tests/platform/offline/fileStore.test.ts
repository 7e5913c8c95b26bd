import { describe, expect, test } from 'vitest';
import { createFileStore } from '../../../src/platform/offline/fileStore';
import { filesLock } from '../../../src/platform/offline/offlineFiles';
import { fakeCaches } from './caches';

const scope = 'https://shop.test/counting/';

interface Served {
  readonly caches: ReturnType<typeof fakeCaches>;
  readonly asked: Request[];
  /** What the server has, by path below the folder; '' is the page. */
  readonly files: Record<string, string>;
  locks: string[];
  pages: number;
}

function served(files: Record<string, string>): Served {
  return { caches: fakeCaches(), asked: [], files, locks: [], pages: 0 };
}

function storeOf(version: string, paths: readonly string[], from: Served) {
  return createFileStore({
    scope,
    offline: { version, files: paths.map((path) => ({ path, integrity: 'sha256-AAAA' })) },
    caches: from.caches,
    async fetch(request) {
      from.asked.push(request);
      const text = from.files[request.url.slice(scope.length)];
      return new Response(text ?? 'not found', { status: text === undefined ? 404 : 200 });
    },
    locksHeld: async () => from.locks.map((name) => ({ name, mode: 'shared', clientId: 'x' })),
    pagesOpen: async () => from.pages,
  });
}

const textOf = async (answer: Promise<Response> | null): Promise<string | undefined> =>
  (await answer)?.text();
const get = (path: string) => new Request(scope + path);

describe('taking in', () => {
  test('every file is asked for with its integrity, the page by the folder’s own address', async () => {
    const from = served({ '': 'page', 'a.js': 'a' });
    await storeOf('one', ['index.html', 'a.js'], from).takeIn();
    expect(from.asked.map(({ url, integrity }) => [url, integrity])).toEqual([
      [scope, 'sha256-AAAA'],
      [`${scope}a.js`, 'sha256-AAAA'],
    ]);
  });

  test('one file that is not there, and none of the version is taken', async () => {
    const from = served({ '': 'page' });
    await expect(storeOf('one', ['index.html', 'a.js'], from).takeIn()).rejects.toThrow(
      'a.js was answered 404.',
    );
  });
});

describe('answering', () => {
  test('what was taken in is answered without the server, whatever is asked behind ? and #', async () => {
    const from = served({ '': 'page', 'a.js': 'a' });
    const store = storeOf('one', ['index.html', 'a.js'], from);
    await store.takeIn();
    from.asked.length = 0;
    expect(await textOf(store.answer(get('')))).toBe('page');
    expect(await textOf(store.answer(get('index.html?x=1#/bench/2')))).toBe('page');
    expect(await textOf(store.answer(get('a.js')))).toBe('a');
    expect(from.asked).toEqual([]);
  });

  test('another folder, another origin and anything but a look are left alone', () => {
    const store = storeOf('one', ['index.html'], served({}));
    expect(store.answer(new Request('https://shop.test/else/'))).toBeNull();
    expect(store.answer(new Request('https://other.test/counting/'))).toBeNull();
    expect(store.answer(new Request(scope, { method: 'POST' }))).toBeNull();
  });

  test('an older page gets its own files from a newer worker, and the page itself anew', async () => {
    const from = served({ '': 'old page', 'old.js': 'old' });
    await storeOf('one', ['index.html', 'old.js'], from).takeIn();
    Object.assign(from.files, { '': 'new page', 'new.js': 'new' });
    const newer = storeOf('two', ['index.html', 'new.js'], from);
    await newer.takeIn();
    expect(await textOf(newer.answer(get('old.js')))).toBe('old');
    expect(await textOf(newer.answer(get('')))).toBe('new page');
  });

  test('a file the device has lost is asked of the server', async () => {
    const from = served({ '': 'page' });
    const store = storeOf('one', ['index.html'], from);
    expect(await textOf(store.answer(get('')))).toBe('page');
    expect((await store.answer(get('gone.js')))?.status).toBe(404);
  });
});

describe('tidying', () => {
  async function twoVersions() {
    const from = served({ '': 'page' });
    await storeOf('one', ['index.html'], from).takeIn();
    await (await from.caches.open('someone else’s')).put('x', new Response());
    const newer = storeOf('two', ['index.html'], from);
    await newer.takeIn();
    const kept = async () => (await from.caches.keys()).map((name) => name.split(' ').at(-1));
    return { from, newer, kept };
  }

  test('an older version goes once no page uses it; what is another’s stays', async () => {
    const { from, newer, kept } = await twoVersions();
    from.pages = 1;
    from.locks = [filesLock(scope, 'two')];
    await newer.tidy();
    expect(await kept()).toEqual(['else’s', 'two']);
  });

  test('it stays while a page of it is open', async () => {
    const { from, newer, kept } = await twoVersions();
    from.pages = 2;
    from.locks = [filesLock(scope, 'one'), filesLock(scope, 'two')];
    await newer.tidy();
    expect(await kept()).toEqual(['one', 'else’s', 'two']);
  });

  test('it stays while a page is open that has not said yet what it is', async () => {
    const { from, newer, kept } = await twoVersions();
    from.pages = 2;
    from.locks = [filesLock(scope, 'two')];
    await newer.tidy();
    expect(await kept()).toEqual(['one', 'else’s', 'two']);
  });
});
