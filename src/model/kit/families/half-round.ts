// A half round: half a circle on a straight strip.

import { point } from '../../../geometry/point.ts';
import { angleLines, centreMarks, inchTicks, innerLine } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';

export const halfRound = family({
  id: 'half-round',
  name: 'Half round',
  about: 'Half a circle standing on a straight strip of the same width; the strip is what lies beyond the middle of the circle.',
  sizes: {
    diameter: { name: 'diameter', least: 1, most: 24, usual: 6, unit: 'in' },
    strip: { name: 'strip', least: 0.25, most: 8, usual: 0.5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 4, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '6 in', sizes: {} },
    { name: '4 in', sizes: { diameter: 4 } },
    { name: '8 in', sizes: { diameter: 8 } },
    { name: '3 in arch', sizes: { diameter: 3, strip: 2 } },
  ],
  draw: ({ diameter, strip, corner }) => {
    const radius = diameter / 2;
    const outline = withRoundCorners(trace(arc(0, 0, radius, 180, 180), point(radius, strip), point(-radius, strip)), corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...angleLines(outline.value, 45),
        ...innerLine(outline.value),
        ...inchTicks(strip, radius - corner, -Math.min(strip, 0.25)),
      ],
    });
  },
});
