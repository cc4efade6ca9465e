import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { json, say } from './run.ts';

const inches = z.number().nonnegative();
const pair = z.tuple([z.number(), z.number()]);
const room = z.tuple([inches.nullable(), inches.nullable()]);
const followingContract = z.strictObject({
  pose: z.strictObject({ x: z.number(), y: z.number(), angle: z.number(), flipped: z.boolean() }),
  pass: z.strictObject({ edge: z.string().regex(/^(outline|window:.+)$/), loop: z.number().int(), start: inches, stop: z.union([inches, z.literal('all-round')]), way: z.enum(['clockwise', 'counterclockwise']), length: inches }),
  d: z.string().regex(/^M /),
  side: z.enum(['left', 'right']),
  from: inches,
  to: inches,
  deviation: z.strictObject({ greatest: inches, at: inches, typical: inches, alongTemplate: inches, samples: z.array(pair).min(2) }),
  freedom: z.union([
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({ kind: z.literal('turn'), about: pair, room }),
    z.strictObject({ kind: z.literal('slide'), along: pair, room }),
  ]),
  score: z.strictObject({ 'left-out': z.number(), deviation: z.number(), 'face-down': z.number() }),
});
const chainOf = <Placement extends z.ZodType>(placement: Placement) =>
  z.strictObject({ placements: z.array(placement), gaps: z.array(inches.nullable()), missed: z.array(z.strictObject({ from: inches, to: inches })), greatest: inches });
const kind = z.enum(['whole', 'part', 'none']);
const echoContract = z.strictObject({
  kind,
  distance: inches,
  tolerance: inches,
  length: inches,
  exact: z.boolean(),
  best: followingContract.nullable(),
  whole: followingContract.nullable(),
  chain: chainOf(followingContract).nullable(),
});
const matchedContract = followingContract.extend({ template: z.string() });
const matchContract = z.strictObject({ kind, tolerance: inches, length: inches, chain: chainOf(matchedContract).nullable(), alone: z.array(matchedContract) });

const ARC = 'M -2 0 A 4.25 4.25 0 0 1 2 0';
const DISC = 'M 4 0 A 4 4 0 0 1 -4 0 A 4 4 0 0 1 4 0 Z';

describe('needlefall echo', () => {
  it('is off by 1/68 in where an arc of needle radius 4.25 echoes itself over a 4-inch chord', async () => {
    // Closed form, derived beside the solver's own tests: 4 d (R + d) / (2 R (1 + c) + 4 d) - d, with c = 15/17.
    const { exit, value } = await json(echoContract, 'echo', '--line', ARC, '--outline', DISC, '--foot', '1/2', '--distance', '1/4');
    expect(exit).toBe(0);
    expect([value.kind, value.exact]).toEqual(['whole', false]);
    expect(value.best!.deviation.greatest).toBeCloseTo(1 / 68, 7);
    expect(value.best!.freedom.kind).toBe('turn');
    // The sewn line starts and stops on the circle of radius 4 about the line's own centre, to within the deviation.
    const numbers = value.best!.d.match(/-?[\d.]+/g)!.map(Number);
    for (const [x, y] of [numbers.slice(0, 2), numbers.slice(-2)] as [number, number][]) expect(Math.abs(Math.hypot(x, y - 3.75) - 4)).toBeLessThan(0.015);
  });

  it('says in words that the same template cannot, and by how much', async () => {
    const { text } = await say('echo', '--line', ARC, '--outline', DISC, '--foot', '1/2');
    expect(text).toMatch(/cannot keep 1\/4 in from this line exactly.*at most 0\.015 in/);
    expect(text).toMatch(/may turn about its middle/);
  });

  it('allows for a needle that does not fall at the centre of the foot', async () => {
    const centred = await json(echoContract, 'echo', '--line', 'M 0 0 H 4', '--template', 'circle-3', '--foot', 'half-round-low', '--tolerance', '1/2', '--side', 'left');
    const offset = await json(echoContract, 'echo', '--line', 'M 0 0 H 4', '--template', 'circle-3', '--foot', 'open-foot', '--tolerance', '1/2', '--side', 'left');
    expect(offset.value.best!.pose.y).toBeCloseTo(centred.value.best!.pose.y, 6);
    expect(offset.value.best!.pose.x - centred.value.best!.pose.x).toBeCloseTo(1 / 32, 6);
  });

  it.each([
    [['--line', 'nonsense', '--outline', DISC], /line could not be read/],
    [['--line', 'M 0 0 H 1 M 3 3 H 5', '--outline', DISC], /one run without a break/],
    [['--line', ARC, '--outline', DISC, '--side', 'north'], /left, right or either/],
    [['--line', ARC, '--outline', DISC, '--tolerance', '0'], /tolerance is to be more than 0/],
    [['--line', ARC], /either an --outline or a --template/],
  ])('%j: one sentence and exit 2', async (args, complaint) => {
    const answer = await say('echo', '--foot', '1/2', ...args);
    expect(answer.exit).toBe(2);
    expect(answer.complaint).toMatch(complaint);
    expect(answer.text).toBe('');
  });
});

describe('needlefall match', () => {
  it('sews a circle of the needle line of a template of the kit with that template, all round', async () => {
    const { exit, value } = await json(matchContract, 'match', '--line', 'M 3.25 0 A 3.25 3.25 0 0 1 -3.25 0 A 3.25 3.25 0 0 1 3.25 0 Z', '--foot', '1/2');
    expect([exit, value.kind]).toEqual([0, 'whole']);
    expect(value.chain!.placements).toHaveLength(1);
    expect(['circle-6', 'ring-6']).toContain(value.chain!.placements[0]!.template);
    expect(value.chain!.greatest).toBeLessThan(1e-6);
    expect(value.chain!.placements[0]!.pass.stop).toBe('all-round');
  });

  it('refuses a kit that is not there', async () => {
    expect(await say('match', '--line', ARC, '--kit', 'missing.json')).toMatchObject({ exit: 2, complaint: expect.stringMatching(/could not be read/) as string });
  });
});
