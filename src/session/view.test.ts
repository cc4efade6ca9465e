import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type View, framed, keptInSight, onQuilt, onScreen, pushed, recentred, zoomedAbout } from './view.ts';

const views = fc.record({
  x: fc.double({ min: -50, max: 150, noNaN: true }),
  y: fc.double({ min: -50, max: 150, noNaN: true }),
  scale: fc.double({ min: 1, max: 400, noNaN: true }),
});
const points = fc.record({ x: fc.double({ min: 0, max: 1440, noNaN: true }), y: fc.double({ min: 0, max: 900, noNaN: true }) });

describe('a view', () => {
  // Closed form: a similarity x -> s (x - x0) and its inverse; zooming about a point is the similarity that fixes it.
  it('keeps the place under the pointer while zooming, seed 41', () => {
    fc.assert(
      fc.property(views, points, fc.double({ min: 0.2, max: 5, noNaN: true }), (view: View, at, factor) => {
        const held = onQuilt(view, at);
        const after = onScreen(zoomedAbout(view, at, factor), held);
        expect(Math.abs(after.x - at.x)).toBeLessThan(1e-6);
        expect(Math.abs(after.y - at.y)).toBeLessThan(1e-6);
      }),
      { seed: 41 },
    );
  });

  it('takes a place to the screen and back', () => {
    const view = { x: 3, y: -2, scale: 12 };
    expect(onScreen(view, { x: 5, y: 1 })).toEqual({ x: 24, y: 36 });
    expect(onQuilt(view, { x: 24, y: 36 })).toEqual({ x: 5, y: 1 });
  });

  it('frames a stretch in the middle, as large as the narrower side allows', () => {
    const view = framed({ x: 0, y: 0, width: 60, height: 72 }, { width: 900, height: 800 }, 40);
    expect(view.scale).toBeCloseTo((800 - 80) / 72, 12);
    const middle = onScreen(view, { x: 30, y: 36 });
    expect(middle.x).toBeCloseTo(450, 9);
    expect(middle.y).toBeCloseTo(400, 9);
  });

  it('does not divide by a stretch without size, nor by a table without size', () => {
    expect(Number.isFinite(framed({ x: 1, y: 1, width: 0, height: 0 }, { width: 900, height: 800 }, 40).x)).toBe(true);
    expect(Number.isFinite(framed({ x: 0, y: 0, width: 60, height: 72 }, { width: 0, height: 0 }, 40).x)).toBe(true);
  });

  it('pushes with the hand', () => {
    expect(onScreen(pushed({ x: 0, y: 0, scale: 10 }, 25, -40), { x: 0, y: 0 })).toEqual({ x: 25, y: -40 });
  });

  it('keeps the middle when the table changes its size', () => {
    const before = { x: 1, y: 2, scale: 10 };
    const after = recentred(before, { width: 800, height: 600 }, { width: 1000, height: 500 });
    expect(onQuilt(after, { x: 500, y: 250 })).toEqual(onQuilt(before, { x: 400, y: 300 }));
  });

  it('never lets the quilt leave the table', () => {
    const quilt = { x: 0, y: 0, width: 60, height: 72 };
    const table = { width: 900, height: 800 };
    const far = keptInSight({ x: 500, y: -900, scale: 10 }, quilt, table, 80);
    const right = onScreen(far, { x: 60, y: 72 });
    const left = onScreen(far, { x: 0, y: 0 });
    expect(right.x).toBeGreaterThanOrEqual(80 - 1e-9);
    expect(left.y).toBeLessThanOrEqual(800 - 80 + 1e-9);
    const fine = { x: 0, y: 0, scale: 10 };
    expect(keptInSight(fine, quilt, table, 80)).toBe(fine);
  });
});
