// What axe-core objects to on a page.

import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules whose answer hangs on colours. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'];

/**
 * Each objection with the first elements concerned; by the rules of colour alone, where all others have been asked of the same page
 * in another theme. Fails when axe-core looked at next to nothing.
 */
export async function objections(page: Page, rules: 'all' | 'of-colour' = 'all'): Promise<readonly string[]> {
  await page.evaluate(AXE);
  const options = rules === 'all' ? {} : { runOnly: { type: 'rule', values: OF_COLOUR } };
  type Axe = { readonly run: (options: unknown) => Promise<unknown> };
  const results = (await page.evaluate((how) => (window as unknown as { axe: Axe }).axe.run(how), options)) as AxeResults;
  expect(results.passes.length).toBeGreaterThan(rules === 'all' ? 10 : 0);
  return results.violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.slice(0, 4).map(({ html }) => html.slice(0, 240)).join(' and ')}`);
}
