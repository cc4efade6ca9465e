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
    await expect.poll(() => page.locator('.beside-sheet.chosen h2').textContent()).toContain('Sheet B');
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
    await expect.poll(() => page.locator('.tape-said').textContent()).toMatch(/From the centre to the right edge: 6\sin\./);
    await expect.poll(() => page.locator('.tape-tag').textContent()).toMatch(/^6\sin$/);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.tape-over').count()).toBe(0);
  });
});

describe('the clipboard', () => {
  const rows = (page: Page) => list(page).getByRole('row', { name: /^Petal,/ });
  const said = (page: Page) => slip(page).getByRole('status').filter({ hasText: /\./ }).last();
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

  it('where the browser lets nobody read it, a copy is pasted here all the same', async () => {
    const { page } = app;
    await pick(page, /^Petal,/);
    await press(page, 'Copy the template');
    await expect.poll(() => said(page).textContent()).toBe('Copied.');
    await press(page, 'Paste');
    await expect.poll(() => rows(page).count()).toBe(2);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => rows(page).count()).toBe(1);
  });

  it('what is cut in one plan is pasted in another through the system’s own clipboard, as text', async () => {
    const { page, context } = app;
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await pick(page, /^Petal,/);
    await press(page, 'Cut');
    await expect.poll(() => rows(page).count()).toBe(0);
    expect(JSON.parse(await page.evaluate(() => navigator.clipboard.readText()))).toMatchObject({ format: 'needlefall-clip', placements: { petal: { template: 'arc-6' } } });
    await givePlan(page, { ...practiceBlock(), name: `Practice ${++count}` });
    await expect.poll(() => rows(page).count()).toBe(1);
    await page.getByRole('button', { name: 'Paste', exact: true }).click();
    await expect.poll(() => rows(page).count()).toBe(2);
    // What somebody copied elsewhere is no template, and is said to be none.
    await page.evaluate(() => navigator.clipboard.writeText('bread, milk'));
    await press(page, 'Paste');
    await expect.poll(() => said(page).textContent()).toMatch(/clipboard/);
    expect(await rows(page).count()).toBe(2);
    await context.clearPermissions();
  });

  it('by the usual keys, with the hands on the table', async () => {
    const { page, context } = app;
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await pick(page, /^Petal,/);
    await page.locator('.table').focus();
    await page.keyboard.press('Control+c');
    await page.keyboard.press('Control+v');
    await expect.poll(() => rows(page).count()).toBe(2);
    await context.clearPermissions();
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
