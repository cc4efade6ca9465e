// What axe-core finds in every room with whatever can be open in it, light and dark, wide and narrow; sizes of what can be touched;
// the darkest thing. Of everything a picture for looking at is left in test/browser/shots/.

import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { openApp, walkTo } from './app.ts';
import { objections } from './axe.ts';
import { givePlan } from './files.ts';
import { fixturePlan } from './fixture-plan.ts';
import { SIZES, THEMES, statesAt } from './states.ts';

/** Those with the quilt in them. */
const ROOMS = ['Top', 'Audition', 'Check', 'Paper'] as const;

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

describe.each(SIZES)('at $size', ({ size, viewport, hasTouch }) => {
  it.each(THEMES)('in the %s, axe-core finds nothing, nothing to touch is small, nothing lies sideways out of the page', async (colorScheme) => {
    const app = await openApp(browser, server.address, { viewport, hasTouch, colorScheme, reducedMotion: 'reduce' });
    const { page } = app;
    const found: string[] = [];
    for (const { name, go } of statesAt(viewport.width)) {
      await go(page);
      await page.screenshot({ path: `${SHOTS}${name}-${size}-${colorScheme}.png`, animations: 'disabled' });
      found.push(...[...(await objectionsAtRest(page, colorScheme === 'light' ? 'all' : 'of-colour')), ...(await smallOnes(page))].map((what) => `${name}: ${what}`));
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      if (width > viewport.width) found.push(`${name}: the page is ${width} wide`);
    }
    expect(found).toEqual([]);
    expect(app.complaints()).toEqual([]);
    await app.close();
  }, 300_000);
});

describe.each(THEMES)('in the %s', (colorScheme) => {
  it('the needle line has the greatest contrast on the screen', async () => {
    const app = await openApp(browser, server.address, { colorScheme });
    const { page } = app;
    await givePlan(page, fixturePlan());
    for (const room of ROOMS) {
      await walkTo(page, room);
      const { needle, others } = await page.evaluate(() => {
        const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
        // Relative luminance as in WCAG 2.2.
        const luminance = (colour: string) => {
          canvas.clearRect(0, 0, 1, 1);
          canvas.fillStyle = colour;
          canvas.fillRect(0, 0, 1, 1);
          const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data;
          if (a !== 255) return undefined;
          const linear = [r!, g!, b!].map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
          return 0.2126 * linear[0]! + 0.7152 * linear[1]! + 0.0722 * linear[2]!;
        };
        const style = (element: Element) => getComputedStyle(element);
        const line = luminance(style(document.querySelector('.settled .layer.needle path')!).stroke)!;
        const inks: { what: string; at: number }[] = [];
        for (const element of document.querySelectorAll('body *')) {
          // The needle line itself, the foot and its stitches in the header are ink.
          if (element.closest('.layer.needle, .layer.needle-unsewn, .wet-ink, .picked-line, .concerned, .foot-sign, .header-seam, .line-end')) continue;
          const { color, stroke, display } = style(element);
          if (display === 'none') continue;
          const isDrawn = element instanceof SVGGeometryElement;
          const at = luminance(isDrawn ? stroke : color);
          if (at !== undefined && (!isDrawn || stroke !== 'none')) inks.push({ what: `${element.tagName} ${element.getAttribute('class')}`, at });
        }
        return { needle: line, others: inks };
      });
      expect(others.length).toBeGreaterThan(40);
      for (const { what, at } of others) {
        if (colorScheme === 'light') expect(at, what).toBeGreaterThan(needle);
        else expect(at, what).toBeLessThan(needle);
      }
    }
    await app.close();
  });
});

describe('hands', () => {
  it('reach everything by keyboard, and always see where they are', async () => {
    const app = await openApp(browser, server.address);
    const { page } = app;
    const reached: string[] = [];
    for (let i = 0; i < 90; i++) {
      await page.keyboard.press('Tab');
      const { name, seen } = await page.evaluate(() => {
        const element = document.activeElement!;
        const marked = element instanceof HTMLInputElement ? (element.closest('label') ?? element) : element;
        const { outlineStyle, outlineWidth } = getComputedStyle(marked);
        return { name: element.getAttribute('aria-label') ?? element.textContent ?? '', seen: element === document.body || (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2) };
      });
      expect(seen, name).toBe(true);
      reached.push(name);
    }
    for (const name of ['Plan: Tidewater', 'Top', 'Check', 'Paper', 'Settings', 'Nearer', 'Farther', 'Fit', 'Check this top']) {
      expect(reached.some((one) => one.includes(name)), name).toBe(true);
    }
    await app.close();
  });
});
