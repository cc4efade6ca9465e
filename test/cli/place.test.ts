import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { writePlan } from '../../src/model/codec.ts';
import type { Placement, Plan, Registration } from '../../src/model/plan.ts';
import { ONE_BLOCK, planOf, sheetOf, slabAt } from '../support/slab-plan.ts';
import { placeContract } from './contracts.ts';
import { example, json, newFolder, say } from './run.ts';

let folder: string;
beforeAll(() => {
  folder = newFolder();
});

/** A plan of one slab, six inches by one with its origin at its upper left corner, held by registrations on a 12-inch block. */
function heldBy(registrations: readonly Registration[], more: Partial<Placement> = {}): string {
  const plan: Plan = planOf(ONE_BLOCK, { s: sheetOf({ p: slabAt(0.2, 0.3, 1, 5, { angle: 10, registrations, ...more }) }) });
  const file = join(folder, `${Math.random().toString(36).slice(2)}.needlefall.json`);
  writeFileSync(file, writePlan(plan));
  return file;
}

const placeOne = async (registrations: readonly Registration[]) => {
  const { exit, value } = await json(placeContract, 'place', heldBy(registrations));
  expect(exit).toBe(0);
  return value.placements[0]!;
};

// Closed forms: the corners of the slab are its tips, at (0, 0), (6, 0), (6, 1) and (0, 1) of the template.
describe('needlefall place', () => {
  it('says what a template laid by eye can do: anything', async () => {
    expect(await placeOne([])).toMatchObject({ state: 'free', free: 'It can slide and turn.', otherPoses: [], contradicts: null });
  });

  it('gives the pose that two marks fix, and the three others that would do, two of them face down', async () => {
    const found = await placeOne([{ put: 'point:0,0', on: 'centre' }, { put: 'point:6,0', on: 'line:diagonal-down' }]);
    expect(found.state).toBe('fixed');
    expect(found.pose).toMatchObject({ flipped: false });
    expect(found.pose.angle).toBeCloseTo(45, 7);
    expect(found.otherPoses.map(({ flipped }) => flipped).sort()).toEqual([false, true, true]);
    // Face down, the edge from (0, 0) to (6, 0) points left before it is turned.
    const angles = found.otherPoses.map(({ angle, flipped }) => [flipped, Math.round(angle)] as const);
    expect(angles).toEqual(expect.arrayContaining([[false, -135], [true, 45], [true, -135]]));
  });

  it('says what is still free', async () => {
    const found = await placeOne([{ put: 'point:0,0', on: 'line:horizontal-centre' }, { put: 'point:6,0', on: 'line:horizontal-centre' }]);
    expect(found).toMatchObject({ state: 'free', free: 'It can still slide left and right.' });
    expect(found.registrations[0]).toMatchObject({ put: 'point:0,0', on: 'line:horizontal-centre', says: 'Put the marked point on the horizontal centre line.' });
  });

  it('names what contradicts what, by how much, and keeps the pose', async () => {
    const found = await placeOne([{ put: 'point:3,0', on: 'line:horizontal-centre' }, { put: 'point:0,0', on: 'point:0,0' }, { put: 'point:6,0', on: 'point:7,0' }]);
    expect(found).toMatchObject({ state: 'impossible', free: null, otherPoses: [], contradicts: { registrations: [1, 2] } });
    expect(found.contradicts!.gap).toBeCloseTo(0.5, 3);
    expect(found.contradicts!.says).toBe('Registrations 2 and 3 contradict each other: the best try misses by 1/2 in. The template is left where it last lay.');
    expect(found.pose).toMatchObject({ x: 0.2, y: 0.3 });
  });

  it('says what a registration names that is not there', async () => {
    const found = await placeOne([{ put: 'etching:heart', on: 'centre' }]);
    expect(found).toMatchObject({ state: 'impossible', contradicts: { registrations: [0], gap: null, says: 'The template has no etching "heart".' } });
  });

  it('speaks in sentences without --json', async () => {
    const { exit, text } = await say('place', heldBy([{ put: 'point:0,0', on: 'centre' }]));
    expect(exit).toBe(0);
    expect(text).toContain('Put the marked point on the centre.');
    expect(text).toContain('It can still turn about one place.');
  });

  it.each(['practice-block', 'tidewater', 'medallion', 'king-size'])('reads %s, in which nothing contradicts', async (name) => {
    const { value } = await json(placeContract, 'place', example(name));
    expect(value.placements.length).toBeGreaterThan(0);
    expect(value.placements.filter(({ state }) => state === 'impossible')).toEqual([]);
  });

  it('refuses what is no plan in one sentence', async () => {
    const { exit, complaint } = await say('place', join(folder, 'none.needlefall.json'));
    expect(exit).toBe(2);
    expect(complaint).toContain('could not be read');
  });
});
