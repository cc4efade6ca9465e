import { defineConfig } from 'vitest/config';

/** What measures time, or counts on the machine having some to spare. */
export const ALONE = ['test/browser/kill.test.ts', 'test/browser/lighthouse.test.ts'];

// The app in a browser, one file after the other.
export default defineConfig({
  test: {
    include: ALONE,
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
