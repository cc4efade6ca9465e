import { describe, expect, it } from 'vitest';
import { closedPath } from '../../geometry/path.ts';
import { familyById } from '../../model/kit/families.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { reachOf } from './reach.ts';

function drawn(id: string, sizes: { readonly [size: string]: number }): TemplateShape {
  const shape = familyById(id)!.draw(sizes);
  if (!shape.ok) throw new Error(shape.problem.message);
  return shape.value;
}

describe('what the foot can reach', () => {
  it('a stitched radius of 1 7/8 needs an edge of 1 5/8 with a half-inch foot outside it (a maker’s worked example)', () => {
    const { curves } = reachOf(drawn('circle', { diameter: 3.25 }), 1 / 2);
    expect(curves).toHaveLength(1);
    expect(curves[0]!.radius).toBeCloseTo(1.625, 9);
    expect(curves[0]!.atNeedle).toBeCloseTo(1.875, 9);
  });

  it('inside a window the needle’s curve is tighter than the edge: 2 1/8 gives 1 7/8', () => {
    const { curves, windows } = reachOf(drawn('ring', { diameter: 6, window: 4.25 }), 1 / 2);
    expect(windows).toEqual(['window']);
    expect(curves.map(({ radius, atNeedle }) => [radius, atNeedle])).toEqual([[3, 3.25], [2.125, 1.875]].map((pair) => pair.map((n) => expect.closeTo(n, 9) as number)));
  });

  it('the hollow edge of an arc band is tighter at the needle, its full edge wider', () => {
    const { curves } = reachOf(drawn('arc-band', { radius: 8, width: 2, sweep: 70, corner: 0 }), 1 / 2);
    const pairs = curves.map(({ radius, atNeedle }) => [radius, atNeedle]);
    expect(pairs).toEqual([[8, 8.25], [6, 5.75]].map((pair) => pair.map((n) => expect.closeTo(n, 9) as number)));
  });

  it('numbers each stretch of edge that is missed and says where it is', () => {
    // A right-angled notch: a roller of radius r misses r along either side of an inside corner.
    const outline = closedPath<'template'>([[-3, -2], [3, -2], [3, 0], [0.5, 0], [0.5, 2], [-3, 2]].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })));
    const { missed, closed } = reachOf({ outline, windows: [], etchings: [] }, 1 / 2);
    expect(closed).toEqual([]);
    expect(missed).toHaveLength(1);
    expect(missed[0]).toMatchObject({ number: 1, from: 'outline', where: 'middle' });
    expect(missed[0]!.length).toBeCloseTo(0.5, 9);
    expect(missed[0]!.at.x).toBeCloseTo(0.5, 9);
    expect(missed[0]!.at.y).toBeCloseTo(0, 9);
    // The foot sits in the notch's lower right; into the acrylic is up and to the left, at 45 degrees.
    expect(missed[0]!.into.x).toBeCloseTo(-Math.SQRT1_2, 9);
    expect(missed[0]!.into.y).toBeCloseTo(-Math.SQRT1_2, 9);
  });

  it('names the windows the foot does not fit into', () => {
    const ditch = drawn('straight-edge', { length: 10, width: 3, ditch: 0.5 });
    expect(reachOf(ditch, 9 / 16).closed).toHaveLength(1);
    expect(reachOf(ditch, 1 / 2).closed).toEqual([]);
  });
});
