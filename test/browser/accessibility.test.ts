// The darkest thing in every room, and hands that reach everything by keyboard. What axe-core finds: see looked-over.ts.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { openApp, walkTo } from './app.ts';
import { givePlan } from './files.ts';
import { fixturePlan } from './fixture-plan.ts';
import { THEMES } from './states.ts';

/** Those with the quilt in them. */
const ROOMS = ['Top', 'Audition', 'Check', 'Paper'] as const;

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
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
