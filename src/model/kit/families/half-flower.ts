// A half flower: equal round lobes about a half circle, on a straight strip.
// Maths: with n lobes the notches lie on a circle of radius q at every 180 / n degrees; a lobe is the arc through two notches and a
// top at the radius r, of chord c = 2 q sin a and rise h = r - q cos a, a = 90 / n degrees. Its radius is (c^2/4 + h^2) / 2h.

import { type Point, heading, moved, point } from '../../../geometry/point.ts';
import { fromDegrees, toDegrees } from '../../../num/angle.ts';
import { centreMarks, innerLine, line } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const halfFlower = family({
  id: 'half-flower',
  name: 'Half flower',
  about: 'Half a flower of equal round lobes on a straight strip. The radius is from the middle of the flower to the top of a lobe; the notch is how deep the lobes are parted.',
  sizes: {
    lobes: { name: 'number of lobes', least: 2, most: 9, usual: 5, unit: 'count' },
    radius: { name: 'radius', least: 1.25, most: 12, usual: 3.5, unit: 'in' },
    notch: { name: 'notch', least: 0.0625, most: 3, usual: 0.5, unit: 'in' },
    strip: { name: 'strip', least: 0.25, most: 4, usual: 0.5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: 'five lobes, 7 in across', sizes: {} },
    { name: 'three lobes, 5 in across', sizes: { lobes: 3, radius: 2.5, notch: 0.5 } },
    { name: 'seven lobes, 10 in across', sizes: { lobes: 7, radius: 5, notch: 0.625 } },
  ],
  draw: ({ lobes, radius, notch, strip, corner }) => {
    const step = 180 / lobes;
    const a = fromDegrees(step / 2);
    // A lobe is at most half a circle.
    const deepest = radius * (1 - 1 / (Math.sin(a) + Math.cos(a)));
    if (notch > deepest) return tooGreat('notch', 'notch', notch, deepest, `${lobes} lobes and a radius of ${inches(radius)}`);
    const low = radius - notch;
    const halfChord = low * Math.sin(a);
    const rise = radius - low * Math.cos(a);
    const bow = (halfChord * halfChord + rise * rise) / (2 * rise);
    const sweep = toDegrees(4 * Math.atan(rise / halfChord));
    const at = (distance: number, degrees: number): Point<'template'> => moved(point(0, 0), heading(fromDegrees(degrees)), distance);
    const tops = Array.from({ length: lobes }, (_, i) => 180 + (i + 0.5) * step);
    const petals = tops.map((degrees) => {
      const centre = at(radius - bow, degrees);
      return arc(centre.x, centre.y, bow, degrees - sweep / 2, sweep);
    });
    const sharp = trace(...petals, point(low, strip), point(-low, strip));
    const outline = withRoundCorners(sharp, corner, ({ y }) => y > strip / 2);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [
        ...centreMarks(outline.value),
        ...tops.map((degrees, i) => line(`lobe-${i + 1}`, `line from the middle to the top of lobe ${i + 1}`, point(0, 0), at(radius, degrees))),
        ...tops.slice(1).map((degrees, i) => line(`notch-${i + 1}`, `line from the middle to notch ${i + 1}`, point(0, 0), at(low, degrees - step / 2))),
        ...innerLine(outline.value),
      ],
    });
  },
});
