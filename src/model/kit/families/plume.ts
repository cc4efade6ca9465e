// A plume: a round head that runs out along a bent spine into a point, for feathers.
// Maths: the full back touches the head and the rounded point from outside both, the hollow front from between them; both
// have the radius (d^2/4 + b^2) / 2b of the spine, whose ends are the centres of head and point, d apart, and whose bend is b.

import { type Point, point } from '../../../geometry/point.ts';
import { centreMarks, curve, innerLine } from '../draw/etch.ts';
import { arcBetween, towards, trace, traceOpen } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat, tooSmall } from '../sizes.ts';

export const plume = family({
  id: 'plume',
  name: 'Plume',
  about: 'A round head that runs out in a bent tail, for the plumes of a feather. The width is that of the round head; the bend is how far the tail’s middle line leaves the straight.',
  sizes: {
    length: { name: 'length', least: 1.5, most: 20, usual: 5, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 8, usual: 2.25, unit: 'in' },
    bend: { name: 'bend', least: 0.0625, most: 4, usual: 0.5, unit: 'in' },
    point: { name: 'point radius', least: 0.03125, most: 1, usual: 0.0625, unit: 'in' },
  },
  useful: [
    { name: '5 by 2 1/4', sizes: {} },
    { name: '3 by 1 1/2', sizes: { length: 3, width: 1.5, bend: 0.25 } },
    { name: '6 by 2 3/4', sizes: { length: 6, width: 2.75, bend: 0.625 } },
  ],
  draw: ({ length, width, bend, point: tip }) => {
    const shortest = 1.5 * width;
    if (length < shortest) return tooSmall('length', 'length', length, shortest, `a width of ${inches(width)}`);
    const bluntest = width / 4;
    if (tip > bluntest) return tooGreat('point', 'point radius', tip, bluntest, `a width of ${inches(width)}`);
    const head = width / 2;
    const apart = length - head - tip;
    // Beyond a bend of (L - sqrt(L^2 - d^2)) / 2 no back of the spine's radius reaches round head and point; 0.8 of it looks well.
    const mostBent = 0.4 * (length - Math.sqrt(length * length - apart * apart));
    if (bend > mostBent) return tooGreat('bend', 'bend', bend, mostBent, `a length of ${inches(length)} and a width of ${inches(width)}`);
    const radius = ((apart * apart) / 4 + bend * bend) / (2 * bend);
    const middle = point<'template'>(0, 0);
    const end = point<'template'>(0, apart);
    const back = centreRightOf(apart, radius - head, radius - tip);
    const front = centreRightOf(apart, radius + head, radius + tip);
    const spine = centreRightOf(apart, radius, radius);
    const outline = trace(
      arcBetween(middle, head, towards(back, middle), towards(middle, front), 'clockwise'),
      arcBetween(front, radius, towards(front, middle), towards(front, end), 'counterclockwise'),
      arcBetween(end, tip, towards(end, front), towards(back, end), 'clockwise'),
      arcBetween(back, radius, towards(back, end), towards(back, middle), 'clockwise'),
    );
    return plainShape({
      outline,
      etchings: [
        ...centreMarks(outline),
        curve('spine', 'middle line of the tail', traceOpen(arcBetween(spine, radius, towards(spine, middle), towards(spine, end), 'counterclockwise'))),
        ...innerLine(outline),
      ],
    });
  },
});

/** The point to the right of the axis at these distances from the head's centre (the origin) and from the point's, `apart` below it. */
function centreRightOf(apart: number, fromHead: number, fromPoint: number): Point<'template'> {
  const y = (apart * apart + fromHead * fromHead - fromPoint * fromPoint) / (2 * apart);
  return point(Math.sqrt(fromHead * fromHead - y * y), y);
}
