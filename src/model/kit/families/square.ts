// A square, or a rectangle, with rounded corners.

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, inchTicks, innerLine, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';

export const square = family({
  id: 'square',
  name: 'Square with rounded corners',
  about: 'A square or rectangle whose corners are rounded as much as wanted.',
  sizes: {
    width: { name: 'width', least: 0.75, most: 24, usual: 5, unit: 'in' },
    height: { name: 'height', least: 0.75, most: 24, usual: 5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 12, usual: 0.75, unit: 'in' },
  },
  useful: [
    { name: '5 in', sizes: {} },
    { name: '3 in', sizes: { width: 3, height: 3, corner: 0.5 } },
    { name: '6 by 4', sizes: { width: 6, height: 4 } },
    { name: '4 in, sharper', sizes: { width: 4, height: 4, corner: 0.125 } },
  ],
  draw: ({ width, height, corner }) => {
    const x = width / 2;
    const y = height / 2;
    const outline = withRoundCorners(trace(point(-x, -y), point(x, -y), point(x, y), point(-x, y)), corner);
    if (!outline.ok) return outline;
    const slope = toDegrees(Math.atan2(height, width));
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...lineThrough(outline.value, 'diagonal-down', 'diagonal down to the right', point(0, 0), slope),
        ...lineThrough(outline.value, 'diagonal-up', 'diagonal up to the right', point(0, 0), -slope),
        ...innerLine(outline.value),
        ...inchTicks(-y, x - corner, Math.min(0.25, y)),
      ],
    });
  },
});
