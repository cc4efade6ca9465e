// Flattened paths stay within the chord error asked for; and what is measured in closed form agrees, within what that
// error allows, with an independent library (jsts, the JavaScript port of the JTS Topology Suite) given the flattened points.

import { describe, expect, it } from 'vitest';
import { random } from '../../src/num/random.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { whereIs } from '../../src/geometry/inside.ts';
import { pathLength, signedArea } from '../../src/geometry/measure.ts';
import { meetPaths } from '../../src/geometry/meet-paths.ts';
import { nearestOnPath } from '../../src/geometry/nearest.ts';
import { type Path, polygon, segmentsOf } from '../../src/geometry/path.ts';
import { distance } from '../../src/geometry/point.ts';
import { pointOnSegment } from '../../src/geometry/segment.ts';
import { checkSimple } from '../../src/geometry/simple.ts';
import { jstsLine, jstsPoint, jstsPolygon } from './geometry-jsts.ts';
import { randomPath, randomPoint } from './geometry-random.ts';

const SEEDS = [1, 2, 3];

/** A random outline: a star of lines and arcs round the origin, kept when it is simple. */
function randomOutline(r: ReturnType<typeof random>): Path<'area'> {
  for (;;) {
    const count = r.whole(3, 14);
    const vertices = Array.from({ length: count }, (_, i) => {
      const angle = ((i + r.between(-0.3, 0.3)) * 2 * Math.PI) / count;
      const radius = r.between(1, 8);
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle), bulge: r.next() < 0.4 ? 0 : r.between(-0.7, 0.7) };
    });
    const outcome = checkSimple<'area'>({ closed: true, vertices });
    if (outcome.ok) return outcome.value;
  }
}

describe.each(SEEDS)('seed %i', (seed) => {
  it('flattened points lie on the path, and the path within the chord error of the lines between them', () => {
    const r = random(seed);
    for (let i = 0; i < 60; i++) {
      const path = randomPath(r, r.next() < 0.5);
      const error = 10 ** r.between(-4, -0.5);
      const points = flatten(path, error);
      expect(Math.max(...points.map((p) => nearestOnPath(path, p).distance))).toBeLessThan(1e-12);
      const lines: Path<'area'> = { closed: path.closed, vertices: points.map((p) => ({ ...p, bulge: 0 })) };
      const samples = segmentsOf(path).flatMap((s) => Array.from({ length: 29 }, (_, k) => pointOnSegment(s, k / 29)));
      expect(Math.max(...samples.map((p) => nearestOnPath(lines, p).distance))).toBeLessThanOrEqual(error * (1 + 1e-9));
    }
  });

  it('length and area agree with jsts on the flattened path', () => {
    const r = random(seed + 100);
    for (let i = 0; i < 60; i++) {
      const path = randomOutline(r);
      const error = 1e-4;
      const shape = jstsPolygon(flatten(path, error));
      const length = pathLength(path);
      // An arc through a sweep t is longer than its chord by a part of about t^2 / 24, and t^2 is at most 8 e / r: no radius here is under 0.1.
      expect(length - shape.getLength()).toBeGreaterThan(-1e-9);
      expect(length - shape.getLength()).toBeLessThan((length * error) / (3 * 0.1));
      // The areas between arcs and chords are at most the error high.
      expect(Math.abs(signedArea(path) - shape.getArea())).toBeLessThan(length * error);
      const box = shape.getEnvelopeInternal();
      const b = boundsOf(path);
      const gaps = [box.getMinX() - b.minX, box.getMinY() - b.minY, b.maxX - box.getMaxX(), b.maxY - box.getMaxY()];
      expect(Math.min(...gaps)).toBeGreaterThan(-1e-12);
      expect(Math.max(...gaps)).toBeLessThan(error);
    }
  });

  it('inside and outside agree with jsts, but for points nearer to the path than the chord error', () => {
    const r = random(seed + 200);
    let asked = 0;
    for (let i = 0; i < 40; i++) {
      const path = randomOutline(r);
      const shape = jstsPolygon(flatten(path, 1e-3));
      for (let j = 0; j < 25; j++) {
        const p = randomPoint(r, 8);
        if (nearestOnPath(path, p).distance < 1e-3) continue;
        asked++;
        expect(whereIs(path, p)).toBe(shape.contains(jstsPoint(p)) ? 'inside' : 'outside');
      }
    }
    expect(asked).toBeGreaterThan(900);
  });

  it('distances agree with jsts within the chord error', () => {
    const r = random(seed + 300);
    for (let i = 0; i < 60; i++) {
      const path = randomPath(r, false);
      const line = jstsLine(flatten(path, 1e-3));
      const p = randomPoint(r, 20);
      expect(Math.abs(nearestOnPath(path, p).distance - line.distance(jstsPoint(p)))).toBeLessThan(1e-3);
    }
  });

  it('straight paths cross where jsts has them cross', () => {
    const r = random(seed + 400);
    let crossings = 0;
    for (let i = 0; i < 60; i++) {
      const [a, b] = [0, 1].map(() => polygon<'area'>(Array.from({ length: 7 }, () => randomPoint(r)))) as [Path<'area'>, Path<'area'>];
      const ours = meetPaths(a, b).flatMap((m) => (m.kind === 'overlap' ? [] : [m.at]));
      const outline = (path: Path<'area'>) => jstsLine([...path.vertices, path.vertices[0]!]);
      const theirs = outline(a).intersection(outline(b)).getCoordinates();
      expect(ours.length).toBe(theirs.length);
      crossings += ours.length;
      for (const p of ours) expect(Math.min(...theirs.map((q) => distance(p, { x: q.x, y: q.y })))).toBeLessThan(1e-9);
    }
    expect(crossings).toBeGreaterThan(100);
  });
});
