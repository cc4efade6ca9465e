import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'src/**/*.test.tsx', 'test/**/*.test.ts'],
    exclude: ['test/browser/**', 'node_modules/**', 'dist/**'],
    // The code under test is pure: files may share their modules, which halves the time.
    isolate: false,
    pool: 'threads',
    maxWorkers: '100%',
    testTimeout: 60_000,
  },
});
