import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../engine/evaluate.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { pathLength, signedArea } from '../geometry/measure.ts';
import { readPlan } from '../model/codec.ts';
import { type DisplayItem, type DisplayList, LAYERS, type Layer } from './display-list.ts';
import { drawTop } from './draw.ts';

function example(name: string): Evaluation {
  const plan = readPlan(readFileSync(new URL(`../../examples/${name}.needlefall.json`, import.meta.url), 'utf8'));
  if (!plan.ok) throw new Error(JSON.stringify(plan.problem));
  return evaluate(plan.value);
}

const inLayer = (list: DisplayList<'quilt'>, layer: Layer) => list.items.filter((item) => item.layer === layer);
const paths = (items: readonly DisplayItem<'quilt'>[]) => items.flatMap((item) => (item.kind === 'path' ? [item.path] : []));
const total = (items: readonly DisplayItem<'quilt'>[]) => paths(items).reduce((sum, path) => sum + pathLength(path), 0);

describe('drawTop', () => {
  const evaluation = example('practice-block');
  const list = drawTop(evaluation);

  it('draws every stitched line once, as long as it is sewn', () => {
    const needle = inLayer(list, 'needle');
    expect(needle.map((item) => item.source)).toEqual(evaluation.lines.map((line) => line.id));
    expect(needle.length).toBeGreaterThan(0);
    expect(total(needle)).toBeCloseTo(evaluation.lines.reduce((sum, line) => sum + line.length, 0), 9);
  });

  it('paints from the ground up, in the order of the layers', () => {
    const order = list.items.map((item) => LAYERS.indexOf(item.layer));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('covers the top with its areas, no more and no less: areas add up to width times height', () => {
    const { width, height } = evaluation.top;
    const ground = paths(inLayer(list, 'ground')).reduce((sum, path) => sum + Math.abs(signedArea(path)), 0);
    expect(ground).toBeCloseTo(width * height, 9);
  });

  it('sets the allowance line off by the allowance: an inward parallel of a rectangle is 2 c less each way (Steiner)', () => {
    const { width, height } = evaluation.top;
    const { rawEdge } = evaluation.plan.top.clearance;
    const [line, ...others] = paths(inLayer(list, 'allowance'));
    const b = boundsOf(line!);
    expect(others).toEqual([]);
    expect([b.minX, b.minY, b.maxX, b.maxY]).toEqual([rawEdge, rawEdge, width - rawEdge, height - rawEdge].map((x) => expect.closeTo(x, 9) as number));
  });

  it('draws of each template what is sewn and what is not: together they are its whole needle lines', () => {
    for (const laid of evaluation.placements) {
      const source = `${laid.sheet}/${laid.placement}`;
      const here = drawTop(evaluation, { sheets: [laid.sheet] }).items.filter((item) => item.layer === 'needle-unsewn' && item.source === source);
      const sewn = laid.passes.reduce((sum, pass) => sum + (pass.kind === 'found' ? pass.length : 0), 0);
      const whole = laid.needle.lines.reduce((sum, line) => sum + line.length, 0);
      const copies = evaluation.placements.filter((other) => `${other.sheet}/${other.placement}` === source).length;
      expect(total(here) / copies + sewn).toBeCloseTo(whole, 6);
    }
    expect(evaluation.placements.length).toBeGreaterThan(0);
  });

  it('gives the same objects for what stayed the same', () => {
    const again = drawTop(evaluation);
    expect(again.items.length).toBe(list.items.length);
    again.items.forEach((item, i) => expect(item).toBe(list.items[i]));
  });

  it('keeps to the layers asked for', () => {
    const only = drawTop(evaluation, { layers: ['seam', 'needle'] });
    expect(new Set(only.items.map((item) => item.layer))).toEqual(new Set(['seam', 'needle']));
  });

  it('keeps to one area: its own lines and nothing drawn on its cloth beyond it', () => {
    const area = evaluation.lines[0]!.area;
    const one = drawTop(evaluation, { area });
    const [boundary] = paths(inLayer(one, 'ground'));
    expect(inLayer(one, 'needle').map((item) => item.source)).toEqual(evaluation.lines.filter((line) => line.area === area).map((line) => line.id));
    const b = boundsOf(boundary!);
    for (const path of paths(one.items.filter((item) => ['seam', 'raw-edge', 'allowance', 'keep-out'].includes(item.layer)))) {
      const inner = boundsOf(path);
      expect(inner.minX).toBeGreaterThanOrEqual(b.minX - 1e-9);
      expect(inner.maxX).toBeLessThanOrEqual(b.maxX + 1e-9);
      expect(inner.minY).toBeGreaterThanOrEqual(b.minY - 1e-9);
      expect(inner.maxY).toBeLessThanOrEqual(b.maxY + 1e-9);
    }
  });

  it('has nothing to show of an area that is not there', () => {
    expect(drawTop(evaluation, { area: 'block:r99c99' }).items).toEqual([]);
  });

  it('shows a finding where it is, with its number', () => {
    const finding = { code: 'x', severity: 'error', message: '', where: { at: [3, 4] } } as const;
    const signs = inLayer(drawTop({ ...evaluation, findings: [finding] }), 'finding');
    expect(signs.map((item) => item.source)).toEqual(['finding:1', 'finding:1']);
    const b = boundsOf(paths(signs)[0]!);
    expect([(b.minX + b.maxX) / 2, (b.minY + b.maxY) / 2]).toEqual([3, 4]);
    expect(signs[0]).toMatchObject({ filled: true });
  });

  it('names areas and templates when asked', () => {
    const texts = inLayer(drawTop(evaluation, { labels: true }), 'label').map((item) => (item.kind === 'text' ? item.text : ''));
    expect(texts).toContain(evaluation.top.areas[0]!.name);
    expect(inLayer(list, 'label')).toEqual([]);
  });

  it('keeps the ten thousand lines of a king-size top from one drawing to the next', () => {
    const king = example('king-size');
    expect(king.lines.length).toBeGreaterThan(10_000);
    const first = drawTop(king);
    const again = drawTop(king);
    expect(again.items.every((item, i) => item === first.items[i])).toBe(true);
  });
});
