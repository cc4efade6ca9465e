// A bar with round ends.

import { point } from '../../../geometry/point.ts';
import { centreMarks, dot, inchTicks, innerLine } from '../draw/etch.ts';
import { arc, trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const longRound = family({
  id: 'long-round',
  name: 'Long round',
  about: 'A straight bar whose ends are half circles.',
  sizes: {
    length: { name: 'length', least: 1, most: 36, usual: 8, unit: 'in' },
    width: { name: 'width', least: 0.75, most: 12, usual: 2.5, unit: 'in' },
  },
  useful: [
    { name: '8 by 2 1/2', sizes: {} },
    { name: '6 by 2', sizes: { length: 6, width: 2 } },
    { name: '5 by 3', sizes: { length: 5, width: 3 } },
  ],
  draw: ({ length, width }) => {
    const widest = length - 0.125;
    if (width > widest) return tooGreat('width', 'width', width, widest, `a length of ${inches(length)}`);
    const radius = width / 2;
    const x = length / 2 - radius;
    const outline = trace(arc(x, 0, radius, -90, 180), arc(-x, 0, radius, 90, 180));
    return plainShape({
      outline,
      etchings: [
        ...centreMarks(outline),
        dot('middle-left', 'middle of the left end', point(-x, 0)),
        dot('middle-right', 'middle of the right end', point(x, 0)),
        ...innerLine(outline),
        ...inchTicks(-radius, x),
      ],
    });
  },
});
