// A band along an S: two equal arcs that leave level at either end and pass into each other in the middle.
// Maths: two tangent arcs with level ends over a run l and a rise h have the radius (l^2 + h^2) / 4h and each sweeps
// 2 atan(h / l).

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, curveWithin, innerLine, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace, traceOpen } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** Least radius of the hollow parts of the edge, in inches. */
const LEAST_HOLLOW = 1 / 4;

export const sCurve = family({
  id: 's-curve',
  name: 'S-curve band',
  about: 'A band that runs level, climbs and runs level again. The length is measured along, the rise from the middle of one end to the middle of the other, both before the corners are rounded.',
  sizes: {
    length: { name: 'length', least: 2, most: 30, usual: 10, unit: 'in' },
    rise: { name: 'rise', least: 0.25, most: 16, usual: 2.5, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 8, usual: 2, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 4, usual: 0.25, unit: 'in' },
  },
  useful: [
    { name: '10 in, gentle', sizes: {} },
    { name: '8 in, steeper', sizes: { length: 8, rise: 3, width: 1.75 } },
    { name: '6 in', sizes: { length: 6, rise: 1.75, width: 1.5 } },
    { name: '12 in, slow', sizes: { length: 12, rise: 2, width: 2.5 } },
  ],
  draw: ({ length, rise, width, corner }) => {
    if (rise > length) return tooGreat('rise', 'rise', rise, length, `a length of ${inches(length)}`);
    const radius = (length * length + rise * rise) / (4 * rise);
    const widest = 2 * (radius - LEAST_HOLLOW);
    if (width > widest) return tooGreat('width', 'width', width, widest, `a length of ${inches(length)} and a rise of ${inches(rise)}`);
    const sweep = toDegrees(2 * Math.atan(rise / length));
    const x = length / 2;
    const y = rise / 2;
    const [hollow, full] = [radius - width / 2, radius + width / 2];
    // From the low end at the left to the high end at the right; the first bend turns up, about a centre above it.
    const [low, high] = [y - radius, radius - y];
    const sharp = trace(
      arc(-x, low, hollow, 90, -sweep),
      arc(x, high, full, -90 - sweep, sweep),
      arc(x, high, hollow, -90, -sweep),
      arc(-x, low, full, 90 - sweep, sweep),
    );
    const outline = withRoundCorners(sharp, corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...lineThrough(outline.value, 'slant', 'line towards the middles of both ends', point(0, 0), -toDegrees(Math.atan2(rise, length))),
        curveWithin(outline.value, 'middle-line', 'line along the middle of the band', traceOpen(arc(-x, low, radius, 90, -sweep), arc(x, high, radius, -90 - sweep, sweep))),
        ...innerLine(outline.value),
      ],
    });
  },
});
