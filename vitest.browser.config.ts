import { defineConfig } from 'vitest/config';

// Journeys through the built app in a real browser. One browser at a time: they measure movement.
export default defineConfig({
  test: {
    include: ['test/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 240_000,
    fileParallelism: false,
  },
});
