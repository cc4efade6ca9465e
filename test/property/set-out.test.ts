import { describe, expect, it } from 'vitest';
import { shapeOf } from '../../src/model/kit/shape-of.ts';
import { needleLines } from '../../src/needle/needle-lines.ts';
import { random } from '../../src/num/random.ts';
import { setOutSide } from '../../src/place/setout/set-out-side.ts';
import { type Sewn, crestsByTrying, sampled, symmetricByTrying } from './set-out-brute.ts';

// The solver against a search that tries everything and shares no code with it (set-out-brute.ts).

const POINTS = 2400;
const FAMILIES: readonly (readonly [string, (next: (low: number, high: number) => number) => { readonly [size: string]: number }])[] = [
  ['oval', (between) => ({ length: between(5, 9), width: between(2.5, 4.5) })],
  ['leaf', (between) => ({ length: between(5, 9), width: between(2, 4) })],
  ['circle', (between) => ({ diameter: between(3, 8) })],
  ['teardrop', (between) => ({ length: between(4, 7) })],
];

const near = (a: Sewn, b: Sewn) => Math.abs(a.height - b.height) < 0.03 && Math.abs(a.length - b.length) < 0.06;

describe('set-outs beside a search that tries everything', () => {
  for (const seed of [1, 2, 4]) {
    it.each(FAMILIES)(`%s of random sizes, seed ${seed}: the same poses, none more and none fewer`, (family, sizesFrom) => {
      const { between } = random(seed);
      const shape = shapeOf({ name: family, family, sizes: sizesFrom(between), thickness: 0.25, grips: 'none' });
      if (!shape.ok) throw new Error(shape.problem.message);
      const needle = needleLines(shape.value, 0.5);
      const line = sampled(needle.lines[0]!.path.vertices, POINTS);
      const width = between(1.5, 5);
      const side = { length: 10 * width, width: 30, outerClearance: 0, innerClearance: 0 };

      const across = setOutSide(side, { shape: shape.value, needle }, { pattern: 'step', counts: { from: 10, to: 10 } });
      const solved = across.kind === 'set-out' ? across.results.map(({ height, unit }): Sewn => ({ height, length: unit.length })) : [];
      const tried = symmetricByTrying(line, width);
      expect(solved.filter((one) => !tried.some((other) => near(one, other))), 'solved, not found by trying').toEqual([]);
      expect(tried.filter((one) => !solved.some((other) => near(one, other))), 'found by trying, not solved').toEqual([]);

      const height = between(0.4, 1.5);
      const toCrest = setOutSide({ ...side, length: 20 * width * 0.6 }, { shape: shape.value, needle }, { pattern: 'lantern', counts: { from: 10, to: 10 }, height });
      const crests = toCrest.kind === 'set-out' ? toCrest.results.filter(({ found }) => found === 'crest').map(({ unit }): Sewn => ({ height, length: unit.length })) : [];
      const triedCrests = crestsByTrying(line, width * 0.6, height);
      expect(crests.filter((one) => !triedCrests.some((other) => near(one, other))), 'crests solved, not found by trying').toEqual([]);
      expect(triedCrests.filter((one) => !crests.some((other) => near(one, other))), 'crests found by trying, not solved').toEqual([]);
    });
  }
});
