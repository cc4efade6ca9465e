// The hand on a large top, in headless Chromium: how long frames take while one placement, mirrored and turned eight times over the
// king-size example, is dragged, while the quilt is pushed, and while it is zoomed; with the processor as it is and slowed four
// times. Beside it, in the same run and the same browser, the same picture on a plain 2D canvas that draws everything anew in every
// frame. Frames are not held to the screen's rate, so that a frame's time is what it costs.

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type CDPSession, type Page, chromium } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../scripts/serve.mjs';
import { setOut } from '../src/engine/evaluate.ts';
import { carry } from '../src/geometry/pose.ts';
import { writePathData } from '../src/geometry/svg/write.ts';
import { readPlan } from '../src/model/codec.ts';
import type { Plan } from '../src/model/plan.ts';
import { axesOf } from '../src/session/lay/on-table.ts';
import { quiltPath } from '../src/stitch/quilt-path.ts';

const FRAMES = 90;
const SIZE = { width: 1440, height: 900 };
const SHEET = 'stars';

const root = fileURLToPath(new URL('../', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'needlefall-frames-'));
await build({ root: join(root, 'src/app'), configFile: join(root, 'vite.config.ts'), logLevel: 'error', build: { outDir: scratch, emptyOutDir: true } });
const server = await serve(scratch, 0);
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-frame-rate-limit', '--disable-gpu-vsync', '--no-first-run', '--disable-background-networking'],
});

try {
  const plan = kingSize();
  const { lines, placements, top } = setOut(plan);
  const [dragged] = Object.keys(plan.sheets[SHEET]!.placements) as [string];
  const followers = lines.filter((line) => line.sheet === SHEET && line.placement === dragged).length;
  console.log(`\n${lines.length.toLocaleString('en')} stitched lines; ${followers.toLocaleString('en')} of them follow the placement that is dragged. ${SIZE.width} x ${SIZE.height}, ${FRAMES} frames each.`);

  const laid = placements.find((one) => one.sheet === SHEET && one.placement === dragged)!;
  const area = top.areas.find(({ id }) => id === laid.areas[0])!;
  const { x, y } = carry(axesOf(laid, area), { x: laid.pose.x, y: laid.pose.y });
  const rows: string[][] = [];
  for (const slowed of [1, 4]) {
    const app = await openWithPlan(plan);
    await throttle(app.cdp, slowed);
    const record = async (what: string, run: () => Promise<readonly number[]>) => {
      rows.push([what, slowed === 1 ? '' : `${slowed} times slower`, ...statistics(await run())]);
      if (process.env['TALK']) console.log(rows.at(-1)!.join('  '));
    };
    await record('app: drag, one block in sight', () => dragTemplate(app, { x, y }));
    await app.page.getByRole('button', { name: 'Fit' }).click();
    await app.page.waitForTimeout(600 * slowed);
    await record('app: drag, whole top in sight', () => dragTemplate(app, { x, y }));
    await record('app: push', () => push(app));
    await record('app: zoom', () => zoom(app));
    await app.close();

    const canvas = await openCanvas(lines.map((line) => ({ d: writePathData(quiltPath(line)), moves: line.sheet === SHEET && line.placement === dragged })), top);
    await throttle(canvas.cdp, slowed);
    for (const what of ['drag', 'push', 'zoom'] as const) await record(`canvas: ${what}`, () => canvas.page.evaluate(`measure(${JSON.stringify(what)}, ${FRAMES})`));
    await canvas.close();
  }
  table(['', 'processor', 'median ms', '99th ms', 'frames/s'], rows);
  await sayFirstPicture();
} finally {
  await browser.close();
  await server.close();
  rmSync(scratch, { recursive: true, force: true });
}

/** The example with its stars mirrored and turned eight times, and nothing that pins the template that is dragged. */
function kingSize(): Plan {
  const read = readPlan(readFileSync(join(root, 'examples/king-size.needlefall.json'), 'utf8'));
  if (!read.ok) throw new Error('the example could not be read');
  const sheet = read.value.sheets[SHEET]!;
  const [first, ...others] = Object.entries(sheet.placements);
  const free = { ...first![1], registrations: [], repeat: [{ mirrorAndTurn: 8 }] };
  return { ...read.value, sheets: { ...read.value.sheets, [SHEET]: { ...sheet, placements: { [first![0]]: free, ...Object.fromEntries(others) } } }, sheetOrder: [SHEET] };
}

interface Open {
  readonly page: Page;
  readonly cdp: CDPSession;
  readonly close: () => Promise<void>;
}

async function openPage(): Promise<Open> {
  const context = await browser.newContext({ viewport: SIZE });
  const page = await context.newPage();
  return { page, cdp: await context.newCDPSession(page), close: () => context.close() };
}

async function openWithPlan(plan: Plan): Promise<Open> {
  const open = await openPage();
  await open.page.goto(server.address);
  await open.page.waitForSelector('.settled .layer.needle path', { state: 'attached' });
  await open.page.setInputFiles('[data-testid="plan-file"]', { name: 'king.needlefall.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(plan)) });
  await open.page.waitForFunction((name) => document.title.startsWith(name), plan.name);
  await open.page.evaluate('location.hash = "audition"');
  await open.page.waitForSelector('.room.audition .table');
  await open.page.waitForTimeout(1500);
  return open;
}

async function throttle(cdp: CDPSession, times: number): Promise<void> {
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** Picks the template by its line, takes it and leads it about in a small round, one move a frame. */
async function dragTemplate({ page, cdp }: Open, at: { readonly x: number; readonly y: number }): Promise<readonly number[]> {
  const placement = await page.evaluate(() => (document.querySelector('.laid-acrylic') ? 'there' : 'not there'));
  if (placement === 'not there') {
    await page.locator('.table').focus();
    await page.keyboard.press('PageDown');
    await page.waitForSelector('.laid-acrylic');
  }
  const grip = await page.evaluate(middleOfSheet);
  if (!grip) throw new Error(`the template is not on the table at ${at.x}, ${at.y}`);
  const mouse = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', x: number, y: number) =>
    cdp.send('Input.dispatchMouseEvent', { type, x, y, button: type === 'mouseMoved' ? 'none' : 'left', buttons: type === 'mouseReleased' ? 0 : 1, clickCount: 1 });
  await mouse('mouseMoved', grip.x, grip.y);
  await mouse('mousePressed', grip.x, grip.y);
  for (let i = 1; i <= 4; i++) await mouse('mouseMoved', grip.x + 2 * i, grip.y);
  const times = await recorded(page, async () => {
    for (let i = 0; i < FRAMES; i++) await mouse('mouseMoved', grip.x + 30 * Math.cos(i / 9), grip.y + 30 * Math.sin(i / 9));
  });
  const name = await page.locator('.table').getAttribute('data-gesture');
  if (name !== 'sliding') throw new Error(`the hand was ${name}, not sliding`);
  await mouse('mouseReleased', grip.x, grip.y);
  await page.keyboard.press('Control+z');
  await page.waitForTimeout(400);
  return times;
}


/** A place on the acrylic of the template that is picked out, in CSS pixels. */
function middleOfSheet(): { x: number; y: number } | undefined {
  const sheet = document.querySelector<SVGGeometryElement>('.laid-acrylic.picked .sheet');
  const matrix = sheet?.getScreenCTM();
  if (!sheet || !matrix) return undefined;
  const box = sheet.getBBox();
  for (let part = 0.1; part < 1; part += 0.05) {
    const place = new DOMPoint(box.x + box.width / 2, box.y + box.height * part);
    if (!sheet.isPointInFill(place)) continue;
    const { x, y } = place.matrixTransform(matrix);
    return { x, y };
  }
  return undefined;
}

async function push({ page, cdp }: Open): Promise<readonly number[]> {
  const box = (await page.locator('.table').boundingBox())!;
  const [x, y] = [box.x + 14, box.y + 14];
  const mouse = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', dx: number, dy: number) =>
    cdp.send('Input.dispatchMouseEvent', { type, x: x + dx, y: y + dy, button: type === 'mouseMoved' ? 'none' : 'left', buttons: type === 'mouseReleased' ? 0 : 1, clickCount: 1 });
  await mouse('mousePressed', 0, 0);
  const times = await recorded(page, async () => {
    for (let i = 0; i < FRAMES; i++) await mouse('mouseMoved', 8 + i * 2, 8 + 120 * Math.sin(i / 20));
  });
  await mouse('mouseReleased', 0, 0);
  await page.waitForTimeout(400);
  return times;
}

async function zoom({ page, cdp }: Open): Promise<readonly number[]> {
  const box = (await page.locator('.table').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const times = await recorded(page, async () => {
    for (let i = 0; i < FRAMES; i++) {
      const nearer = i % 60 < 30 ? -1 : 1;
      await cdp.send('Input.dispatchMouseEvent', { type: 'mouseWheel', x, y, deltaX: 0, deltaY: nearer * 30, modifiers: 2 });
    }
  });
  await page.waitForTimeout(400);
  return times;
}

/** The time from each frame to the next while something is done, in milliseconds. */
async function recorded(page: Page, act: () => Promise<void>): Promise<readonly number[]> {
  await page.evaluate(`window.frames = []; window.running = true; (function next(now) { window.frames.push(now); if (window.running) requestAnimationFrame(next); })(performance.now())`);
  await act();
  const frames = await page.evaluate<readonly number[]>('window.running = false, window.frames');
  return frames.slice(1).map((time, i) => time - frames[i]!);
}

/** The same lines and the same cloth on one canvas, everything drawn anew in every frame. */
async function openCanvas(lines: readonly { readonly d: string; readonly moves: boolean }[], top: { readonly width: number; readonly height: number; readonly areas: readonly unknown[] }): Promise<Open> {
  const open = await openPage();
  await open.page.setContent(`<canvas width="850" height="690"></canvas>`);
  // The bundler names inner functions by a helper that the page does not have.
  await open.page.evaluate('globalThis.__name = (named) => named');
  await open.page.evaluate(
    ([drawn, width, height]) => {
      const canvas = document.querySelector('canvas')!;
      const context = canvas.getContext('2d')!;
      const still = drawn.filter(({ moves }) => !moves).map(({ d }) => new Path2D(d));
      const moving = drawn.filter(({ moves }) => moves).map(({ d }) => new Path2D(d));
      const fit = Math.min(canvas.width / width, canvas.height / height) * 0.95;
      const draw = (x: number, y: number, scale: number, dx: number, dy: number) => {
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.clearRect(0, 0, canvas.width, canvas.height);
        context.setTransform(scale, 0, 0, scale, x, y);
        context.fillStyle = '#eee';
        context.fillRect(0, 0, width, height);
        context.lineWidth = 1.2 / scale;
        context.strokeStyle = '#0b0d12';
        for (const path of still) context.stroke(path);
        context.translate(dx, dy);
        for (const path of moving) context.stroke(path);
      };
      (window as unknown as { measure: unknown }).measure = async (what: string, frames: number) => {
        const times: number[] = [];
        let last = performance.now();
        for (let i = 0; i < frames; i++) {
          if (what === 'drag') draw(20, 20, fit, Math.cos(i / 9), Math.sin(i / 9));
          else if (what === 'push') draw(20 + i, 20 + 60 * Math.sin(i / 20), fit, 0, 0);
          else draw(20, 20, fit * (1 + (i % 60 < 30 ? i % 60 : 60 - (i % 60)) / 30), 0, 0);
          const now = await new Promise<number>((done) => requestAnimationFrame(done));
          times.push(now - last);
          last = now;
        }
        return times;
      };
    },
    [lines, top.width, top.height] as const,
  );
  return open;
}

/** What is loaded before the first picture, and when it is there. */
async function sayFirstPicture(): Promise<void> {
  const times: number[] = [];
  const scripts = new Set<string>();
  for (let i = 0; i < 5; i++) {
    const { page, close } = await openPage();
    page.on('request', (request) => {
      if (request.resourceType() === 'script') scripts.add(new URL(request.url()).pathname);
    });
    await page.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (!document.querySelector('.settled .layer.needle path')) return;
        observer.disconnect();
        requestAnimationFrame(() => requestAnimationFrame(() => performance.mark('first-picture')));
      }).observe(document, { subtree: true, childList: true });
    });
    const before = new Set(scripts);
    await page.goto(server.address);
    await page.waitForFunction(() => performance.getEntriesByName('first-picture').length > 0);
    times.push(await page.evaluate(() => performance.getEntriesByName('first-picture')[0]!.startTime));
    if (i > 0) for (const script of scripts) if (!before.has(script)) scripts.delete(script);
    await close();
  }
  const html = readFileSync(join(scratch, 'index.html'), 'utf8');
  const initial = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, path]) => path!);
  const kB = (paths: readonly string[]) => (paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(scratch, path))).length, 0) / 1000).toFixed(0);
  console.log(`\nInitial JavaScript: ${kB(initial)} kB gzip in ${initial.length} files; with what follows at once: ${kB([...scripts].map((path) => path.slice(1)))} kB in ${scripts.size} files.`);
  console.log(`First picture of the first example: ${times.sort((a, b) => a - b).map((time) => time.toFixed(0)).join(', ')} ms after the address was opened.`);
}

function statistics(times: readonly number[]): string[] {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;
  const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
  return [at(0.5).toFixed(1), at(0.99).toFixed(1), (1000 / mean).toFixed(0)];
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = head.map((name, i) => Math.max(name.length, ...rows.map((row) => row[i]!.length)));
  const line = (cells: readonly string[]) => cells.map((cell, i) => (i < 2 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  ');
  console.log(`\n${line(head)}`);
  for (const row of rows) console.log(line(row));
}
