import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../geometry/bounds.ts';
import { signedArea } from '../../geometry/measure.ts';
import { readOwnOutline } from './own-outline.ts';

describe('an outline of one’s own', () => {
  it('is read in the unit of the drawing and laid with its middle at the centre', () => {
    // 1 in = 25.4 mm (NIST); a CSS pixel is 1/96 in (CSS Values and Units).
    for (const [unit, side] of [['in', 4], ['cm', 10.16], ['mm', 101.6], ['px', 384]] as const) {
      const read = readOwnOutline(`M ${side} ${side} h ${side} v ${side} h ${-side} z`, unit);
      if (!read.ok) return expect.fail(read.problem.message);
      const { minX, minY, maxX, maxY } = boundsOf(read.value.shape.outline);
      for (const [found, wanted] of [[minX, -2], [minY, -2], [maxX, 2], [maxY, 2]] as const) expect(found).toBeCloseTo(wanted, 9);
    }
  });

  it('takes the path round all others for the outline, and the others for windows', () => {
    const read = readOwnOutline('M 1 1 H 2 V 2 H 1 Z M 0 0 H 6 V 4 H 0 Z M 3 2 A 1 1 0 0 1 5 2 A 1 1 0 0 1 3 2 Z', 'in');
    if (!read.ok) return expect.fail(read.problem.message);
    expect(signedArea(read.value.shape.outline)).toBeCloseTo(24, 9);
    expect(Object.keys(read.value.windows)).toEqual(['window-1', 'window-2']);
    expect(read.value.shape.windows.map(({ path }) => signedArea(path))).toEqual([expect.closeTo(1, 9), expect.closeTo(Math.PI, 9)]);
  });

  it('that crosses itself is refused with the place', () => {
    // The two diagonals of a square cross in its middle.
    const read = readOwnOutline('M 0 0 L 4 4 L 4 0 L 0 4 Z', 'in');
    if (read.ok) return expect.fail('taken');
    expect(read.problem.message).toContain('crosses itself');
    expect(read.problem.at).toEqual({ x: expect.closeTo(0, 9) as number, y: expect.closeTo(0, 9) as number });
    expect(read.problem.paths).toHaveLength(1);
  });

  it('that is open, empty or no path data is refused in words', () => {
    expect(readOwnOutline('M 0 0 H 4 V 4 H 0 V 1', 'in')).toMatchObject({ ok: false, problem: { at: { x: -2, y: -1 } } });
    for (const data of ['', 'M', 'hello', '<svg/>', 'M 0 0 Z']) expect(readOwnOutline(data, 'in')).toMatchObject({ ok: false, problem: { paths: [] } });
  });
});
