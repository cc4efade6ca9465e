// A scallop edge: a straight strip with equal round humps along one edge.
// Maths: a hump of chord c and rise h has the radius (c^2/4 + h^2) / 2h, the sagitta formula.

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, innerLine, line, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** The longest scallop edge, in inches. */
const LONGEST = 36;

export const scallop = family({
  id: 'scallop',
  name: 'Scallop edge',
  about: 'A strip with equal round humps along one edge and sharp notches between them. The depth is the acrylic below the notches.',
  sizes: {
    humps: { name: 'number of humps', least: 1, most: 16, usual: 5, unit: 'count' },
    hump: { name: 'width of a hump', least: 0.75, most: 16, usual: 2, unit: 'in' },
    rise: { name: 'rise', least: 0.125, most: 8, usual: 0.5, unit: 'in' },
    depth: { name: 'depth', least: 0.5, most: 8, usual: 1.25, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: 'five humps of 2 in', sizes: {} },
    { name: 'four humps of 2 1/4 in', sizes: { humps: 4, hump: 2.25, rise: 0.375 } },
    { name: 'three humps of 3 in', sizes: { humps: 3, hump: 3, rise: 1 } },
  ],
  draw: ({ humps, hump, rise, depth, corner }) => {
    const most = Math.floor(LONGEST / hump);
    if (humps > most) return tooGreat('humps', 'number of humps', humps, most, `humps of ${inches(hump)}`, 'count');
    if (rise > hump / 2) return tooGreat('rise', 'rise', rise, hump / 2, `humps of ${inches(hump)}`);
    const x = (humps * hump) / 2;
    const notch = -depth / 2;
    const radius = ((hump * hump) / 4 + rise * rise) / (2 * rise);
    const sweep = toDegrees(4 * Math.atan((2 * rise) / hump));
    const middles = Array.from({ length: humps }, (_, i) => (i + 0.5) * hump - x);
    const sharp = trace(...middles.map((middle) => arc(middle, notch - rise + radius, radius, -90 - sweep / 2, sweep)), point(x, -notch), point(-x, -notch));
    const outline = withRoundCorners(sharp, corner, (at) => at.y > 0);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...innerLine(outline.value),
        line('notch-line', 'line through the notches', point(-x, notch), point(x, notch)),
        ...middles.flatMap((middle, i) => lineThrough(outline.value, `hump-${i + 1}`, `line down from the top of hump ${i + 1}`, point(middle, notch - rise / 2), 90)),
        ...middles.slice(1).flatMap((middle, i) => lineThrough(outline.value, `notch-${i + 1}`, `line down from notch ${i + 1}`, point(middle - hump / 2, notch + depth / 8), 90)),
      ],
    });
  },
});
