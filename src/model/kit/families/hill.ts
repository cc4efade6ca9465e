// A gentle hill: a strip whose upper edge leaves level, swells once and comes back level.
// Maths: each flank is two tangent arcs with level ends over a run l and a rise h, of radius (l^2 + h^2) / 4h, sweeping
// 2 atan(h / l) each.

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, inchTicks, innerLine, line, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const hill = family({
  id: 'hill',
  name: 'Gentle hill',
  about: 'A strip with one swell along its upper edge, level at both ends and at the top. The depth is the acrylic at the ends.',
  sizes: {
    length: { name: 'length', least: 2, most: 36, usual: 10, unit: 'in' },
    rise: { name: 'rise', least: 0.125, most: 12, usual: 1.5, unit: 'in' },
    depth: { name: 'depth', least: 0.5, most: 8, usual: 1.25, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '10 in', sizes: {} },
    { name: '8 in', sizes: { length: 8, rise: 1.25 } },
    { name: '12 in, low', sizes: { length: 12, rise: 1 } },
    { name: '6 in, steep', sizes: { length: 6, rise: 2 } },
  ],
  draw: ({ length, rise, depth, corner }) => {
    const run = length / 2;
    if (rise > run) return tooGreat('rise', 'rise', rise, run, `a length of ${inches(length)}`);
    const radius = (run * run + rise * rise) / (4 * rise);
    const sweep = toDegrees(2 * Math.atan(rise / run));
    const foot = -depth / 2;
    const top = foot - rise;
    const sharp = trace(
      arc(-run, foot - radius, radius, 90, -sweep),
      arc(0, top + radius, radius, -90 - sweep, 2 * sweep),
      arc(run, foot - radius, radius, 90 + sweep, -sweep),
      point(run, -foot),
      point(-run, -foot),
    );
    const outline = withRoundCorners(sharp, corner, (at) => at.y > 0);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...innerLine(outline.value),
        line('foot-line', 'line through the foot of the hill', point(-run, foot), point(run, foot)),
        ...lineThrough(outline.value, 'division-left', 'line down half way to the left end', point(-run / 2, foot), 90),
        ...lineThrough(outline.value, 'division-right', 'line down half way to the right end', point(run / 2, foot), 90),
        ...inchTicks(-foot, run - corner, -Math.min(depth / 4, 0.25)),
      ],
    });
  },
});
