// Giving the app a plan's file, through the picker or by dropping it.

import type { Page } from 'playwright-core';
import { writePlan } from '../../src/model/codec.ts';
import type { Plan } from '../../src/model/plan.ts';

/** Opens a plan as if it had been chosen in the file picker, and waits until it lies on the table. */
export async function givePlan(page: Page, plan: Plan): Promise<void> {
  await giveFile(page, `${plan.name}.needlefall.json`, writePlan(plan));
  await page.waitForFunction((name) => document.title.startsWith(`${name},`), plan.name);
}

/** Chooses a file in the picker. */
export async function giveFile(page: Page, name: string, text: string): Promise<void> {
  await page.setInputFiles('input[type="file"]', { name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Holds a file over the page and lets it go. */
export async function dropFile(page: Page, name: string, text: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, content]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content!], fileName!, { type: 'application/json' }));
      return transfer;
    },
    [name, text],
  );
  await page.dispatchEvent('.table', 'dragenter', { dataTransfer: data });
  await page.dispatchEvent('.table', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('.table', 'drop', { dataTransfer: data });
}
