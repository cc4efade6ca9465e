import { describe, expect, it } from 'vitest';
import { reversedPath } from './change.ts';
import { signedArea } from './measure.ts';
import { circle, closedPath, openPath, polygon } from './path.ts';
import { point } from './point.ts';
import { checkSimple } from './simple.ts';

const p = point<'template'>;

describe('an outline that can be taken', () => {
  it('comes back as it is when it is clockwise, turned round when it is not', () => {
    const square = polygon([p(0, 0), p(4, 0), p(4, 4), p(0, 4)]);
    expect(checkSimple(square)).toEqual({ ok: true, value: square });
    const back = checkSimple(reversedPath(square));
    expect(back).toEqual({ ok: true, value: square });
    expect(checkSimple(circle(p(0, 0), 1)).ok).toBe(true);
  });

  it('loses its empty stretches', () => {
    expect(checkSimple(polygon([p(0, 0), p(4, 0), p(4, 0), p(4, 4), p(0, 0)]))).toEqual({ ok: true, value: polygon([p(0, 0), p(4, 0), p(4, 4)]) });
  });

  it('may have cusps and smooth joints', () => {
    // Four quarter circles of radius 1 hollowed out of a square's corners, meeting in cusps.
    const q = -Math.tan(Math.PI / 8);
    const astroid = closedPath<'template'>([{ x: 1, y: 0, bulge: q }, { x: 0, y: 1, bulge: q }, { x: -1, y: 0, bulge: q }, { x: 0, y: -1, bulge: q }]);
    const outcome = checkSimple(astroid);
    expect(outcome.ok).toBe(true);
    if (outcome.ok) expect(signedArea(outcome.value)).toBeCloseTo(4 - Math.PI, 13);
  });
});

describe('an outline that is refused, with the place', () => {
  it('a bow tie, where it crosses', () => {
    expect(checkSimple(polygon([p(0, 0), p(2, 2), p(2, 0), p(0, 2)]))).toEqual({ ok: false, problem: { kind: 'crosses-itself', at: { x: 1, y: 1 }, message: 'the outline crosses itself at 1, 1 in' } });
  });

  it('an arc that bulges over the other side', () => {
    const outcome = checkSimple(closedPath<'template'>([{ x: 0, y: 0, bulge: -1 }, { x: 4, y: 0, bulge: 0 }, { x: 4, y: 1, bulge: 0 }, { x: 0, y: 1, bulge: 0 }]));
    // The half circle of radius 2 about (2, 0) is at height 1 at x = 2 +- sqrt 3.
    expect(outcome).toMatchObject({ ok: false, problem: { kind: 'crosses-itself', at: { x: expect.closeTo(2 - Math.sqrt(3), 12) as number, y: expect.closeTo(1, 12) as number } } });
  });

  it('one that touches itself at a vertex, or runs along itself', () => {
    expect(checkSimple(polygon([p(0, 0), p(2, -1), p(2, 1), p(0, 0), p(-2, 1), p(-2, -1)]))).toMatchObject({ ok: false, problem: { kind: 'crosses-itself', at: { x: 0, y: 0 }, message: expect.stringContaining('touches') as string } });
    expect(checkSimple(polygon([p(0, 0), p(4, 0), p(4, 4), p(6, 4), p(4, 4), p(0, 4)]))).toMatchObject({ ok: false, problem: { kind: 'crosses-itself', at: { x: 4, y: 4 } } });
    expect(checkSimple(polygon([p(0, 0), p(4, 0), p(4, 2), p(2, 0), p(1, 1)]))).toMatchObject({ ok: false, problem: { kind: 'crosses-itself', at: { x: 2, y: 0 } } });
  });

  it('one that is open, or encloses nothing', () => {
    expect(checkSimple(openPath<'template'>([{ x: 0, y: 0, bulge: 0 }, { x: 1, y: 0, bulge: 0 }]))).toMatchObject({ ok: false, problem: { kind: 'open', at: { x: 0, y: 0 } } });
    expect(checkSimple(closedPath<'template'>([]))).toMatchObject({ ok: false, problem: { kind: 'degenerate' } });
    expect(checkSimple(polygon([p(1, 1), p(1, 1), p(1, 1)]))).toMatchObject({ ok: false, problem: { kind: 'degenerate' } });
    expect(checkSimple(polygon([p(0, 0), p(1, 0)]))).toMatchObject({ ok: false, problem: { kind: 'degenerate' } });
    expect(checkSimple(closedPath<'template'>([{ x: 0, y: 0, bulge: 0.5 }, { x: 1, y: 0, bulge: -0.5 }]))).toMatchObject({ ok: false, problem: { kind: 'degenerate' } });
    expect(checkSimple(polygon([p(0, 0), p(NaN, 0), p(1, 1)]))).toMatchObject({ ok: false, problem: { kind: 'degenerate' } });
  });

  it('a sliver thinner than rounding slack', () => {
    expect(checkSimple(polygon([p(0, 0), p(4, 0), p(4, 1e-10), p(0, 1e-10)])).ok).toBe(false);
  });

  it('asked again, answers the same', () => {
    const bad = polygon([p(0, 0), p(2, 2), p(2, 0), p(0, 2)]);
    expect(checkSimple(bad)).toBe(checkSimple(bad));
  });
});
