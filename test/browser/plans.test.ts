// Plans as somebody keeps them: made, named, copied, deleted and brought back; versions; two windows; files.

import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { layTop } from '../../src/top/lay-top.ts';
import { readPlan, writePlan } from '../../src/model/codec.ts';
import type { Plan } from '../../src/model/plan.ts';
import { launchBrowser, serveApp } from '../support/browser.ts';
import { type Watched, firstPicture, openApp } from './app.ts';
import { objections } from './axe.ts';
import { fixturePlan } from './fixture-plan.ts';
import { givePlan } from './files.ts';
import { keptPlans, lies, namePlan, planMenu, saved, showLengthsIn } from './plans.ts';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveApp>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** The text of a plan's file as the app writes it: with its fields in the order they are read in. */
function textOf(plan: Plan): string {
  const read = readPlan(writePlan(plan));
  if (!read.ok) throw new Error(read.problem[0]!.message);
  return writePlan(read.value);
}

/** One journey in a browser that has kept nothing yet. */
async function journey(walk: (app: Watched) => Promise<void>, options: BrowserContextOptions = {}): Promise<void> {
  const app = await openApp(browser, server.address, options);
  try {
    await walk(app);
    expect(app.complaints()).toEqual([]);
  } finally {
    await app.close();
  }
}


describe('a plan of her own', () => {
  it('is what an example becomes with the first change; the example stays', () =>
    journey(async ({ page }) => {
      expect(await page.locator('.plan-state').textContent()).toBe('An example');
      expect(await keptPlans(page)).toEqual([]);
      await namePlan(page, 'My tide');
      await saved(page);
      const [kept] = await keptPlans(page);
      const shipped = readPlan(readFileSync(new URL('../../examples/tidewater.needlefall.json', import.meta.url), 'utf8'));
      const read = readPlan(kept!.text);
      expect(read.ok && shipped.ok && read.value).toEqual(shipped.ok && { ...shipped.value, name: 'My tide' });
      await planMenu(page, 'Tidewater');
      await lies(page, 'Tidewater');
      expect(await page.locator('.plan-state').textContent()).toBe('An example');
      expect(await keptPlans(page)).toHaveLength(1);
    }));

  it('lies on the table again after a reload, with every step of undo', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await namePlan(page, 'One');
      await namePlan(page, 'Two');
      await showLengthsIn(page, 'Centimetres');
      await page.getByRole('button', { name: 'Undo: Show centimetres' }).click();
      await page.waitForSelector('.ruler-corner:text-is("in")');
      await saved(page);
      await page.reload();
      await firstPicture(page);
      await lies(page, 'Two');
      await page.getByRole('button', { name: 'Redo: Show centimetres' }).click();
      await page.waitForSelector('.ruler-corner:text-is("cm")');
      for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
      await lies(page, fixturePlan().name);
      await saved(page);
      const [kept] = await keptPlans(page);
      const read = readPlan(kept!.text);
      expect(read.ok && read.value).toEqual(fixturePlan());
      expect(kept!.steps).toEqual({ kept: 3, done: 0, there: 3 });
    }));

  it('is named as it is typed, in one step; giving up goes back', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await planMenu(page, 'Name this plan…');
      await page.getByRole('textbox', { name: 'Name' }).fill('Not this');
      await lies(page, 'Not this');
      await page.keyboard.press('Escape');
      await lies(page, fixturePlan().name);
      expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    }));
});

describe('the list of plans', () => {
  it('holds a new plan, one from a file and a copy; names, deletes, brings back', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await planMenu(page, 'New plan');
      await lies(page, 'New plan');
      await saved(page);
      await planMenu(page, 'Your plans…');
      const cards = page.locator('.plan-card');
      await expect.poll(() => cards.locator('.plan-card-name').allTextContents()).toEqual(['New plan', 'Low water']);

      await page.getByRole('button', { name: 'More for Low water' }).click();
      await page.getByRole('menuitem', { name: 'Make a copy' }).click();
      await expect.poll(() => cards.locator('.plan-card-name').allTextContents()).toEqual(['Low water, copy', 'New plan', 'Low water']);

      await page.getByRole('button', { name: 'More for Low water, copy' }).click();
      await page.getByRole('menuitem', { name: 'Name…' }).click();
      await page.getByRole('textbox', { name: 'Name' }).fill('High water');
      await page.getByRole('button', { name: 'Name it' }).click();
      await expect.poll(() => cards.locator('.plan-card-name').allTextContents()).toContain('High water');

      await page.getByRole('button', { name: 'More for High water' }).click();
      await page.getByRole('menuitem', { name: 'Delete' }).click();
      await expect.poll(() => cards.count()).toBe(2);
      await page.getByRole('button', { name: 'Bring it back' }).click();
      await expect.poll(() => cards.count()).toBe(3);

      await page.getByRole('button', { name: 'Lay High water on the table' }).click();
      await lies(page, 'High water');
      // Naming it in the list was a step of its own, and can be undone from the table.
      await page.getByRole('button', { name: 'Undo: Name the plan' }).click();
      await lies(page, 'Low water, copy');
    }));

  it('brings back what was deleted earlier, and lets it go for good', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await planMenu(page, 'New plan');
      await saved(page);
      await planMenu(page, 'Your plans…');
      for (const name of ['Low water', 'New plan']) {
        await page.getByRole('button', { name: `More for ${name}` }).click();
        await page.getByRole('menuitem', { name: 'Delete' }).click();
        await page.getByRole('button', { name: `Bring back ${name}` }).waitFor();
      }
      await page.getByRole('button', { name: 'Back to the table' }).click();
      await page.reload();
      await firstPicture(page);
      await planMenu(page, 'Your plans…');
      await page.getByRole('button', { name: 'Bring back Low water' }).click();
      await page.getByRole('button', { name: 'Lay Low water on the table' }).waitFor();
      await page.getByRole('button', { name: 'Delete for good: New plan' }).click();
      await expect.poll(async () => (await keptPlans(page)).map(({ name }) => name)).toEqual(['Low water']);
    }));

  it('shows a true picture of each: its own shape, its own lines', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await planMenu(page, 'New plan');
      await saved(page);
      await planMenu(page, 'Your plans…');
      const picture = (name: string) => page.locator('.plan-card', { has: page.getByText(name, { exact: true }) }).locator('svg').first();
      await picture('Low water').waitFor();
      const box = (await picture('Low water').getAttribute('viewBox'))!.split(' ').map(Number);
      const top = layTop(fixturePlan().top);
      expect(box[2]! / box[3]!).toBeCloseTo(top.width / top.height, 2);
      expect(await picture('Low water').locator('.needle path').count()).toBe(1);
      await picture('New plan').waitFor();
      expect(await picture('New plan').locator('.needle path').count()).toBe(0);
    }));
});

describe('versions', () => {
  it('are kept by name; going back is a step of undo and keeps the state before', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await planMenu(page, 'Versions…');
      await page.getByRole('textbox', { name: 'Keep this as' }).fill('As it began');
      await page.keyboard.press('Enter');
      await page.locator('.version-row', { hasText: 'As it began' }).waitFor();
      await page.locator('.version-row svg').waitFor();
      await page.getByRole('button', { name: 'Back to the table' }).click();
      await namePlan(page, 'Later');
      await saved(page);
      await planMenu(page, 'Versions…');
      await page.getByRole('button', { name: /^Go back to this: As it began/ }).click();
      await lies(page, fixturePlan().name);
      await page.getByRole('button', { name: 'Undo: Go back to As it began' }).click();
      await lies(page, 'Later');
      await page.getByRole('button', { name: /^Redo/ }).click();
      await lies(page, fixturePlan().name);
      await planMenu(page, 'Versions…');
      await expect.poll(() => page.locator('.version-row .plan-card-name').allTextContents()).toEqual(['Before going back', 'As it began']);
      await page.getByRole('button', { name: /^More for Before going back/ }).click();
      await page.getByRole('menuitem', { name: 'Make a plan of it' }).click();
      await lies(page, 'Later, earlier');
    }));

  it('are kept by themselves when a burst of changes begins, and can be deleted and put back', () =>
    journey(async ({ page }) => {
      await page.clock.install();
      await givePlan(page, fixturePlan());
      await saved(page);
      const counted = async () => {
        await planMenu(page, 'Versions…');
        await page.waitForTimeout(300);
        const count = await page.locator('.version-row').count();
        await page.getByRole('button', { name: 'Back to the table' }).click();
        return count;
      };
      await namePlan(page, 'First');
      await saved(page);
      expect(await counted()).toBe(0);
      await page.clock.fastForward(90_000);
      await namePlan(page, 'Second');
      await namePlan(page, 'Third');
      await saved(page);
      expect(await counted()).toBe(1);
      await planMenu(page, 'Versions…');
      await page.getByRole('button', { name: /^More for Kept by itself/ }).click();
      await page.getByRole('menuitem', { name: 'Delete' }).click();
      await expect.poll(() => page.locator('.version-row').count()).toBe(0);
      await page.getByRole('button', { name: 'Bring it back' }).click();
      await page.getByRole('button', { name: /^Go back to this: Kept by itself/ }).click();
      await lies(page, 'First');
    }));
});

describe('two windows on one plan', () => {
  async function another(context: BrowserContext): Promise<Page> {
    const page = await context.newPage();
    await page.goto(server.address);
    await firstPicture(page);
    return page;
  }

  it('follow each other as things are done, undo too, and say that there are two', () =>
    journey(async ({ page, context }) => {
      await givePlan(page, fixturePlan());
      await saved(page);
      const second = await another(context);
      await lies(second, fixturePlan().name);
      await page.locator('.plan-state:text-is("Saved a moment ago, open in 2 windows")').waitFor();
      await namePlan(second, 'Named there');
      await lies(page, 'Named there');
      await showLengthsIn(page, 'Centimetres');
      await second.waitForSelector('.ruler-corner:text-is("cm")');
      // What was done here is undone there, and what was done there is undone here.
      await second.getByRole('button', { name: 'Undo: Show centimetres' }).click();
      await page.waitForSelector('.ruler-corner:text-is("in")');
      await page.getByRole('button', { name: 'Undo: Name the plan' }).click();
      await lies(second, fixturePlan().name);
      await second.close();
      await page.locator('.plan-state:text-is("Saved a moment ago, not yet in its file")').waitFor();
    }));

  it('that could not hear each other put together what they did to different things', () =>
    journey(async ({ page, context }) => {
      await context.addInitScript(() => Reflect.deleteProperty(window, 'BroadcastChannel'));
      await givePlan(page, fixturePlan());
      await saved(page);
      const [one, two] = [await another(context), await another(context)];
      await Promise.all([lies(one, fixturePlan().name), lies(two, fixturePlan().name)]);
      await namePlan(one, 'Named in one');
      await saved(one);
      await showLengthsIn(two, 'Centimetres');
      await lies(two, 'Named in one');
      await saved(two);
      const read = readPlan((await keptPlans(two))[0]!.text);
      expect(read.ok && read.value).toEqual({ ...fixturePlan(), name: 'Named in one', shownIn: 'cm' });
      expect(await two.locator('.strip-row').count()).toBe(0);
      await two.getByRole('button', { name: 'Undo: Show centimetres' }).click();
      await two.waitForSelector('.ruler-corner:text-is("in")');
      await two.getByRole('button', { name: 'Undo: Name the plan' }).click();
      await lies(two, fixturePlan().name);
    }));

  it('that changed the same thing keep both, and she is told', () =>
    journey(async ({ page, context }) => {
      await context.addInitScript(() => Reflect.deleteProperty(window, 'BroadcastChannel'));
      await givePlan(page, fixturePlan());
      await saved(page);
      const [one, two] = [await another(context), await another(context)];
      await Promise.all([lies(one, fixturePlan().name), lies(two, fixturePlan().name)]);
      await namePlan(one, 'Ebb');
      await saved(one);
      await namePlan(two, 'Flood');
      await two.getByRole('alert').filter({ hasText: 'changed in another window at the same moment' }).waitFor();
      await saved(two);
      expect((await keptPlans(two))[0]!.name).toBe('Flood');
      await two.getByRole('button', { name: 'Versions', exact: true }).click();
      await two.getByRole('button', { name: /^Go back to this: From the other window/ }).click();
      await lies(two, 'Ebb');
    }));

  it('do not lose a plan that one of them deletes while the other works on it', () =>
    journey(async ({ page, context }) => {
      await givePlan(page, fixturePlan());
      await saved(page);
      const second = await another(context);
      await lies(second, fixturePlan().name);
      await planMenu(second, 'Your plans…');
      await second.getByRole('button', { name: 'More for Low water' }).click();
      await second.getByRole('menuitem', { name: 'Delete' }).click();
      await second.getByRole('button', { name: 'Bring back Low water' }).waitFor();
      await namePlan(page, 'Still here');
      await second.getByRole('button', { name: /^Still here/ }).waitFor();
      expect((await keptPlans(page)).map(({ name, deleted }) => [name, deleted])).toEqual([['Still here', false]]);
    }));
});

describe('a file of her own', () => {
  it('is written back to without asking; a change from elsewhere is kept before it is written over', () =>
    journey(async ({ page }) => {
      // A file of the browser's own file system stands for one on the disk: pickers cannot be answered here.
      await page.evaluate(() => {
        const answer = async () => {
          (window as unknown as { asked: number }).asked = ((window as unknown as { asked?: number }).asked ?? 0) + 1;
          return (await navigator.storage.getDirectory()).getFileHandle('tide.needlefall.json', { create: true });
        };
        Object.assign(window, { showSaveFilePicker: answer, showOpenFilePicker: async () => [await answer()] });
      });
      const inFile = () => page.evaluate(async () => (await (await (await navigator.storage.getDirectory()).getFileHandle('tide.needlefall.json')).getFile()).text());
      const asked = () => page.evaluate(() => (window as unknown as { asked: number }).asked);
      await givePlan(page, fixturePlan());
      await planMenu(page, 'Save to a file…');
      await expect.poll(inFile).toBe(textOf(fixturePlan()));
      await saved(page);

      await namePlan(page, 'Second');
      await page.locator('.plan-state:text-is("Saved a moment ago, not yet in its file")').waitFor();
      await page.keyboard.press('Control+s');
      await expect.poll(inFile).toBe(textOf({ ...fixturePlan(), name: 'Second' }));
      await page.locator('.plan-state:text-is("Saved a moment ago")').waitFor();
      expect(await asked()).toBe(1);

      const elsewhere = textOf({ ...fixturePlan(), name: 'Changed elsewhere' });
      const writeElsewhere = () =>
        page.evaluate(async (text) => {
          const stream = await (await (await navigator.storage.getDirectory()).getFileHandle('tide.needlefall.json')).createWritable();
          await stream.write(text);
          await stream.close();
        }, elsewhere);
      await writeElsewhere();
      await namePlan(page, 'Third');
      await planMenu(page, 'Save to tide.needlefall.json');
      await expect.poll(inFile).toBe(textOf({ ...fixturePlan(), name: 'Third' }));
      await page.getByRole('alert').filter({ hasText: 'Something else had changed that file' }).waitFor();
      await page.getByRole('button', { name: 'Put away' }).click();
      await planMenu(page, 'Versions…');
      await page.locator('.version-row', { hasText: 'From its file' }).waitFor();
      await page.getByRole('button', { name: 'Back to the table' }).click();

      // Opened again, the file is still this plan: what it says now is one step of undo.
      await writeElsewhere();
      await planMenu(page, 'Open a file…');
      await lies(page, 'Changed elsewhere');
      expect((await keptPlans(page)).filter(({ deleted }) => !deleted)).toHaveLength(1);
      await page.getByRole('button', { name: 'Undo: Take what is in tide.needlefall.json' }).click();
      await lies(page, 'Third');

      // The handle is kept with the plan.
      await saved(page);
      await page.reload();
      await firstPicture(page);
      await planMenu(page, 'Save to tide.needlefall.json');
      await expect.poll(inFile).toBe(textOf({ ...fixturePlan(), name: 'Third' }));
    }));

  it('opened twice is one plan in the list', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await saved(page);
      await planMenu(page, 'Tidewater');
      await lies(page, 'Tidewater');
      await givePlan(page, fixturePlan());
      await saved(page);
      expect(await keptPlans(page)).toHaveLength(1);
    }));
});

describe('when nothing can be kept', () => {
  it('for want of a database, she is told, and the plan is saved to a file', () =>
    journey(async ({ page }) => {
      await page.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('Refused.', 'SecurityError');
        };
      });
      await page.reload();
      await firstPicture(page);
      await namePlan(page, 'Nowhere');
      await page.getByRole('alert').filter({ hasText: 'This browser keeps nothing for this page' }).waitFor();
      expect(await page.locator('.plan-state').textContent()).toBe('Not saved');
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save to a file', exact: true }).click()]);
      const read = readPlan(readFileSync(await download.path(), 'utf8'));
      expect(read.ok && read.value.name).toBe('Nowhere');
    }));

  it('for want of room, she is told; when there is room again all of it is kept', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await saved(page);
      await page.evaluate(() => {
        const room = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'put')!;
        (window as unknown as { makeRoom: () => void }).makeRoom = () => {
          Object.defineProperty(IDBObjectStore.prototype, 'put', room);
        };
        IDBObjectStore.prototype.put = function refuse() {
          this.transaction.abort();
          throw new DOMException('No room.', 'QuotaExceededError');
        };
      });
      await namePlan(page, 'Too much');
      await page.getByRole('alert').filter({ hasText: 'There is no room left on this device' }).waitFor();
      expect(await page.locator('.plan-state').textContent()).toBe('Not saved');
      await namePlan(page, 'Even more');
      expect((await keptPlans(page))[0]!.name).toBe(fixturePlan().name);
      await page.evaluate(() => (window as unknown as { makeRoom: () => void }).makeRoom());
      await page.getByRole('button', { name: 'Try again' }).click();
      await saved(page);
      const [kept] = await keptPlans(page);
      expect([kept!.name, kept!.steps]).toEqual(['Even more', { kept: 2, done: 2, there: 2 }]);
      expect(await page.locator('.strip-row').count()).toBe(0);
    }));

  it('because the last text was damaged, the one before it is laid on the table and the damaged one is kept', () =>
    journey(async ({ page }) => {
      await givePlan(page, fixturePlan());
      await namePlan(page, 'Good');
      await saved(page);
      await showLengthsIn(page, 'Centimetres');
      await saved(page);
      await page.evaluate(async () => {
        const db = await new Promise<IDBDatabase>((resolve) => {
          const request = indexedDB.open('needlefall');
          request.onsuccess = () => resolve(request.result);
        });
        const work = db.transaction(['texts'], 'readwrite');
        const texts = work.objectStore('texts');
        texts.getAll().onsuccess = (event) => {
          const all = (event.target as IDBRequest<{ revision: number; text: string }[]>).result;
          const last = all.sort((a, b) => b.revision - a.revision)[0]!;
          texts.put({ ...last, text: last.text.slice(0, 400) });
        };
        await new Promise((resolve) => {
          work.oncomplete = resolve;
        });
        db.close();
      });
      await page.reload();
      await firstPicture(page);
      await lies(page, 'Good');
      await page.waitForSelector('.ruler-corner:text-is("in")');
      await page.getByRole('alert').filter({ hasText: 'the one before it is on the table' }).waitFor();
      await planMenu(page, 'Versions…');
      await page.locator('.version-row', { hasText: 'Could not be read' }).waitFor();
    }));
});

describe('settings', () => {
  it('are there again after a reload: the hand, the light, the movement', () =>
    journey(async ({ page }) => {
      const sides = async () => {
        const [slip, table] = [await page.locator('.slip').boundingBox(), await page.locator('.table').boundingBox()];
        return slip!.x < table!.x ? 'slip first' : 'table first';
      };
      expect(await sides()).toBe('table first');
      for (const name of ['Left-handed', 'Slate', 'Less']) {
        await page.getByRole('button', { name: 'Settings' }).click();
        await page.getByRole('menuitemradio', { name }).click();
        await page.keyboard.press('Escape');
        await page.getByRole('menu').waitFor({ state: 'detached' });
      }
      await page.reload();
      await firstPicture(page);
      expect(await sides()).toBe('slip first');
      expect(await page.evaluate(() => ({ ...document.documentElement.dataset }))).toMatchObject({ hand: 'left', theme: 'slate', movement: 'less' });
      expect(await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--move-snap'))).toMatch(/^0m?s$/);
    }));
});


describe.each([
  ['light', 1440, 900],
  ['dark', 400, 800],
] as const)('the panels in the %s, %i wide', (colorScheme, width, height) => {
  it('are free of what axe-core objects to, fit the window, and can be pressed with a finger', () =>
    journey(
      async ({ page }) => {
        await givePlan(page, fixturePlan());
        await planMenu(page, 'New plan');
        await saved(page);
        const looksWell = async () => {
          // A panel that is just coming up is not yet told from the page behind it.
          await expect.poll(() => objections(page), { timeout: 10_000 }).toEqual([]);
          const sheet = (await page.getByRole('dialog').last().boundingBox())!;
          expect(sheet.y + sheet.height).toBeLessThanOrEqual(height);
          expect(sheet.x + sheet.width).toBeLessThanOrEqual(width);
          for (const button of await page.getByRole('dialog').last().getByRole('button').all()) {
            const box = await button.boundingBox();
            if (box && (await button.isVisible())) expect(Math.round(box.height), await button.innerText()).toBeGreaterThanOrEqual(44);
          }
        };
        await planMenu(page, 'Your plans…');
        await page.getByRole('button', { name: 'More for Low water' }).click();
        await page.getByRole('menuitem', { name: 'Delete' }).click();
        await page.locator('button:text-is("Bring it back"):focus').waitFor();
        await looksWell();
        await page.getByRole('button', { name: 'Back to the table' }).click();
        await planMenu(page, 'Versions…');
        await page.getByRole('textbox', { name: 'Keep this as' }).fill('One');
        await page.keyboard.press('Enter');
        await page.locator('.version-row').waitFor();
        await looksWell();
        await page.getByRole('button', { name: 'Back to the table' }).click();
        await planMenu(page, 'Name this plan…');
        await page.getByRole('textbox', { name: 'Name' }).waitFor();
        await looksWell();
      },
      { colorScheme, viewport: { width, height }, hasTouch: width === 400 },
    ));
});
