import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { notices } from './scripts/notices-plugin.mjs';
import { stamp } from './scripts/stamp.mjs';

export default defineConfig({
  // A relative base: the build runs from any folder of any static host.
  base: './',
  plugins: [react(), notices()],
  define: stamp(),
  build: { target: 'es2023', sourcemap: true },
});
