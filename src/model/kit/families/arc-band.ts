// A band of one curve: a hollow edge and a full edge round the same centre.

import { heading, moved, point } from '../../../geometry/point.ts';
import { fromDegrees } from '../../../num/angle.ts';
import { centreMarks, curveWithin, innerLine, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace, traceOpen } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** Least radius of the inside edge, in inches. */
const LEAST_INSIDE = 1 / 8;

export const arcBand = family({
  id: 'arc-band',
  name: 'Arc band',
  about: 'A curved band with an outside and an inside edge round one centre. The radius is that of the outside edge; the sweep is how far round the band goes.',
  sizes: {
    radius: { name: 'radius', least: 1, most: 36, usual: 8, unit: 'in' },
    width: { name: 'width', least: 0.5, most: 8, usual: 2, unit: 'in' },
    sweep: { name: 'sweep', least: 10, most: 330, usual: 70, unit: 'degrees' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '8 in radius, 70 degrees', sizes: {} },
    { name: '4 in radius, quarter round', sizes: { radius: 4, width: 1.5, sweep: 90 } },
    { name: '6 in radius, 60 degrees', sizes: { radius: 6, sweep: 60 } },
    { name: '12 in radius, 45 degrees', sizes: { radius: 12, width: 2.5, sweep: 45 } },
  ],
  draw: ({ radius, width, sweep, corner }) => {
    if (width > radius - LEAST_INSIDE) return tooGreat('width', 'width', width, radius - LEAST_INSIDE, `a radius of ${inches(radius)}`);
    const inside = radius - width;
    // The origin lies in the middle of the band; the centre of the curve is below it.
    const centre = point<'template'>(0, radius - width / 2);
    const start = -90 - sweep / 2;
    const sharp = trace(arc(0, centre.y, radius, start, sweep), arc(0, centre.y, inside, start + sweep, -sweep));
    const outline = withRoundCorners(sharp, corner);
    if (!outline.ok) return outline;
    const division = (id: string, name: string, part: number) => {
      const degrees = start + part * sweep;
      const at = moved(centre, heading<'template'>(fromDegrees(degrees)), radius - width / 2);
      return lineThrough(outline.value, id, name, at, degrees);
    };
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        curveWithin(outline.value, 'middle-line', 'line along the middle of the band', traceOpen(arc(0, centre.y, radius - width / 2, start, sweep))),
        ...division('division-left', 'division line half way to the left end', 0.25),
        ...division('division-right', 'division line half way to the right end', 0.75),
        ...innerLine(outline.value),
      ],
    });
  },
});
