// A cable spine: a row of links, wide in their middles and narrow where they meet, alike on both edges.
// Maths: from neck to widest place the edge is two tangent arcs with level ends over a run l (half a link) and a rise h (half
// of width less neck), of radius (l^2 + h^2) / 4h, sweeping 2 atan(h / l) each.

import { point } from '../../../geometry/point.ts';
import { toDegrees } from '../../../num/angle.ts';
import { centreMarks, innerLine, line } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** The longest spine, in inches. */
const LONGEST = 36;

/** The width must be more than the neck by at least this, in inches. */
const LEAST_SWELL = 1 / 8;

export const cable = family({
  id: 'cable',
  name: 'Cable spine',
  about: 'A row of links that swell and narrow alike on both edges, to stitch cables along both sides. It is as wide as the neck where links meet and at both ends.',
  sizes: {
    links: { name: 'number of links', least: 1, most: 12, usual: 3, unit: 'count' },
    link: { name: 'length of a link', least: 1, most: 16, usual: 4, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 12, usual: 2.5, unit: 'in' },
    neck: { name: 'neck', least: 0.5, most: 11, usual: 1.25, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: 'three links of 4 in', sizes: {} },
    { name: 'four links of 3 in', sizes: { links: 4, link: 3, width: 2, neck: 1 } },
    { name: 'two links of 5 in', sizes: { links: 2, link: 5, width: 3, neck: 1.5 } },
  ],
  draw: ({ links, link, width, neck, corner }) => {
    const most = Math.floor(LONGEST / link);
    if (links > most) return tooGreat('links', 'number of links', links, most, `links of ${inches(link)}`, 'count');
    const widestNeck = width - LEAST_SWELL;
    if (neck > widestNeck) return tooGreat('neck', 'neck', neck, widestNeck, `a width of ${inches(width)}`);
    const widest = neck + link;
    if (width > widest) return tooGreat('width', 'width', width, widest, `links of ${inches(link)} and a neck of ${inches(neck)}`);
    const run = link / 2;
    const rise = (width - neck) / 2;
    const radius = (run * run + rise * rise) / (4 * rise);
    const sweep = toDegrees(2 * Math.atan(rise / run));
    const x = (links * link) / 2;
    const middles = Array.from({ length: links }, (_, i) => (i + 0.5) * link - x);
    // Centres of the hollow arcs (above the necks) and of the full arcs; the lower edge is the upper one turned by half.
    const hollow = -neck / 2 - radius;
    const full = -width / 2 + radius;
    const upper = middles.flatMap((middle) => [
      arc(middle - run, hollow, radius, 90, -sweep),
      arc(middle, full, radius, -90 - sweep, 2 * sweep),
      arc(middle + run, hollow, radius, 90 + sweep, -sweep),
    ]);
    const lower = [...middles].reverse().flatMap((middle) => [
      arc(middle + run, -hollow, radius, -90, -sweep),
      arc(middle, -full, radius, 90 - sweep, 2 * sweep),
      arc(middle - run, -hollow, radius, -90 + sweep, -sweep),
    ]);
    const outline = withRoundCorners(trace(...upper, ...lower), corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...innerLine(outline.value),
        ...middles.map((middle, i) => line(`link-${i + 1}`, `line across the middle of link ${i + 1}`, point(middle, -width / 2), point(middle, width / 2))),
        ...middles.slice(1).map((middle, i) => line(`neck-${i + 1}`, `line across neck ${i + 1}`, point(middle - run, -neck / 2), point(middle - run, neck / 2))),
      ],
    });
  },
});
