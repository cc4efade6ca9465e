// A teardrop: a circle and the two tangents that meet in a point above it.
// Maths: the tangents touch the circle and the arc that rounds the point at the same angle from the axis, whose cosine is the
// difference of the radii over the distance of the centres.

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, innerLine, lineThrough } from '../draw/etch.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat, tooSmall } from '../sizes.ts';

export const teardrop = family({
  id: 'teardrop',
  name: 'Teardrop',
  about: 'A round end and two straight sides that meet in a point. The length is measured over all; the point radius rounds the point, 0 leaves it sharp.',
  sizes: {
    length: { name: 'length', least: 1, most: 20, usual: 5, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 12, usual: 3, unit: 'in' },
    point: { name: 'point radius', least: 0, most: 2, usual: 0.0625, unit: 'in' },
  },
  useful: [
    { name: '5 by 3', sizes: {} },
    { name: '3 by 1 3/4', sizes: { length: 3, width: 1.75 } },
    { name: '6 by 3 1/2', sizes: { length: 6, width: 3.5 } },
  ],
  draw: ({ length, width, point: tip }) => {
    const shortest = 1.15 * width;
    if (length < shortest) return tooSmall('length', 'length', length, shortest, `a width of ${inches(width)}`);
    const bluntest = 0.4 * width;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a width of ${inches(width)}`);
    const radius = width / 2;
    const apart = length - radius - tip;
    const lean = toDegrees(Math.acos((radius - tip) / apart));
    const outline = trace(arc(0, 0, radius, -90 + lean, 360 - 2 * lean), tip > 0 ? arc(0, -apart, tip, -90 - lean, 2 * lean) : point(0, -apart));
    return plainShape({
      outline,
      etchings: [
        ...centreMarks(outline),
        ...lineThrough(outline, 'division-up', 'line across half way to the point', point(0, -apart / 2), 0),
        ...innerLine(outline),
      ],
    });
  },
});
