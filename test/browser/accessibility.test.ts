// What axe-core finds in every room, light and dark, wide and narrow; sizes of what can be touched; the darkest thing.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { openApp, walkTo } from './app.ts';
import { objections } from './axe.ts';
import { giveFile, givePlan } from './files.ts';
import { fixturePlan } from './fixture-plan.ts';

const ROOMS = ['Top', 'Check', 'Paper'] as const;

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

describe.each(['light', 'dark'] as const)('in the %s', (colorScheme) => {
  it.each([[1440, 900], [400, 860]] as const)('axe-core finds nothing at %i x %i', async (width, height) => {
    const app = await openApp(browser, server.address, { viewport: { width, height }, colorScheme });
    const { page } = app;
    await givePlan(page, fixturePlan());
    for (const room of ROOMS) {
      await walkTo(page, room);
      if (room === 'Check') await page.locator('.finding-press').first().click();
      expect(await objections(page)).toEqual([]);
    }
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('menu').waitFor();
    expect(await objections(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await giveFile(page, 'odd.json', '{}');
    await page.getByRole('alertdialog').waitFor();
    expect(await objections(page)).toEqual([]);
    await app.close();
  });

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
          if (element.closest('.layer.needle, .layer.needle-unsewn, .picked-line, .concerned, .foot-sign, .header-seam, .line-end')) continue;
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
  it.each([[1440, 900], [1180, 820], [400, 860]] as const)('find nothing smaller than 44 px to touch at %i x %i', async (width, height) => {
    const app = await openApp(browser, server.address, { viewport: { width, height }, hasTouch: true });
    const { page } = app;
    await givePlan(page, fixturePlan());
    for (const room of ROOMS) {
      await walkTo(page, room);
      if (room === 'Check') await page.locator('.finding-press').first().click();
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('a, button, select, input:not([type="file"]), label:has(input), [role="row"]')]
          .map((element) => (element instanceof HTMLInputElement && element.type !== 'text' ? element.closest('label')! : element))
          .filter((element) => element.checkVisibility())
          .map((element) => ({ what: `${element.tagName} ${element.textContent}`, box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.width < 43.5 || box.height < 43.5))
          .map(({ what, box }) => `${what}: ${box.width} x ${box.height}`),
      );
      expect(small).toEqual([]);
    }
    await app.close();
  });

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

  it('lay nothing sideways out of a narrow page', async () => {
    const app = await openApp(browser, server.address, { viewport: { width: 400, height: 860 }, hasTouch: true });
    for (const room of ROOMS) {
      await walkTo(app.page, room);
      expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(400);
    }
    await app.close();
  });
});
