import { describe, expect, it } from 'vitest';
import { TURN } from '../num/angle.ts';
import { meetSegments } from './meet-segments.ts';
import { type Point, distance, point } from './point.ts';
import { type Segment, arcAround, arcByBulge, lineFrom, pointOnSegment, reversedSegment } from './segment.ts';

type S = Segment<'quilt'>;
const p = (x: number, y: number): Point<'quilt'> => point(x, y);
const line = (x0: number, y0: number, x1: number, y1: number): S => lineFrom(p(x0, y0), p(x1, y1));
const arc = (x: number, y: number, r: number, from: number, to: number): S =>
  arcAround(p(x, y), r, (from * Math.PI) / 180, ((to - from) * Math.PI) / 180);

describe('line and line', () => {
  it('cross once, half way along both', () => {
    expect(meetSegments(line(0, 0, 2, 2), line(0, 2, 2, 0))).toEqual([{ kind: 'crossing', at: { x: 1, y: 1 }, partA: 0.5, partB: 0.5 }]);
  });

  it('touch in a T, at an exact end', () => {
    expect(meetSegments(line(1, 0, 1, 1), line(0, 1, 2, 1))).toEqual([{ kind: 'touching', at: { x: 1, y: 1 }, partA: 1, partB: 0.5 }]);
  });

  it('touch at a shared end once', () => {
    expect(meetSegments(line(0, 0, 1, 0), line(1, 0, 2, 5))).toEqual([{ kind: 'touching', at: { x: 1, y: 0 }, partA: 1, partB: 0 }]);
    expect(meetSegments(line(0, 0, 1, 0), line(1, 0, 2, 0))).toEqual([{ kind: 'touching', at: { x: 1, y: 0 }, partA: 1, partB: 0 }]);
  });

  it('share a collinear stretch, told with parts of both', () => {
    expect(meetSegments(line(0, 0, 4, 0), line(6, 0, 1, 0))).toEqual([
      { kind: 'overlap', from: { x: 1, y: 0 }, to: { x: 4, y: 0 }, partsA: [0.25, 1], partsB: [1, 0.4] },
    ]);
    expect(meetSegments(line(0, 0, 4, 0), line(1, 0, 3, 0))).toMatchObject([{ kind: 'overlap', partsA: [0.25, 0.75], partsB: [0, 1] }]);
    expect(meetSegments(line(0.3, 0.1, 4, 0.7), line(0.3, 0.1, 4, 0.7))).toMatchObject([{ kind: 'overlap', partsA: [0, 1], partsB: [0, 1] }]);
  });

  it('do not meet when parallel, collinear apart, or short of each other', () => {
    expect(meetSegments(line(0, 0, 4, 0), line(0, 1e-6, 4, 1e-6))).toEqual([]);
    expect(meetSegments(line(0, 0, 1, 0), line(1.001, 0, 2, 0))).toEqual([]);
    expect(meetSegments(line(0, 0, 1, 0), line(0.5, 1e-6, 0.5, 1))).toEqual([]);
  });

  it('cross at a very shallow angle without losing the place', () => {
    const [meeting] = meetSegments(line(0, -5e-7, 10, 5e-7), line(0, 0, 10, 0));
    expect(meeting).toMatchObject({ kind: 'crossing' });
    if (meeting?.kind !== 'crossing') return;
    expect(meeting.partA).toBeCloseTo(0.5, 8);
    expect(Math.abs(meeting.at.y)).toBeLessThan(1e-15);
  });

  it('count ends within rounding slack as touching, not those beyond it', () => {
    expect(meetSegments(line(0, 0, 1, 0), line(1 + 5e-10, 0, 2, 1))).toMatchObject([{ kind: 'touching', partA: 1, partB: 0 }]);
    expect(meetSegments(line(0, 0, 1 - 5e-10, 0), line(1, -1, 1, 1))).toMatchObject([{ kind: 'touching', partA: 1 }]);
    expect(meetSegments(line(0, 0, 1 - 5e-9, 0), line(1, -1, 1, 1))).toEqual([]);
  });

  it('a line of no length is a point', () => {
    expect(meetSegments(line(1, 0, 1, 0), line(0, 0, 2, 0))).toMatchObject([{ kind: 'touching', partB: 0.5 }]);
    expect(meetSegments(line(1, 1, 1, 1), line(0, 0, 2, 0))).toEqual([]);
    expect(meetSegments(line(1, 1, 1, 1), line(1, 1, 1, 1))).toHaveLength(1);
  });
});

describe('line and arc', () => {
  it('cross twice on a 3-4-5 triangle', () => {
    // Radius 5, line 3 from the centre: the half chord is 4.
    const meetings = meetSegments(line(-6, 3, 6, 3), arc(0, 0, 5, 0, 180));
    expect(meetings.map((m) => m.kind)).toEqual(['crossing', 'crossing']);
    expect(meetings[0]).toMatchObject({ at: { x: expect.closeTo(-4, 14) as number, y: expect.closeTo(3, 14) as number } });
    expect(meetings[1]).toMatchObject({ at: { x: expect.closeTo(4, 14) as number, y: expect.closeTo(3, 14) as number } });
  });

  it('touch where tangent, also within rounding slack on either side', () => {
    for (const slip of [0, 5e-10, -5e-10]) {
      const [meeting, ...rest] = meetSegments(line(-6, 5 + slip, 6, 5 + slip), arc(0, 0, 5, 0, 180));
      expect(rest).toEqual([]);
      expect(meeting).toMatchObject({ kind: 'touching', partA: expect.closeTo(0.5, 9) as number, partB: expect.closeTo(0.5, 9) as number });
    }
    expect(meetSegments(line(-6, 5 + 1e-8, 6, 5 + 1e-8), arc(0, 0, 5, 0, 180))).toEqual([]);
  });

  it('just through the top of an arc gives two crossings at the half chord sqrt(2 r h)', () => {
    const deep = 1e-8;
    const meetings = meetSegments(line(-6, 5 - deep, 6, 5 - deep), arc(0, 0, 5, 0, 180));
    expect(meetings.map((m) => m.kind)).toEqual(['crossing', 'crossing']);
    const half = Math.sqrt(2 * 5 * deep);
    for (const m of meetings) if (m.kind !== 'overlap') expect(Math.abs(m.at.x)).toBeCloseTo(half, 7);
  });

  it('a smooth joint is one touching, at exact ends', () => {
    const rounding = arc(1, 1, 1, 270, 360);
    const into = lineFrom(p(-3, 0), rounding.from);
    expect(meetSegments(into, rounding)).toMatchObject([{ kind: 'touching', partA: 1, partB: 0 }]);
    expect(meetSegments(rounding, lineFrom(rounding.to, p(2, 7)))).toMatchObject([{ kind: 'touching', partA: 1, partB: 0 }]);
  });

  it('a chord touches its arc at both ends and overlaps nothing', () => {
    const bow = arcByBulge(p(0, 0), p(2, 1), 0.3);
    expect(meetSegments(line(0, 0, 2, 1), bow)).toMatchObject([
      { kind: 'touching', partA: 0, partB: 0 },
      { kind: 'touching', partA: 1, partB: 1 },
    ]);
  });

  it('meets only the half of the circle that is there', () => {
    expect(meetSegments(line(0, -9, 0, 9), arc(0, 0, 5, 0, 180))).toHaveLength(1);
    expect(meetSegments(line(0, -9, 0, 0), arc(0, 0, 5, 0, 180))).toHaveLength(0);
    expect(meetSegments(line(0, 0, 0.1, 0.1), arc(0, 0, 5, 0, 180))).toHaveLength(0);
  });

  it('keeps its digits on an arc so flat that its centre is a mile away', () => {
    // Rise 1e-6 over a chord of 10: radius 1.25e7.
    const flat = arcByBulge(p(0, 0), p(10, 0), -2e-7);
    const meetings = meetSegments(line(-1, 5e-7, 11, 5e-7), flat);
    expect(meetings).toHaveLength(2);
    // The height y of a parabola of rise h over half chord c is h (1 - (x/c)^2): half the rise at x = c / sqrt 2.
    for (const m of meetings) {
      if (m.kind === 'overlap') continue;
      expect(Math.abs(m.at.x - 5)).toBeCloseTo(5 / Math.SQRT2, 8);
      expect(distance(m.at, pointOnSegment(flat, m.partB))).toBeLessThan(1e-14);
    }
  });
});

describe('arc and arc', () => {
  it('two circles of radius 5 with centres 6 apart cross at height 4', () => {
    const meetings = meetSegments(arc(0, 0, 5, -90, 90), arc(6, 0, 5, 90, 270));
    expect(meetings.map((m) => m.kind)).toEqual(['crossing', 'crossing']);
    for (const m of meetings) {
      if (m.kind === 'overlap') continue;
      expect(m.at.x).toBeCloseTo(3, 14);
      expect(Math.abs(m.at.y)).toBeCloseTo(4, 14);
    }
  });

  it('touch from outside and from inside', () => {
    expect(meetSegments(arc(0, 0, 5, -90, 90), arc(8, 0, 3, 90, 270))).toMatchObject([{ kind: 'touching', at: { x: expect.closeTo(5, 12) as number, y: expect.closeTo(0, 6) as number } }]);
    expect(meetSegments(arc(0, 0, 5, -90, 90), arc(2, 0, 3, -90, 90))).toMatchObject([{ kind: 'touching', at: { x: expect.closeTo(5, 12) as number, y: expect.closeTo(0, 6) as number } }]);
  });

  it('share a cocircular stretch, either way round', () => {
    expect(meetSegments(arc(1, 1, 2, 0, 90), arc(1, 1, 2, 30, 120))).toMatchObject([
      { kind: 'overlap', partsA: [expect.closeTo(1 / 3, 12), 1], partsB: [0, expect.closeTo(2 / 3, 12)] },
    ]);
    expect(meetSegments(arc(1, 1, 2, 0, 90), reversedSegment(arc(1, 1, 2, 30, 120)))).toMatchObject([
      { kind: 'overlap', partsA: [expect.closeTo(1 / 3, 12), 1], partsB: [1, expect.closeTo(1 / 3, 12)] },
    ]);
  });

  it('the two halves of a circle touch at both ends', () => {
    expect(meetSegments(arc(0, 0, 1, 0, 180), arc(0, 0, 1, 180, 360))).toMatchObject([
      { kind: 'touching', partA: 0, partB: 1 },
      { kind: 'touching', partA: 1, partB: 0 },
    ]);
  });

  it('arcs over a half turn can share two stretches', () => {
    const meetings = meetSegments(arc(0, 0, 3, 0, 300), arc(0, 0, 3, 180, 480));
    expect(meetings.map((m) => m.kind)).toEqual(['overlap', 'overlap']);
    expect(meetings).toMatchObject([{ partsA: [0, expect.closeTo(0.4, 12)] }, { partsA: [expect.closeTo(0.6, 12), 1] }]);
  });

  it('circles about one centre do not meet', () => {
    expect(meetSegments(arc(0, 0, 3, 0, 180), arc(0, 0, 3 + 1e-6, 0, 180))).toEqual([]);
    expect(meetSegments(arc(1e-12, 0, 3, 0, 180), arc(0, 0, 3.1, 0, 180))).toEqual([]);
  });

  it('an S made of two equal arcs is one touching in the middle', () => {
    const first = arcByBulge(p(0, 0), p(3, 1), 0.5);
    const second = arcByBulge(p(3, 1), p(6, 2), -0.5);
    expect(meetSegments(first, second)).toMatchObject([{ kind: 'touching', partA: 1, partB: 0 }]);
  });

  it('arcs of one circle that follow each other touch once', () => {
    expect(meetSegments(arc(4, -2, 2.5, 10, 70), arc(4, -2, 2.5, 70, 100))).toMatchObject([{ kind: 'touching', partA: 1, partB: 0 }]);
  });

  it('a whole turn in one arc meets itself all the way', () => {
    const whole = arcAround<'quilt'>(p(0, 0), 1, 0, TURN);
    expect(meetSegments(whole, whole)).toMatchObject([{ kind: 'overlap', partsA: [0, 1] }]);
    expect(meetSegments(whole, line(-2, 0.5, 2, 0.5))).toHaveLength(2);
  });
});
