import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { readPlan, writePlan } from '../../src/model/codec.ts';
import { random } from '../../src/num/random.ts';
import { mutateText, mutateValue } from '../support/mutate.ts';

const full = readFileSync(new URL('../corpus/plans/version-1.needlefall.json', import.meta.url), 'utf8');

/** In milliseconds; a busy machine takes a while over so many. */
const PATIENCE = 600_000;

/** Reads the text; what can be read must be evaluated, and written and read again as the same; what cannot must say why. */
function readAndEvaluate(text: string): boolean {
  const plan = readPlan(text);
  if (!plan.ok) {
    expect(plan.problem.length).toBeGreaterThan(0);
    for (const { message } of plan.problem) expect(message).toMatch(/^[^\n]+\.$/);
    return false;
  }
  const written = writePlan(plan.value);
  const again = readPlan(written);
  expect(again.ok && writePlan(again.value), text).toBe(written);
  const { lines, findings } = evaluate(plan.value);
  if (!lines.every(({ length }) => Number.isFinite(length) && length > 0)) expect.fail(`a line has no length: ${text}`);
  for (const { message } of findings) expect(message).toMatch(/\.$/);
  return true;
}

describe('damaged plan files', () => {
  it('5,000 damaged texts are read and evaluated, or refused, never thrown at (seed 11)', () => {
    const seeded = random(11);
    let read = 0;
    for (let i = 0; i < 5000; i++) if (readAndEvaluate(mutateText(full, seeded))) read++;
    expect(read).toBeGreaterThan(100);
    expect(read).toBeLessThan(4900);
  }, PATIENCE);

  it('5,000 changed values are read and evaluated, or refused, never thrown at (seed 12)', () => {
    const seeded = random(12);
    const value: unknown = JSON.parse(full);
    let read = 0;
    for (let i = 0; i < 5000; i++) if (readAndEvaluate(JSON.stringify(mutateValue(value, seeded)))) read++;
    expect(read).toBeGreaterThan(500);
    expect(read).toBeLessThan(4500);
  }, PATIENCE);
});
