// A crescent: a full outer arc and a hollow inner arc that run out into two rounded points.
// Maths: with the points' centres at (+-a, 0), a = L/2 - t, the outer arc (tops at height H) touches them from within and the
// inner arc (tops at height g = H - w) from between: R = (a^2 + H^2 - t^2) / 2(H - t), r = (a^2 + g^2 - t^2) / 2(g + t).

import { heading, moved, point } from '../../../geometry/point.ts';
import { centreMarks, innerLine, line } from '../draw/etch.ts';
import { arcBetween, towards, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat, tooSmall } from '../sizes.ts';

/** The inner arc is hollow by at least this, in inches. */
const LEAST_HOLLOW = 1 / 8;

export const crescent = family({
  id: 'crescent',
  name: 'Crescent',
  about: 'A curve that is wide in the middle and runs out into two points. Length and rise are measured over all; the width is that of the middle.',
  sizes: {
    length: { name: 'length', least: 2, most: 24, usual: 8, unit: 'in' },
    rise: { name: 'rise', least: 0.5, most: 12, usual: 3, unit: 'in' },
    width: { name: 'width', least: 0.375, most: 8, usual: 1.5, unit: 'in' },
    point: { name: 'point radius', least: 0.03125, most: 1, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '8 in', sizes: {} },
    { name: '6 in', sizes: { length: 6, rise: 2.25, width: 1.25 } },
    { name: '10 in, shallow', sizes: { length: 10, rise: 2.75, width: 1.5 } },
  ],
  draw: ({ length, rise, width, point: tip }) => {
    if (rise > length / 2) return tooGreat('rise', 'rise', rise, length / 2, `a length of ${inches(length)}`);
    const bluntest = width / 4;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a width of ${inches(width)}`);
    const widest = length / 2 - tip - 2 * LEAST_HOLLOW;
    if (width > widest) return tooGreat('width', 'width', width, widest, `a length of ${inches(length)}`);
    const lowest = width + tip + LEAST_HOLLOW;
    if (rise < lowest) return tooSmall('rise', 'rise', rise, lowest, `a width of ${inches(width)}`);
    const reach = length / 2 - tip;
    const outerTop = rise - tip;
    const innerTop = outerTop - width;
    const outer = (reach * reach + outerTop * outerTop - tip * tip) / (2 * (outerTop - tip));
    const inner = (reach * reach + innerTop * innerTop - tip * tip) / (2 * (innerTop + tip));
    // The origin lies in the middle of the crescent, half way between the two tops.
    const down = outerTop - width / 2;
    const outerCentre = point<'template'>(0, down + outer - outerTop);
    const innerCentre = point<'template'>(0, down + inner - innerTop);
    const right = point<'template'>(reach, down);
    const left = point<'template'>(-reach, down);
    const outline = trace(
      arcBetween(outerCentre, outer, towards(outerCentre, left), towards(outerCentre, right), 'clockwise'),
      arcBetween(right, tip, towards(outerCentre, right), towards(right, innerCentre), 'clockwise'),
      arcBetween(innerCentre, inner, towards(innerCentre, right), towards(innerCentre, left), 'counterclockwise'),
      arcBetween(left, tip, towards(left, innerCentre), towards(outerCentre, left), 'clockwise'),
    );
    // Square to the outer edge, half way round it from the middle to either point.
    const halfSweep = Math.atan2(reach, outer - outerTop);
    const division = (id: string, name: string, part: number) => {
      const out = heading<'template'>(part * halfSweep - Math.PI / 2);
      return line(id, name, moved(outerCentre, out, outer), moved(outerCentre, out, innerReach(innerCentre.y - outerCentre.y, inner, part * halfSweep)));
    };
    return plainShape({
      outline,
      etchings: [
        ...centreMarks(outline),
        division('division-left', 'line across half way to the left point', -0.5),
        division('division-right', 'line across half way to the right point', 0.5),
        ...innerLine(outline),
      ],
    });
  },
});

/** How far out from the outer centre, in a direction so far from straight up, the inner circle lies whose centre is `below` it. */
function innerReach(below: number, radius: number, fromUp: number): number {
  const along = -below * Math.cos(fromUp);
  return along + Math.sqrt(radius * radius - (below * Math.sin(fromUp)) ** 2);
}
