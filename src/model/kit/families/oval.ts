// An oval: an ellipse, fitted with arcs.

import { ellipse } from '../../../geometry/fit/ellipse.ts';
import { point } from '../../../geometry/point.ts';
import { FIT } from '../../../num/tolerances.ts';
import { angleLines, centreMarks, innerLine } from '../draw/etch.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat, tooSmall } from '../sizes.ts';

/** The flattest oval: its width as a part of its length. */
const FLATTEST = 1 / 5;

export const oval = family({
  id: 'oval',
  name: 'Oval',
  about: 'An ellipse, longer than it is wide.',
  sizes: {
    length: { name: 'length', least: 1, most: 30, usual: 8, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 24, usual: 5, unit: 'in' },
  },
  useful: [
    { name: '8 by 5', sizes: {} },
    { name: '6 by 4', sizes: { length: 6, width: 4 } },
    { name: '4 by 2 1/2', sizes: { length: 4, width: 2.5 } },
    { name: '10 by 4', sizes: { length: 10, width: 4 } },
  ],
  draw: ({ length, width }) => {
    if (width > length) return tooGreat('width', 'width', width, length, `a length of ${inches(length)}`);
    if (width < length * FLATTEST) return tooSmall('width', 'width', width, length * FLATTEST, `a length of ${inches(length)}`);
    const outline = ellipse(point<'template'>(0, 0), length / 2, width / 2, 0, FIT);
    return plainShape({ outline, etchings: [...centreMarks(outline), ...angleLines(outline, 45), ...innerLine(outline)] });
  },
});
