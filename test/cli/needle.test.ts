import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/model/kit/families.ts';
import { needleContract } from './contracts.ts';
import { json, say } from './run.ts';

const ask = (...args: string[]) => json(needleContract, 'needle', ...args);
const FULL_TURN = 2 * Math.PI;

describe('needlefall needle', () => {
  it.each([
    // Source: Steiner's formula for convex outlines, L + 2 pi r and A + L r + pi r^2.
    ['a square of side 4', 'M 0 0 H 4 V 4 H 0 Z', 17.570796327, 20.196349541],
    ['the same drawn counterclockwise', 'M 0 0 V 4 H 4 V 0 Z', 17.570796327, 20.196349541],
    ['a 3-4-5 triangle', 'M 0 0 L 4 0 L 0 3 Z', 13.570796327, 9.196349541],
  ])('goes round %s at the length and area Steiner gives', async (_, outline, length, area) => {
    const { exit, value } = await ask('--outline', outline, '--foot', '1/2');
    expect(exit).toBe(0);
    expect(value.missed).toEqual([]);
    const [line] = value.needleLines;
    expect(line!.length).toBeCloseTo(length, 8);
    expect(line!.area).toBeCloseTo(area, 8);
    expect(line!.pieces.reduce((sum, piece) => sum + piece.length, 0)).toBeCloseTo(length, 8);
    expect(line!.pieces.filter((piece) => piece.kind === 'corner').reduce((sum, piece) => sum + piece.length, 0)).toBeCloseTo(FULL_TURN / 4, 8);
  });

  it('tells edges the way they were drawn, from where they were drawn', async () => {
    for (const outline of ['M 0 0 H 4 V 3 H 0 Z', 'M 0 0 V 3 H 4 V 0 Z']) {
      const { value } = await ask('--outline', outline, '--foot', '1/2');
      const edges = value.needleLines[0]!.pieces.filter((piece) => piece.kind === 'edge');
      const sides = outline.includes('H 4 V 3') ? [4, 3, 4, 3] : [3, 4, 3, 4];
      expect(edges.map(({ edge }) => edge)).toEqual([0, 1, 2, 3]);
      edges.forEach(({ start, end, length }, i) => {
        const before = sides.slice(0, i).reduce((sum, side) => sum + side, 0);
        expect([start, end, length].map((x) => x.toFixed(9))).toEqual([before, before + sides[i]!, sides[i]!].map((x) => x.toFixed(9)));
      });
    }
  });

  it('gives what the foot misses in a square window: half an inch round each corner', async () => {
    // A round foot of radius r stops r short of both sides of a square corner.
    for (const window of ['M 2 2 H 4 V 4 H 2 Z', 'M 2 2 V 4 H 4 V 2 Z']) {
      const { value } = await ask('--outline', 'M 0 0 H 6 V 6 H 0 Z', '--window', window, '--foot', '12.7mm');
      expect(value.needleLines.map(({ from, length, area }) => [from, length.toFixed(9), area.toFixed(9)])).toEqual([
        ['outline', (24 + FULL_TURN / 4).toFixed(9), (36 + 6 + (FULL_TURN / 2) * 0.0625).toFixed(9)],
        ['window:0', '6.000000000', '2.250000000'],
      ]);
      const stretches = value.missed.map(({ from, start, end, length }) => [from, start.toFixed(9), end.toFixed(9), length.toFixed(9)]);
      expect(stretches).toHaveLength(4);
      for (const [start, end] of [['1.750000000', '2.250000000'], ['3.750000000', '4.250000000'], ['5.750000000', '6.250000000'], ['7.750000000', '0.250000000']]) {
        expect(stretches).toContainEqual(['window:0', start, end, '0.500000000']);
      }
    }
  });

  it('a window narrower than the foot gives no needle line and is missed all round', async () => {
    const { value } = await ask('--outline', 'M 0 0 H 6 V 6 H 0 Z', '--window', 'M 1 1 H 5 V 5 H 1 Z', '--window', 'M 5.2 5.2 H 5.6 V 5.6 H 5.2 Z', '--foot', '9/16');
    expect(value.needleLines.map(({ from }) => from)).toEqual(['outline', 'window:0']);
    expect(value.missed.filter(({ from }) => from === 'window:1').reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(1.6, 9);
  });

  it('the template for one job: chord 2 1/4, rise 3/8', async () => {
    // Source: a maker's worked example. Stitched radius (c^2/4 + h^2) / 2h = 1.875, sweep 73.739795 degrees, length 2.413129;
    // with a half-inch foot outside, the edge has radius 1.625.
    const half = Math.asin(1.125 / 1.875);
    const at = (radius: number, angle: number) => `${radius * Math.sin(angle)} ${-radius * Math.cos(angle)}`;
    const outline = `M ${at(1.625, -half)} A 1.625 1.625 0 0 1 ${at(1.625, half)} L 0 2 Z`;
    const { value } = await ask('--outline', outline, '--foot', '1/2');
    const curve = value.needleLines[0]!.pieces.find((piece) => piece.kind === 'edge' && piece.edge === 0);
    expect(curve!.length).toBeCloseTo(2.413129, 6);
    expect(value.needleLines[0]!.d).toContain('A 1.875 1.875');
  });

  it.each(FAMILIES.map(({ id }) => id))('draws the family %s at its usual sizes', async (id) => {
    const { exit, value } = await ask('--template', id, '--foot', '1/2');
    expect(exit).toBe(0);
    expect(value.needleLines[0]!.from).toBe('outline');
  });

  it('says the same to people', async () => {
    const { exit, text } = await say('needle', '--outline', 'M 0 0 H 4 V 4 H 0 Z', '--foot', '1/2');
    expect(exit).toBe(0);
    expect(text).toContain('The needle falls 1/4 in from the edge.');
    expect(text).toContain('outline: 17 9/16 in round, 20.20 sq in inside');
  });

  it.each([
    [['--foot', '1/2'], 'Give either an --outline or a --template.'],
    [['--foot', '1/2', '--outline', 'M 0 0 H 1 V 1 Z', '--template', 'leaf'], 'Give either an --outline or a --template.'],
    [['--foot', 'wide', '--template', 'leaf'], 'wide'],
    [['--foot', '0', '--template', 'leaf'], 'more than 0'],
    [['--foot', '-1/2', '--template', 'leaf'], 'more than 0'],
    [['--foot', '1/2', '--template', 'nothing'], 'There is no template "nothing".'],
    [['--foot', '1/2', '--template', 'constructor'], 'There is no template "constructor".'],
    [['--foot', '1/2', '--template', 'leaf', '--window', 'M 0 0 H 1 V 1 Z'], 'A --window goes with an --outline'],
    [['--foot', '1/2', '--outline', 'M 0 0 L 4 4 H 0 L 4 0 Z'], 'crosses itself at 2, 2 in'],
    [['--foot', '1/2', '--outline', 'M 0 0 H 4 V 4'], 'closed'],
    [['--foot', '1/2', '--outline', 'a square'], 'could not be read'],
    [['--foot', '1/2', '--outline', 'M 0 0 H 4 V 4 H 0 Z', '--window', 'M 3 3 H 5 V 5 H 3 Z'], 'meets the outline'],
    [['--template', 'leaf'], '--foot'],
    [['--foot', '1/2', '--fot', '1'], 'Did you mean --foot?'],
  ])('%j is refused in a sentence', async (args, words) => {
    const { exit, text, complaint } = await say('needle', ...args);
    expect({ exit, text }).toEqual({ exit: 2, text: '' });
    expect(complaint).toContain(words);
    expect(complaint).not.toMatch(/ {4}at |undefined|NaN/);
  });
});
