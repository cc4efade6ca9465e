// The PDF made in the browser: progress, a file that poppler can read and that measures true, and giving up.

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, openApp, walkTo } from './app.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  await walkTo(app.page, 'Paper');
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

describe('a full-size print', () => {
  it('shows how the pages fall, and says how many there are', async () => {
    const { page } = app;
    const [pages] = /\d+/.exec((await page.locator('.slip .sentence').first().textContent())!)!;
    const cells = await page.locator('.pages > g:not(.blank)').count();
    expect(Number(pages)).toBe(cells + 1);
  });

  it('comes as a file that poppler reads, with the pages that were promised, on the paper that was chosen', async () => {
    const { page } = app;
    await page.getByRole('radio', { name: /^A3/ }).check({ force: true });
    await page.waitForFunction(() => document.querySelector('.fact-number')?.textContent !== '82');
    const promised = Number(await page.locator('.fact-number').first().textContent());
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Make the PDF' }).click()]);
    expect(download.suggestedFilename()).toBe('tidewater.pdf');
    const file = await download.path();
    expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
    const info = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
    expect(Number(/^Pages:\s+(\d+)/m.exec(info)![1])).toBe(promised);
    // A3 is 297 x 420 mm (ISO 216), 841.89 x 1190.55 units of 1/72 in.
    const [, width, height] = /^Page size:\s+([\d.]+) x ([\d.]+)/m.exec(info)!;
    expect([Number(width), Number(height)].sort((a, b) => a - b)).toEqual([expect.closeTo(841.89, 1), expect.closeTo(1190.55, 1)]);
    const text = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' });
    expect(text).toContain('Tidewater');
    expect(text).toContain('exactly 1 in');
    await page.waitForSelector('.printed [role="status"]');
  });

  it('of one area is named after it', async () => {
    const { page } = app;
    await page.getByLabel('Area').selectOption({ index: 1 });
    await page.waitForFunction(() => Number(document.querySelector('.fact-number')?.textContent) < 10);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Make the PDF' }).click()]);
    expect(download.suggestedFilename()).toMatch(/^tidewater-block-.*\.pdf$/);
  });

  it('can be given up, and leaves nothing behind', async () => {
    const { page } = app;
    await page.getByLabel('Area').selectOption({ index: 0 });
    await page.getByRole('radio', { name: /^Letter/ }).check({ force: true });
    await page.waitForFunction(() => Number(document.querySelector('.fact-number')?.textContent) > 50);
    let downloads = 0;
    page.on('download', () => downloads++);
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    await page.getByRole('progressbar', { name: 'Making the PDF' }).waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('button', { name: 'Make the PDF' }).waitFor();
    await page.waitForTimeout(1500);
    expect(downloads).toBe(0);
    expect(await page.getByRole('progressbar').count()).toBe(0);
  });

  it('on a roll of the width that was typed; what cannot be read is said and changes nothing', async () => {
    const { page } = app;
    await page.getByRole('radio', { name: /^Roll/ }).check({ force: true });
    const width = page.getByLabel('Width of the roll');
    await width.fill('36');
    await page.waitForFunction(() => Number(document.querySelector('.fact-number')?.textContent) <= 3);
    await width.fill('three feet');
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('alert').textContent()).toContain('three feet');
    await width.fill('2 ft 6 in');
    await page.getByRole('alert').waitFor({ state: 'detached' });
    await width.fill('1');
    await page.waitForSelector('.slip .sentence:has-text("roll")');
    expect(await page.getByRole('button', { name: 'Make the PDF' }).isDisabled()).toBe(true);
  });

  it('asked nothing of another place, and nothing went wrong', () => {
    expect(app.complaints()).toEqual([]);
  });
});
