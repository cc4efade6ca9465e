// Echoes against a search that shares no code with the solver: poses on a grid, then on ever finer grids about the best, and distances measured from points to
// points of densely flattened lines.

import { describe, expect, it } from 'vitest';
import { type Path, openPath } from '../../src/geometry/path.ts';
import { readPathData } from '../../src/geometry/svg/read.ts';
import { needleLines } from '../../src/needle/needle-lines.ts';
import { random } from '../../src/num/random.ts';
import { echo } from '../../src/place/echo/echo.ts';

/** How much the brute force may beat the solver by: what its own points, 1/40 in apart, leave uncertain. */
const SLACK = 0.002;
const DISTANCE = 1 / 4;

/** An ellipse of semi-axes a and b grown by the foot's 1/4 in, as points: its own parametric normals. */
function needlePoints(a: number, b: number): [number, number][] {
  const points: [number, number][] = [];
  for (let i = 0; i < 1200; i++) {
    const t = (i * Math.PI) / 600;
    const [c, s] = [Math.cos(t), Math.sin(t)];
    const n = Math.hypot(b * c, a * s);
    points.push([a * c + (b * c) / n / 4, b * s + (a * s) / n / 4]);
  }
  return points;
}

describe.each([3, 17, 29])('an ellipse echoing an arc, seed %i', (seed) => {
  const r = random(seed);
  const a = r.between(3, 4);
  const b = a * r.between(0.55, 0.85);
  const radius = r.between(2.5, 4.5);
  const half = r.between(1.2, 2) / radius;
  const bulge = Math.tan(half / 2);
  const chord = radius * Math.sin(half);
  const line = openPath<'quilt'>([{ x: -chord, y: 0, bulge }, { x: chord, y: 0, bulge: 0 }]);
  const outline = readPathData<'template'>(`M ${a} 0 A ${a} ${b} 0 0 1 ${-a} 0 A ${a} ${b} 0 0 1 ${a} 0 Z`);
  if (!outline.ok) throw new Error(outline.problem.message);

  it('is never beaten by the brute force, and measures as the brute force does', () => {
    const needle = needleLines({ outline: outline.value[0] as Path<'template'>, windows: [], etchings: [] }, 1 / 2);
    const found = echo(line, { needle }, { distance: DISTANCE, side: 'right', tolerance: 1 });
    if (found.kind !== 'whole') throw new Error(found.kind);
    const { pose, deviation } = found.best;

    // The line's places and their outward normals; y points down, the arc's middle lies below.
    const middle = radius * Math.cos(half);
    const places = Array.from({ length: 21 }, (_, i): [number, number] => {
      const t = -half + (i * half) / 10;
      return [radius * Math.sin(t), middle - radius * Math.cos(t)];
    });
    const points = needlePoints(a, b);
    /** The greatest deviation with the ellipse's centre at (x, y), turned by `angle`; only the part of the ellipse on the line's right counts. */
    const worst = (x: number, y: number, angle: number, stop: number) => {
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      let greatest = 0;
      for (const [px, py] of places) {
        const [dx, dy] = [px - x, py - y];
        const [qx, qy] = [c * dx + s * dy, c * dy - s * dx];
        let nearest = Infinity;
        let at: [number, number] = [0, 0];
        for (const point of points) {
          const away = (point[0] - qx) ** 2 + (point[1] - qy) ** 2;
          if (away < nearest) [nearest, at] = [away, point];
        }
        // On the right of the line: towards the arc's middle.
        const [ux, uy] = [c * at[0] - s * at[1] - dx, s * at[0] + c * at[1] - dy];
        const isRight = ux * (0 - px) + uy * (middle - py) > 0;
        greatest = Math.max(greatest, Math.abs((isRight ? 1 : -1) * Math.sqrt(nearest) - DISTANCE));
        if (greatest > stop) return greatest;
      }
      return greatest;
    };

    // The solver's own pose, measured by the other code. An ellipse is its own mirror image, so a flip is a turn.
    expect(Math.abs(worst(pose.x, pose.y, pose.angle, Infinity) - deviation.greatest)).toBeLessThan(SLACK);

    // Any angle (an ellipse looks the same after a half turn), the centre such that the ellipse passes about where it should at the middle.
    let best = { x: 0, y: 0, angle: 0, value: Infinity };
    const take = (x: number, y: number, angle: number) => {
      const value = worst(x, y, angle, best.value);
      if (value < best.value) best = { x, y, angle, value };
    };
    for (let angle = 0; angle < Math.PI; angle += Math.PI / 30) {
      for (let x = -a; x <= a; x += a / 6) for (let y = -a - 1; y <= a + 1.5; y += a / 8) take(x, y, angle);
    }
    for (let size = a / 8; size > 0.001; size *= 0.6) {
      const from = best;
      for (const dx of [-1, 0, 1]) for (const dy of [-1, 0, 1]) for (const turn of [-1, 0, 1]) take(from.x + dx * size, from.y + dy * size, from.angle + (turn * size) / a);
    }
    expect(best.value).toBeGreaterThan(deviation.greatest - SLACK);
  }, 30_000);
});
