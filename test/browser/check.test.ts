// Leaving findings so, with a reason, taking them up again, and undoing both: by mouse and by keyboard.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findingKey } from '../../src/check/finding-key.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, atRest, openApp, walkTo } from './app.ts';
import { givePlan } from './files.ts';
import { fixturePlan } from './fixture-plan.ts';
import { keptPlans, saved } from './plans.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;

const findings = evaluate(fixturePlan()).findings;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  await givePlan(app.page, fixturePlan());
  await walkTo(app.page, 'Check');
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** The rows under a heading of the slip. */
function rowsUnder(heading: string) {
  return app.page.locator('.slip-part', { has: app.page.getByRole('heading', { name: heading, exact: true }) }).locator('.finding');
}

async function acceptedInDatabase(): Promise<unknown> {
  await saved(app.page);
  const [plan] = await keptPlans(app.page);
  return (JSON.parse(plan!.text) as { accepted?: unknown }).accepted;
}

describe('findings', () => {
  it('lie in groups by what they ask for, each with a picture that shows what is sewn there', async () => {
    const bySeverity = (severity: string) => findings.filter((finding) => finding.severity === severity).length;
    expect(await rowsUnder('Mend before sewing').count()).toBe(bySeverity('error'));
    expect(await rowsUnder('Look at it and decide').count()).toBe(bySeverity('warning'));
    const first = app.page.locator('.findings > .finding').first();
    await first.locator('.loupe-small .layer.needle path').first().waitFor({ state: 'attached' });
    expect(await first.textContent()).toContain('Measured');
  });

  it('are left so for a usual reason, counted no more, and kept with the plan', async () => {
    const { page } = app;
    const [first] = findings;
    const before = await page.locator('.slip h1').textContent();
    await page.locator('.finding-press').first().click();
    await atRest(page);
    await page.getByRole('button', { name: 'Leave it so…' }).click();
    expect(await page.getByRole('button', { name: 'Leave it so', exact: true }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'It is meant so.' }).click();
    await page.getByRole('button', { name: 'Leave it so', exact: true }).click();
    await rowsUnder('Left so').first().waitFor();
    expect(await rowsUnder('Left so').textContent()).toContain('It is meant so.');
    expect(await page.locator('.slip h1').textContent()).not.toBe(before);
    expect(await page.locator('.slip .about').textContent()).toContain('1 is left so.');
    // The hand stays on it in its new place.
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-finding'))).toBe(findingKey(first!));
    expect(await acceptedInDatabase()).toEqual({ [findingKey(first!)]: { reason: 'It is meant so.' } });
  });

  it('come back with one step of undo, and go again with redo', async () => {
    const { page } = app;
    await page.getByRole('button', { name: 'Undo: Leave it so' }).click();
    expect(await rowsUnder('Left so').count()).toBe(0);
    expect(await acceptedInDatabase()).toBeUndefined();
    await page.getByRole('button', { name: 'Redo: Leave it so' }).click();
    expect(await rowsUnder('Left so').count()).toBe(1);
  });

  it('are taken up again', async () => {
    const { page } = app;
    const row = rowsUnder('Left so').first();
    if ((await row.getAttribute('class')) === 'finding') await row.locator('.finding-press').click();
    await page.getByRole('button', { name: 'Take it up again' }).click();
    expect(await rowsUnder('Left so').count()).toBe(0);
    expect(await page.locator('.findings > .finding').count()).toBe(findings.length);
  });

  it('are left so by keyboard alone, with a reason of her own', async () => {
    const { page } = app;
    await page.locator('.finding-press').nth(1).focus();
    await page.keyboard.press('Enter');
    const named = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    for (let i = 0; i < 8 && !(await named()).startsWith('Leave it so'); i++) await page.keyboard.press('Tab');
    expect(await named()).toBe('Leave it so…');
    await page.keyboard.press('Enter');
    await page.keyboard.type('A cushion is trimmed there.');
    await page.keyboard.press('Enter');
    await rowsUnder('Left so').first().waitFor();
    expect(await rowsUnder('Left so').textContent()).toContain('A cushion is trimmed there.');
    expect(await acceptedInDatabase()).toEqual({ [findingKey(findings[1]!)]: { reason: 'A cushion is trimmed there.' } });
  });
});

describe('a reason whose finding is gone', () => {
  it('is shown apart, and can be forgotten', async () => {
    const { page } = app;
    await givePlan(page, { ...fixturePlan(), name: 'High water', accepted: { 'near-seam/leaves/gone/round/': { reason: 'It was meant so.' } } });
    const part = page.locator('.slip-part', { has: page.getByRole('heading', { name: 'Reasons for what is not found any more' }) });
    expect(await part.textContent()).toContain('Too near to a seam, on Leaves to the corners');
    expect(await part.textContent()).toContain('It was meant so.');
    await part.getByRole('button', { name: /^Forget the reason/ }).click();
    await part.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo: Forget a reason' }).click();
    await part.waitFor();
    expect(app.complaints()).toEqual([]);
  });
});
