// A top measured from nothing, as a quilter would: counts, sizes, a border with its four sides, a bed, a keep-out drawn by hand.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, atRest, openApp } from './app.ts';
import { givePlan } from './files.ts';
import { plainPlan } from './fixture-plan.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  await givePlan(app.page, plainPlan());
  await app.page.getByLabel('Blocks across').waitFor();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const about = () => app.page.locator('.slip .about').textContent();
const fill = async (label: string, text: string) => {
  await app.page.getByLabel(label, { exact: true }).fill(text);
  await app.page.keyboard.press('Enter');
  await atRest(app.page);
};

describe('the Top room', () => {
  it('grows the picture as counts and sizes are typed, in fractions or centimetres', async () => {
    await fill('blocks across', '3');
    await fill('blocks down', '4');
    await fill('finished width of a block', '8 1/2');
    await fill('finished height of a block', '25.4 cm');
    const borders = await app.page.locator('fieldset.top-border legend', { hasText: 'Border' }).count();
    for (let i = 0; i < borders; i++) await app.page.getByRole('button', { name: /^Take off/ }).first().click();
    expect((await about())?.replace(/\s+/g, ' ')).toContain('40 in long');
  });

  it('says what cannot be read beside the field, and leaves the top as it was', async () => {
    const before = await about();
    await app.page.getByLabel('finished width of a block', { exact: true }).fill('about nine');
    expect(await app.page.locator('.typed-wrong').first().textContent()).toContain('about nine');
    await app.page.keyboard.press('Escape');
    expect(await about()).toBe(before);
  });

  it('adds a border and takes what the tape says of a side', async () => {
    await app.page.getByRole('button', { name: 'Add a border' }).click();
    await app.page.getByText('Measured lengths').click();
    await fill('top side, border 1', '25 5/8');
    expect(await app.page.getByText('Measure along the inner seam').isVisible()).toBe(true);
  });

  it('draws a keep-out by hand, and undo takes it away', async () => {
    const { page } = app;
    await page.getByRole('group', { name: 'Draw a keep-out' }).getByRole('button', { name: 'Round' }).click();
    const table = (await page.locator('.table').boundingBox())!;
    const middle = { x: table.x + table.width / 2, y: table.y + table.height / 2 };
    await page.mouse.move(middle.x, middle.y);
    await page.mouse.down();
    await page.mouse.move(middle.x + 40, middle.y, { steps: 4 });
    await page.mouse.up();
    await page.getByLabel(/Keep-out 1: across/).waitFor();
    await page.locator('.table').focus();
    await page.keyboard.press('Control+z');
    await page.getByText('Nothing to keep out of').waitFor();
  });

  it('brings the top near to a bed and says what it comes to', async () => {
    await app.page.getByText('For a bed').click();
    await app.page.getByRole('button', { name: /^Queen\./ }).click();
    await atRest(app.page);
    expect(app.complaints()).toEqual([]);
  });
});
