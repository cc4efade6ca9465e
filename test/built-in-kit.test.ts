// The kit a new plan starts with, tried with its own feet.

import { expect, it } from 'vitest';
import { needleLines } from '../src/needle/needle-lines.ts';
import { BUILT_IN_KIT } from '../src/model/kit/built-in.ts';
import { shapeOf } from '../src/model/kit/shape-of.ts';

const templates = Object.entries(BUILT_IN_KIT.templates);
const feet = Object.values(BUILT_IN_KIT.feet);

it('every template can be drawn, and every foot can go round it and into its windows', () => {
  expect(templates.length).toBeGreaterThanOrEqual(16);
  expect(feet.length).toBeGreaterThanOrEqual(4);
  for (const [id, template] of templates) {
    const shape = shapeOf(template);
    expect(shape, id).toMatchObject({ ok: true });
    // Not the ditch: a 9/16 foot cannot enter one of 1/2.
    if (!shape.ok || id === 'ditch-10') continue;
    for (const { diameter } of feet) expect(needleLines(shape.value, diameter).collapsed, id).toEqual([]);
  }
});

it('a half-inch foot runs along the half-inch ditch in one straight line (slot of L - w between the ends’ centres)', () => {
  const shape = shapeOf(BUILT_IN_KIT.templates['ditch-10']!);
  if (!shape.ok) throw new Error(shape.problem.message);
  const lines = needleLines(shape.value, 0.5).lines.filter((line) => line.from === 'window:ditch');
  expect(lines).toHaveLength(1);
  expect(lines[0]!.length).toBeCloseTo(8 - 0.5, 9);
  expect(needleLines(shape.value, 9 / 16).collapsed).toEqual(['window:ditch']);
});

it('names are plain and told apart', () => {
  for (const things of [templates.map(([, { name }]) => name), feet.map(({ name }) => name)]) expect(new Set(things).size).toBe(things.length);
});

it('thickness is one that high or low shanks use', () => {
  for (const [, { thickness }] of templates) expect([1 / 4, 1 / 8]).toContain(thickness);
});
