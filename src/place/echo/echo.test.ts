import { describe, expect, it } from 'vitest';
import { pathLength } from '../../geometry/measure.ts';
import { type Path, circle, openPath, polygon, straight } from '../../geometry/path.ts';
import { type Point, heading } from '../../geometry/point.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { match } from '../match/match.ts';
import { echo } from './echo.ts';

const FOOT = 1 / 2;
const candidate = (outline: Path<'template'>) => {
  const shape: TemplateShape = { outline, windows: [], etchings: [] };
  return { needle: needleLines(shape, FOOT) };
};
/** The disc whose needle line has a radius. */
const disc = (needleRadius: number) => candidate(circle({ x: 0, y: 0 }, needleRadius - FOOT / 2));
const bar = candidate(polygon<'template'>([{ x: 0, y: 0 }, { x: 9, y: 0 }, { x: 9, y: 1 }, { x: 0, y: 1 }]));

/** An arc over a chord on the x axis, rising upward (to the left as it runs, so that its middle lies on the right). */
function arcOver(chord: number, radius: number): Path<'quilt'> {
  const half = Math.asin(chord / 2 / radius);
  return openPath([{ x: -chord / 2, y: 0, bulge: Math.tan(half / 2) }, { x: chord / 2, y: 0, bulge: 0 }]);
}

describe('an arc echoed by the template that sewed it', () => {
  // Derived here. Two circles of radius R, their centres h apart on the axis of the chord; c is the cosine of half the arc. The deviation is greatest at
  // the middle, h - d, and at the ends, the other way; least when both are e:
  //   inside:  h = d + e and sqrt(R^2 + h^2 + 2 R h c) = R + d - e  give  h = 4 d (R + d) / (2 R (1 + c) + 4 d);
  //   outside: h = d + e and sqrt(R^2 + h^2 - 2 R h c) = R - d + e  give  h = 4 d (R - d) / (2 R (1 + c) - 4 d).
  // Over a 4-inch chord of 4.25 (8, 15, 17), a quarter of an inch away: 1/68 inside, 1/60 outside.
  const least = (radius: number, chord: number, d: number, where: 'inside' | 'outside') => {
    const c = Math.sqrt(1 - (chord / 2 / radius) ** 2);
    const sign = where === 'inside' ? 1 : -1;
    return (4 * d * (radius + sign * d)) / (2 * radius * (1 + c) + sign * 4 * d) - d;
  };

  it('the closed form gives 1/68 inside and 1/60 outside for radius 4.25 over 4 inches', () => {
    expect(least(4.25, 4, 0.25, 'inside')).toBeCloseTo(1 / 68, 12);
    expect(least(4.25, 4, 0.25, 'outside')).toBeCloseTo(1 / 60, 12);
  });

  it.each([
    ['right', 'inside', 4.25, 4, 1 / 4],
    ['left', 'outside', 4.25, 4, 1 / 4],
    ['right', 'inside', 3, 2, 1 / 8],
    ['left', 'outside', 6, 5, 3 / 8],
  ] as const)('on the %s (%s), radius %f over a chord of %f, %f away: off by what the closed form says', (side, where, radius, chord, distance) => {
    const found = echo(arcOver(chord, radius), disc(radius), { distance, side });
    expect(found.kind).toBe('whole');
    if (found.kind !== 'whole') return;
    expect(found.exact).toBe(false);
    expect(found.best.side).toBe(side);
    expect(found.best.deviation.greatest).toBeCloseTo(least(radius, chord, distance, where), 7);
    expect(found.best.freedom.kind).toBe('turn');
  });

  it('takes the better side when either will do', () => {
    const found = echo(arcOver(4, 4.25), disc(4.25));
    expect(found.kind === 'whole' && found.best.deviation.greatest).toBeCloseTo(1 / 68, 7);
    expect(found.kind === 'whole' && found.best.side).toBe('right');
  });

  it('is exact with the template of the exact radius', () => {
    for (const [radius, side] of [[4.5, 'left'], [4, 'right']] as const) {
      const found = echo(arcOver(4, 4.25), disc(radius), { side });
      expect(found.kind === 'whole' && found.exact).toBe(true);
    }
  });

  it('a tighter tolerance leaves a shorter stretch, of just the length at which the closed form meets it', () => {
    const tolerance = 1 / 128;
    const found = echo(arcOver(4, 4.25), disc(4.25), { side: 'right', tolerance });
    expect(found.kind).toBe('part');
    if (found.kind !== 'part') return;
    // Halved until the closed form over a chord gives the tolerance.
    let [low, high] = [0, 4];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (least(4.25, middle, 0.25, 'inside') < tolerance) low = middle;
      else high = middle;
    }
    const longest = 2 * 4.25 * Math.asin(low / 2 / 4.25);
    expect(found.best.deviation.greatest).toBeLessThanOrEqual(tolerance);
    expect(found.best.to - found.best.from).toBeLessThanOrEqual(longest + 1e-6);
    expect(found.best.to - found.best.from).toBeGreaterThan(longest - 0.1);
    expect(found.whole?.deviation.greatest).toBeCloseTo(1 / 68, 7);
  });
});

describe('straight lines', () => {
  it('are echoed by a straight edge without any deviation, and the template may slide', () => {
    for (const angle of [0, 0.3, 1.2, 2.9, -2]) {
      const from: Point<'quilt'> = { x: 3, y: -7 };
      const along = heading<'quilt'>(angle);
      const found = echo(straight(from, { x: from.x + 6 * along.x, y: from.y + 6 * along.y }), bar, { distance: 3 / 8 });
      expect(found.kind).toBe('whole');
      if (found.kind !== 'whole') return;
      expect(found.exact).toBe(true);
      expect(found.best.deviation.greatest).toBeLessThan(1e-9);
      expect(found.best.freedom.kind).toBe('slide');
    }
  });

  it('longer than the edge are followed in part, and by a chain whose ends meet', () => {
    const found = echo(straight<'quilt'>({ x: 0, y: 0 }, { x: 20, y: 0 }), bar, { chain: true });
    expect(found.kind).toBe('part');
    if (found.kind !== 'part') return;
    expect(found.best.to - found.best.from).toBeGreaterThan(9 - 0.1);
    expect(found.chain?.missed).toEqual([]);
    expect(found.chain?.placements).toHaveLength(3);
    for (const gap of found.chain?.gaps ?? []) expect(gap).toBeLessThan(1 / 256);
  });

  it('do not count what hangs past their end: a short line is measured along itself only', () => {
    const found = echo(straight<'quilt'>({ x: 0, y: 0 }, { x: 2, y: 0 }), disc(5), { distance: 1 / 4, tolerance: 1 / 16 });
    // A line of 2 outside a circle of 5 (derived here): the middle is e too near, so the centre lies R + d - e from it; the ends are e too far, so
    // (R + d - e)^2 + 1 = (R + d + e)^2, and e = 1 / (4 (R + d)). Inside it would be 1 / (4 (R - d)), which is more.
    expect(found.kind === 'whole' && found.best.deviation.greatest).toBeCloseTo(1 / (4 * 5.25), 7);
  });
});

describe('what comes back', () => {
  it('a circle is echoed all round', () => {
    const found = echo<'quilt'>(circle({ x: 2, y: 1 }, 4.5), disc(4.25), { distance: 1 / 4 });
    expect(found.kind === 'whole' && found.exact).toBe(true);
    expect(found.kind === 'whole' && found.best.pass.stop).toBe('all-round');
  });

  it('says what cannot be asked', () => {
    expect(echo(arcOver(4, 4.25), disc(4), { distance: -1 })).toMatchObject({ kind: 'unusable' });
    expect(echo(arcOver(4, 4.25), disc(4), { tolerance: 0 })).toMatchObject({ kind: 'unusable' });
    expect(echo<'quilt'>(openPath([{ x: 1, y: 1, bulge: 0 }]), disc(4))).toMatchObject({ kind: 'unusable' });
  });
});

describe('matching a line', () => {
  it('finds the template that sewed it, in one placement', () => {
    const line = arcOver(3, 3.5);
    const found = match(line, { bar, three: disc(3), right: disc(3.5), five: disc(5) });
    expect(found.kind).toBe('whole');
    if (found.kind !== 'whole') return;
    expect(found.chain.placements.map(({ template }) => found.ids[template])).toEqual(['right']);
    expect(found.chain.greatest).toBeLessThan(1e-6);
  });

  it('sews a line of an arc and a tangent straight with the two that made it, ends meeting', () => {
    // A quarter circle of radius 4, then 6 in straight on.
    const line = openPath<'quilt'>([{ x: 0, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 4, y: 4, bulge: 0 }, { x: 4, y: 10, bulge: 0 }]);
    expect(pathLength(line)).toBeCloseTo(2 * Math.PI + 6, 9);
    const found = match(line, { bar, four: disc(4) });
    expect(found.kind).toBe('whole');
    if (found.kind !== 'whole') return;
    expect(found.chain.placements.map(({ template }) => found.ids[template])).toEqual(['four', 'bar']);
    expect(found.chain.gaps[0]).toBeLessThan(1 / 64);
  });
});
