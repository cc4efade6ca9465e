// A square with four equal hollow sides.
// Maths: with its corners rounded by arcs of radius t about (+-c, +-c), c = S/2 - t, a side hollow by h touches two of them
// from between and has the radius (c^2 + (h - t)^2 - t^2) / 2h; with t = 0 this is the sagitta formula.

import { point } from '../../../geometry/point.ts';
import { angleLines, centreMarks, innerLine } from '../draw/etch.ts';
import { arcBetween, towards, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const hollowSquare = family({
  id: 'hollow-square',
  name: 'Hollow-sided square',
  about: 'A square whose four sides curve inwards. The side is measured over all; the hollow is how deep the sides curve in.',
  sizes: {
    side: { name: 'side', least: 1.5, most: 16, usual: 5, unit: 'in' },
    hollow: { name: 'hollow', least: 0.0625, most: 3, usual: 0.5, unit: 'in' },
    point: { name: 'point radius', least: 0.03125, most: 1, usual: 0.0625, unit: 'in' },
  },
  useful: [
    { name: '5 in', sizes: {} },
    { name: '4 in', sizes: { side: 4, hollow: 0.5 } },
    { name: '6 in, deep', sizes: { side: 6, hollow: 0.875 } },
  ],
  draw: ({ side, hollow, point: tip }) => {
    // Deeper than 0.207 of the side the curves would cross before they reach the corners.
    const deepest = 0.18 * side;
    if (hollow > deepest) return tooGreat('hollow', 'hollow', hollow, deepest, `a side of ${inches(side)}`);
    const bluntest = side / 16;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a side of ${inches(side)}`);
    const c = side / 2 - tip;
    const radius = (c * c + (hollow - tip) ** 2 - tip * tip) / (2 * hollow);
    const out = side / 2 - hollow + radius;
    const corners = [point<'template'>(c, -c), point<'template'>(c, c), point<'template'>(-c, c), point<'template'>(-c, -c)];
    // The side before each corner, clockwise from the top.
    const sides = [point<'template'>(0, -out), point<'template'>(out, 0), point<'template'>(0, out), point<'template'>(-out, 0)];
    const outline = trace(
      ...corners.flatMap((corner, i) => {
        const from = corners[(i + 3) % 4]!;
        const before = sides[i]!;
        const after = sides[(i + 1) % 4]!;
        return [
          arcBetween(before, radius, towards(before, from), towards(before, corner), 'counterclockwise'),
          arcBetween(corner, tip, towards(corner, before), towards(corner, after), 'clockwise'),
        ];
      }),
    );
    return plainShape({ outline, etchings: [...centreMarks(outline), ...angleLines(outline, 45), ...innerLine(outline)] });
  },
});
