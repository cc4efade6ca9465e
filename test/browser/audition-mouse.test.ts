// Audition by mouse, a whole job: from an empty plan to a corner motif and its echo, a border, a medallion, and paper.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, openApp } from './app.ts';
import {
  ALONG_DIAGONAL, FIRST_BLOCK, type Hands, ON_DIAGONAL, type Spot, changeWord, gripOf, laidOf, lastOn, lead, measureTop, mouseHands, onShelf, outerLine,
  planNow, printIt, repeatIt, roundWay, screenOf, settled, sheetFor, shoot, straightWay, toCentreLine, toTable, workAt,
} from './audition-journey.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;
let page: Page;
let hands: Hands;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  page = app.page;
  hands = mouseHands(page);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** A place in the first block, in inches from its middle, on the screen. */
async function inBlock(): Promise<(x: number, y: number) => Spot> {
  const on = await screenOf(page);
  return (x, y) => on(FIRST_BLOCK.x + x, FIRST_BLOCK.y + y);
}

describe('the corner motif', () => {
  it('begins with a top measured from nothing', async () => {
    await measureTop(page);
    await toTable(page);
    await shoot(page, 'mouse-01-table');
  });

  it('a template is pulled up and let go near the diagonal: its cross is put on it, and it is not turned', async () => {
    const at = await inBlock();
    const grip = gripOf('arc-4');
    const from = await onShelf(page, 'Arc 4');
    await hands.down(from);
    for (const spot of straightWay(from, at(-1.45 + grip.x, -1.56 + grip.y)).slice(1)) await hands.move(spot);
    await expect.poll(() => page.locator('.near-tag').textContent()).toBe('Put the cross at the centre on the diagonal down to the right.');
    // What letting go will pin is said once on the slip.
    await expect.poll(() => page.locator('.slip .pin').count()).toBe(1);
    await shoot(page, 'mouse-02-in-hand');
    await hands.up();
    const kept = await planNow(page);
    const placement = lastOn(sheetFor(kept, 'block'));
    expect(placement).toMatchObject({ template: 'arc-4', flipped: false, registrations: [ON_DIAGONAL], passes: {} });
    expect(placement.pose).toEqual({ x: expect.closeTo(-1.505, 2) as number, y: placement.pose.x, angle: 0 });
  });

  it('the handle turns it about its pin until its centre line lies along the diagonal', async () => {
    const at = await inBlock();
    const middle = at(-1.505, -1.505);
    const box = (await page.locator('.turn-handle circle').boundingBox())!;
    const start = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const from = (Math.atan2(start.y - middle.y, start.x - middle.x) * 180) / Math.PI;
    await hands.down(start);
    for (const spot of roundWay(middle, Math.hypot(start.x - middle.x, start.y - middle.y), from, from + 134.2).slice(1)) await hands.move(spot);
    await settled(page);
    await shoot(page, 'mouse-03-turning');
    await hands.up();
    const placement = lastOn(sheetFor(await planNow(page), 'block'));
    expect(placement.registrations).toEqual([ON_DIAGONAL, ALONG_DIAGONAL]);
    expect(placement.pose.angle).toBeCloseTo(135, 4);
    await expect.poll(() => page.locator('.slip .about').textContent()).toContain('It can still slide down to the right.');
  });

  it('slides along the diagonal and no other way', async () => {
    const at = await inBlock();
    // Taken beside its middle and led off the diagonal by a quarter of an inch.
    await lead(hands, ...straightWay(at(-1.7, -1.5), at(-1.37, -1.67), 4), ...straightWay(at(-1.37, -1.67), at(-1.68, -1.48), 4));
    const kept = await planNow(page);
    const placement = lastOn(sheetFor(kept, 'block'));
    expect(placement.registrations).toEqual([ON_DIAGONAL, ALONG_DIAGONAL]);
    expect(placement.pose.x).toBeCloseTo(-1.485, 2);
    expect(placement.pose.y).toBeCloseTo(placement.pose.x, 4);
  });

  it('the foot is led from the diagonal to the centre line, and both ends are held by the lines they were drawn to', async () => {
    const at = await inBlock();
    const on = outerLine(lastOn(sheetFor(await planNow(page), 'block')).pose.x);
    const way = [44, 42, 40, 38, 36, 34, 32, 30, 28, 27].map((degrees) => at(...on(degrees)));
    await hands.down(way[0]!);
    for (const spot of way.slice(1)) await hands.move(spot);
    await expect.poll(() => page.locator('.near-tag').textContent()).toBe('At the vertical centre line');
    await shoot(page, 'mouse-04-tracing');
    await hands.up();
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    expect(lastOn(sheet).passes).toEqual({ a: { start: { crosses: 'line:diagonal-down', nth: 2 }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'counterclockwise' } });
    const [pass] = laidOf(kept, sheet.id, 'arc-4').passes;
    expect(pass?.kind === 'found' && pass.length).toBeCloseTo(toCentreLine(lastOn(sheet).pose.x), 3);
  });

  it('tapped twice it turns over, with what is sewn along it; F turns it back', async () => {
    const before = (await planNow(page)).plan.sheets;
    const at = await inBlock();
    await hands.tapTwice(at(-1.7, -1.5));
    const kept = await planNow(page);
    const over = lastOn(sheetFor(kept, 'block'));
    expect(over.flipped).toBe(true);
    await settled(page);
    await page.waitForTimeout(300);
    await shoot(page, 'mouse-05-face-down');
    // Face down, the same stretch of edge goes the other way from the diagonal: to the horizontal centre line.
    const [pass] = laidOf(kept, sheetFor(kept, 'block').id, 'arc-4').passes;
    const stop = pass?.kind === 'found' ? pass.path.vertices.at(-1)! : undefined;
    expect(stop?.y).toBeCloseTo(0, 3);
    await page.locator('.table').focus();
    await page.keyboard.press('f');
    const again = (await planNow(page)).plan.sheets['sheet']!.placements['arc-4']!;
    const once = before['sheet']!.placements['arc-4']!;
    expect({ ...again, pose: undefined }).toEqual({ ...once, pose: undefined });
    expect(again.pose.x).toBeCloseTo(once.pose.x, 4);
  });

  it('mirrored on the diagonal and turned four times, it is sewn eight times in each block', async () => {
    await repeatIt(page, hands, 'Mirrored');
    await changeWord(page, hands, 'Mirrored across', 'diagonal down to the right');
    await repeatIt(page, hands, 'Turned', 'Then also');
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    expect(sheet.repeat).toEqual([{ mirror: 'line:diagonal-down' }, { turn: 4 }]);
    expect(laidOf(kept, sheet.id, 'arc-4').images).toHaveLength(8);
    expect(kept.evaluation.lines).toHaveLength(4 * 8);
    await settled(page);
    await shoot(page, 'mouse-06-repeated');
  });

  it('its like, laid beside it and slid along the diagonal, echoes its line a quarter of an inch in', async () => {
    const first = lastOn(sheetFor(await planNow(page), 'block'));
    await page.getByRole('button', { name: 'Duplicate' }).click();
    const beside = lastOn(sheetFor(await planNow(page), 'block'));
    const at = await inBlock();
    const go = first.pose.x - 0.25 / Math.SQRT2 - beside.pose.x;
    const grip = { x: beside.pose.x - 0.2, y: beside.pose.y };
    await hands.down(at(grip.x, grip.y));
    for (const spot of straightWay(at(grip.x, grip.y), at(grip.x + go - 0.02, grip.y + go + 0.02)).slice(1)) await hands.move(spot);
    await settled(page);
    await shoot(page, 'mouse-07-echo-in-hand');
    await hands.up();
    await settled(page);
    await shoot(page, 'mouse-08-echo');
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    const echo = lastOn(sheet);
    expect(echo.registrations).toEqual([ON_DIAGONAL, ALONG_DIAGONAL]);
    // Both face down the diagonal, so where they cross it they are as far apart as the templates lie.
    const apart = Math.hypot(first.pose.x - echo.pose.x, first.pose.y - echo.pose.y);
    expect(Math.abs(apart - 0.25)).toBeLessThan(1 / 32);
    expect(echo.passes).toEqual(first.passes);
    await expect.poll(() => page.locator('.tape .fact').filter({ hasText: 'To Arc 4' }).textContent()).toContain('1/4');
    expect(kept.evaluation.lines).toHaveLength(4 * 8 * 2);
  });
});

describe('the border', () => {
  it('a leaf is laid on the middle of a side, sewn all round by two taps on its needle line, and runs along all four sides', async () => {
    await workAt(page, hands, 'Border 1, sides (4)');
    // The upper side: 6 in deep, its middle 18 in along and 3 in down. Along it the quilt is seen as it lies.
    const on = await screenOf(page);
    await lead(hands, ...straightWay(await onShelf(page, 'Leaf 4'), on(18.07, 3.06)));
    expect(lastOn(sheetFor(await planNow(page), 'border-side')).registrations[0]).toEqual({ put: 'etching:cross', on: 'centre' });
    // Above the middle of the leaf, which is 2 in wide, and beside the acrylic by the foot's quarter inch.
    await hands.tapTwice(on(18.6, 3 - 1.25));
    await repeatIt(page, hands, 'Along the border');
    await settled(page);
    await shoot(page, 'mouse-10-border');
    await page.getByRole('button', { name: /^How many along:/ }).click();
    await page.getByLabel('On every side').fill('5');
    await page.getByRole('button', { name: 'Done' }).click();
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'border-side');
    expect(lastOn(sheet).passes['a']).toMatchObject({ stop: 'all-round' });
    expect(sheet.repeat).toEqual([{ along: 'run', count: 5 }]);
    expect(kept.evaluation.lines.filter((line) => line.sheet === sheet.id)).toHaveLength(4 * 5);
    await settled(page);
    await shoot(page, 'mouse-11-border-of-five');
  });
});

describe('the medallion', () => {
  it('half a circle is traced above the centre, mirrored and turned eight times', async () => {
    await workAt(page, hands, 'Whole top');
    const on = await screenOf(page);
    await lead(hands, ...straightWay(await onShelf(page, 'Circle 3'), on(18.05, 13)));
    // The template's own centre line lies along that of the top: it says more than the cross alone.
    const laid = lastOn(sheetFor(await planNow(page), 'top'));
    expect(laid.registrations).toEqual([{ put: 'etching:centre-down', on: 'line:vertical-centre' }]);
    const { y } = laid.pose;
    const middle = { x: 18, y: 18 + y };
    const round = (degrees: number) => on(middle.x + 1.75 * Math.cos((degrees * Math.PI) / 180), middle.y + 1.75 * Math.sin((degrees * Math.PI) / 180));
    await hands.down(round(-89));
    for (let degrees = -80; degrees <= 89; degrees += 13) await hands.move(round(degrees));
    await hands.move(round(90));
    await hands.up();
    await repeatIt(page, hands, 'Mirrored and turned');
    await page.getByRole('button', { name: /^How many times:/ }).click();
    await page.getByRole('button', { name: '8', exact: true }).click();
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'top');
    expect(sheet.repeat).toEqual([{ mirrorAndTurn: 8 }]);
    expect(lastOn(sheet).passes).toEqual({ a: { start: { crosses: 'line:vertical-centre' }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'clockwise' } });
    const lines = kept.evaluation.lines.filter((line) => line.sheet === sheet.id);
    expect(lines).toHaveLength(16);
    // Half a circle of 3 in diameter and a quarter inch more all round.
    for (const line of lines) expect(line.length).toBeCloseTo(Math.PI * 1.75, 3);
    await settled(page);
    await shoot(page, 'mouse-12-medallion');
  });
});

describe('the whole job', () => {
  it('prints', async () => {
    await printIt(page);
    await shoot(page, 'mouse-13-printed');
  });

  it('asked nothing of another place, and nothing went wrong', () => {
    expect(app.complaints()).toEqual([]);
  });
});
