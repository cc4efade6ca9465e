// A diamond with four equal sides, given the way diamonds are cut: by the distance between sides and the sharp angle.

import { point } from '../../../geometry/point.ts';
import { fromDegrees } from '../../../num/angle.ts';
import { centreMarks, innerLine, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';

export const diamond = family({
  id: 'diamond',
  name: 'Diamond',
  about: 'Four equal straight sides. The height is measured square from one side to the side across; the angle is that of the sharp corners, at left and right.',
  sizes: {
    height: { name: 'height', least: 0.75, most: 16, usual: 3, unit: 'in' },
    angle: { name: 'angle', least: 30, most: 90, usual: 60, unit: 'degrees' },
    corner: { name: 'corner radius', least: 0, most: 4, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '3 in, 60 degrees', sizes: {} },
    { name: '3 in, 45 degrees', sizes: { angle: 45 } },
    { name: '4 in, 60 degrees', sizes: { height: 4 } },
  ],
  draw: ({ height, angle, corner }) => {
    const half = fromDegrees(angle / 2);
    const x = height / 2 / Math.sin(half);
    const y = height / 2 / Math.cos(half);
    const outline = withRoundCorners(trace(point(0, -y), point(x, 0), point(0, y), point(-x, 0)), corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...lineThrough(outline.value, 'side-down', 'line along the sides that run down to the right', point(0, 0), angle / 2),
        ...lineThrough(outline.value, 'side-up', 'line along the sides that run up to the right', point(0, 0), -angle / 2),
        ...innerLine(outline.value),
      ],
    });
  },
});
