import { describe, expect, it } from 'vitest';
import { readPathData } from '../geometry/svg/read.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import { isOwnMirrorImage } from './own-mirror-image.ts';

function shape(outline: string, window?: string): TemplateShape {
  const path = (d: string) => {
    const read = readPathData<'template'>(d);
    if (!read.ok) throw new Error(read.problem.message);
    return read.value[0]!;
  };
  return { outline: path(outline), windows: window === undefined ? [] : [{ id: 'w', path: path(window) }], etchings: [] };
}

describe('which shapes are their own mirror image', () => {
  // Plane symmetry groups: a parallelogram, an S and a pinwheel have turns only; the others have a mirror.
  it.each<[string, string, boolean]>([
    ['an isosceles triangle', 'M 0 0 L 4 0 L 2 5 Z', true],
    ['a scalene triangle', 'M 0 0 L 4 0 L 1 3 Z', false],
    ['a rectangle', 'M 0 0 L 6 0 L 6 1 L 0 1 Z', true],
    ['a parallelogram', 'M 0 0 L 6 0 L 7 1 L 1 1 Z', false],
    ['a circle', 'M -2 0 A 2 2 0 1 1 2 0 A 2 2 0 1 1 -2 0 Z', true],
    ['a band along an arc', 'M -3 0 A 5 5 0 0 1 3 0 L 3 1 A 5 5 0 0 0 -3 1 Z', true],
    ['an S', 'M -4 0 A 2 2 0 0 1 0 0 A 2 2 0 0 0 4 0 L 4 1 A 2 2 0 0 1 0 1 A 2 2 0 0 0 -4 1 Z', false],
    ['a drop lying aslant', 'M 0 0 L 3 1 A 2 2 0 0 1 1 3 Z', true],
  ])('%s', (_, outline, expected) => {
    expect(isOwnMirrorImage(shape(outline))).toBe(expected);
  });

  it('counts windows', () => {
    const square = 'M 0 0 L 6 0 L 6 6 L 0 6 Z';
    expect(isOwnMirrorImage(shape(square, 'M 2.5 1 L 3.5 1 L 3.5 2 L 2.5 2 Z'))).toBe(true);
    expect(isOwnMirrorImage(shape(square, 'M 3.5 1 L 4.5 1 L 4.5 2 L 3.5 2 Z'))).toBe(false);
  });
});
