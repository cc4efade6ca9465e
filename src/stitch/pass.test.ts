import { describe, expect, it } from 'vitest';
import { pathLength } from '../geometry/measure.ts';
import { circle, endOf, startOf, straight } from '../geometry/path.ts';
import { poseOf } from '../geometry/pose.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import type { Pass, Template } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import type { ReferenceLine } from '../top/area.ts';
import { findPass } from './pass.ts';

// Lengths follow from the chord of a circle: c = 2 sqrt(R^2 - d^2), arc = 2 R asin(c / 2R) (any book of geometry).

const disc: Template = { name: 'disc', family: 'circle', sizes: { diameter: 6 }, thickness: 0.25, grips: 'none' };
const level: ReferenceLine = { id: 'horizontal-centre', kind: 'centre', name: 'horizontal centre line', path: straight({ x: -6, y: 0 }, { x: 6, y: 0 }) };
const upright: ReferenceLine = { id: 'vertical-centre', kind: 'centre', name: 'vertical centre line', path: straight({ x: 0, y: -6 }, { x: 0, y: 6 }) };
const short: ReferenceLine = { id: 'short', kind: 'edge', name: 'short edge', path: straight({ x: -1, y: 0 }, { x: 1, y: 0 }) };
const round: ReferenceLine = { id: 'round', kind: 'edge', name: 'round edge', path: circle({ x: 3, y: 0 }, 1) };

function shape(template: Template) {
  const drawn = shapeOf(template);
  if (!drawn.ok) throw new Error(drawn.problem.message);
  return drawn.value;
}

function find(pass: Pass, { x = 0, y = 0, angle = 0, flipped = false } = {}) {
  return findPass('a', pass, { needle: needleLines(shape(disc), 0.5), pose: poseOf(x, y, angle, flipped), needleOffset: { x: 0, y: 0 }, lines: [level, upright, short, round] });
}

const across = (nth: number) => ({ crosses: 'line:horizontal-centre', nth });

describe('finding a pass on the needle line of a 6-inch disc and a half-inch foot (R = 3 1/4)', () => {
  const R = 3.25;

  it('runs clockwise from the first crossing to the second: over the top', () => {
    const pass = find({ start: across(1), stop: across(2), way: 'clockwise' }, { y: 2 });
    expect(pass).toMatchObject({ kind: 'found', way: 'clockwise' });
    if (pass.kind !== 'found') return;
    const half = Math.sqrt(R * R - 4);
    expect(startOf(pass.path)!.x).toBeCloseTo(-half, 10);
    expect(endOf(pass.path)!.x).toBeCloseTo(half, 10);
    expect(pass.length).toBeCloseTo(2 * R * Math.asin(half / R), 10);
    expect(pathLength(pass.path)).toBeCloseTo(pass.length, 10);
  });

  it('runs counterclockwise the other way round, and the two make a whole turn', () => {
    const over = find({ start: across(1), stop: across(2), way: 'clockwise' }, { y: 2 });
    const under = find({ start: across(1), stop: across(2), way: 'counterclockwise' }, { y: 2 });
    if (over.kind !== 'found' || under.kind !== 'found') return expect.fail('not found');
    expect(over.length + under.length).toBeCloseTo(2 * Math.PI * R, 10);
    expect(startOf(under.path)!.x).toBeCloseTo(startOf(over.path)!.x, 10);
  });

  it('sews the same stretch of template when it is flipped, seen from behind', () => {
    const faceUp = find({ start: { along: 1 }, stop: { along: 4 }, way: 'clockwise' });
    const faceDown = find({ start: { along: 1 }, stop: { along: 4 }, way: 'clockwise' }, { flipped: true });
    if (faceUp.kind !== 'found' || faceDown.kind !== 'found') return expect.fail('not found');
    expect(startOf(faceDown.path)!.x).toBeCloseTo(-startOf(faceUp.path)!.x, 12);
    expect(startOf(faceDown.path)!.y).toBeCloseTo(startOf(faceUp.path)!.y, 12);
  });

  it('goes all round from where it is told to start', () => {
    const pass = find({ start: { crosses: 'line:vertical-centre' }, stop: 'all-round', way: 'clockwise' });
    if (pass.kind !== 'found') return expect.fail('not found');
    expect(pass.length).toBeCloseTo(2 * Math.PI * R, 10);
    expect(startOf(pass.path)).toMatchObject({ x: expect.closeTo(0, 10) as number, y: expect.closeTo(-R, 10) as number });
  });

  it('counts a straight reference line as going on beyond its ends', () => {
    const pass = find({ start: { crosses: 'line:short', nth: 1 }, stop: { crosses: 'line:short', nth: 2 }, way: 'clockwise' });
    expect(pass.kind).toBe('found');
  });

  it('crosses curved reference lines too, in the order of the line', () => {
    // Radical line of two circles 3 apart: x = (d^2 + R^2 - r^2) / 2d.
    const pass = find({ start: { crosses: 'line:round', nth: 1 }, stop: { crosses: 'line:round', nth: 2 }, way: 'clockwise' });
    if (pass.kind !== 'found') return expect.fail('not found');
    expect(startOf(pass.path)!.x).toBeCloseTo((9 + R * R - 1) / 6, 10);
  });

  it('says what is missing and at which end', () => {
    expect(find({ start: across(1), stop: across(3), way: 'clockwise' })).toMatchObject({ kind: 'missing', why: 'no-crossing', end: 'stop' });
    expect(find({ start: across(1), stop: across(2), way: 'clockwise' }, { y: 9 })).toMatchObject({ kind: 'missing', why: 'no-crossing', end: 'start' });
    expect(find({ start: { crosses: 'line:nowhere' }, stop: across(2), way: 'clockwise' })).toMatchObject({ kind: 'missing', why: 'no-line' });
    expect(find({ edge: 'window:slot', start: across(1), stop: across(2), way: 'clockwise' })).toMatchObject({ kind: 'missing', why: 'no-edge' });
    expect(find({ start: { along: 1 }, stop: { along: 99 }, way: 'clockwise' })).toMatchObject({ kind: 'missing', why: 'off-the-end', end: 'stop' });
    expect(find({ start: { along: 1 }, stop: { along: 1 }, way: 'clockwise' })).toMatchObject({ kind: 'missing', why: 'no-length' });
  });
});
