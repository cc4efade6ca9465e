// Drawings a person can look at: one SVG for each example plan. They are compared number by number, so that the last digit of
// another machine's sines does not matter. To accept a new drawing, look at it, then run with NEEDLEFALL_ACCEPT=1; a missing
// drawing is a failure, never made anew in passing.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawTop } from '../../src/drawing/draw.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { readPlan } from '../../src/model/codec.ts';
import { paintSvg } from '../../src/paper/svg.ts';

/** How far a number may differ, in inches; far below what any printer shows. */
const SAME_DRAWING = 1e-6;

const DRAWINGS = [
  { name: 'practice-block', plan: 'practice-block', area: undefined },
  { name: 'medallion', plan: 'medallion', area: undefined },
  { name: 'tidewater-border', plan: 'tidewater', area: 'border:1:top' },
  { name: 'tidewater-block', plan: 'tidewater', area: 'block:r1c1' },
  { name: 'king-size-block', plan: 'king-size', area: 'block:r1c1' },
] as const;

describe('drawings of the example plans', () => {
  for (const { name, plan, area } of DRAWINGS) {
    it(name, () => {
      const read = readPlan(readFileSync(new URL(`../../examples/${plan}.needlefall.json`, import.meta.url), 'utf8'));
      if (!read.ok) throw new Error(JSON.stringify(read.problem));
      const svg = paintSvg(drawTop(evaluate(read.value), { ...(area && { area }), labels: true }), { title: read.value.name });
      const file = new URL(`./drawing-${name}.svg`, import.meta.url);
      if (process.env['NEEDLEFALL_ACCEPT'] === '1' && process.env['CI'] === undefined) writeFileSync(file, svg);
      expect(existsSync(file), `${file.pathname} is missing`).toBe(true);
      expectSameDrawing(svg, readFileSync(file, 'utf8'));
    });
  }
});

const NUMBER = /-?\d+(?:\.\d+)?(?:e-?\d+)?/g;

function expectSameDrawing(drawn: string, kept: string): void {
  expect(drawn.replace(NUMBER, '#')).toBe(kept.replace(NUMBER, '#'));
  const numbers = (text: string) => (text.match(NUMBER) ?? []).map(Number);
  const before = numbers(kept);
  const off = numbers(drawn).reduce((worst, value, i) => Math.max(worst, Math.abs(value - before[i]!)), 0);
  expect(before.length).toBeGreaterThan(100);
  expect(off).toBeLessThan(SAME_DRAWING);
}
