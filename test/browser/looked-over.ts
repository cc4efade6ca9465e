// What axe-core finds in every room with whatever can be open in it, light and dark, at one size; sizes of what can be touched. Of
// everything a picture for looking at is left in test/browser/shots/.

import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { openApp } from './app.ts';
import { objections } from './axe.ts';
import { SIZES, statesAt } from './states.ts';

const SHOTS = fileURLToPath(new URL('shots/', import.meta.url));

/** The tests of one size, by its place in the list: each size is a file of its own, so that two can be looked over at once. */
export function lookedOver(wanted: number): void {
  const { size, viewport, hasTouch } = SIZES[wanted]!;
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

  it(`at ${size}, light and dark, axe-core finds nothing, nothing to touch is small, nothing lies sideways out of the page`, async () => {
    const app = await openApp(browser, server.address, { viewport, hasTouch, colorScheme: 'light', reducedMotion: 'reduce' });
    const { page } = app;
    const found: string[] = [];
    for (const { name, go } of statesAt(viewport.width)) {
      await go(page);
      // Dark first, where only colours differ; then light again, as the next state is reached from it.
      for (const colorScheme of ['dark', 'light'] as const) {
        await page.emulateMedia({ colorScheme });
        await page.screenshot({ path: `${SHOTS}${name}-${size}-${colorScheme}.png`, animations: 'disabled' });
        found.push(...(await objectionsAtRest(page, colorScheme === 'light' ? 'all' : 'of-colour')).map((what) => `${name}, ${colorScheme}: ${what}`));
      }
      found.push(...(await smallOnes(page)).map((what) => `${name}: ${what}`));
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      if (width > viewport.width) found.push(`${name}: the page is ${width} wide`);
    }
    expect(found).toEqual([]);
    expect(app.complaints()).toEqual([]);
    await app.close();
  }, 300_000);
}

/** What can be touched, and is smaller than a finger needs (44 CSS pixels; what is said in a line of text may be lower: WCAG 2.2, 2.5.8). */
function smallOnes(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('a, button, select, textarea, summary, input:not([type="file"]), label:has(input), [role="row"], [role="option"], [role="menuitem"], [role="menuitemradio"]')]
      .map((element) => (element instanceof HTMLInputElement && element.type !== 'text' ? element.closest('label')! : element))
      .filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.closest('[style*="clip"]'))
      .map((element) => ({ what: `${element.tagName} ${element.getAttribute('aria-label') ?? element.textContent}`, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 1 && (box.width < 43.5 || box.height < 43.5))
      .map(({ what, box }) => `${what}: ${box.width} x ${box.height}`),
  );
}

/** What is objected to once the page has come to rest: what moves still is asked about again. */
async function objectionsAtRest(page: Page, rules: 'all' | 'of-colour'): Promise<readonly string[]> {
  const first = await objections(page, rules);
  if (first.length === 0) return first;
  await page.waitForTimeout(600);
  return objections(page, rules);
}
