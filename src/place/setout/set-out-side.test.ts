import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../geometry/bounds.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Frieze } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { countNearest } from './counts.ts';
import { centreSpacers, cornerSquares, countPairs } from './count-pairs.ts';
import { divisionsFromCentre } from './from-the-centre.ts';
import type { SetOutResult } from './result.ts';
import { setOutSide } from './set-out-side.ts';
import { turnCorners } from './turn-corners.ts';
import type { BorderSide, Ruler, SetOutWish } from './wish.ts';

function ruler(family: string, sizes: { readonly [size: string]: number }): Ruler {
  const shape = shapeOf({ name: family, family, sizes, thickness: 0.25, grips: 'none' });
  if (!shape.ok) throw new Error(shape.problem.message);
  return { shape: shape.value, needle: needleLines(shape.value, 0.5) };
}

const side = (length: number, width = 6): BorderSide => ({ length, width, outerClearance: 0.25, innerClearance: 0.25 });
const sharpest = ({ start, stop, crest }: SetOutResult['kinks']) => Math.max(start, stop, crest);

const CIRCLE = ruler('circle', { diameter: 6 });
const R = 3.25;

function resultsOf(given: Ruler, wish: SetOutWish, at = side(60)): readonly SetOutResult[] {
  const found = setOutSide(at, given, wish);
  return found.kind === 'set-out' ? found.results : [];
}

describe('a side set out with a circle', () => {
  // Closed form: the crest of a chord s on a circle of radius R is R - sqrt(R^2 - s^2 / 4), with the derivative s / (4 sqrt(R^2 - s^2 / 4)); no chord is wider than 2 R.
  it.each<Frieze>(['run', 'step', 'scallop', 'spin', 'twin', 'wave', 'lantern'])('%s: the count fixes the crest, and every spacing up to 2 R works', (pattern) => {
    const found = setOutSide(side(60), CIRCLE, { pattern, counts: { from: 5, to: 24 } });
    if (found.kind !== 'set-out') throw new Error(found.why.kind);
    expect(found.results.map(({ count }) => count).sort((a, b) => a - b)).toEqual(Array.from({ length: 15 }, (_, i) => i + 10));
    expect(found.refused.map(({ count }) => count)).toEqual([5, 6, 7, 8, 9]);
    for (const { spacing, height, forgiveness, slide, count } of found.results) {
      const level = Math.sqrt(R * R - (spacing * spacing) / 4);
      expect(height).toBeCloseTo(R - level, 9);
      expect(forgiveness.heightPerSpacing).toBeCloseTo(spacing / (4 * level), 9);
      expect(forgiveness.heightPerSixteenth).toBeCloseTo(spacing / (4 * level) / 16 / count, 9);
      // The whole circle is free to turn.
      expect(slide).toBeCloseTo(2 * Math.PI * R, 9);
    }
  });

  it('says by how much the spacing exceeds the widest chord, and which count would work', () => {
    const found = setOutSide(side(60), CIRCLE, { pattern: 'scallop', counts: { from: 6, to: 9 } });
    expect(found).toMatchObject({ kind: 'impossible', why: { kind: 'no-count-works', widest: 6.5, leastCount: 10 } });
    expect(found.refused[0]).toMatchObject({ count: 6, why: 'wider-than-the-needle-line' });
    expect(found.refused[0]!.by).toBeCloseTo(3.5, 12);
  });

  it('turns joints by twice the angle whose sine is s / 2R, mirrored; half turned or crossing, not at all', () => {
    const angle = Math.asin(3 / R);
    const kinks = (pattern: Frieze) => resultsOf(CIRCLE, { pattern, counts: { from: 10, to: 10 } })[0]!.kinks;
    expect(kinks('scallop').start).toBeCloseTo(2 * angle, 9);
    expect(kinks('run').stop).toBeCloseTo(2 * angle, 9);
    for (const pattern of ['step', 'spin', 'twin', 'wave', 'lantern'] as const) expect(sharpest(kinks(pattern))).toBeLessThan(1e-9);
  });
});

describe('a side set out with an ellipse', () => {
  // The needle line of an ellipse is its parallel (MathWorld, "Ellipse Parallel Curves"): x = (a + b k / W) cos t, y = (b + a k / W) sin t, W^2 = a^2 sin^2 t + b^2 cos^2 t.
  const a = 4;
  const b = 2.5;
  const at = (t: number) => {
    const w = Math.sqrt(a * a * Math.sin(t) ** 2 + b * b * Math.cos(t) ** 2);
    return { x: (a + (b * 0.25) / w) * Math.cos(t), y: (b + (a * 0.25) / w) * Math.sin(t) };
  };
  const solved = (f: (t: number) => number) => {
    let [low, high] = [0, Math.PI / 2];
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (f(middle) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const OVAL = ruler('oval', { length: 2 * a, width: 2 * b });

  it('has two families, flat and end-on, with the crests of the parallel curve', () => {
    for (const count of [12, 14, 16, 20]) {
      const s = 60 / count;
      const flat = b + 0.25 - at(solved((t) => at(t).x - s / 2)).y;
      const endOn = a + 0.25 - at(Math.PI / 2 - solved((t) => at(Math.PI / 2 - t).y - s / 2)).x;
      const heights = resultsOf(OVAL, { pattern: 'scallop', counts: { from: count, to: count } }).map(({ height }) => height);
      expect(heights).toHaveLength(2);
      // Within what the fitted arcs may stray, magnified by the steep end.
      expect(Math.min(...heights)).toBeCloseTo(flat, 2);
      expect(Math.max(...heights)).toBeCloseTo(endOn, 1);
      expect(Math.abs(Math.max(...heights) - endOn)).toBeLessThan(0.005);
    }
  });

  it('only flat beyond the short axis, and nothing beyond the long one', () => {
    expect(resultsOf(OVAL, { pattern: 'scallop', counts: { from: 10, to: 10 } })).toHaveLength(1);
    expect(setOutSide(side(60), OVAL, { pattern: 'scallop', counts: { from: 7, to: 7 } }).kind).toBe('impossible');
  });

  it('to a crest of the wished height, clear of its own image', () => {
    for (const result of resultsOf(OVAL, { pattern: 'lantern', counts: { from: 8, to: 14 }, height: 2 })) {
      if (result.found !== 'crest') continue;
      expect(result.height).toBeCloseTo(2, 9);
      expect(result.unit.extents.maxY).toBeLessThan(1e-7);
      expect(sharpest(result.kinks)).toBeLessThan(1e-9);
    }
  });
});

describe('what else is told', () => {
  it('forgiveness is the change of the crest when the side is a little longer, by measuring twice', () => {
    const wish = (count: number): SetOutWish => ({ pattern: 'scallop', counts: { from: count, to: count } });
    const step = 1e-5;
    const waved = ruler('wave', {});
    for (const given of [ruler('oval', { length: 8, width: 5 }), waved]) {
      for (const count of [11, 17]) {
        const [low, middle, high] = [-step, 0, step].map((off) => resultsOf(given, wish(count), side(60 + off * count)));
        for (const result of middle!) {
          const near = (all: readonly SetOutResult[]) => all.filter(({ found }) => found === result.found).sort((p, q) => Math.abs(p.height - result.height) - Math.abs(q.height - result.height))[0]!;
          const measured = (near(high!).height - near(low!).height) / (2 * step);
          const extents = boundsOf({ closed: false, vertices: [{ ...result.unit.start.at, bulge: 0 }, { ...result.unit.stop.at, bulge: 0 }] });
          // A line that is not its own mirror image turns a little when it is solved anew; the figure is for ends that run on alike.
          if (given === waved && result.found === 'symmetric') continue;
          // A rise whose line swells beyond its ends is measured with the swelling; only plain ones are compared.
          if (result.found === 'rise' && result.height - (extents.maxY - extents.minY) > 1e-9) continue;
          if (Math.abs(measured) < 50) expect(result.forgiveness.heightPerSpacing, `${result.found} ${count}`).toBeCloseTo(measured, 2);
        }
      }
    }
  });

  it('counts: (motif + spacing) x n = length (trade instructions): 75 and 39 take a 3-inch motif 25 and 13 times, a 6-inch one 12 at 6.25 and 6 at 6.5', () => {
    expect([countNearest(75, 3), countNearest(39, 3)]).toEqual([25, 13]);
    expect([countNearest(75, 6, 6), countNearest(39, 6, 6)]).toEqual([12, 6]);
    const [best] = countPairs(side(75), side(39), { pattern: 'run', spacing: 3 });
    expect(best).toMatchObject({ counts: [25, 13], spacings: [3, 3], difference: 0, seen: false });
    const six = countPairs(side(75), side(39), { pattern: 'run', spacing: 6, narrowest: 6 }).find(({ counts }) => counts[0] === 12 && counts[1] === 6);
    expect(six).toMatchObject({ spacings: [6.25, 6.5], difference: 0.25, sixteenths: 4, seen: true });
    expect(six!.percent).toBeCloseTo(100 * (0.25 / 6.375), 9);
    // A side of 86 less a 6-inch corner leaves 80: 8 repeats of 10.
    expect(80 / countNearest(80, 10)!).toBe(10);
  });

  it('a spacer in the middle or corner squares take up what is over: both sides come out at their length', () => {
    const wish: SetOutWish = { pattern: 'run', spacing: 6 };
    const spacers = centreSpacers(side(61), side(75), wish);
    expect(spacers.length).toBeGreaterThan(0);
    for (const { spacing, counts, on, gap } of spacers) {
      expect(counts[0] * spacing + (on === 'a' ? gap : 0)).toBeCloseTo(61, 9);
      expect(counts[1] * spacing + (on === 'b' ? gap : 0)).toBeCloseTo(75, 9);
      expect(counts[on === 'a' ? 0 : 1] % 2).toBe(0);
    }
    const squares = cornerSquares(side(61), side(75), wish);
    expect(squares.length).toBeGreaterThan(0);
    for (const { spacing, counts, reach } of squares) {
      expect(counts[0] * spacing + 2 * reach).toBeCloseTo(61, 9);
      expect(counts[1] * spacing + 2 * reach).toBeCloseTo(75, 9);
    }
  });

  it('divisions from the middle: each within 1/32, ends included, alike on both sides, while steps of a rounded spacing would run off', () => {
    const marks = divisionsFromCentre(61, 11);
    expect(marks).toHaveLength(12);
    marks.forEach(({ at, rounded, off }, i) => {
      expect(at).toBeCloseTo((i * 61) / 11 - 30.5, 12);
      expect(Math.abs(off)).toBeLessThanOrEqual(1 / 32 + 1e-12);
      expect(rounded * 16).toBe(Math.round(rounded * 16));
      expect(rounded + marks[11 - i]!.rounded).toBe(0);
    });
  });

  it('corners: with divisions of half the width a division falls on the mitre, with divisions of the width a crest does', () => {
    const turns = (count: number, pattern: Frieze) => turnCorners(resultsOf(CIRCLE, { pattern, counts: { from: count, to: count } })[0]!, side(60)).filter(({ fits }) => fits).map(({ how }) => how);
    expect(turns(20, 'lantern')).toEqual(['division-on-mitre', 'corner-motif']);
    expect(turns(10, 'lantern')).toEqual(['crest-on-mitre', 'corner-motif']);
    // Alternating patterns close going round only with even counts, and mirrored only with odd ones.
    expect(turns(20, 'wave')).toEqual(['corner-motif']);
    expect(turns(15, 'wave')).toEqual([]);
  });
});
