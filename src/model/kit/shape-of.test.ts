import { describe, expect, it } from 'vitest';
import { pathLength, signedArea } from '../../geometry/measure.ts';
import type { OutlineTemplate, Template } from '../plan.ts';
import { shapeOf } from './shape-of.ts';

function ownOutline(outline: string, more: Partial<OutlineTemplate> = {}): Template {
  return { name: 'Mine', thickness: 0.25, grips: 'none', outline, ...more };
}

function problemOf(template: Template) {
  const shape = shapeOf(template);
  if (shape.ok) throw new Error('drawn');
  return shape.problem;
}

const SQUARE = 'M 0 0 H 4 V 4 H 0 Z';

describe('the shape of an own outline', () => {
  it('keeps arcs, and turns what was drawn counterclockwise', () => {
    // A half circle of radius 2 on its diameter, drawn counterclockwise: perimeter 2 pi + 4, area 2 pi.
    const shape = shapeOf(ownOutline('M 4 0 A 2 2 0 0 0 0 0 Z'));
    expect(shape.ok).toBe(true);
    if (!shape.ok) return;
    expect(signedArea(shape.value.outline)).toBeCloseTo(2 * Math.PI, 9);
    expect(pathLength(shape.value.outline)).toBeCloseTo(2 * Math.PI + 4, 9);
    expect(shape.value.outline.vertices).toHaveLength(2);
  });

  it('is the same for the same template', () => {
    const template = ownOutline(SQUARE);
    expect(shapeOf(template)).toBe(shapeOf(template));
  });

  it('closes ends that meet within 1/64 in, and refuses wider gaps', () => {
    const closed = shapeOf(ownOutline('M 0 0 H 4 V 4 H 0 V 0.01'));
    expect(closed.ok && signedArea(closed.value.outline)).toBeCloseTo(16, 1);
    expect(problemOf(ownOutline('M 0 0 H 4 V 4 H 0 V 0.25'))).toEqual({ field: 'outline', message: 'The outline must be closed; its ends are 1/4 in apart.', at: { x: 0, y: 0.25 } });
  });

  it('names the place where an outline crosses itself', () => {
    const problem = problemOf(ownOutline('M 0 0 L 4 4 H 0 L 4 0 Z'));
    expect(problem.field).toBe('outline');
    expect(problem.message).toBe('The outline crosses itself at 2, 2 in.');
    expect(problem.at?.x).toBeCloseTo(2, 9);
    expect(problem.at?.y).toBeCloseTo(2, 9);
  });

  it('refuses more than one path, none, and what cannot be read', () => {
    expect(problemOf(ownOutline(`${SQUARE} M 5 0 H 6 V 1 Z`))).toMatchObject({ field: 'outline', message: 'The outline must be one path; this has 2.' });
    expect(problemOf(ownOutline('')).field).toBe('outline');
    expect(problemOf(ownOutline('M 0 0 Q nonsense')).message).toMatch(/^The outline could not be read: /);
    expect(problemOf(ownOutline('M 0 0 H 4 Z')).message).toMatch(/^The outline /);
  });

  it('refuses windows that leave the outline, cross it or each other, or lie in one another', () => {
    const windows = (list: { [id: string]: string }) => problemOf(ownOutline(SQUARE, { windows: list }));
    expect(windows({ slot: 'M 5 1 h 1 v 1 h -1 Z' })).toMatchObject({ field: 'windows.slot', message: 'The window “slot” lies outside the outline.' });
    expect(windows({ slot: 'M 3 1 h 2 v 1 h -2 Z' })).toMatchObject({ field: 'windows.slot', message: 'The window “slot” meets the outline; it must lie within it.', at: { x: 4, y: 1 } });
    expect(windows({ slot: 'M 0 1 h 1 v 1 h -1 Z' }).message).toBe('The window “slot” meets the outline; it must lie within it.');
    expect(windows({ a: 'M 1 1 h 1 v 1 h -1 Z', b: 'M 1.5 1.5 h 1 v 1 h -1 Z' })).toMatchObject({ field: 'windows.b', message: 'The window “b” meets the window “a”; windows must lie apart.' });
    expect(windows({ a: 'M 1 1 h 2 v 2 h -2 Z', b: 'M 1.5 1.5 h 1 v 1 h -1 Z' }).message).toBe('The window “b” lies within the window “a”; windows must lie apart.');
    expect(windows({ b: 'M 1.5 1.5 h 1 v 1 h -1 Z', a: 'M 1 1 h 2 v 2 h -2 Z' }).message).toBe('The window “b” lies within the window “a”; windows must lie apart.');
    expect(windows({ bow: 'M 1 1 L 2 2 H 1 L 2 1 Z' }).message).toBe('The window “bow” crosses itself at 1.5, 1.5 in.');
    expect(windows({ open: 'M 1 1 h 1 v 1' }).message).toMatch(/^The window “open” must be closed; its ends are /);
  });

  it('keeps a window that is well placed, clockwise', () => {
    const shape = shapeOf(ownOutline(SQUARE, { windows: { slot: 'M 1 1 v 2 h 2 v -2 Z' } }));
    expect(shape.ok && shape.value.windows.map(({ id, path }) => [id, signedArea(path)])).toEqual([['slot', 4]]);
  });
});

describe('etchings', () => {
  it('of the template follow those of the family, or take their place', () => {
    const shape = shapeOf({
      name: 'Circle',
      thickness: 0.25,
      grips: 'none',
      family: 'circle',
      sizes: { diameter: 4 },
      etchings: {
        cross: { kind: 'cross', at: [1, 0], angle: 90, name: 'my cross' },
        swoop: { kind: 'curve', path: 'M -1 0 A 1 1 0 0 1 1 0' },
        dot: { kind: 'point', at: [0, 1] },
        level: { kind: 'line', from: [-1, 1], to: [1, 1] },
      },
    });
    expect(shape.ok).toBe(true);
    if (!shape.ok) return;
    const ids = shape.value.etchings.map((etching) => etching.id);
    expect(ids.slice(-3)).toEqual(['swoop', 'dot', 'level']);
    expect(ids.filter((id) => id === 'cross')).toHaveLength(1);
    expect(shape.value.etchings.find((etching) => etching.id === 'cross')).toEqual({ kind: 'cross', id: 'cross', name: 'my cross', at: { x: 1, y: 0 }, angle: Math.PI / 2 });
    const swoop = shape.value.etchings.find((etching) => etching.id === 'swoop');
    expect(swoop?.kind === 'curve' && pathLength(swoop.path)).toBeCloseTo(Math.PI, 9);
  });

  it('that cannot be read are named', () => {
    const template = ownOutline(SQUARE, { etchings: { swoop: { kind: 'curve', path: 'nonsense' } } });
    expect(problemOf(template).field).toBe('etchings.swoop');
  });
});

describe('the shape of a family', () => {
  it('that does not exist is told with those that do', () => {
    const problem = problemOf({ name: 'X', thickness: 0.25, grips: 'none', family: 'ark-band', sizes: {} });
    expect(problem.field).toBe('family');
    expect(problem.message).toMatch(/^There is no family “ark-band”; the families are straight-edge, .*arc-band/);
  });

  it('is drawn without the etchings the quilter’s own template does not have', () => {
    const circle = { name: 'X', thickness: 0.25, grips: 'none', family: 'circle', sizes: {} } as const;
    const ids = (template: Template) => {
      const shape = shapeOf(template);
      return shape.ok ? shape.value.etchings.map(({ id }) => id) : [];
    };
    const all = ids(circle);
    expect(all).toContain('cross');
    expect(ids({ ...circle, notEtched: ['cross', 'not-there'] })).toEqual(all.filter((id) => id !== 'cross'));
    // Her own cross is etched all the same.
    expect(ids({ ...circle, notEtched: ['cross'], etchings: { cross: { kind: 'cross', at: [1, 0], angle: 0 } } })).toContain('cross');
  });

  it('whose sizes do not go together names the size', () => {
    expect(problemOf({ name: 'X', thickness: 0.25, grips: 'none', family: 'arc-band', sizes: { radius: 2, width: 3 } }).field).toBe('sizes.width');
  });
});
