// Setting out in Audition: a border of 60 by 72 from a bare top, even on all four sides, in under ten actions; an echo of a line already
// sewn; a line drawn by hand. What counts is what the plan holds afterwards.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { distance } from '../../src/geometry/point.ts';
import { endOf, startOf } from '../../src/geometry/path.ts';
import { quiltPath } from '../../src/stitch/quilt-path.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, openApp, quiltBox, walkTo } from './app.ts';
import { mouseHands, planNow, settled, straightWay, workAt } from './audition-journey.ts';
import { objections } from './axe.ts';
import { planMenu } from './plans.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;
let page: Page;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  page = app.page;
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function offered(): Promise<void> {
  await page.waitForSelector('.offers[aria-busy="false"] .offer', { timeout: 60_000 });
}

describe('setting out', () => {
  it('makes a border even on four sides from a bare top, in nine actions', async () => {
    // 1: a new plan. What it begins with is a bare top whose middle is measured in 2 and 3: one piece of cloth, 60 by 72.
    await planMenu(page, 'New plan');
    await page.waitForFunction(() => document.title.startsWith('New plan'));
    await page.evaluate(() => void (location.hash = 'top'));
    await page.getByText('one piece of cloth', { exact: true }).click();
    for (const [label, text] of [['width', '60'], ['length', '72']] as const) {
      await page.getByLabel(label, { exact: true }).fill(text);
      await page.keyboard.press('Enter');
    }
    await page.getByRole('button', { name: 'Add a border' }).click();
    await walkTo(page, 'Audition');
    await workAt(page, mouseHands(page), 'Border 1, sides (4)');
    await page.getByRole('button', { name: 'Set out the border' }).click();
    await offered();
    await page.getByRole('button', { name: /^Choose this/ }).first().click();
    await page.getByText('Chosen', { exact: true }).waitFor();

    const { plan, evaluation } = await planNow(page);
    const sides = Object.values(plan.sheets).filter((sheet) => sheet.chosen && sheet.for.kind === 'border-side');
    expect(sides.length).toBeGreaterThan(0);
    for (const side of ['top', 'right', 'bottom', 'left']) {
      const lines = evaluation.lines.filter((line) => line.area === `border:1:${side}`);
      expect(lines.length, side).toBeGreaterThan(1);
      const ends = lines.flatMap((line) => [startOf(quiltPath(line))!, endOf(quiltPath(line))!]);
      const alone = ends.filter((end, i) => !ends.some((other, j) => i !== j && distance(end, other) < 1e-6));
      expect(alone.length, `ends on the ${side} that meet nothing`).toBeLessThanOrEqual(4);
    }
  });

  it('is one step of undo, and another way takes the place of the first', async () => {
    const before = Object.keys((await planNow(page)).plan.sheets).length;
    await page.getByRole('button', { name: /^Choose this/ }).nth(1).click();
    await expect.poll(() => page.locator('.offer.taken').count()).toBe(1);
    const sheets = (await planNow(page)).plan.sheets;
    expect(Object.values(sheets).filter(({ for: { kind }, chosen }) => kind === 'border-side' && chosen).length).toBeLessThanOrEqual(2);
    expect(Object.keys(sheets).length).toBeLessThanOrEqual(before + 2);
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect(Object.keys((await planNow(page)).plan.sheets)).toHaveLength(before);
  });

  it('axe-core finds nothing on it, and words change what is asked', async () => {
    expect(await objections(page)).toEqual([]);
    await page.getByRole('button', { name: /^Arrangement:/ }).click();
    await page.getByRole('menuitemradio', { name: /^Scallop/ }).click();
    await page.waitForSelector('.offers[aria-busy="true"]', { timeout: 2000 }).catch(() => undefined);
    await offered();
    await expect.poll(async () => (await page.locator('.offer .aside').allTextContents()).filter((text) => /, scallop/.test(text)).length).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Back to the table' }).click();
  });

  it('sews a line drawn by hand with the templates of the kit', async () => {
    await workAt(page, mouseHands(page), 'Panel');
    await page.getByRole('button', { name: 'Draw a line', exact: true }).click();
    await settled(page);
    const box = await quiltBox(page);
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const inch = box.width / (await planNow(page)).evaluation.top.width;
    const [from, ...way] = straightWay({ x: middle.x - 3 * inch, y: middle.y }, { x: middle.x + 3 * inch, y: middle.y }, 24);
    await page.mouse.move(from!.x, from!.y);
    await page.mouse.down();
    for (const { x, y } of way) await page.mouse.move(x, y);
    await page.mouse.up();
    await offered();
    await page.getByRole('button', { name: /^Choose this/ }).first().click();
    await page.getByRole('button', { name: 'Back to the table' }).click();
    const { plan } = await planNow(page);
    const sheet = Object.values(plan.sheets).find(({ for: { kind } }) => kind === 'panel')!;
    const lines = evaluate({ ...plan, sheets: { drawn: sheet } }).lines;
    // The stitches cover the six inches that were drawn, on the level of the stroke.
    expect(lines.reduce((sum, { length }) => sum + length, 0)).toBeGreaterThan(5.5);
  });

  it('nothing was complained of', () => {
    expect(app.complaints()).toEqual([]);
  });
});
