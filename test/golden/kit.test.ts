// The kit as a person would look at it: kit.svg beside this file, one sheet of all families. It is compared, never made
// anew, unless UPDATE_GOLDENS=1 asks for it; then look at it before it is kept.

import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { kitSheet } from './kit-sheet.ts';

const golden = new URL('kit.svg', import.meta.url);

it('every family draws as on the sheet that was looked at', () => {
  const sheet = kitSheet();
  if (process.env['UPDATE_GOLDENS'] === '1') writeFileSync(golden, sheet);
  expect(sheet).toBe(readFileSync(golden, 'utf8'));
});
