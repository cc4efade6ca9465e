// A wave: a straight strip with a sine wave along one edge.
// The wave is fitted with arcs over one half crest, which is mirrored and repeated, so that all crests are alike.

import { carryPath, reversedPath } from '../../../geometry/change.ts';
import { fitCurve } from '../../../geometry/fit/curve.ts';
import { point } from '../../../geometry/point.ts';
import { poseOf } from '../../../geometry/pose.ts';
import { TURN } from '../../../num/angle.ts';
import { FIT } from '../../../num/tolerances.ts';
import { centreMarks, innerLine, line, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** The longest wave, in inches. */
const LONGEST = 36;

export const wave = family({
  id: 'wave',
  name: 'Wave',
  about: 'A strip with an even wave along one edge, from trough to trough. The rise is from trough to crest; the depth is the acrylic below the troughs.',
  sizes: {
    crests: { name: 'number of crests', least: 1, most: 12, usual: 3, unit: 'count' },
    crest: { name: 'length of a crest', least: 1, most: 16, usual: 4, unit: 'in' },
    rise: { name: 'rise', least: 0.125, most: 6, usual: 1, unit: 'in' },
    depth: { name: 'depth', least: 0.5, most: 8, usual: 1.5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: 'three crests of 4 in', sizes: {} },
    { name: 'four crests of 2 1/2 in', sizes: { crests: 4, crest: 2.5, rise: 0.625 } },
    { name: 'two crests of 6 in', sizes: { crests: 2, crest: 6, rise: 1.25 } },
  ],
  draw: ({ crests, crest, rise, depth, corner }) => {
    const most = Math.floor(LONGEST / crest);
    if (crests > most) return tooGreat('crests', 'number of crests', crests, most, `crests of ${inches(crest)}`, 'count');
    if (rise > crest / 2) return tooGreat('rise', 'rise', rise, crest / 2, `crests of ${inches(crest)}`);
    const x = (crests * crest) / 2;
    const trough = -depth / 2;
    const climb = fitCurve<'template'>(
      (t) => ({
        point: point(t * crest, trough - (rise / 2) * (1 - Math.cos(TURN * t))),
        tangent: { x: crest, y: (-rise / 2) * TURN * Math.sin(TURN * t) },
      }),
      0,
      0.5,
      FIT,
    );
    const fall = reversedPath(carryPath(poseOf<'template', 'template'>(crest, 0, 0, true), climb));
    const starts = Array.from({ length: crests }, (_, i) => i * crest - x);
    const waves = starts.flatMap((start) => [climb, fall].map((half) => carryPath(poseOf<'template', 'template'>(start, 0), half)));
    const sharp = trace(...waves, point(x, -trough), point(-x, -trough));
    const outline = withRoundCorners(sharp, corner, (at) => at.y > 0);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...innerLine(outline.value),
        line('trough-line', 'line through the troughs', point(-x, trough), point(x, trough)),
        ...starts.flatMap((start, i) => lineThrough(outline.value, `crest-${i + 1}`, `line down from crest ${i + 1}`, point(start + crest / 2, trough - rise / 2), 90)),
        ...starts.slice(1).flatMap((start, i) => lineThrough(outline.value, `trough-${i + 1}`, `line down from trough ${i + 1}`, point(start, trough + depth / 8), 90)),
      ],
    });
  },
});
