// A clamshell: a half circle above, and below it two quarter circles of the same radius that curve in to a point, so that
// shells fill a cloth without gaps. Sharp, it covers 2 R^2: what the half circle has above its square corners, the hollow
// sides leave out below.
// Maths: the hollow sides meet in a cusp, which no cutter makes; it is rounded by an arc of radius t that touches both from
// between. Its centre is R - sqrt(2 R t + t^2) below the middle of the circle.

import { point } from '../../../geometry/point.ts';
import { angleLines, centreMarks, innerLine } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { arcBetween, towards, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const clamshell = family({
  id: 'clamshell',
  name: 'Clamshell',
  about: 'A shell with a round top and two hollow sides that meet in a point below. The width is that of the round top before its corners are rounded. The point radius rounds the point, so that the shell ends a little above where the curves would meet.',
  sizes: {
    width: { name: 'width', least: 1, most: 16, usual: 4, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 1, usual: 0.03125, unit: 'in' },
    point: { name: 'point radius', least: 0.03125, most: 1, usual: 0.0625, unit: 'in' },
  },
  useful: [
    { name: '4 in', sizes: {} },
    { name: '3 in', sizes: { width: 3 } },
    { name: '6 in', sizes: { width: 6 } },
  ],
  draw: ({ width, corner, point: tip }) => {
    const bluntest = width / 16;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a width of ${inches(width)}`);
    const radius = width / 2;
    const middle = point<'template'>(0, 0);
    const end = point<'template'>(0, radius - Math.sqrt(2 * radius * tip + tip * tip));
    const right = point<'template'>(radius, radius);
    const left = point<'template'>(-radius, radius);
    const sharp = trace(
      arcBetween(middle, radius, -Math.PI, 0, 'clockwise'),
      arcBetween(right, radius, -Math.PI / 2, towards(right, end), 'counterclockwise'),
      arcBetween(end, tip, towards(end, right), towards(end, left), 'clockwise'),
      arcBetween(left, radius, towards(left, end), -Math.PI / 2, 'counterclockwise'),
    );
    const outline = withRoundCorners(sharp, corner);
    if (!outline.ok) return outline;
    return plainShape({
      outline: outline.value,
      etchings: [...centreMarks(outline.value), ...angleLines(outline.value, 45), ...innerLine(outline.value)],
    });
  },
});
