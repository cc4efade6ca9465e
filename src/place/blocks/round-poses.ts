// The poses a medallion's rule leaves open: "cross on this line, tip on the next", or "this etched line along this line", by how
// far from the centre the first of them lies.
// Maths: elementary. With the first mark a distance r out on one ray and a second mark a distance d from it, the second lies on the ray
// at an angle g where s^2 - 2 r s cos g + r^2 = d^2 (the cosine rule), so at no, one or two places s.

import { shortestTurn } from '../../num/angle.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { type Point, angleOf, between, distance, heading, moved } from '../../geometry/point.ts';
import { carryVec, poseOf } from '../../geometry/pose.ts';
import { featureOf } from '../feature.ts';
import type { PlaceSetting } from '../place.ts';
import type { Laid } from './laid-line.ts';

/** "This line" of a medallion: straight up from the centre, in radians clockwise from x. */
export const THIS_LINE = -Math.PI / 2;

/** One continuous family of poses; undefined where there is none so far out. */
export type RoundPoses = (from: number) => Laid | undefined;

/**
 * The families of poses with `put` on the line straight up from the centre, `from` inches out, and `tip` on the line `step` radians
 * clockwise of it; without a tip, with `put`, an etched line, along the line. Both faces, both ways round.
 */
export function roundPoses(put: string, tip: string | undefined, step: number, setting: PlaceSetting): Outcome<readonly RoundPoses[], string> {
  const first = featureOf(put, setting.shape, setting.needle);
  if (!first.ok) return first;
  if (first.value.kind === 'line') {
    if (tip !== undefined) return fail(`The ${first.value.name} along a line leaves no turn for a tip; name one of the two.`);
    const { at, way } = first.value;
    return ok(BOTH_FACES.flatMap((flipped) => [0, Math.PI].map((half): RoundPoses => (from) => putting(at, outward(THIS_LINE, from), turnOf(way, flipped, THIS_LINE + half), flipped))));
  }
  if (first.value.kind !== 'point') return fail(`The ${first.value.name} is neither a mark nor a straight line.`);
  if (tip === undefined) return fail(`The ${first.value.name} alone on a line leaves the template free to turn; name what lies on the next line.`);
  const second = featureOf(tip, setting.shape, setting.needle);
  if (!second.ok) return second;
  if (second.value.kind !== 'point') return fail(`The ${second.value.name} is no mark to put on the next line.`);
  const [a, b] = [first.value.at, second.value.at];
  const reach = distance(a, b);
  if (reach === 0) return fail('The two marks are the same place of the template.');
  return ok(
    BOTH_FACES.flatMap((flipped) =>
      [1, -1].map((side): RoundPoses => (from) => {
        const rest = reach * reach - (from * Math.sin(step)) ** 2;
        if (rest < 0) return undefined;
        const out = from * Math.cos(step) + side * Math.sqrt(rest);
        if (out < 0) return undefined;
        const [p, q] = [outward(THIS_LINE, from), outward(THIS_LINE + step, out)];
        return putting(a, p, turnOf(between(a, b), flipped, angleOf(between(p, q))), flipped);
      }),
    ),
  );
}

const BOTH_FACES = [false, true];

function outward(angle: number, from: number): Point<'area'> {
  return moved({ x: 0, y: 0 }, heading(angle), from);
}

function turnOf(way: { readonly x: number; readonly y: number }, flipped: boolean, wanted: number): number {
  return shortestTurn(wanted - angleOf(carryVec(poseOf<'template', 'area'>(0, 0, 0, flipped), way)));
}

function putting(p: Point<'template'>, q: Point<'area'>, angle: number, flipped: boolean): Laid {
  const v = carryVec(poseOf<'template', 'area'>(0, 0, angle, flipped), { x: p.x, y: p.y });
  return poseOf(q.x - v.x, q.y - v.y, angle, flipped);
}
