import { defineConfig } from 'vitest/config';
import { ALONE } from './vitest.alone.config.ts';

// The app in the system's Chromium, two files at a time: most of what they do is wait for the page. What times things runs by itself.
export default defineConfig({
  test: {
    include: ['test/browser/**/*.test.ts'],
    exclude: ALONE,
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 10_000 } },
  },
});
