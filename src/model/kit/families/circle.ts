// A whole circle.

import { circle as wholeCircle } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { angleLines, centreMarks, innerLine } from '../draw/etch.ts';
import { family, plainShape } from '../family.ts';

export const circle = family({
  id: 'circle',
  name: 'Circle',
  about: 'A round plate.',
  sizes: { diameter: { name: 'diameter', least: 0.75, most: 24, usual: 6, unit: 'in' } },
  useful: [
    { name: '3 in', sizes: { diameter: 3 } },
    { name: '4 in', sizes: { diameter: 4 } },
    { name: '6 in', sizes: {} },
    { name: '8 in', sizes: { diameter: 8 } },
  ],
  draw: ({ diameter }) => {
    const outline = wholeCircle(point<'template'>(0, 0), diameter / 2);
    return plainShape({
      outline,
      etchings: [...centreMarks(outline), ...angleLines(outline, 30, 45, 60), ...innerLine(outline)],
    });
  },
});
