// A straight edge, with a slot along the middle for stitching in the ditch if wanted.

import { point } from '../../../geometry/point.ts';
import { ok } from '../../../num/outcome.ts';
import { angleLines, centreMarks, inchTicks, innerLine } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** Acrylic that must be left between the slot and the long edges, in inches. */
const LEAST_RAIL = 1 / 4;

export const straightEdge = family({
  id: 'straight-edge',
  name: 'Straight edge',
  about: 'A bar with two long straight edges. The ditch is a round-ended slot along the middle; 0 leaves it out. The margin is what stays at either end of the slot.',
  sizes: {
    length: { name: 'length', least: 2, most: 36, usual: 12, unit: 'in' },
    width: { name: 'width', least: 1, most: 8, usual: 2.5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 4, usual: 0.25, unit: 'in' },
    ditch: { name: 'width of the ditch', least: 0, most: 2, usual: 0, unit: 'in' },
    margin: { name: 'margin at the ends of the ditch', least: 0.25, most: 6, usual: 1, unit: 'in' },
  },
  useful: [
    { name: '12 by 2 1/2', sizes: {} },
    { name: '10 by 3', sizes: { length: 10, width: 3 } },
    { name: '6 by 2', sizes: { length: 6, width: 2 } },
    { name: '12 by 3 with a half-inch ditch', sizes: { width: 3, ditch: 0.5 } },
  ],
  draw: ({ length, width, corner, ditch, margin }) => {
    const x = length / 2;
    const y = width / 2;
    const outline = withRoundCorners(trace(point(-x, -y), point(x, -y), point(x, y), point(-x, y)), corner);
    if (!outline.ok) return outline;
    if (ditch > width - 2 * LEAST_RAIL) return tooGreat('ditch', 'width of the ditch', ditch, width - 2 * LEAST_RAIL, `a width of ${inches(width)}`);
    if (ditch > 0 && margin > (length - ditch) / 2) {
      return tooGreat('margin', 'margin at the ends of the ditch', margin, (length - ditch) / 2, `a length of ${inches(length)} and a ditch of ${inches(ditch)}`);
    }
    const end = x - margin - ditch / 2;
    const slot = trace(arc(end, 0, ditch / 2, -90, 180), arc(-end, 0, ditch / 2, 90, 180));
    return ok({
      outline: outline.value,
      windows: ditch > 0 ? [{ id: 'ditch', path: slot }] : [],
      etchings: [
        ...centreMarks(outline.value),
        ...innerLine(outline.value),
        ...angleLines(outline.value, 45, 60),
        ...inchTicks(-y, x - corner),
      ],
    });
  },
});
