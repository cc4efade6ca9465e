// What the journeys with plans do again and again, and what lies in the browser's database, read without the app.

import type { Page } from 'playwright-core';

/** Chooses a line of the plan menu. */
export async function planMenu(page: Page, item: string | RegExp): Promise<void> {
  await page.getByRole('button', { name: /^Plan:/ }).click();
  await page.getByRole('menuitem', { name: item, exact: true }).click();
}

/** Names the plan on the table. */
export async function namePlan(page: Page, name: string): Promise<void> {
  await planMenu(page, 'Name this plan…');
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

/** Shows lengths in inches or centimetres. */
export async function showLengthsIn(page: Page, unit: 'Inches' | 'Centimetres'): Promise<void> {
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('menuitemradio', { name: unit }).click();
  await page.keyboard.press('Escape');
  await page.waitForSelector(`.ruler-corner:text-is("${unit === 'Inches' ? 'in' : 'cm'}")`);
}

/** Waits until the header says that all is saved. */
export async function saved(page: Page): Promise<void> {
  await page.waitForSelector('.plan-state[data-kept="true"]:text-matches("^Saved a moment ago")');
}

/** Waits until a plan of this name lies on the table. */
export async function lies(page: Page, name: string): Promise<void> {
  await page.waitForFunction((wanted) => document.title === `${wanted}, Needlefall`, name);
}

export interface KeptRecord {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly deleted: boolean;
  /** The text in the place the head points to. */
  readonly text: string;
  readonly steps: { readonly kept: number; readonly done: number; readonly there: number };
}

/** Every plan in the database, the last changed first, read straight from its records. */
export async function keptPlans(page: Page): Promise<readonly KeptRecord[]> {
  return page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error!);
      });
    // Asking for a version would make a database where there is none.
    if (!(await indexedDB.databases()).some(({ name }) => name === 'needlefall')) return [];
    const db = await asked(indexedDB.open('needlefall'));
    type Head = { id: string; name: string; changed: number; revision: number; deleted?: number; steps: { kept: number; done: number } };
    const work = db.transaction(['plans', 'texts', 'steps']);
    const heads = (await asked(work.objectStore('plans').getAll())) as Head[];
    const kept = [];
    for (const { id, name, revision, deleted, steps } of heads.sort((a, b) => b.changed - a.changed)) {
      const text = (await asked(work.objectStore('texts').get([id, revision % 2]))) as { revision: number; text: string } | undefined;
      const there = await asked(work.objectStore('steps').count(IDBKeyRange.bound([id, 0], [id, Infinity])));
      kept.push({ id, name, revision, deleted: deleted !== undefined, text: text?.revision === revision ? text.text : '', steps: { ...steps, there } });
    }
    db.close();
    return kept;
  });
}
