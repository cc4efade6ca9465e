// Audition by keyboard alone, a whole job: from an empty plan to a corner motif and its echo, a border, a medallion, and paper.
// Nothing is clicked, touched or focused by the test: Tab and arrows lead, Enter and Space press, numbers are typed.

import { execFileSync } from 'node:child_process';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nearestOnPath } from '../../src/geometry/nearest.ts';
import { pathLength, pointAlong } from '../../src/geometry/measure.ts';
import type { Path } from '../../src/geometry/path.ts';
import { distance } from '../../src/geometry/point.ts';
import { toDegrees } from '../../src/num/angle.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, atRest, openApp } from './app.ts';
import { laidOf, planNow, sheetFor } from './audition-journey.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;
let app: Watched;
let page: Page;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
  app = await openApp(browser, server.address);
  page = app.page;
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** What the keyboard is on, by the name it is spoken by. */
function focused(): Promise<string> {
  return page.evaluate(() => {
    const on = document.activeElement;
    if (!on) return '';
    const label = on instanceof HTMLInputElement || on instanceof HTMLSelectElement ? on.labels?.[0]?.textContent : undefined;
    return (on.getAttribute('aria-label') ?? label ?? on.textContent ?? '').replace(/\s+/g, ' ').trim();
  });
}

async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** No room has more to stop at than this. */
const MOST_STOPS = 160;

/** Holds a key down with Shift until it has come so many times. */
async function held(key: string, times: number): Promise<void> {
  await page.keyboard.down('Shift');
  for (let i = 0; i < times; i++) await page.keyboard.down(key);
  await page.keyboard.up(key);
  await page.keyboard.up('Shift');
}

/** Goes on with Tab (or back with Shift and Tab) until the keyboard is on a thing of this name. */
async function tabTo(name: string | RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < MOST_STOPS; i++) {
    await page.keyboard.press(key);
    const here = await focused();
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    passed.push(here.slice(0, 40));
  }
  throw new Error(`Tab never came to ${name}; it passed ${passed.join(' | ')}`);
}

/** Walks down an open menu to a line of it and presses it. */
async function choose(name: string | RegExp): Promise<void> {
  await page.getByRole('menu').waitFor();
  for (let i = 0; i < 60; i++) {
    const here = await focused();
    if (typeof name === 'string' ? here === name : name.test(here)) {
      await press('Enter');
      return page.getByRole('menu').waitFor({ state: 'detached' });
    }
    await press('ArrowDown');
  }
  throw new Error(`no line of the menu is ${name}`);
}

/** In a list of the system's own: down to the choice of this name. */
async function pickFromList(name: string): Promise<void> {
  const now = () => page.evaluate(() => (document.activeElement as HTMLSelectElement).selectedOptions[0]?.textContent ?? '');
  await press('Home');
  for (let i = 0; i < 40 && (await now()) !== name; i++) await press('ArrowDown');
  expect(await now()).toBe(name);
}

/** Types into a field that the keyboard comes to. */
async function type(field: string, text: string, key?: 'Shift+Tab'): Promise<void> {
  await tabTo(field, key);
  await page.keyboard.type(text);
  await press('Enter');
}

/** Into a room by its link. */
async function walk(room: string): Promise<void> {
  // The links are near the page's beginning; from there back over the end of the page.
  await page.evaluate(() => getSelection()?.removeAllRanges());
  await tabTo(room, 'Shift+Tab');
  await press('Enter');
  await page.waitForSelector(`.rooms a[aria-current="page"]:text-is("${room}")`);
  await page.waitForSelector('.slip h1');
  await atRest(page);
}

/** Takes a template of the shelf, which lies on the middle of the area then, with the hands on the table. */
async function takeFromShelf(name: string): Promise<void> {
  await tabTo(new RegExp(`^${name}[.,]`));
  await press('Enter');
  await page.waitForFunction((title) => document.querySelector('.audition .slip h1')?.textContent === title, name);
  expect(await focused()).toContain('under the sheet');
}

/** Runs the foot on with a key until what is heard says that it stands where it should. */
async function runFootTo(key: string, heard: RegExp): Promise<void> {
  for (let i = 0; i < 12; i++) {
    await press(key);
    const said = await page.evaluate(() => new Promise<string>((tell) => requestAnimationFrame(() => tell(document.querySelector('.table [role="status"]')?.textContent ?? ''))));
    if (heard.test(said)) return;
  }
  throw new Error(`the foot never stood where ${heard} is heard`);
}

/** A button of the slip that opens a menu, and a line of it. */
async function menu(word: RegExp, line: string | RegExp): Promise<void> {
  await tabTo(word);
  await press('Enter');
  await choose(line);
}

async function workAt(kind: RegExp): Promise<void> {
  await tabTo(/: choose another area$/, 'Shift+Tab');
  await press('Enter');
  await choose(kind);
  await atRest(page);
}

describe('by keyboard alone', () => {
  it('a top is measured: two blocks by two, a border, an area of one’s own in the middle', async () => {
    await tabTo(/^Plan:|^Tidewater/);
    await press('Enter');
    await choose('New plan');
    await page.waitForFunction(() => document.title.startsWith('New plan'));
    await type('blocks across', '2');
    await type('blocks down', '2');
    await tabTo('Add a border');
    await press('Enter');
    await type('width of the border', '6', 'Shift+Tab');
    await tabTo('Add one in the middle');
    await tabTo('Add one in the middle');
    await press('Space');
    await type('Own area 1: from the left edge', '12', 'Shift+Tab');
    await type('Own area 1: from the top edge', '12');
    await type('Own area 1: width', '12');
    await type('Own area 1: height', '12');
    const { plan, evaluation } = await planNow(page);
    expect(plan.top.blocks).toMatchObject({ rows: 2, columns: 2, size: [12, 12] });
    expect(plan.top.borders).toMatchObject([{ width: 6 }]);
    expect([evaluation.top.width, evaluation.top.height]).toEqual([36, 36]);
    expect(evaluation.top.areas.find(({ kind }) => kind === 'drawn')).toMatchObject({ width: 12, height: 12, frame: { x: 18, y: 18 } });
  });

  it('a leaf is slid and turned to the diagonal, pinned, traced and mirrored into the four corners', async () => {
    await walk('Audition');
    await takeFromShelf('Leaf 4');
    await held('ArrowLeft', 10);
    await held('ArrowUp', 10);
    await held('.', 3);
    await press('p');
    const laid = sheetFor(await planNow(page), 'block');
    expect(laid.placements['leaf-4']).toMatchObject({ pose: { x: -2.5, y: -2.5, angle: 45 } });
    expect(laid.placements['leaf-4']!.registrations).toContainEqual(expect.objectContaining({ on: 'line:diagonal-down' }));
    // The foot runs to where the needle line crosses the diagonal, the needle goes down, and up again at the next crossing.
    await runFootTo('}', /The foot stands at the diagonal down to the right/);
    await press('Enter');
    await runFootTo('PageDown', /^At the diagonal down to the right/);
    await press('Enter');
    await menu(/^Repeat it:/, 'Mirrored');
    await tabTo(/^Mirrored across:/, 'Shift+Tab');
    await press('Enter');
    await choose('diagonal down to the right');
    await menu(/^Then also:/, 'Turned');
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    expect(sheet.repeat).toEqual([{ mirror: 'line:diagonal-down' }, { turn: 4 }]);
    expect(Object.values(sheet.placements['leaf-4']!.passes)).toMatchObject([{ start: { crosses: 'line:diagonal-down' }, stop: { crosses: 'line:diagonal-down' } }]);
    // Half a leaf, mirrored, in four corners of four blocks.
    expect(kept.evaluation.lines).toHaveLength(2 * 4 * 4);
  });

  it('its echo is laid a quarter of an inch away', async () => {
    await tabTo('Duplicate');
    await press('Enter');
    await page.getByRole('button', { name: 'Undo: Duplicate Leaf 4' }).waitFor();
    await tabTo('Add a pin', 'Shift+Tab');
    await press('Enter');
    await page.getByRole('dialog').waitFor();
    await tabTo('Put the');
    await pickFromList('centre line across');
    await tabTo('on the');
    await pickFromList('diagonal down to the right');
    await type('this far from it', '1/4');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await press('Enter');
    await page.getByRole('dialog').waitFor();
    await tabTo('Put the');
    await pickFromList('cross at the centre');
    await tabTo('on the');
    await pickFromList('diagonal up to the right');
    // The leaf it echoes has its cross 2 1/2 in left of and above the centre.
    await type('this far from it', `-${2.5 * Math.SQRT2}`);
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'block');
    const [first, echo] = Object.keys(sheet.placements);
    const [a, b] = [laidOf(kept, sheet.id, first!), laidOf(kept, sheet.id, echo!)];
    expect([a.standing.kind, b.standing.kind]).toEqual(['free', 'fixed']);
    const pathOf = ({ passes: [pass] }: typeof a): Path<'area'> => (pass?.kind === 'found' ? pass.path : { closed: false, vertices: [] });
    // Two copies of one curve slid apart square to their chord: at the middle they are as far apart as they were slid.
    const middle = pointAlong(pathOf(b), pathLength(pathOf(b)) / 2).point;
    expect(distance(nearestOnPath(pathOf(a), middle).point, middle)).toBeCloseTo(0.25, 3);
    expect(toDegrees(b.pose.angle)).toBeCloseTo(45, 6);
  });

  it('a swell runs along the border with a count', async () => {
    await workAt(/^Border sides|^Border 1/);
    await takeFromShelf('Long swell');
    await press('p');
    await menu(/^Repeat it:/, 'Along the border');
    await tabTo(/^How many along:/, 'Shift+Tab');
    await press('Enter');
    await page.getByRole('dialog').waitFor();
    await type('On every side', '3');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await tabTo('Add a pass', 'Shift+Tab');
    await press('Enter');
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'border-side');
    expect(sheet.repeat).toEqual([{ along: 'run', count: 3 }]);
    expect(sheet.placements['long-swell']!.registrations).toContainEqual(expect.objectContaining({ on: 'centre' }));
    expect(kept.evaluation.lines.filter((line) => line.sheet === sheet.id)).toHaveLength(3 * 4);
  });

  it('a medallion of eight leaves lies in the middle', async () => {
    await workAt(/^Drawn areas|^Own area|^Areas of/);
    await takeFromShelf('Leaf 4');
    await held('ArrowUp', 12);
    await held(',', 6);
    await press('p');
    await tabTo('Add a pass');
    await press('Enter');
    await menu(/^More: pass/, 'Sew all round');
    await menu(/^Repeat it:/, 'Turned');
    await tabTo(/^How many times:/, 'Shift+Tab');
    await press('Enter');
    await page.getByRole('dialog').waitFor();
    await tabTo('8');
    await press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    const kept = await planNow(page);
    const sheet = sheetFor(kept, 'drawn');
    const [leaf] = Object.values(sheet.placements);
    expect(leaf).toMatchObject({ pose: { x: 0, y: -3, angle: -90 }, passes: { a: { stop: 'all-round' } } });
    expect(leaf!.registrations).toContainEqual(expect.objectContaining({ on: 'line:vertical-centre' }));
    const lines = kept.evaluation.lines.filter((line) => line.sheet === sheet.id);
    expect(lines).toHaveLength(8);
    // Eight whole rounds of one needle line.
    const [laid] = kept.evaluation.placements.filter((one) => one.sheet === sheet.id);
    for (const line of lines) expect(line.length).toBeCloseTo(laid!.needle.lines[0]!.length, 6);
  });

  it('undo goes all the way back and redo all the way on', async () => {
    const before = (await planNow(page)).plan;
    let steps = 0;
    for (; steps < 60; steps++) {
      if ((await page.getByRole('button', { name: 'Undo', exact: true }).count()) > 0) break;
      await press('Control+z');
    }
    expect(Object.keys((await planNow(page)).plan.sheets)).toEqual([]);
    for (let i = 0; i < steps; i++) await press('Control+Shift+z');
    expect((await planNow(page)).plan).toEqual(before);
  });

  it('and is printed at full size', async () => {
    await walk('Paper');
    const promised = Number(await page.locator('.fact-number').first().textContent());
    await tabTo('Make the PDF', 'Shift+Tab');
    const [download] = await Promise.all([page.waitForEvent('download'), press('Enter')]);
    const file = await download.path();
    const info = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
    expect(Number(/^Pages:\s+(\d+)/m.exec(info)![1])).toBe(promised);
    expect(promised).toBeGreaterThan(4);
    expect(app.complaints()).toEqual([]);
  });
});
