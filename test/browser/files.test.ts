// Plans in and out of the app, and what happens when a file is not a plan.

import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPlan, writePlan } from '../../src/model/codec.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, openApp, walkTo } from './app.ts';
import { dropFile, giveFile, givePlan } from './files.ts';
import { fixturePlan } from './fixture-plan.ts';

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

describe('a file that is not a plan', () => {
  it('is refused with every problem at once, and the plan on the table stays', async () => {
    const { page } = app;
    const before = await page.locator('.settled .layer.needle path').count();
    const broken = { ...fixturePlan(), shownIn: 'ells', top: { ...fixturePlan().top, borders: [{ width: 'wide', corners: 'round' }] } };
    const text = JSON.stringify(broken, null, 2);
    const read = readPlan(text);
    expect(read.ok).toBe(false);
    await giveFile(page, 'broken.json', text);
    const dialog = page.getByRole('alertdialog');
    await dialog.waitFor();
    const problems = await dialog.locator('.problems li').allTextContents();
    expect(problems).toEqual(read.ok ? [] : read.problem.map(({ message }) => message));
    expect(problems.length).toBeGreaterThanOrEqual(3);
    expect(await dialog.textContent()).toContain('untouched');
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await page.locator('.settled .layer.needle path').count()).toBe(before);
    expect(await page.title()).toMatch(/^Tidewater,/);
  });

  it('of any other kind is refused as well', async () => {
    const { page } = app;
    for (const text of ['', '{', 'GIF89a', '[]', '{"format":"something else"}', '{"format":"needlefall-plan","version":99}']) {
      await giveFile(page, 'odd.json', text);
      await page.getByRole('alertdialog').waitFor();
      await page.getByRole('button', { name: 'Back to the table' }).click();
      await page.getByRole('alertdialog').waitFor({ state: 'detached' });
    }
    expect(await page.title()).toMatch(/^Tidewater,/);
  });
});

describe('a plan', () => {
  it('dropped anywhere on the page lies on the table', async () => {
    const { page } = app;
    await dropFile(page, 'low-water.needlefall.json', writePlan(fixturePlan()));
    await page.waitForFunction(() => document.title.startsWith('Low water,'));
    await page.locator('.plan-state:text-is("Saved a moment ago")').waitFor();
  });

  it('keeps every undo, and says when its file is behind it', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('menuitemradio', { name: 'Centimetres' }).click();
    await page.keyboard.press('Escape');
    await page.waitForSelector('.ruler-corner:text-is("cm")');
    await page.locator('.plan-state:text-is("Saved a moment ago, not yet in its file")').waitFor();
    expect(await page.locator('.slip .about').first().textContent()).toMatch(/\scm wide/);
    await page.getByRole('button', { name: 'Undo: Show centimetres' }).click();
    await page.waitForSelector('.ruler-corner:text-is("in")');
    await page.getByRole('button', { name: 'Redo: Show centimetres' }).click();
    await page.waitForSelector('.ruler-corner:text-is("cm")');
    await page.keyboard.press('Control+z');
    await page.waitForSelector('.ruler-corner:text-is("in")');
  });

  it('is saved to a file that reads back as the same plan', async () => {
    const { page } = app;
    await page.getByRole('button', { name: /^Plan:/ }).click();
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('menuitem', { name: 'Save to a file…' }).click()]);
    expect(download.suggestedFilename()).toBe('low-water.needlefall.json');
    const read = readPlan(readFileSync(await download.path(), 'utf8'));
    expect(read).toEqual({ ok: true, value: fixturePlan() });
  });

  it('survives a walk through all rooms, back and forth', async () => {
    const { page } = app;
    await givePlan(page, fixturePlan());
    for (const room of ['Check', 'Paper', 'Top'] as const) await walkTo(page, room);
    await page.goBack();
    await page.waitForSelector('.rooms a[aria-current="page"]:text-is("Paper")');
    await page.goForward();
    await page.waitForSelector('.rooms a[aria-current="page"]:text-is("Top")');
    expect(await page.title()).toMatch(/^Low water,/);
  });

  it('of every example opens', async () => {
    const { page } = app;
    await page.getByRole('button', { name: /^Plan:/ }).click();
    const names = await page.getByRole('menu').getByRole('group').getByRole('menuitem').allTextContents();
    expect(names.length).toBeGreaterThanOrEqual(4);
    await page.keyboard.press('Escape');
    for (const name of names) {
      await page.getByRole('button', { name: /^Plan:/ }).click();
      await page.getByRole('menuitem', { name, exact: true }).click();
      await page.waitForFunction(() => document.querySelector('.plan-state')?.textContent === 'An example');
      expect(await page.locator('.settled .layer.needle path').count()).toBeGreaterThan(0);
    }
  });
});

describe('all the while', () => {
  it('nothing was asked of another place, and nothing went wrong', () => {
    expect(app.complaints()).toEqual([]);
  });
});
