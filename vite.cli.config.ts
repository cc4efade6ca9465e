import { defineConfig } from 'vite';

// The command line: one file for Node; packages stay in node_modules.
export default defineConfig({
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist/cli',
    emptyOutDir: true,
    target: 'node20',
    rollupOptions: { checks: { pluginTimings: false }, output: { entryFileNames: 'needlefall.js', banner: '#!/usr/bin/env node' } },
  },
});
