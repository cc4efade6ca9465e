// A leaf: two equal arcs that meet in two points.
// Maths: with rounded points of radius t, an arc of radius R touches both from within and swells to half the width, so that
// (L/2 - t)^2 + (R - W/2)^2 = (R - t)^2, which gives R in closed form; with t = 0 it is the sagitta formula
// R = (L^2/4 + h^2) / 2h with h = W/2. The length and width are those of the finished, rounded leaf.

import { point } from '../../../geometry/point.ts';
import { centreMarks, innerLine, lineThrough } from '../draw/etch.ts';
import { arcBetween, towards, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const leaf = family({
  id: 'leaf',
  name: 'Leaf',
  about: 'Two equal curves that meet in a point at either end. Length and width are measured over all; the point radius rounds both points, 0 leaves them sharp.',
  sizes: {
    length: { name: 'length', least: 1, most: 24, usual: 8, unit: 'in' },
    width: { name: 'width', least: 0.5, most: 20, usual: 3.5, unit: 'in' },
    point: { name: 'point radius', least: 0, most: 2, usual: 0.0625, unit: 'in' },
  },
  useful: [
    { name: '8 by 3 1/2', sizes: {} },
    { name: '6 by 2 1/2', sizes: { length: 6, width: 2.5 } },
    { name: '4 by 2', sizes: { length: 4, width: 2 } },
    { name: '10 by 3', sizes: { length: 10, width: 3 } },
  ],
  draw: ({ length, width, point: tip }) => {
    const widest = 0.95 * length;
    if (width > widest) return tooGreat('width', 'width', width, widest, `a length of ${inches(length)}`);
    const bluntest = 0.4 * width;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a width of ${inches(width)}`);
    const reach = length / 2 - tip;
    const radius = (reach * reach + (width * width) / 4 - tip * tip) / (width - 2 * tip);
    const rise = radius - width / 2;
    const left = point<'template'>(-reach, 0);
    const right = point<'template'>(reach, 0);
    const below = point<'template'>(0, rise);
    const above = point<'template'>(0, -rise);
    const outline = trace(
      arcBetween(below, radius, towards(below, left), towards(below, right), 'clockwise'),
      arcBetween(right, tip, towards(below, right), towards(above, right), 'clockwise'),
      arcBetween(above, radius, towards(above, right), towards(above, left), 'clockwise'),
      arcBetween(left, tip, towards(above, left), towards(below, left), 'clockwise'),
    );
    return plainShape({
      outline,
      etchings: [
        ...centreMarks(outline),
        ...lineThrough(outline, 'division-left', 'line across half way to the left point', point(-length / 4, 0), 90),
        ...lineThrough(outline, 'division-right', 'line across half way to the right point', point(length / 4, 0), 90),
        ...innerLine(outline),
      ],
    });
  },
});
