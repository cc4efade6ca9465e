import { describe, expect, it } from 'vitest';
import { fromDegrees } from '../num/angle.ts';
import { pathLength, signedArea } from './measure.ts';
import { circle, closedPath, endOf, openPath, pathOfSegments, polygon, segmentsOf, startOf, straight } from './path.ts';
import { point } from './point.ts';
import { arcAround, lineFrom } from './segment.ts';

describe('paths', () => {
  it('an open path of n vertices has n - 1 segments, a closed one n', () => {
    const corners = [point<'quilt'>(0, 0), point<'quilt'>(1, 0), point<'quilt'>(1, 1)];
    expect(segmentsOf(polygon(corners))).toHaveLength(3);
    expect(segmentsOf(openPath(corners.map((c) => ({ ...c, bulge: 0 }))))).toHaveLength(2);
    expect(segmentsOf(openPath([]))).toEqual([]);
    expect(segmentsOf(closedPath([]))).toEqual([]);
  });

  it('the segments of one path are made once', () => {
    const path = circle(point<'quilt'>(0, 0), 1);
    expect(segmentsOf(path)).toBe(segmentsOf(path));
  });

  it('starts and ends', () => {
    const line = straight(point<'quilt'>(1, 2), point(3, 4));
    expect([startOf(line), endOf(line)]).toEqual([{ x: 1, y: 2 }, { x: 3, y: 4 }]);
    expect(endOf(circle(point<'quilt'>(0, 0), 1))).toEqual({ x: 1, y: 0 });
    expect(startOf(openPath<'quilt'>([]))).toBeUndefined();
    expect(endOf(openPath<'quilt'>([]))).toBeUndefined();
  });

  it('segments give the path they came from, index for index', () => {
    const path = closedPath<'quilt'>([{ x: 0, y: 0, bulge: 0.25 }, { x: 3, y: 0, bulge: 0 }, { x: 2, y: 2, bulge: -1 }]);
    const back = pathOfSegments(segmentsOf(path), true);
    back.vertices.forEach((v, i) => {
      expect(v.x).toBe(path.vertices[i]!.x);
      expect(v.bulge).toBeCloseTo(path.vertices[i]!.bulge, 15);
    });
  });

  it('arcs of more than a half turn take two vertices, and lose nothing', () => {
    const arc = arcAround<'quilt'>(point(0, 0), 2, 0, fromDegrees(270));
    const wedge = pathOfSegments<'quilt'>([arc, lineFrom(arc.to, point(0, 0)), lineFrom(point(0, 0), arc.from)], true);
    expect(wedge.vertices).toHaveLength(4);
    for (const v of wedge.vertices) expect(Math.abs(v.bulge)).toBeLessThanOrEqual(1);
    // Three quarters of a circle and two radii.
    expect(pathLength(wedge)).toBeCloseTo(3 * Math.PI + 4, 13);
    expect(signedArea(wedge)).toBeCloseTo(3 * Math.PI, 13);
  });
});
