// A line drawn by an unsteady hand, as a smooth path of lines and arcs.
// Maths: the points are spaced evenly along the line, steadied by the binomial filter (1 2 1) / 4, which keeps straight lines straight and the ends
// where they are, and joined by a cubic Hermite curve through them with central differences as tangents (Catmull and Rom, 1974); arcs are fitted to that.

import { SAME_POINT } from '../../num/tolerances.ts';
import { type Path, openPath } from '../path.ts';
import { type Frame, type Point, distance, partWay } from '../point.ts';
import { fitCurve } from './curve.ts';
import type { Curve } from './look.ts';

export interface FreehandOptions {
  /** How far apart along the line its points are taken, in inches: finer follows the hand more, tremor and all. */
  readonly step?: number;
  /** How often the points are steadied. */
  readonly rounds?: number;
  /** How far the arcs may stray from the smooth curve, in inches. */
  readonly within?: number;
}

/** The smooth path a hand meant by these points, from the first to the last (inches); undefined when they lie all in one place. */
export function freehandPath<F extends Frame>(points: readonly Point<F>[], { step = 1 / 4, rounds = 2, within = 1 / 128 }: FreehandOptions = {}): Path<F> | undefined {
  let even = evenlySpaced(points, step);
  if (even.length < 2) return undefined;
  for (let round = 0; round < rounds; round++) even = steadied(even);
  if (even.length === 2) return openPath(even.map(({ x, y }) => ({ x, y, bulge: 0 })));
  return fitCurve(through(even), 0, even.length - 1, within, 4 * even.length);
}

/** Points along the line at equal distances of about a step, both ends among them. */
function evenlySpaced<F extends Frame>(points: readonly Point<F>[], step: number): readonly Point<F>[] {
  const along = [0];
  for (let i = 1; i < points.length; i++) along.push(along[i - 1]! + distance(points[i - 1]!, points[i]!));
  const whole = along.at(-1)!;
  if (!(whole > SAME_POINT)) return [];
  const parts = Math.max(1, Math.round(whole / step));
  const found: Point<F>[] = [];
  let stretch = 0;
  for (let part = 0; part <= parts; part++) {
    const at = (whole * part) / parts;
    while (stretch < points.length - 2 && along[stretch + 1]! < at) stretch++;
    const length = along[stretch + 1]! - along[stretch]!;
    found.push(partWay(points[stretch]!, points[stretch + 1]!, length > 0 ? Math.min(1, (at - along[stretch]!) / length) : 0));
  }
  return found;
}

function steadied<F extends Frame>(points: readonly Point<F>[]): readonly Point<F>[] {
  return points.map((p, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    return before && after ? { x: (before.x + 2 * p.x + after.x) / 4, y: (before.y + 2 * p.y + after.y) / 4 } : p;
  });
}

/** The curve through the points, at whole parameters. */
function through<F extends Frame>(points: readonly Point<F>[]): Curve<F> {
  const last = points.length - 1;
  const slope = (i: number) => {
    const a = points[Math.max(0, i - 1)]!;
    const b = points[Math.min(last, i + 1)]!;
    const over = Math.min(last, i + 1) - Math.max(0, i - 1);
    return { x: (b.x - a.x) / over, y: (b.y - a.y) / over };
  };
  return (t) => {
    const i = Math.min(last - 1, Math.max(0, Math.floor(t)));
    const u = t - i;
    const [p, q, m, n] = [points[i]!, points[i + 1]!, slope(i), slope(i + 1)];
    const place = (a: number, b: number, c: number, d: number) => ({ x: a * p.x + b * m.x + c * q.x + d * n.x, y: a * p.y + b * m.y + c * q.y + d * n.y });
    return {
      point: place(2 * u ** 3 - 3 * u ** 2 + 1, u ** 3 - 2 * u ** 2 + u, -2 * u ** 3 + 3 * u ** 2, u ** 3 - u ** 2),
      tangent: place(6 * u ** 2 - 6 * u, 3 * u ** 2 - 4 * u + 1, -6 * u ** 2 + 6 * u, 3 * u ** 2 - 2 * u),
    };
  };
}
