import { describe, expect, it } from 'vitest';
import { fromDegrees, toDegrees } from '../num/angle.ts';
import { type Point, distance, point, quarterTurned } from './point.ts';
import {
  arcAround,
  arcByBulge,
  bearingOf,
  bulgeOf,
  halfTurnsOf,
  lineFrom,
  nearestOnSegment,
  partAt,
  pointOnSegment,
  reversedSegment,
  rightOf,
  segmentLength,
  sideOf,
  stretchOfSegment,
  tangentOnSegment,
} from './segment.ts';

const p = (x: number, y: number): Point<'template'> => point(x, y);
const near = (x: number, y: number, digits = 12) => ({ x: expect.closeTo(x, digits) as number, y: expect.closeTo(y, digits) as number });

describe('arcs by bulge', () => {
  it('a half turn is bulge 1, a quarter turn tan 22.5 degrees (DXF reference)', () => {
    const half = arcByBulge(p(1, 0), p(-1, 0), 1);
    expect(half).toMatchObject({ kind: 'arc', radius: 1, sweep: expect.closeTo(Math.PI, 15) as number, centre: near(0, 0) });
    // Clockwise on the screen from the right is by way of below, where y is positive.
    expect(pointOnSegment(half, 0.5)).toEqual(near(0, 1));
    expect(pointOnSegment(arcByBulge(p(1, 0), p(-1, 0), -1), 0.5)).toEqual(near(0, -1));
    const quarter = arcByBulge(p(1, 0), p(0, 1), Math.tan(Math.PI / 8));
    expect(quarter).toMatchObject({ radius: expect.closeTo(1, 15) as number, centre: near(0, 0), sweep: expect.closeTo(Math.PI / 2, 15) as number });
  });

  it('chord 2 1/4 and rise 3/8: radius 1.875, sweep 73.739795 degrees, length 2.413129 (a maker\'s worked example; r = (c^2/4 + h^2) / 2h)', () => {
    // Rise over half the chord is the bulge.
    const arc = arcByBulge(p(0, 0), p(2.25, 0), 0.375 / 1.125);
    expect(arc).toMatchObject({ kind: 'arc', radius: expect.closeTo(1.875, 14) as number });
    if (arc.kind === 'arc') expect(toDegrees(arc.sweep)).toBeCloseTo(73.739795, 6);
    expect(segmentLength(arc)).toBeCloseTo(2.413129, 6);
    expect(pointOnSegment(arc, 0.5)).toEqual(near(1.125, -0.375));
  });

  it('flatter than rounding slack is the straight line', () => {
    expect(arcByBulge(p(0, 0), p(10, 0), 1e-11)).toEqual(lineFrom(p(0, 0), p(10, 0)));
    expect(arcByBulge(p(1, 1), p(1, 1), 0.5).kind).toBe('line');
    expect(arcByBulge(p(0, 0), p(10, 0), 1e-9).kind).toBe('arc');
  });
});

describe('places on a segment', () => {
  const arc = arcAround(p(2, 1), 3, fromDegrees(10), fromDegrees(-100));
  const line = lineFrom(p(1, 1), p(4, 5));

  it('parts are proportional to length', () => {
    expect(pointOnSegment(line, 0.25)).toEqual({ x: 1.75, y: 2 });
    const angle = fromDegrees(10 - 25);
    expect(pointOnSegment(arc, 0.25)).toEqual(near(2 + 3 * Math.cos(angle), 1 + 3 * Math.sin(angle)));
    expect(pointOnSegment(arc, 0)).toBe(arc.from);
    expect(pointOnSegment(arc, 1)).toBe(arc.to);
  });

  it('the tangent of an arc is square to its radius, turned the way it runs', () => {
    for (const part of [0, 0.3, 1]) {
      const angle = arc.start + arc.sweep * part;
      expect(tangentOnSegment(arc, part)).toEqual(near(Math.sin(angle), -Math.cos(angle)));
    }
    expect(tangentOnSegment(line, 0.5)).toEqual(near(0.6, 0.8));
  });

  it('the nearest place on a line is square to it, or an end', () => {
    expect(nearestOnSegment(line, p(1 + 0.6 * 2 - 0.8, 1 + 0.8 * 2 + 0.6))).toEqual({ part: expect.closeTo(0.4, 14) as number, distance: expect.closeTo(1, 14) as number });
    expect(nearestOnSegment(line, p(-2, -3))).toEqual({ part: 0, distance: 5 });
    expect(nearestOnSegment(line, p(4, 8))).toEqual({ part: 1, distance: 3 });
  });

  it('the nearest place on an arc is in line with its centre, or the nearer end', () => {
    const half = arcByBulge(p(1, 0), p(-1, 0), 1);
    expect(nearestOnSegment(half, p(0, 5))).toEqual({ part: 0.5, distance: 4 });
    expect(nearestOnSegment(half, p(0, 0.25)).distance).toBeCloseTo(0.75, 15);
    expect(nearestOnSegment(half, p(0, 0)).distance).toBeCloseTo(1, 15);
    expect(nearestOnSegment(half, p(0.5, -3))).toEqual({ part: 0, distance: distance(p(0.5, -3), p(1, 0)) });
    expect(nearestOnSegment(half, p(-0.5, -3))).toMatchObject({ part: 1 });
  });

  it('over half a turn too', () => {
    const long = arcAround(p(0, 0), 2, 0, fromDegrees(300));
    expect(nearestOnSegment(long, p(0, -3))).toEqual({ part: expect.closeTo(0.9, 14) as number, distance: expect.closeTo(1, 14) as number });
    expect(pointOnSegment(long, 0.6)).toEqual(near(-2, 0));
    expect(nearestOnSegment(long, p(4 * Math.cos(fromDegrees(329)), 4 * Math.sin(fromDegrees(329)))).part).toBe(1);
    expect(nearestOnSegment(long, p(4 * Math.cos(fromDegrees(331)), 4 * Math.sin(fromDegrees(331)))).part).toBe(0);
  });

  it('reversed, and cut', () => {
    expect(pointOnSegment(reversedSegment(arc), 0.25)).toEqual(near(pointOnSegment(arc, 0.75).x, pointOnSegment(arc, 0.75).y));
    const middle = stretchOfSegment(arc, 0.25, 0.75);
    expect(segmentLength(middle)).toBeCloseTo(segmentLength(arc) / 2, 14);
    expect(pointOnSegment(middle, 0.5)).toEqual(near(pointOnSegment(arc, 0.5).x, pointOnSegment(arc, 0.5).y));
  });
});

describe('seen from the middle', () => {
  it('the side is the signed distance to the whole circle or line, right positive', () => {
    const clockwise = bearingOf(arcAround(p(0, 0), 2, 0, 1));
    expect(sideOf(clockwise, p(0, 0))).toBeCloseTo(2, 14);
    expect(sideOf(clockwise, p(0, -5))).toBeCloseTo(-3, 14);
    expect(sideOf(bearingOf(arcAround(p(0, 0), 2, 0, -1)), p(0, -5))).toBeCloseTo(3, 14);
    expect(sideOf(bearingOf(lineFrom(p(0, 0), p(9, 0))), p(4, 3))).toBe(3);
    expect(rightOf(clockwise, p(0, 2))).toEqual(near(0, -1));
  });

  it('parts go on below 0 and above 1', () => {
    const arc = bearingOf(arcAround(p(0, 0), 2, 0, 1));
    expect(partAt(arc, p(Math.cos(1.5), Math.sin(1.5)))).toBeCloseTo(1.5, 14);
    expect(partAt(arc, p(Math.cos(-0.25), Math.sin(-0.25)))).toBeCloseTo(-0.25, 14);
    expect(partAt(bearingOf(lineFrom(p(0, 0), p(2, 0))), p(5, 9))).toBe(2.5);
  });

  it('the tangent and normal of a segment of no length are still unit vectors', () => {
    const { tangent, normal } = bearingOf(lineFrom(p(1, 1), p(1, 1)));
    expect(tangent).toEqual({ x: 1, y: 0 });
    expect(normal).toEqual(quarterTurned(tangent));
  });

  it('keeps all digits on an arc of radius 1.25e9', () => {
    // Rise h = 1e-8 over a chord of 10; the parabola h (1 - (x / 5)^2) differs from the arc by less than h^3 / c^2.
    const flat = arcByBulge(p(0, 0), p(10, 0), -2e-9);
    for (const part of [0.1, 0.25, 0.5, 0.9]) {
      const at = pointOnSegment(flat, part);
      const x = at.x - 5;
      expect(Math.abs(at.y - 1e-8 * (1 - (x / 5) ** 2))).toBeLessThan(1e-22);
      expect(nearestOnSegment(flat, p(at.x, at.y + 0.5)).distance).toBeCloseTo(0.5, 15);
      expect(nearestOnSegment(flat, p(at.x, at.y)).part).toBeCloseTo(part, 14);
    }
  });
});

describe('arcs over a half turn', () => {
  it('come in pieces of at most a half turn, each with its own bulge', () => {
    const whole = arcAround(p(1, 1), 2, 0.3, 2 * Math.PI);
    const pieces = halfTurnsOf(whole);
    expect(pieces).toHaveLength(2);
    expect(pieces.map(bulgeOf)).toEqual([expect.closeTo(1, 15), expect.closeTo(1, 15)]);
    expect(pieces.reduce((sum, s) => sum + segmentLength(s), 0)).toBeCloseTo(4 * Math.PI, 13);
    const more = halfTurnsOf(arcAround(p(0, 0), 1, 0, -fromDegrees(200)));
    expect(more.map(bulgeOf)).toEqual([expect.closeTo(-Math.tan(fromDegrees(25)), 14), expect.closeTo(-Math.tan(fromDegrees(25)), 14)]);
    const half = arcAround(p(0, 0), 1, 0, Math.PI);
    expect(halfTurnsOf(half)).toEqual([half]);
  });
});
