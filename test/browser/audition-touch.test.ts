// Audition by touch on a tablet, a whole job: fingers on the glass as the system tells the browser of them, two at once where a
// quilter would use two.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, openApp, quiltBox } from './app.ts';
import {
  FIRST_BLOCK, type Spot, changeWord, fingers, gripOf, laidOf, lastOn, lead, measureTop, onShelf, outerLine,
  planNow, printIt, repeatIt, roundWay, screenOf, settled, sheetFor, shoot, straightWay, toCentreLine, toTable, workAt,
} from './audition-journey.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;
let page: Page;
let hands: ReturnType<typeof fingers>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address, { viewport: { width: 1180, height: 820 }, hasTouch: true });
  page = app.page;
  hands = fingers(await app.context.newCDPSession(page));
  // A device that can be felt: how often it was tapped is counted.
  await page.evaluate(() => {
    const felt: number[] = [];
    Object.assign(window, { felt });
    navigator.vibrate = (pattern) => {
      felt.push(Number(pattern));
      return true;
    };
  });
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const felt = () => page.evaluate(() => (window as unknown as { felt: number[] }).felt.length);

/** A place in the first block, in inches from its middle, on the screen. */
async function inBlock(): Promise<(x: number, y: number) => Spot> {
  const on = await screenOf(page);
  return (x, y) => on(FIRST_BLOCK.x + x, FIRST_BLOCK.y + y);
}

/** Off the shelf upwards, and then over the table to a place: straight sideways would look along the shelf. */
function offShelf(from: Spot, to: Spot): readonly Spot[] {
  const above = { x: from.x, y: from.y - 110 };
  return [...straightWay(from, above, 4), ...straightWay(above, to, 8).slice(1)];
}

describe('the corner motif', () => {
  it('begins with a top measured from nothing', async () => {
    await measureTop(page);
    await toTable(page);
    await shoot(page, 'touch-01-table');
  });

  it('two fingers on the bare table bring it nearer, and what lies between them stays there', async () => {
    const before = await quiltBox(page);
    const at = await inBlock();
    const middle = at(2, 1);
    const spread = (reach: number): readonly Spot[] => [{ x: middle.x - reach, y: middle.y }, { x: middle.x + reach, y: middle.y }];
    await hands.touch('touchStart', spread(60));
    for (let reach = 66; reach <= 90; reach += 6) await hands.touch('touchMove', spread(reach));
    // And push it along together.
    const pushed = spread(90).map(({ x, y }) => ({ x: x + 30, y: y - 20 }));
    await hands.touch('touchMove', pushed);
    await hands.touch('touchEnd', []);
    const after = await screenOf(page);
    expect((await quiltBox(page)).width / before.width).toBeCloseTo(1.5, 1);
    const there = after(FIRST_BLOCK.x + 2, FIRST_BLOCK.y + 1);
    expect(Math.abs(there.x - middle.x - 30)).toBeLessThan(2);
    expect(Math.abs(there.y - middle.y + 20)).toBeLessThan(2);
    // And back, so that all of the block is in sight.
    await hands.press(page.getByRole('button', { name: 'Fit' }));
    await hands.tapTwice((await inBlock())(0, 0));
    await settled(page);
    expect((await quiltBox(page)).width).toBeGreaterThan(before.width * 0.9);
  });

  it('a template is pulled up by a finger, and turned and slid by two', async () => {
    const at = await inBlock();
    const grip = gripOf('arc-4');
    await lead(hands, ...offShelf(await onShelf(page, 'Arc 4'), at(-2.4 + grip.x, -2.9 + grip.y)));
    const laid = lastOn(sheetFor(await planNow(page), 'block'));
    expect(laid).toMatchObject({ template: 'arc-4', flipped: false, passes: {} });
    expect(laid.pose.angle).toBe(0);
    await shoot(page, 'touch-02-laid');
    // One finger stays on the cross, the other goes round it by 134 degrees.
    const still = at(laid.pose.x, laid.pose.y);
    const round = roundWay(still, 70, 10, 144, 16);
    await hands.touch('touchStart', [still]);
    await hands.touch('touchStart', [still, round[0]!]);
    for (const spot of round.slice(1)) await hands.touch('touchMove', [still, spot]);
    await settled(page);
    await shoot(page, 'touch-03-twisting');
    await hands.touch('touchEnd', []);
    const turned = lastOn(sheetFor(await planNow(page), 'block'));
    expect(turned.pose.angle).toBeCloseTo(134, 0);
    expect(Math.hypot(turned.pose.x - laid.pose.x, turned.pose.y - laid.pose.y)).toBeLessThan(0.05);
  });

  it('slid by a finger it is drawn to the diagonal, its centre line along it, and that is felt', async () => {
    const at = await inBlock();
    const { pose } = lastOn(sheetFor(await planNow(page), 'block'));
    const before = await felt();
    const way = straightWay(at(pose.x, pose.y), at(-1.47, -1.53));
    await hands.down(way[0]!);
    for (const spot of way.slice(1)) await hands.move(spot);
    await expect.poll(() => page.locator('.near-tag').first().textContent()).toContain('on the diagonal down to the right.');
    // What letting go will pin is said once on the slip: the centre line along the diagonal holds its cross there as well.
    await expect.poll(() => page.locator('.slip .pin').count()).toBe(1);
    await shoot(page, 'touch-04-drawn');
    await hands.up();
    expect(await felt()).toBeGreaterThan(before);
    const placement = lastOn(sheetFor(await planNow(page), 'block'));
    expect(placement.registrations).toEqual([{ put: 'etching:centre-down', on: 'line:diagonal-down' }]);
    expect(placement.pose.angle).toBeCloseTo(135, 3);
    expect(placement.pose.x).toBeCloseTo(-1.5, 1);
    expect(placement.pose.y).toBeCloseTo(placement.pose.x, 3);
  });

  it('what is too near a seam is hatched while it is there, with words and the length', async () => {
    const at = await inBlock();
    const { pose, registrations } = lastOn(sheetFor(await planNow(page), 'block'));
    expect(await page.locator('.overhang').count()).toBe(0);
    await hands.down(at(pose.x, pose.y));
    for (const spot of straightWay(at(pose.x, pose.y), at(pose.x - 2.3, pose.y - 2.3)).slice(1)) await hands.move(spot);
    await expect.poll(() => page.locator('.near-tag.over').textContent()).toMatch(/of the needle line is too near: .* over the (top|left) edge\.$/);
    expect(await page.locator('.overhang path').count()).toBeGreaterThan(0);
    await settled(page);
    await shoot(page, 'touch-05-overhang');
    for (const spot of straightWay(at(pose.x - 2.3, pose.y - 2.3), at(pose.x, pose.y)).slice(1)) await hands.move(spot);
    await hands.up();
    await expect.poll(() => page.locator('.overhang').count()).toBe(0);
    const again = lastOn(sheetFor(await planNow(page), 'block'));
    expect(again.pose.x).toBeCloseTo(pose.x, 1);
    expect(again.registrations).toEqual(registrations);
  });

  it('the foot follows a finger from the diagonal to the centre line', async () => {
    const at = await inBlock();
    const on = outerLine(lastOn(sheetFor(await planNow(page), 'block')).pose.x);
    await lead(hands, ...[44, 42, 40, 38, 36, 34, 32, 30, 28, 27].map((degrees) => at(...on(degrees))));
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    expect(lastOn(sheet).passes).toEqual({ a: { start: { crosses: 'line:diagonal-down', nth: 2 }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'counterclockwise' } });
    const [pass] = laidOf(kept, sheet.id, 'arc-4').passes;
    expect(pass?.kind === 'found' && pass.length).toBeCloseTo(toCentreLine(lastOn(sheet).pose.x), 3);
    await settled(page);
    await shoot(page, 'touch-06-traced');
  });

  it('two taps turn it over, and two more turn it back', async () => {
    const at = await inBlock();
    const once = lastOn(sheetFor(await planNow(page), 'block'));
    await hands.tapTwice(at(once.pose.x - 0.2, once.pose.y));
    await expect.poll(async () => lastOn(sheetFor(await planNow(page), 'block')).flipped).toBe(true);
    await page.waitForTimeout(400);
    await shoot(page, 'touch-07-face-down');
    await hands.tapTwice(at(once.pose.x - 0.2, once.pose.y));
    await expect.poll(async () => lastOn(sheetFor(await planNow(page), 'block')).flipped).toBe(false);
    const again = lastOn(sheetFor(await planNow(page), 'block'));
    expect(again.passes).toEqual(once.passes);
  });

  it('a tap on the bare table lets it go, a tap on its line picks it again', async () => {
    const at = await inBlock();
    const on = outerLine(lastOn(sheetFor(await planNow(page), 'block')).pose.x);
    await hands.tap(at(4, 4));
    await expect.poll(() => page.locator('.laid-acrylic').count()).toBe(0);
    await hands.tap(at(...on(36)));
    await expect.poll(() => page.locator('.slip h1').textContent()).toBe('Arc 4');
    await expect.poll(() => page.locator('.laid-acrylic.picked').count()).toBe(1);
  });

  it('mirrored on the diagonal and turned four times, it is sewn eight times in each block', async () => {
    await repeatIt(page, hands, 'Mirrored');
    await changeWord(page, hands, 'Mirrored across', 'diagonal down to the right');
    await repeatIt(page, hands, 'Turned', 'Then also');
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    expect(sheet.repeat).toEqual([{ mirror: 'line:diagonal-down' }, { turn: 4 }]);
    expect(kept.evaluation.lines).toHaveLength(4 * 8);
    await settled(page);
    await shoot(page, 'touch-08-repeated');
  });

  it('its like, slid along the diagonal, echoes its line a quarter of an inch in', async () => {
    const first = lastOn(sheetFor(await planNow(page), 'block'));
    await hands.press(page.getByRole('button', { name: 'Duplicate' }));
    const beside = lastOn(sheetFor(await planNow(page), 'block'));
    const at = await inBlock();
    const go = first.pose.x - 0.25 / Math.SQRT2 - beside.pose.x;
    const grip = at(beside.pose.x - 0.2, beside.pose.y);
    const to = at(beside.pose.x - 0.2 + go - 0.02, beside.pose.y + go + 0.02);
    await lead(hands, ...straightWay(grip, to));
    const kept = await planNow(page);
    const echo = lastOn(sheetFor(kept, 'block'));
    expect(echo.passes).toEqual(first.passes);
    expect(Math.abs(Math.hypot(first.pose.x - echo.pose.x, first.pose.y - echo.pose.y) - 0.25)).toBeLessThan(1 / 32);
    expect(Math.abs(echo.pose.x - echo.pose.y)).toBeLessThan(1e-4);
    expect(kept.evaluation.lines).toHaveLength(4 * 8 * 2);
    await settled(page);
    await shoot(page, 'touch-09-echo');
  });
});

describe('the border', () => {
  it('a leaf on the middle of a side, sewn all round, is mirrored at every division along all four', async () => {
    await workAt(page, hands, 'Border 1, sides (4)');
    const on = await screenOf(page);
    await lead(hands, ...offShelf(await onShelf(page, 'Leaf 4'), on(18.06, 3.05)));
    expect(lastOn(sheetFor(await planNow(page), 'border-side')).registrations[0]).toEqual({ put: 'etching:cross', on: 'centre' });
    await hands.tapTwice(on(18.6, 3 - 1.25));
    await repeatIt(page, hands, 'Along the border');
    await hands.press(page.getByRole('button', { name: /^How many along:/ }));
    await page.getByLabel('On every side').fill('4');
    await hands.press(page.getByRole('button', { name: 'Done' }));
    await hands.press(page.getByRole('button', { name: /^Arrangement:/ }));
    await hands.press(page.getByRole('button', { name: /^Scallop/ }));
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'border-side');
    expect(lastOn(sheet).passes['a']).toMatchObject({ stop: 'all-round' });
    expect(sheet.repeat).toEqual([{ along: 'scallop', count: 4 }]);
    expect(kept.evaluation.lines.filter((line) => line.sheet === sheet.id)).toHaveLength(4 * 4);
    await settled(page);
    await shoot(page, 'touch-10-border');
  });
});

describe('the medallion', () => {
  it('half a circle above the centre, mirrored and turned eight times', async () => {
    await workAt(page, hands, 'Whole top');
    const on = await screenOf(page);
    await lead(hands, ...offShelf(await onShelf(page, 'Circle 3'), on(18.05, 13)));
    const { y } = lastOn(sheetFor(await planNow(page), 'top')).pose;
    const round = roundWay(on(18, 18 + y), (1.75 * (await quiltBox(page)).width) / 36, -89, 90, 14);
    await lead(hands, ...round);
    await repeatIt(page, hands, 'Mirrored and turned');
    await hands.press(page.getByRole('button', { name: /^How many times:/ }));
    await hands.press(page.getByRole('button', { name: '8', exact: true }));
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'top');
    expect(sheet.repeat).toEqual([{ mirrorAndTurn: 8 }]);
    expect(lastOn(sheet).passes).toEqual({ a: { start: { crosses: 'line:vertical-centre' }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'clockwise' } });
    const lines = kept.evaluation.lines.filter((line) => line.sheet === sheet.id);
    expect(lines).toHaveLength(16);
    for (const line of lines) expect(line.length).toBeCloseTo(Math.PI * 1.75, 3);
    await settled(page);
    await shoot(page, 'touch-11-medallion');
  });
});

describe('the whole job', () => {
  it('prints', async () => {
    await printIt(page);
    await shoot(page, 'touch-12-printed');
  });

  it('asked nothing of another place, and nothing went wrong', () => {
    expect(app.complaints()).toEqual([]);
  });
});
