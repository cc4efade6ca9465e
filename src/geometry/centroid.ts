// The point on which a flat shape balances.
// Maths: the polygon of the chords by the surveyor's formula. Over each arc lies a circular segment of area
// r^2 / 2 (t - sin t), whose first moment about the arc's centre is chord^3 / 12 along the middle radius (Roark's
// formulas for a circular segment, area times distance, in which t - sin t cancels).

import { areaOverChord } from './measure.ts';
import { type Path, segmentsOf } from './path.ts';
import { type Frame, type Point, distance, heading } from './point.ts';

/** Area of a closed path in square inches (positive when it runs clockwise on the screen) and that area times where it balances. */
export interface Moments {
  readonly area: number;
  readonly x: number;
  readonly y: number;
}

/** Area and first moments of a closed path, arcs exact. */
export function momentsOf<F extends Frame>(path: Path<F>): Moments {
  let [area, x, y] = [0, 0, 0];
  for (const s of segmentsOf(path)) {
    const double = s.from.x * s.to.y - s.to.x * s.from.y;
    area += double / 2;
    x += (double * (s.from.x + s.to.x)) / 6;
    y += (double * (s.from.y + s.to.y)) / 6;
    if (s.kind === 'line') continue;
    const over = areaOverChord(s);
    const moment = (Math.sign(s.sweep) * distance(s.from, s.to) ** 3) / 12;
    const middle = heading<F>(s.start + s.sweep / 2);
    area += over;
    x += over * s.centre.x + moment * middle.x;
    y += over * s.centre.y + moment * middle.y;
  }
  return { area, x, y };
}

/** Where a closed path without its holes balances; undefined when nothing is left of it. */
export function centroid<F extends Frame>(outline: Path<F>, holes: readonly Path<F>[] = []): Point<F> | undefined {
  const whole = momentsOf(outline);
  const way = Math.sign(whole.area);
  let { area, x, y } = whole;
  for (const hole of holes) {
    const out = momentsOf(hole);
    const against = Math.sign(out.area) * way;
    area -= out.area * against;
    x -= out.x * against;
    y -= out.y * against;
  }
  return area * way > 0 ? { x: x / area, y: y / area } : undefined;
}
