import { describe, expect, it } from 'vitest';
import type { Pass } from '../../model/plan.ts';
import { ONE_BLOCK, slabAt, slabs } from '../../../test/support/slab-plan.ts';
import { passMissing } from './pass-missing.ts';

const withPass = (pass: Pass) => slabs(ONE_BLOCK, { p: slabAt(-3, 0, 1, 5, { passes: { a: pass } }) });
/** The needle line of the slab: 14 in and a whole round of the foot. */
const ROUND = 14 + Math.PI / 2;

describe('a pass that is not there', () => {
  it.each<[string, Pass, string, string | undefined]>([
    ['a stop beyond the needle line', { start: { along: 1 }, stop: { along: ROUND + 0.5 }, way: 'clockwise' }, 'pass-off-line', 'stop'],
    ['a start before it', { start: { along: -0.5 }, stop: { along: 2 }, way: 'clockwise' }, 'pass-off-line', 'start'],
    ['a third crossing of a line crossed twice', { start: { crosses: 'line:vertical-centre', nth: 3 }, stop: { along: 2 }, way: 'clockwise' }, 'pass-no-crossing', 'start'],
    ['a line the area does not have', { start: { along: 1 }, stop: { crosses: 'line:altitude' }, way: 'clockwise' }, 'pass-no-line', 'stop'],
    ['a window the template does not have', { edge: 'window:slot', start: { along: 1 }, stop: { along: 2 }, way: 'clockwise' }, 'pass-no-edge', undefined],
    ['a start that is the stop', { start: { along: 1 }, stop: { along: 1 }, way: 'clockwise' }, 'pass-no-length', undefined],
  ])('says so of %s', (_, pass, code, end) => {
    const found = passMissing(withPass(pass));
    expect(found.map((each) => [each.code, each.severity])).toEqual([[code, 'error']]);
    expect(found[0]!.where.field).toBe(`sheets.s.placements.p.passes.a${end ? `.${end}` : ''}`);
    expect(found[0]!.message).toContain('Pass a of Slab cannot be sewn in block, row 1, column 1.');
  });

  it('is not told of the very ends of the needle line, nor of crossings that are there', () => {
    expect(passMissing(withPass({ start: { along: 0 }, stop: { along: ROUND }, way: 'clockwise' }))).toEqual([]);
    expect(passMissing(withPass({ start: { crosses: 'line:vertical-centre', nth: 1 }, stop: { crosses: 'line:vertical-centre', nth: 2 }, way: 'clockwise' }))).toEqual([]);
  });

  it('is not told of sheets that are not chosen', () => {
    expect(passMissing(slabs(ONE_BLOCK, { p: slabAt(-3, 0, 1, 50) }, { chosen: false }))).toEqual([]);
  });
});
