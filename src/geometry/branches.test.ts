import { describe, expect, it } from 'vitest';
import { branchesAt, sideOfBranch } from './branches.ts';
import { openPath, polygon } from './path.ts';
import { point } from './point.ts';
import { arcByBulge, lineFrom } from './segment.ts';

const corner = openPath<'quilt'>([[-2, 0], [0, 0], [0, 2]].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })));

describe('branches', () => {
  it('run away from the place, ahead and behind, up to the next vertex or event', () => {
    expect(branchesAt(corner, 2, [])).toEqual({ ahead: lineFrom(point(0, 0), point(0, 2)), behind: lineFrom(point(0, 0), point(-2, 0)) });
    expect(branchesAt(corner, 2, [1, 2, 3.5])).toEqual({ ahead: lineFrom(point(0, 0), point(0, 1.5)), behind: lineFrom(point(0, 0), point(-1, 0)) });
    expect(branchesAt(corner, 1, [])).toEqual({ ahead: lineFrom(point(-1, 0), point(0, 0)), behind: lineFrom(point(-1, 0), point(-2, 0)) });
  });

  it('are not there beyond the end of an open path, and go over the start of a closed one', () => {
    expect(branchesAt(corner, 0, []).behind).toBeUndefined();
    expect(branchesAt(corner, 4, []).ahead).toBeUndefined();
    const square = polygon<'quilt'>([point(0, 0), point(4, 0), point(4, 4), point(0, 4)]);
    expect(branchesAt(square, 0, []).behind).toEqual(lineFrom(point(0, 0), point(0, 4)));
    expect(branchesAt(openPath<'quilt'>([]), 0, [])).toEqual({ ahead: undefined, behind: undefined });
  });

  it('leave to the right inside a right-hand corner, to the left outside it', () => {
    const at = branchesAt(corner, 2, []);
    const to = (x: number, y: number) => lineFrom<'quilt'>(point(0, 0), point(x, y));
    expect([to(-1, 1), to(1, 1), to(1, -1), to(-1, -1), to(0, 3)].map((branch) => sideOfBranch(at, branch))).toEqual([1, -1, -1, -1, 0]);
    expect(sideOfBranch(at, undefined)).toBe(0);
    expect(sideOfBranch({ ...at, behind: undefined }, to(1, 1))).toBe(0);
  });

  it('that leave in the same direction are told apart by the way they bend', () => {
    const straightOn = branchesAt(openPath<'quilt'>([{ x: -2, y: 0, bulge: 0 }, { x: 2, y: 0, bulge: 0 }]), 2, []);
    // Quarter turns that start along x.
    const bend = Math.tan(Math.PI / 8);
    expect(sideOfBranch(straightOn, arcByBulge<'quilt'>(point(0, 0), point(1, 1), bend))).toBe(1);
    expect(sideOfBranch(straightOn, arcByBulge<'quilt'>(point(0, 0), point(1, -1), -bend))).toBe(-1);
  });
});
