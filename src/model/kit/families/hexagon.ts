// A regular hexagon, given by the distance between sides.

import { point } from '../../../geometry/point.ts';
import { fromDegrees } from '../../../num/angle.ts';
import { angleLines, centreMarks, innerLine } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';

export const hexagon = family({
  id: 'hexagon',
  name: 'Hexagon',
  about: 'Six equal sides, two of them level. The height is measured from side to side.',
  sizes: {
    height: { name: 'height', least: 0.75, most: 16, usual: 4, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 4, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '4 in', sizes: {} },
    { name: '3 in', sizes: { height: 3 } },
    { name: '6 in', sizes: { height: 6 } },
  ],
  draw: ({ height, corner }) => {
    const reach = height / Math.sqrt(3);
    const corners = [-120, -60, 0, 60, 120, 180].map((degrees) => point<'template'>(reach * Math.cos(fromDegrees(degrees)), reach * Math.sin(fromDegrees(degrees))));
    const outline = withRoundCorners(trace(...corners), corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [...centreMarks(outline.value), ...angleLines(outline.value, 30, 60), ...innerLine(outline.value)],
    });
  },
});
