// A ring: a round plate with a round window, so that the foot can run outside it and inside it.

import { circle } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { ok } from '../../../num/outcome.ts';
import { angleLines, centreMarks, curve } from '../draw/etch.ts';
import { family } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** Least width of the acrylic between the two edges, in inches: what fingers can hold. */
const LEAST_RIM = 1 / 2;

export const ring = family({
  id: 'ring',
  name: 'Ring',
  about: 'A round plate with a round window in the middle; the foot runs outside it or inside it.',
  sizes: {
    diameter: { name: 'diameter', least: 2, most: 24, usual: 6, unit: 'in' },
    window: { name: 'diameter of the window', least: 0.5, most: 23, usual: 4, unit: 'in' },
  },
  useful: [
    { name: '6 in with a 4 in window', sizes: {} },
    { name: '4 in with a 2 in window', sizes: { diameter: 4, window: 2 } },
    { name: '8 in with a 5 in window', sizes: { diameter: 8, window: 5 } },
  ],
  draw: ({ diameter, window }) => {
    const widest = diameter - 2 * LEAST_RIM;
    if (window > widest) return tooGreat('window', 'diameter of the window', window, widest, `a diameter of ${inches(diameter)}`);
    const centre = point<'template'>(0, 0);
    const outline = circle(centre, diameter / 2);
    return ok({
      outline,
      windows: [{ id: 'window', path: circle(centre, window / 2) }],
      etchings: [
        ...centreMarks(outline),
        ...angleLines(outline, 45),
        curve('middle-line', 'circle half way between the edges', circle(centre, (diameter + window) / 4)),
      ],
    });
  },
});
