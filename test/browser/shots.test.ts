// Pictures of every room for looking at, in test/browser/shots/: three sizes, light and dark.

import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { atRest, openApp, quiltBox, walkTo } from './app.ts';
import { givePlan } from './files.ts';
import { fixturePlan, plainPlan } from './fixture-plan.ts';

const SHOTS = fileURLToPath(new URL('shots/', import.meta.url));
const SIZES = [
  { name: '1440', viewport: { width: 1440, height: 900 }, hasTouch: false },
  { name: 'tablet', viewport: { width: 1180, height: 820 }, hasTouch: true },
  { name: 'phone', viewport: { width: 400, height: 860 }, hasTouch: true },
] as const;

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true });
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

describe.each(SIZES)('at $name', ({ name, viewport, hasTouch }) => {
  it.each(['light', 'dark'] as const)('in the %s', async (colorScheme) => {
    const app = await openApp(browser, server.address, { viewport, hasTouch, colorScheme });
    const { page } = app;
    const shoot = async (what: string) => {
      await atRest(page);
      await page.screenshot({ path: `${SHOTS}${what}-${name}-${colorScheme}.png`, animations: 'disabled' });
    };
    await shoot('top');
    const quilt = await quiltBox(page);
    await page.getByRole('switch', { name: 'Templates' }).check({ force: true });
    await page.mouse.dblclick(quilt.x + quilt.width * 0.5, quilt.y + quilt.height * 0.5);
    await shoot('area');
    await walkTo(page, 'Paper');
    await shoot('paper');
    await walkTo(page, 'Check');
    await givePlan(page, plainPlan());
    await shoot('check-nothing');
    await givePlan(page, fixturePlan());
    await shoot('check');
    await page.locator('.finding-press').first().click();
    await shoot('check-picked');
    expect(app.complaints()).toEqual([]);
    await app.close();
  });
});
