// A wedge: two straight sides that run together evenly.

import { point } from '../../../geometry/point.ts';
import { centreMarks, innerLine, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family, plainShape } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

export const wedge = family({
  id: 'wedge',
  name: 'Wedge',
  about: 'A plate with two straight sides that run together, the narrow end up. Both ends are measured before the corners are rounded.',
  sizes: {
    length: { name: 'length', least: 1, most: 30, usual: 8, unit: 'in' },
    wide: { name: 'wide end', least: 0.75, most: 16, usual: 3.5, unit: 'in' },
    narrow: { name: 'narrow end', least: 0.5, most: 16, usual: 1, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.125, unit: 'in' },
  },
  useful: [
    { name: '8 in', sizes: {} },
    { name: '6 in', sizes: { length: 6, wide: 3 } },
    { name: '10 in', sizes: { length: 10, wide: 4 } },
  ],
  draw: ({ length, wide, narrow, corner }) => {
    if (narrow > wide) return tooGreat('narrow', 'narrow end', narrow, wide, `a wide end of ${inches(wide)}`);
    const y = length / 2;
    const outline = withRoundCorners(trace(point(-narrow / 2, -y), point(narrow / 2, -y), point(wide / 2, y), point(-wide / 2, y)), corner);
    if (!outline.ok) return outline;
    // Lines across at every whole inch from the middle, short of the ends.
    const count = Math.ceil(y) - 1;
    const across = Array.from({ length: count }, (_, i) => i + 1).flatMap((n) => [
      ...lineThrough(outline.value, `across-up-${n}`, `line across ${n} in above the centre`, point(0, -n), 0),
      ...lineThrough(outline.value, `across-down-${n}`, `line across ${n} in below the centre`, point(0, n), 0),
    ]);
    return plainShape({ outline: outline.value, etchings: [...centreMarks(outline.value), ...across, ...innerLine(outline.value)] });
  },
});
