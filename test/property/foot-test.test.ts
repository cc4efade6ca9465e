// A foot measured on needle lines is the foot that sewed them: the measuring and the offset share no code.

import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { closedPath } from '../../src/geometry/path.ts';
import { type FourGaps, measureFoot } from '../../src/model/kit/foot-test.ts';
import type { Place } from '../../src/model/plan.ts';
import { needleLines } from '../../src/needle/needle-lines.ts';
import { random } from '../../src/num/random.ts';

/** What a tape reads on the four sides of a straight edge of 6 x 3, from the needle lines the foot gives round it. */
function sewnRound(diameter: number, [x, y]: Place): FourGaps {
  const outline = closedPath<'template'>([[0, 0], [6, 0], [6, 3], [0, 3]].map(([a, b]) => ({ x: a!, y: b!, bulge: 0 })));
  const line = boundsOf(needleLines({ outline, windows: [], etchings: [] }, diameter).lines[0]!.path);
  // The foot to the right of the template has it at its left, and so on; the needle is carried along by its offset.
  return { left: line.maxX + x - 6, right: -(line.minX + x), behind: line.maxY + y - 3, front: -(line.minY + y) };
}

describe('measuring a foot', () => {
  it('finds again the foot whose needle lines were measured, seed 11', () => {
    const { between } = random(11);
    for (let i = 0; i < 200; i++) {
      const diameter = between(0.3, 1);
      const offset: Place = [between(-0.1, 0.1), between(-0.1, 0.1)];
      const found = measureFoot(sewnRound(diameter, offset));
      if (found.kind !== 'measured') return expect.fail(found.kind);
      expect(found.diameter).toBeCloseTo(diameter, 12);
      expect(found.needleOffset[0]).toBeCloseTo(offset[0], 12);
      expect(found.needleOffset[1]).toBeCloseTo(offset[1], 12);
    }
  });
});
