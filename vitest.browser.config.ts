import { defineConfig } from 'vitest/config';

// The app in the system's Chromium, one file after the other: two browsers at once would slow each other down.
export default defineConfig({
  test: {
    include: ['test/browser/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
