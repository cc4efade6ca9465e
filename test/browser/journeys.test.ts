// Opening, looking and finding, as somebody at home would do it: in the system's browser, from the built files.

import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { readPlan } from '../../src/model/codec.ts';
import type { Plan } from '../../src/model/plan.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, atRest, openApp, quiltBox, tableBox, walkTo } from './app.ts';
import { givePlan } from './files.ts';
import { fixturePlan, plainPlan } from './fixture-plan.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

function example(name: string): Plan {
  const read = readPlan(readFileSync(new URL(`../../examples/${name}.needlefall.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
}

describe('the first example', () => {
  it('lies on the table with every stitched line', async () => {
    const { page } = app;
    const plan = example('tidewater');
    expect(await page.title()).toBe(`${plan.name}, Needlefall`);
    // Lines that follow the same placement share elements; each begins where the needle goes down.
    const begun = await page.locator('.settled .layer.needle path').evaluateAll((paths) => paths.map((path) => path.getAttribute('d')!.match(/M/g)!.length));
    expect(begun.reduce((sum, count) => sum + count, 0)).toBe(evaluate(plan).lines.length);
    expect(await page.locator('.slip h1').textContent()).toBe(plan.name);
  });

  it('draws arcs as arcs, and lets no stroke grow with the zoom', async () => {
    const { page } = app;
    const data = await page.locator('.settled .layer.needle path').first().getAttribute('d');
    expect(data).toMatch(/A/);
    expect(data).not.toMatch(/[CQ]/);
    const effect = await page.locator('.settled .layer.needle path').first().evaluate((path) => getComputedStyle(path).vectorEffect);
    expect(effect).toBe('non-scaling-stroke');
  });

  it('is fitted to the table', async () => {
    const { page } = app;
    const [quilt, table] = [await quiltBox(page), await tableBox(page)];
    expect(quilt.x).toBeGreaterThan(table.x);
    expect(quilt.y).toBeGreaterThan(table.y);
    expect(quilt.x + quilt.width).toBeLessThan(table.x + table.width);
    expect(quilt.y + quilt.height).toBeLessThan(table.y + table.height);
    // As large as the table allows: one of the two margins is the 40 px the fit leaves.
    expect(Math.min(table.width - quilt.width, table.height - quilt.height)).toBeLessThan(82);
    const { width, height } = evaluate(example('tidewater')).top;
    expect(quilt.width / quilt.height).toBeCloseTo(width / height, 2);
  });
});

describe('looking', () => {
  /** Where a point of the screen lies on the quilt, as a part of its width and height. */
  async function partAt(x: number, y: number): Promise<{ readonly across: number; readonly down: number }> {
    const box = await quiltBox(app.page);
    return { across: (x - box.x) / box.width, down: (y - box.y) / box.height };
  }

  it('keeps what is under the pointer there while the wheel goes nearer and farther', async () => {
    const { page } = app;
    const table = await tableBox(page);
    // Whole pixels: a wheel event knows no others.
    const [x, y] = [Math.round(table.x + table.width * 0.62), Math.round(table.y + table.height * 0.3)];
    const before = await partAt(x, y);
    const width = (await quiltBox(page)).width;
    await page.mouse.move(x, y);
    for (let i = 0; i < 6; i++) {
      await page.mouse.wheel(0, -120);
      const during = await partAt(x, y);
      expect(during.across).toBeCloseTo(before.across, 3);
      expect(during.down).toBeCloseTo(before.down, 3);
    }
    await atRest(page);
    const after = await partAt(x, y);
    expect(after.across).toBeCloseTo(before.across, 3);
    expect(after.down).toBeCloseTo(before.down, 3);
    expect((await quiltBox(page)).width).toBeGreaterThan(width * 2);
  });

  it('lies still while the pointer wanders over it and the tape names what is under it', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Fit' }).click();
    await atRest(page);
    const [before, table] = [await quiltBox(page), await tableBox(page)];
    for (let part = 0.1; part < 1; part += 0.1) {
      await page.mouse.move(table.x + table.width * part, table.y + table.height * part);
      expect(await quiltBox(page)).toEqual(before);
    }
  });

  it('pushes the quilt with the hand', async () => {
    const { page } = app;
    const table = await tableBox(page);
    const before = await quiltBox(page);
    await page.mouse.move(table.x + 300, table.y + 300);
    await page.mouse.down();
    await page.mouse.move(table.x + 340, table.y + 260, { steps: 5 });
    const during = await quiltBox(page);
    await page.mouse.up();
    await atRest(page);
    const after = await quiltBox(page);
    for (const box of [during, after]) {
      expect(box.x - before.x).toBeCloseTo(40, 0);
      expect(box.y - before.y).toBeCloseTo(-40, 0);
    }
  });

  it('goes nearer with the keys, to the pointer, and shows all of it with 0', async () => {
    const { page } = app;
    const table = await tableBox(page);
    const [x, y] = [Math.round(table.x + table.width / 3), Math.round(table.y + table.height / 3)];
    await page.mouse.move(x, y);
    await page.locator('.table').focus();
    const before = await partAt(x, y);
    await page.keyboard.press('+');
    await atRest(page);
    expect((await partAt(x, y)).across).toBeCloseTo(before.across, 3);
    await page.keyboard.press('0');
    await atRest(page);
    const quilt = await quiltBox(page);
    expect(quilt.x).toBeGreaterThan(table.x);
    expect(quilt.x + quilt.width).toBeLessThan(table.x + table.width);
  });

  it('shows an area large on a double click, names it on the slip, and all of it again by the button', async () => {
    const { page } = app;
    const fitted = await quiltBox(page);
    await page.mouse.dblclick(fitted.x + fitted.width / 2, fitted.y + fitted.height / 2);
    await atRest(page);
    expect((await quiltBox(page)).width).toBeGreaterThan(fitted.width * 3);
    expect(await page.getByRole('heading', { name: 'Picked out' }).count()).toBe(1);
    await page.getByRole('button', { name: 'Fit' }).click();
    await atRest(page);
    expect((await quiltBox(page)).width).toBeCloseTo(fitted.width, 0);
  });

  it('shows and hides layers', async () => {
    const { page } = app;
    const isSeen = (layer: string) => page.locator(`.settled .layer.${layer}`).evaluate((group) => getComputedStyle(group).display !== 'none');
    expect(await isSeen('template-edge')).toBe(false);
    await page.getByRole('switch', { name: 'Templates' }).check({ force: true });
    expect(await isSeen('template-edge')).toBe(true);
    await page.getByRole('switch', { name: 'Stitched lines' }).uncheck({ force: true });
    expect(await isSeen('needle')).toBe(false);
    await page.getByRole('switch', { name: 'Stitched lines' }).check({ force: true });
    await page.getByRole('switch', { name: 'Templates' }).uncheck({ force: true });
    expect(await isSeen('needle')).toBe(true);
  });

  it('zooms to an area picked in the list, by keyboard alone', async () => {
    const { page } = app;
    const fitted = await quiltBox(page);
    const list = page.getByRole('treegrid', { name: 'On the table' });
    await list.getByRole('row').first().focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await atRest(page);
    expect((await quiltBox(page)).width).toBeGreaterThan(fitted.width * 3);
    expect(await page.getByRole('heading', { name: 'Picked out' }).count()).toBe(1);
    await page.getByRole('button', { name: 'Fit' }).click();
    await atRest(page);
  });

  it('pinches nearer with two fingers', async () => {
    const touch = await openApp(browser, server.address, { viewport: { width: 1180, height: 820 }, hasTouch: true });
    const { page } = touch;
    const table = await tableBox(page);
    const before = await quiltBox(page);
    const session = await touch.context.newCDPSession(page);
    const [x, y] = [table.x + table.width / 2, table.y + table.height / 2];
    const fingers = (spread: number) => [{ x: x - spread, y, id: 1 }, { x: x + spread, y, id: 2 }];
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(60) });
    for (let spread = 70; spread <= 180; spread += 10) await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(spread) });
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await atRest(page);
    // The fingers went from 120 to 360 px apart.
    expect((await quiltBox(page)).width / before.width).toBeCloseTo(3, 1);
    expect(touch.complaints()).toEqual([]);
    await touch.close();
  });
});

describe('findings', () => {
  it('are listed, numbered on the quilt, and shown when pressed', async () => {
    const { page } = app;
    await givePlan(page, fixturePlan());
    const { findings } = evaluate(fixturePlan());
    expect(findings.length).toBeGreaterThan(0);
    await walkTo(page, 'Check');
    expect(await page.locator('.findings > .finding').count()).toBe(findings.length);
    const fitted = await quiltBox(page);
    await page.locator('.finding-press').first().click();
    await atRest(page);
    expect((await quiltBox(page)).width).toBeGreaterThan(fitted.width * 3);
    const table = await tableBox(page);
    const sign = (await page.locator('.finding-mark.picked').boundingBox())!;
    expect(sign.x).toBeGreaterThan(table.x);
    expect(sign.x).toBeLessThan(table.x + table.width);
    expect(await page.locator('.loupe-glass').count()).toBe(1);
    // The sign on the quilt stands at the place the check gives.
    const { at } = findings[0]!.where;
    const { width } = evaluate(fixturePlan()).top;
    const quilt = await quiltBox(page);
    const expected = quilt.x + (at![0] / width) * quilt.width;
    const ring = (await page.locator('.finding-ring').boundingBox())!;
    expect(ring.x + ring.width / 2).toBeCloseTo(expected, 0);
  });

  it('are led through place by place', async () => {
    const { page } = app;
    const steps = page.locator('.finding-steps span');
    expect(await steps.textContent()).toMatch(/^1 of \d+$/);
    const before = await quiltBox(page);
    await page.getByRole('button', { name: 'Next place' }).click();
    await atRest(page);
    expect(await steps.textContent()).toMatch(/^2 of \d+$/);
    expect(await quiltBox(page)).not.toEqual(before);
  });

  it('that are not there leave the top ready to sew', async () => {
    const { page } = app;
    expect(evaluate(plainPlan()).findings).toEqual([]);
    await givePlan(page, plainPlan());
    await page.waitForSelector('.slip h1:text-is("Nothing to mend")');
    expect(await page.locator('.finding-mark').count()).toBe(0);
  });
});

describe('all the while', () => {
  it('nothing was asked of another place, and nothing went wrong', () => {
    expect(app.complaints()).toEqual([]);
  });
});
