// What the journeys through Audition share: a top from nothing, hands of either kind, and what the plan holds afterwards, read from
// the browser's own database without the app and set out again here.

import { readFileSync } from 'node:fs';
import { execFileSync } from 'node:child_process';
import type { CDPSession, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Evaluation } from '../../src/engine/evaluation.ts';
import { boundsOf, middleOfBounds } from '../../src/geometry/bounds.ts';
import { BUILT_IN_KIT } from '../../src/model/kit/built-in.ts';
import { shapeOf } from '../../src/model/kit/shape-of.ts';
import { readPlan } from '../../src/model/codec.ts';
import type { Placement, Plan, Registration, Sheet } from '../../src/model/plan.ts';
import { atRest, quiltBox, walkTo } from './app.ts';
import { keptPlans, planMenu, saved } from './plans.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A hand at the screen: a mouse, or fingers. Places are CSS pixels of the page. */
export interface Hands {
  readonly down: (at: Spot) => Promise<void>;
  readonly move: (to: Spot) => Promise<void>;
  readonly up: () => Promise<void>;
  readonly tap: (at: Spot) => Promise<void>;
  readonly tapTwice: (at: Spot) => Promise<void>;
  /** Presses a control. */
  readonly press: (control: Locator) => Promise<void>;
}

export function mouseHands({ mouse }: Page): Hands {
  return {
    down: async ({ x, y }) => {
      await mouse.move(x, y);
      await mouse.down();
    },
    move: ({ x, y }) => mouse.move(x, y),
    up: () => mouse.up(),
    tap: ({ x, y }) => mouse.click(x, y),
    tapTwice: ({ x, y }) => mouse.dblclick(x, y),
    press: (control) => control.click(),
  };
}

/** Fingers on the glass, as the system tells the browser of them. */
export function fingers(cdp: CDPSession): Hands & { readonly touch: (kind: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Spot[]) => Promise<void> } {
  const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Spot[]) => {
    await cdp.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(({ x, y }, id) => ({ x, y, id, radiusX: 6, radiusY: 6 })) });
  };
  const tap = async (at: Spot) => {
    await touch('touchStart', [at]);
    await touch('touchEnd', []);
  };
  return {
    touch,
    down: (at) => touch('touchStart', [at]),
    move: (to) => touch('touchMove', [to]),
    up: () => touch('touchEnd', []),
    tap,
    // All at once, so that a busy computer puts no pause between the taps that a finger would not make.
    tapTwice: async (at) => {
      await Promise.all([touch('touchStart', [at]), touch('touchEnd', []), touch('touchStart', [at]), touch('touchEnd', [])]);
    },
    press: (control) => control.tap(),
  };
}

/** Press, go along some places, let go. */
export async function lead(hands: Hands, ...[from, ...along]: readonly Spot[]): Promise<void> {
  await hands.down(from!);
  for (const at of along) await hands.move(at);
  await hands.up();
}

/** The straight way from one place to another, in steps. */
export function straightWay(from: Spot, to: Spot, steps = 8): readonly Spot[] {
  return Array.from({ length: steps + 1 }, (_, i) => ({ x: from.x + ((to.x - from.x) * i) / steps, y: from.y + ((to.y - from.y) * i) / steps }));
}

/** Round a middle, from one angle to another; degrees clockwise from the right. */
export function roundWay(middle: Spot, radius: number, from: number, to: number, steps = 10): readonly Spot[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return { x: middle.x + radius * Math.cos(angle), y: middle.y + radius * Math.sin(angle) };
  });
}

/** Two blocks by two of 12 in and a border of 6 in with cornerstones: the top is 36 in square, and block 1 has its middle 12 in from two edges. */
export const TOP = 36;
export const FIRST_BLOCK: Spot = { x: 12, y: 12 };

/** A plan from nothing, its top typed in. */
export async function measureTop(page: Page): Promise<void> {
  await planMenu(page, 'New plan');
  await page.waitForFunction(() => document.title.startsWith('New plan'));
  await page.evaluate(() => {
    location.hash = 'top';
  });
  const fill = async (label: string, text: string) => {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.keyboard.press('Enter');
  };
  await fill('blocks across', '2');
  await fill('blocks down', '2');
  await page.getByRole('button', { name: 'Add a border' }).click();
  await fill('width of the border', '6');
  await atRest(page);
  expect((await planNow(page)).plan.top.blocks).toMatchObject({ rows: 2, columns: 2, size: [12, 12] });
}

/** Walks to the table and waits until the area on it is shown. */
export async function toTable(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: 'Audition' }).click();
  await page.waitForSelector('.room.audition .slip h1');
  await settled(page);
}

/** Waits until the view rests and words have caught up with the hand. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
  });
  await atRest(page);
}

/** Puts the table about another kind of area; on a tablet the sheets stand behind one word. */
export async function workAt(page: Page, hands: Hands, kind: string): Promise<void> {
  const tabs = page.getByRole('button', { name: 'Sheets: all about them' });
  if (await tabs.isVisible()) await hands.press(tabs);
  await hands.press(page.getByRole('button', { name: /: choose another area$/ }).filter({ visible: true }));
  await hands.press(page.getByRole('menuitemradio', { name: kind }).first());
  if (await page.locator('.stack-dialog').isVisible()) await page.keyboard.press('Escape');
  await settled(page);
}

/** Where a place of the quilt, in inches from its upper left corner, lies on the screen: measured from the cloth that is drawn. */
export async function screenOf(page: Page): Promise<(x: number, y: number) => Spot> {
  await settled(page);
  const box = await quiltBox(page);
  const scale = box.width / TOP;
  return (x, y) => ({ x: box.x + x * scale, y: box.y + y * scale });
}

export interface Kept {
  readonly plan: Plan;
  readonly evaluation: Evaluation;
}

/** The plan as the browser keeps it, and all that follows from it. */
export async function planNow(page: Page): Promise<Kept> {
  await saved(page);
  const read = readPlan((await keptPlans(page))[0]!.text);
  if (!read.ok) throw new Error('what is kept cannot be read');
  return { plan: read.value, evaluation: evaluate(read.value) };
}

/** The one sheet for a kind of area. */
export function sheetFor({ plan }: Kept, kind: Sheet['for']['kind']): Sheet & { readonly id: string } {
  const [found] = Object.entries(plan.sheets).filter(([, sheet]) => sheet.for.kind === kind);
  if (!found) throw new Error(`there is no sheet for a ${kind}`);
  return { id: found[0], ...found[1] };
}

/** The placement that was laid last on a sheet. */
export function lastOn(sheet: Sheet): Placement {
  const placement = Object.values(sheet.placements).at(-1);
  if (!placement) throw new Error('nothing lies on the sheet');
  return placement;
}

/** As it is laid: where its pins put it. */
export function laidOf({ evaluation }: Kept, sheet: string, placement: string): Evaluation['placements'][number] {
  return evaluation.placements.find((laid) => laid.sheet === sheet && laid.placement === placement)!;
}

/** Says how the sheet repeats, by the buttons of the slip. */
export async function repeatIt(page: Page, hands: Hands, how: string, word: 'Repeat it' | 'Then also' = 'Repeat it'): Promise<void> {
  await hands.press(page.getByRole('button', { name: new RegExp(`^${word}:`) }));
  await hands.press(page.getByRole('menuitem', { name: how, exact: true }));
}

/** Changes one dotted word of the slip to another of its list. */
export async function changeWord(page: Page, hands: Hands, label: string, to: string): Promise<void> {
  await hands.press(page.getByRole('button', { name: new RegExp(`^${label}:`) }));
  await hands.press(page.getByRole('menuitemradio', { name: to, exact: true }));
}

/** From the origin of a template of the built-in kit, where its cross is, to the middle of its extent, by which a hand pulls it up. */
export function gripOf(template: string): Spot {
  const shape = shapeOf(BUILT_IN_KIT.templates[template]!);
  if (!shape.ok) throw new Error(`${template} cannot be drawn`);
  return middleOfBounds(boundsOf(shape.value.outline))!;
}

/** Where a template stands on the shelf. */
export async function onShelf(page: Page, name: string): Promise<Spot> {
  const button = page.getByRole('button', { name: new RegExp(`^${name}[.,]`) });
  await button.scrollIntoViewIfNeeded();
  const box = (await button.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + 50 };
}

/** A template of the built-in kit whose cross was put on the diagonal, and one that lies along it as well. */
export const ON_DIAGONAL: Registration = { put: 'etching:cross', on: 'line:diagonal-down' };
export const ALONG_DIAGONAL: Registration = { put: 'etching:centre-down', on: 'line:diagonal-down', angle: 0 };

/**
 * Places in inches from the middle of a block along the outer needle line of Arc 4, turned to face that middle from the upper left, when
 * its cross lies on the diagonal at (at, at): by degrees clockwise from the right, 45 on the diagonal.
 */
export function outerLine(at: number): (degrees: number) => readonly [x: number, y: number] {
  // The band is 4 in to its outside and 1 1/2 in wide, and the foot adds 1/4 in.
  const middle = at - (4 - 1.5 / 2) / Math.SQRT2;
  return (degrees) => [middle + 4.25 * Math.cos((degrees * Math.PI) / 180), middle + 4.25 * Math.sin((degrees * Math.PI) / 180)];
}

/** How long that line is from the diagonal to the vertical centre line, where x is 0: its angle there has the cosine of the middle's distance over the radius. */
export function toCentreLine(at: number): number {
  return 4.25 * (Math.PI / 4 - Math.acos(((4 - 1.5 / 2) / Math.SQRT2 - at) / 4.25));
}

/** Prints all of it and looks into the file: as many pages as promised, the plan's name, the check square's words. */
export async function printIt(page: Page): Promise<void> {
  await walkTo(page, 'Paper');
  const promised = Number(await page.locator('.fact-number').first().textContent());
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Make the PDF' }).click()]);
  const file = await download.path();
  expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
  expect(Number(/^Pages:\s+(\d+)/m.exec(execFileSync('pdfinfo', [file], { encoding: 'utf8' }))![1])).toBe(promised);
  const text = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' });
  expect(text).toContain('New plan');
  expect(text).toContain('exactly 1 in');
}

/** A picture for looking at, where NEEDLEFALL_SHOTS names a folder for them. */
export async function shoot(page: Page, name: string): Promise<void> {
  const folder = process.env['NEEDLEFALL_SHOTS'];
  if (folder === undefined) return;
  await page.screenshot({ path: `${folder}/${name}.png` });
}
