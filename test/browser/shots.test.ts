// Pictures of everything for looking at, in test/browser/shots/: three sizes, light and dark.

import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { openApp } from './app.ts';
import { SIZES, THEMES, statesAt } from './states.ts';

const SHOTS = fileURLToPath(new URL('shots/', import.meta.url));

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true });
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

describe.each(SIZES)('at $size', ({ size, viewport, hasTouch }) => {
  it.each(THEMES)('in the %s', async (colorScheme) => {
    const app = await openApp(browser, server.address, { viewport, hasTouch, colorScheme, reducedMotion: 'reduce' });
    for (const { name, go } of statesAt(viewport.width)) {
      await go(app.page);
      await app.page.screenshot({ path: `${SHOTS}${name}-${size}-${colorScheme}.png`, animations: 'disabled' });
    }
    expect(app.complaints()).toEqual([]);
    await app.close();
  });
});
