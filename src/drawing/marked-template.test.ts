import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setOut } from '../engine/evaluate.ts';
import { marksOf } from '../engine/marks.ts';
import { boundsHold, boundsOf } from '../geometry/bounds.ts';
import { pathLength } from '../geometry/measure.ts';
import { whereIs } from '../geometry/inside.ts';
import { readPlan } from '../model/codec.ts';
import { markedTemplate } from './marked-template.ts';

function templatesOf(name: string) {
  const plan = readPlan(readFileSync(new URL(`../../examples/${name}.needlefall.json`, import.meta.url), 'utf8'));
  if (!plan.ok) throw new Error(`${name} is not a plan.`);
  return marksOf(setOut(plan.value)).templates;
}

describe('the picture of a template with its marks', () => {
  it.each(['practice-block', 'medallion', 'tidewater', 'king-size'])('of %s: every mark with its letter, on the face', (name) => {
    const templates = templatesOf(name);
    expect(templates.some(({ marks }) => marks.length > 0)).toBe(true);
    for (const template of templates) {
      const { items } = markedTemplate(template);
      const extent = boundsOf(template.shape.outline);
      for (const { letter } of template.marks) {
        const mine = items.filter(({ source }) => source === `mark:${letter}`);
        const letters = mine.filter((item) => item.kind === 'text');
        expect(letters.map((item) => item.text)).toEqual([letter]);
        for (const item of mine) {
          if (item.kind === 'text') {
            expect(boundsHold(extent, item.at, 0.4)).toBe(true);
            continue;
          }
          expect(pathLength(item.path)).toBeGreaterThan(0);
          const [a, b] = item.path.vertices;
          expect(whereIs(template.shape.outline, { x: (a!.x + b!.x) / 2, y: (a!.y + b!.y) / 2 })).toBe('inside');
        }
      }
    }
  });
});
