// The tour through the example: where its slips lie, by mouse, by keyboard, skipped, and taken again.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { atRest, firstPicture, openApp, quiltBox } from './app.ts';
import { objections } from './axe.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const slipOf = (page: Page) => page.locator('.tour-slip');

/** Waits until the slip has come to rest and points at something. */
async function settled(page: Page): Promise<void> {
  await page.locator('.tour-pointing rect').waitFor({ state: 'attached' });
  await atRest(page);
  let before = '';
  await expect
    .poll(async () => {
      const now = JSON.stringify([await slipOf(page).boundingBox(), await page.locator('.tour-pointing rect').boundingBox()]);
      const isStill = now === before;
      before = now;
      return isStill;
    }, { timeout: 10_000, interval: 120 })
    .toBe(true);
}

describe.each([[1440, 900], [1180, 820], [400, 860]] as const)('at %i x %i', (width, height) => {
  it('points from slip to slip at what is there, and never lies on it', async () => {
    const app = await openApp(browser, server.address, { tour: true, viewport: { width, height }, hasTouch: width < 1440 });
    const { page } = app;
    const seen: string[] = [];
    for (;;) {
      await slipOf(page).waitFor();
      await settled(page);
      const [slip, target] = [(await slipOf(page).boundingBox())!, (await page.locator('.tour-pointing rect').boundingBox())!];
      const title = (await slipOf(page).getByRole('heading').textContent())!;
      const apart = slip.x + slip.width <= target.x || target.x + target.width <= slip.x || slip.y + slip.height <= target.y || target.y + target.height <= slip.y;
      expect(apart, title).toBe(true);
      expect(slip.x, title).toBeGreaterThanOrEqual(0);
      expect(slip.y, title).toBeGreaterThanOrEqual(0);
      expect(slip.x + slip.width, title).toBeLessThanOrEqual(width);
      expect(slip.y + slip.height, title).toBeLessThanOrEqual(height);
      if (seen.length < 2) expect(await objections(page), title).toEqual([]);
      seen.push(title);
      const next = slipOf(page).getByRole('button', { name: /^(Show me round|Next)$/ });
      if ((await next.count()) === 0) break;
      await next.click();
      await page.waitForFunction((before) => document.querySelector('.tour-slip h2')?.textContent !== before, title);
    }
    expect(new Set(seen).size).toBe(seen.length);
    expect(seen.length).toBeGreaterThanOrEqual(4);
    expect(seen.length).toBeLessThanOrEqual(6);
    await page.getByRole('button', { name: 'To the table' }).click();
    await slipOf(page).waitFor({ state: 'detached' });
    await page.waitForSelector('.rooms a[aria-current="page"]:text-is("Top")');
    expect(app.complaints()).toEqual([]);
    await app.close();
  });
});

it('rings a needle line that lies half a foot from the drawn edge of the template', async () => {
  const app = await openApp(browser, server.address, { tour: true });
  const { page } = app;
  await page.getByRole('button', { name: 'Show me round' }).click();
  await settled(page);
  // The example's foot is 1/2 in across: what is sewn is 1/4 in from the edge.
  expect(await slipOf(page).textContent()).toContain('1/4\u00a0in away');
  const ring = (await page.locator('.tour-pointing rect').boundingBox())!;
  const at = { x: ring.x + ring.width / 2, y: ring.y + ring.height / 2 };
  const away = await page.evaluate(({ x, y }) => {
    /** The least distance on the screen from a point to the drawn paths of a layer. */
    const nearest = (layer: string) => {
      let least = Infinity;
      const own = document.createElementNS('http://www.w3.org/2000/svg', 'path');
      for (const path of document.querySelectorAll<SVGPathElement>(`.settled .layer.${layer} path`)) {
        const box = path.getBoundingClientRect();
        if (box.right < x - 100 || box.left > x + 100 || box.bottom < y - 100 || box.top > y + 100) continue;
        const to = path.getScreenCTM()!;
        // Several lines may share an element; each is looked along by itself.
        for (const data of path.getAttribute('d')!.match(/M[^M]*/g)!) {
          own.setAttribute('d', data);
          const length = own.getTotalLength();
          const begins = own.getPointAtLength(0).matrixTransform(to);
          if (Math.hypot(begins.x - x, begins.y - y) > length * Math.hypot(to.a, to.b) + 100) continue;
          for (let i = 0; i <= 2000; i++) {
            const p = own.getPointAtLength((length * i) / 2000).matrixTransform(to);
            least = Math.min(least, Math.hypot(p.x - x, p.y - y));
          }
        }
      }
      return least;
    };
    return { line: nearest('needle'), edge: nearest('template-edge') };
  }, at);
  const inch = (await quiltBox(page)).width;
  const widthOfTop = await page.evaluate(() => document.querySelector('.about')?.textContent ?? '');
  const inchesWide = Number(/^(\d+)/.exec(widthOfTop)![1]) + fractionOf(widthOfTop);
  expect(away.line).toBeLessThan(2);
  expect(away.edge / (inch / inchesWide)).toBeCloseTo(0.25, 1);
  await app.close();
});

/** The fraction behind the first whole number of a length in words. */
function fractionOf(words: string): number {
  const [, over, under] = /^\d+[\s\u2009](\d+)\/(\d+)/.exec(words) ?? [];
  return over && under ? Number(over) / Number(under) : 0;
}

it('goes by keyboard: the slip has the focus, Escape takes it away, and it is not put up again', async () => {
  const app = await openApp(browser, server.address, { tour: true });
  const { page } = app;
  await slipOf(page).waitFor();
  const fitted = await quiltBox(page);
  await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'dialog');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.textContent?.includes('2 of'));
  await settled(page);
  expect((await quiltBox(page)).width).toBeGreaterThan(fitted.width * 2);
  await page.keyboard.press('Escape');
  await slipOf(page).waitFor({ state: 'detached' });
  await atRest(page);
  // All is seen as it was before.
  expect((await quiltBox(page)).width).toBeCloseTo(fitted.width, 0);
  expect(await page.getByRole('switch', { name: 'Templates' }).isChecked()).toBe(false);
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('table');
  await page.reload();
  await firstPicture(page);
  expect(await slipOf(page).count()).toBe(0);
  // Taken again, from Settings.
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('menuitem', { name: 'Take the tour' }).click();
  await slipOf(page).waitFor();
  await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'dialog');
  await page.getByRole('button', { name: 'Skip the tour' }).click();
  await slipOf(page).waitFor({ state: 'detached' });
  expect(app.complaints()).toEqual([]);
  await app.close();
});

it('begins in whatever room one comes to, and its second slip points at its place from there', async () => {
  const app = await openApp(browser, `${server.address}#kit`, { tour: true, firstRoom: 'kit' });
  const { page } = app;
  await slipOf(page).waitFor();
  expect(await page.locator('.rooms a[aria-current="page"]').textContent()).toBe('Kit');
  await page.getByRole('button', { name: 'Show me round' }).click();
  await page.waitForSelector('.rooms a[aria-current="page"]:text-is("Top")');
  await settled(page);
  const [ring, table] = [(await page.locator('.tour-pointing rect').boundingBox())!, (await page.locator('.table').boundingBox())!];
  // The place is in the middle of the table, as wide as it is now.
  expect(Math.abs(ring.x + ring.width / 2 - (table.x + table.width / 2))).toBeLessThan(table.width / 4);
  expect(Math.abs(ring.y + ring.height / 2 - (table.y + table.height / 2))).toBeLessThan(table.height / 4);
  await page.keyboard.press('Escape');
  await page.waitForSelector('.rooms a[aria-current="page"]:text-is("Kit")');
  expect(app.complaints()).toEqual([]);
  await app.close();
});

it('ends when another plan comes onto the table, and holds up nothing', async () => {
  const app = await openApp(browser, server.address, { tour: true });
  const { page } = app;
  await slipOf(page).waitFor();
  await page.getByRole('button', { name: /^Plan:/ }).click();
  await page.getByRole('menuitem', { name: 'Medallion' }).click();
  await slipOf(page).waitFor({ state: 'detached' });
  expect(await page.locator('.slip h1').textContent()).not.toContain('Tidewater');
  expect(app.complaints()).toEqual([]);
  await app.close();
});
