import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { earFiles, leanDecoder } from './scripts/ear-plugin.mjs';
import { notices } from './scripts/notices-plugin.mjs';
import { stamp } from './scripts/stamp.mjs';

export default defineConfig({
  // A relative base: the build runs from any folder of any static host.
  base: './',
  plugins: [react(), notices(), earFiles()],
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
  build: { target: 'es2023', sourcemap: true },
});
