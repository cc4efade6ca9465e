// A plate with a row of round windows, each smaller than the one before by the same step.

import { circle } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { ok } from '../../../num/outcome.ts';
import { dot, lineThrough } from '../draw/etch.ts';
import { withRoundCorners } from '../draw/round-corners.ts';
import { trace } from '../draw/trace.ts';
import { family } from '../family.ts';
import { inches, tooGreat } from '../sizes.ts';

/** Least diameter of a window, in inches. */
const LEAST_WINDOW = 1 / 2;

export const roundWindows = family({
  id: 'round-windows',
  name: 'Plate with round windows',
  about: 'A straight plate with a row of round windows for the foot to run in, the largest at the left; each is smaller than the one before by the step. The margin is the acrylic round and between them.',
  sizes: {
    windows: { name: 'number of windows', least: 1, most: 8, usual: 3, unit: 'count' },
    largest: { name: 'largest window', least: LEAST_WINDOW, most: 8, usual: 2.25, unit: 'in' },
    step: { name: 'step', least: 0, most: 3, usual: 0.5, unit: 'in' },
    margin: { name: 'margin', least: 0.25, most: 3, usual: 0.5, unit: 'in' },
    corner: { name: 'corner radius', least: 0, most: 2, usual: 0.25, unit: 'in' },
  },
  useful: [
    { name: 'three from 2 1/4 in', sizes: {} },
    { name: 'one of 4 in', sizes: { windows: 1, largest: 4, margin: 0.75 } },
    { name: 'four from 1 3/4 in by quarters', sizes: { windows: 4, largest: 1.75, step: 0.25 } },
  ],
  draw: ({ windows: count, largest, step, margin, corner }) => {
    const greatestStep = count > 1 ? (largest - LEAST_WINDOW) / (count - 1) : Infinity;
    if (step > greatestStep) return tooGreat('step', 'step', step, greatestStep, `${count} windows from ${inches(largest)}`);
    const diameters = Array.from({ length: count }, (_, i) => largest - i * step);
    const length = diameters.reduce((sum, diameter) => sum + diameter, 0) + (count + 1) * margin;
    const x = length / 2;
    const y = largest / 2 + margin;
    const outline = withRoundCorners(trace(point(-x, -y), point(x, -y), point(x, y), point(-x, y)), corner);
    if (!outline.ok) return outline;
    let reached = -x;
    const rounds = diameters.map((diameter, i) => {
      const at = point<'template'>(reached + margin + diameter / 2, 0);
      reached += margin + diameter;
      return { id: `window-${i + 1}`, at, radius: diameter / 2, words: `${inches(diameter)} window` };
    });
    return ok({
      outline: outline.value,
      windows: rounds.map(({ id, at, radius }) => ({ id, path: circle(at, radius) })),
      etchings: [
        // The windows, not the plate, are what is laid by; their lines down take the place of a centre line.
        ...lineThrough(outline.value, 'centre-across', 'centre line across', point(0, 0), 0),
        ...rounds.flatMap(({ id, at, words }) => [
          dot(id, `middle of the ${words}`, at),
          ...lineThrough(outline.value, `${id}-down`, `line down through the ${words}`, at, 90),
        ]),
      ],
    });
  },
});
