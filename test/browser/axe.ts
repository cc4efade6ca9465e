// What axe-core objects to on a page.

import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Each objection with the first element concerned. Fails when axe-core looked at next to nothing. */
export async function objections(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  const results = (await page.evaluate(() => (window as unknown as { axe: { run: () => Promise<unknown> } }).axe.run())) as AxeResults;
  expect(results.passes.length).toBeGreaterThan(10);
  return results.violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes[0]?.html}`);
}
