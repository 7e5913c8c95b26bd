import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { earFiles, leanDecoder } from './scripts/ear-plugin.mjs';
import { notices } from './scripts/notices-plugin.mjs';
import { offline } from './scripts/offline-plugin.mjs';
import { servedHeaders } from './scripts/serving-rules.mjs';
import { stamp } from './scripts/stamp.mjs';

export default defineConfig({
  // A relative base: the build runs from any folder of any static host.
  base: './',
  // A file that is not there is answered 404, not with the page.
  appType: 'mpa',
  plugins: [react(), notices(), earFiles(), offline()],
  define: stamp(),
  // The decoder's package brings a polyfill that wants a page; its worker has none.
  resolve: {
    alias: {
      'blob-polyfill': fileURLToPath(
        new URL('./src/hearing/offline/nativeBlob.ts', import.meta.url),
      ),
    },
  },
  worker: { format: 'es', plugins: () => [leanDecoder()] },
  // Nothing inlined as data: the content security policy allows files of this origin only.
  build: { target: 'es2023', sourcemap: true, assetsInlineLimit: 0 },
  preview: { headers: servedHeaders() },
});
