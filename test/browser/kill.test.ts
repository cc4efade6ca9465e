// The browser killed in the middle of the work, again and again, and started again on the same profile: at most the last
// second of it may be lost, and never a plan. NEEDLEFALL_KILLS says how often (8 when it is not set).

import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type Page, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readPlan } from '../../src/model/codec.ts';
import type { Plan } from '../../src/model/plan.ts';
import { random } from '../../src/num/random.ts';
import { serveApp } from '../support/browser.ts';
import { skipTour } from './app.ts';
import { fixturePlan } from './fixture-plan.ts';
import { givePlan } from './files.ts';
import { type KeptRecord, keptPlans, namePlan, planMenu } from './plans.ts';

const KILLS = Number(process.env['NEEDLEFALL_KILLS'] ?? 8);
const SEED = Number(process.env['NEEDLEFALL_SEED'] ?? 1);
/** What may be lost, in milliseconds. */
const LAST_SECOND = 1000;

let server: Awaited<ReturnType<typeof serveApp>>;
let profile: string;

beforeAll(async () => {
  server = await serveApp();
  profile = mkdtempSync(join(tmpdir(), 'needlefall-kill-'));
});

afterAll(async () => {
  await server?.close();
  rmSync(profile, { recursive: true, force: true });
});

interface Running {
  readonly browser: Browser;
  readonly page: Page;
  /** Kills every process of the browser at once, as a crash or an empty battery would. */
  readonly kill: () => Promise<void>;
}

async function start(): Promise<Running> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const child = spawn(
    process.env['CHROMIUM'] ?? '/usr/bin/chromium',
    ['--headless=new', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--window-size=1440,900', `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'],
    { detached: true, stdio: 'ignore' },
  );
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const kill = async () => {
    killGroup(child);
    await gone;
  };
  try {
    const port = await portIn(portFile);
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    const context = browser.contexts()[0]!;
    await skipTour(context);
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(server.address);
    await page.waitForSelector('.settled .layer.ground path', { state: 'attached' });
    await page.waitForSelector('button.plan-name');
    return { browser, page, kill };
  } catch (problem) {
    await kill();
    throw problem;
  }
}

/** Its own process group: browser, renderers and the process that writes to the disk. */
function killGroup({ pid }: ChildProcess): void {
  try {
    process.kill(-pid!, 'SIGKILL');
  } catch {
    // It is gone already.
  }
}

async function portIn(file: string): Promise<number> {
  for (let tries = 0; tries < 600; tries++) {
    const text = existsSync(file) ? readFileSync(file, 'utf8') : '';
    if (text.includes('\n')) return Number(text.split('\n')[0]);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('The browser did not start.');
}

/** A name the work has given the plan on the table: when it was begun to be typed, and whether it was surely there. */
interface Done {
  readonly name: string;
  readonly at: number;
  sure: boolean;
}

it(
  `${KILLS} kills in the middle of the work lose at most the last second and never a plan, seed ${SEED}`,
  async () => {
    const { between, next, whole } = random(SEED);
    const fixture = fixturePlan();
    let running = await start();
    await givePlan(running.page, fixture);
    await expect.poll(async () => (await keptPlans(running.page)).length).toBe(1);
    // Plans that must be there, by the name each had when it was put away.
    const putAway: string[] = [];
    let table = fixture.name;
    const losses: number[] = [];
    let edits = 0;

    for (let kill = 1; kill <= KILLS; kill++) {
      // One plan in three rounds is put away for a new one before the work goes on.
      if (kill % 3 === 0) {
        await planMenu(running.page, 'New plan');
        await running.page.waitForFunction(() => document.title.startsWith('New plan'));
        putAway.push(table);
        table = `New ${kill}`;
        await namePlan(running.page, table);
        await expect.poll(async () => (await keptPlans(running.page))[0]?.name).toBe(table);
      }
      const done: Done[] = [{ name: table, at: performance.now(), sure: true }];
      let stopped = false;
      let begun = () => undefined as void;
      const hasBegun = new Promise<void>((resolve) => {
        begun = resolve;
      });
      // The work: sometimes letter by letter in one gesture, sometimes step by step, with undo and redo in between.
      const work = (async () => {
        for (let i = 1; !stopped; ) {
          await planMenu(running.page, 'Name this plan…');
          const box = running.page.getByRole('textbox', { name: 'Name' });
          for (let letters = whole(1, 30); letters > 0 && !stopped; letters--, i++) {
            const edit: Done = { name: `${kill}.${i}`, at: performance.now(), sure: false };
            done.push(edit);
            await box.fill(edit.name);
            edit.sure = true;
            edits += 1;
            begun();
          }
          await running.page.keyboard.press('Enter');
          if (next() < 0.5) {
            await running.page.keyboard.press('Control+z');
            await running.page.keyboard.press('Control+y');
          }
        }
      })().catch(() => begun());
      await hasBegun;
      await new Promise((resolve) => setTimeout(resolve, between(0, 2000)));
      stopped = true;
      const killedAt = performance.now();
      await running.kill();
      await work;
      await running.browser.close().catch(() => undefined);

      running = await start();
      const plans = await keptPlans(running.page);
      for (const plan of plans) expectWhole(plan);
      expect(plans.map(({ name }) => name)).toEqual(expect.arrayContaining(putAway));
      expect(plans).toHaveLength(putAway.length + 1);
      // What lies on the table is what is kept, and the last thing kept was done in the last second or later.
      const kept = plans[0]!.name;
      expect(await running.page.title()).toBe(`${kept}, Needlefall`);
      const index = done.map(({ name }) => name).lastIndexOf(kept);
      const lost = done.slice(index + 1).filter(({ sure }) => sure);
      const lostFor = lost[0] ? killedAt - lost[0].at : 0;
      expect(index, `the plan came back as ${kept}, which this round never called it`).toBeGreaterThanOrEqual(0);
      expect(lostFor, `${kept} came back; ${lost.map(({ name }) => name).join(', ')} were lost`).toBeLessThanOrEqual(LAST_SECOND);
      losses.push(lostFor);
      table = kept;
    }
    await running.kill();
    await running.browser.close().catch(() => undefined);
    // Else nothing was tried.
    expect(edits).toBeGreaterThanOrEqual(KILLS);
    const nothing = losses.filter((loss) => loss === 0).length;
    console.log(`${KILLS} kills, ${edits} edits, ${putAway.length + 1} plans, none lost; nothing lost in ${nothing}; the oldest edit lost was ${Math.round(Math.max(...losses))} ms old.`);
  },
  60_000 + KILLS * 30_000,
);

/** A plan as it was made, but for its name, with all the steps of undo its head speaks of. */
function expectWhole({ text, steps }: KeptRecord): void {
  const read = readPlan(text);
  expect(read.ok).toBe(true);
  if (!read.ok) return;
  const shape = (plan: Plan) => [Object.keys(plan.kit.templates), Object.keys(plan.kit.feet)];
  const fixture = fixturePlan();
  expect(shape(read.value)).toEqual(shape(fixture));
  if (Object.keys(read.value.sheets).length > 0) expect({ ...read.value, name: fixture.name }).toEqual(fixture);
  expect(steps.there).toBe(steps.kept);
  expect(steps.done).toBeLessThanOrEqual(steps.kept);
}
