import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const AIM_KB = 135;

/**
 * Script fetched up to the first count, gzipped: on a new device, which also reads the demo job in,
 * and on one that has a job; and beside it the libraries alone, which are its floor.
 * @param {import('./app.mjs').App} app
 * @returns {Promise<string[][]>}
 */
export async function scriptBytes(app) {
  const { page, close } = await app.device();
  try {
    /** @type {Map<string, number>} */
    let fetched = new Map();
    page.on('response', async (response) => {
      if (response.request().resourceType() !== 'script') return;
      const body = await response.body().catch(() => Buffer.alloc(0));
      fetched.set(new URL(response.url()).pathname, gzipSync(body, { level: 9 }).length);
    });
    const upToFirstCount = async () => {
      fetched = new Map();
      await page.goto(app.url);
      await page.getByText('Press any key to go on').waitFor();
      await page.keyboard.press('Space');
      await page.waitForTimeout(200);
      await page.keyboard.press('Space');
      await page.waitForTimeout(500);
      const took = [...fetched].map(([path, bytes]) => [path.replace(/.*\//, ''), kb(bytes)]);
      await page.goto('about:blank');
      return { took, sum: [...fetched.values()].reduce((all, bytes) => all + bytes, 0) };
    };
    const fresh = await upToFirstCount();
    await page.context().clearCookies();
    const known = await upToFirstCount();
    const floor = await floorBytes();
    return [
      ['on a device that has a job', kb(known.sum), aim(known.sum)],
      ...known.took.map(([name = '', size = '']) => [`    ${name}`, size]),
      ['on a new device, the demo job read in', kb(fresh.sum), aim(fresh.sum)],
      ['the libraries alone: react, react-dom, dexie, zustand', kb(floor)],
    ];
  } finally {
    await close();
  }
}

/** @param {number} bytes */
function kb(bytes) {
  return (bytes / 1000).toFixed(1);
}

/** @param {number} bytes */
function aim(bytes) {
  return `${AIM_KB} (${bytes <= AIM_KB * 1000 ? 'met' : 'missed'})`;
}

/** What an app that only started these libraries would ship. */
async function floorBytes() {
  const entry = 'virtual:floor';
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, target: 'es2023', rollupOptions: { input: entry } },
    plugins: [
      {
        name: 'floor',
        resolveId: (id) => (id === entry ? id : null),
        load: (id) =>
          id === entry
            ? `import { createRoot } from 'react-dom/client';
               import { createElement, useState } from 'react';
               import { Dexie } from 'dexie';
               import { useStore } from 'zustand';
               import { createStore } from 'zustand/vanilla';
               globalThis.floor = [createRoot, createElement, useState, Dexie, useStore, createStore];`
            : null,
      },
    ],
  });
  const outputs = [built].flat().flatMap((one) => ('output' in one ? one.output : []));
  const code = outputs.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')).join('');
  return gzipSync(code, { level: 9 }).length;
}
