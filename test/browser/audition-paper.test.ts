// The paper in Audition, as somebody at home would use it: sheets, slip, tape of facts, tape measure, list and clipboard.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, atRest, openApp } from './app.ts';
import { givePlan } from './files.ts';
import { practiceBlock } from './fixture-plan.ts';

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

let count = 0;

beforeEach(async () => {
  const { page } = app;
  await page.evaluate(() => {
    location.hash = 'top';
  });
  // A name of its own, so that the plan from before is not taken for this one.
  await givePlan(page, { ...practiceBlock(), name: `Practice ${++count}` });
  await page.evaluate(() => {
    location.hash = 'audition';
  });
  await page.waitForSelector('.room.audition .slip');
  await atRest(page);
});

const list = (page: Page) => page.getByRole('treegrid', { name: 'Sheets and what lies on them' });
const slip = (page: Page) => page.locator('.slip');
const pick = async (page: Page, name: RegExp) => {
  await list(page).getByRole('row', { name }).click();
};
const fact = (page: Page, name: RegExp) => page.locator('.tape .fact').filter({ hasText: name });

describe('the slip', () => {
  it('tells how the picked template lies, and its words can be changed', async () => {
    const { page } = app;
    await pick(page, /^Petal,/);
    await expect.poll(() => slip(page).locator('h1').textContent()).toBe('Petal');
    await expect.poll(() => slip(page).locator('.about').textContent()).toContain('Held by 2 pins, it cannot slide or turn.');
    await page.getByRole('button', { name: /^Take out: / }).first().click();
    await expect.poll(() => slip(page).locator('.about').textContent()).toContain('Held by 1 pin.');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => slip(page).locator('.about').textContent()).toContain('Held by 2 pins');
  });

  it('flips and lays by numbers, one step of undo each', async () => {
    const { page } = app;
    await pick(page, /^Middle round,/);
    await page.getByRole('button', { name: 'Flip' }).click();
    await expect.poll(() => slip(page).locator('.about').textContent()).toContain('Face down');
    await page.getByRole('button', { name: /^Undo: Flip/ }).click();
    await expect.poll(() => slip(page).locator('.about').textContent()).toContain('Face up');
  });
});

describe('the sheets', () => {
  it('a new one is taken, shown beside the other, and chosen instead of it', async () => {
    const { page } = app;
    const full = page.locator('.stack-full');
    await full.getByRole('button', { name: 'Take a new sheet' }).click();
    await expect.poll(() => full.locator('.sheet-card').count()).toBe(2);
    await full.getByRole('slider', { name: /sheet A shows through/ }).fill('50');
    await expect.poll(() => page.locator('.seen-through').getAttribute('opacity')).toBe('0.5');
    await full.getByRole('button', { name: 'Lay side by side' }).click();
    await expect.poll(() => page.locator('.beside-sheet').count()).toBe(2);
    // One scale: both pictures show the same number of inches in the same number of pixels.
    const scales = await page.locator('.beside-sheet svg').evaluateAll((all) => all.map((svg) => `${svg.getAttribute('viewBox')} ${Math.round(svg.clientWidth)} ${Math.round(svg.clientHeight)}`));
    expect(new Set(scales).size).toBe(1);
    await page.getByRole('button', { name: 'Choose this: sheet B' }).click();
    await expect.poll(() => page.locator('.beside-sheet.chosen h3').textContent()).toContain('Sheet B');
  });
});

describe('the tapes', () => {
  it('the facts are about the picked template', async () => {
    const { page } = app;
    await page.mouse.move(5, 5);
    await pick(page, /^Middle round,/);
    await expect.poll(() => fact(page, /^Turned/).count()).toBe(1);
    await expect.poll(() => fact(page, /^Length in this block/).textContent()).toMatch(/\d/);
  });

  it('measures between two things chosen from lists: the block is 12 in wide, so 6 in from its centre to its edge', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Measure' }).click();
    await page.getByLabel('From', { exact: true }).selectOption({ label: 'centre' });
    await page.getByLabel('To', { exact: true }).selectOption({ label: 'right edge' });
    await expect.poll(() => page.locator('.tape-said').textContent()).toContain('From the centre to the right edge: 6 in');
    await expect.poll(() => page.locator('.tape-tag').textContent()).toBe('6 in');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.tape-over').count()).toBe(0);
  });
});

describe('the keyboard alone', () => {
  it('opens a template in the list and adds a pass to it', async () => {
    const { page } = app;
    await list(page).getByRole('row', { name: /^Middle round,/ }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => slip(page).locator('h1').textContent()).toBe('Middle round');
    const before = await page.getByRole('button', { name: /^Way:/ }).count();
    await page.getByRole('button', { name: 'Add a pass' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('button', { name: /^Way:/ }).count()).toBe(before + 1);
  });
});

it('nothing was complained of', () => {
  expect(app.complaints()).toEqual([]);
});
