// What a template can still do while the needle sews the same line: turn about the middle of a round edge, slide along a straight one.

import { type Path, segmentsOf } from '../../geometry/path.ts';
import { lengthsBefore } from '../../geometry/measure.ts';
import type { Frame, Point, Vec } from '../../geometry/point.ts';
import { type Pose, carry, carryVec } from '../../geometry/pose.ts';
import { type Bearing, bearingOf } from '../../geometry/segment.ts';
import { FIT, SAME_POINT } from '../../num/tolerances.ts';

/** `room`: how many inches of the same needle line go on before the stretch and after it; both are infinite where it goes all round. */
export type Freedom<F extends Frame> =
  | { readonly kind: 'none' }
  | { readonly kind: 'turn'; readonly about: Point<F>; readonly room: readonly [before: number, after: number] }
  | { readonly kind: 'slide'; readonly along: Vec<F>; readonly room: readonly [before: number, after: number] };

/** The freedom of the stretch of a needle line from `start` on for `length` inches, laid by a pose. */
export function freedomAlong<F extends Frame>(path: Path<'template'>, start: number, length: number, pose: Pose<'template', F>): Freedom<F> {
  const before = lengthsBefore(path);
  const total = before[before.length - 1] ?? 0;
  const pieces = segmentsOf(path).map((s, i) => ({ bearing: bearingOf(s), from: before[i]!, to: before[i + 1]! })).filter(({ bearing }) => bearing.length > 0);
  const first = pieces.findIndex(({ to }) => to > start + SAME_POINT);
  const model = pieces[first < 0 ? 0 : first]?.bearing;
  if (!model || first < 0) return { kind: 'none' };
  const piece = (i: number) => (path.closed ? pieces[((i % pieces.length) + pieces.length) % pieces.length] : pieces[i]);
  const goesOn = (i: number) => piece(i) !== undefined && isSame(model, piece(i)!.bearing);
  let after = pieces[first]!.to - start;
  let ahead = first + 1;
  for (; ahead < first + pieces.length && goesOn(ahead); ahead++) after += piece(ahead)!.bearing.length;
  if (after < length - SAME_POINT) return { kind: 'none' };
  const isAllRound = ahead === first + pieces.length && path.closed;
  let back = start - pieces[first]!.from;
  for (let i = first - 1; i > ahead - pieces.length && goesOn(i); i--) back += piece(i)!.bearing.length;
  const room = isAllRound ? ([Infinity, Infinity] as const) : ([Math.min(back, total), after - length] as const);
  if (model.curvature === 0) return { kind: 'slide', along: carryVec(pose, model.tangent), room };
  return { kind: 'turn', about: carry(pose, centreOf(model)), room };
}

function centreOf({ middle, normal, curvature }: Bearing<'template'>): Point<'template'> {
  return { x: middle.x + normal.x / curvature, y: middle.y + normal.y / curvature };
}

function isSame(a: Bearing<'template'>, b: Bearing<'template'>): boolean {
  if (a.curvature === 0 || b.curvature === 0) {
    if (a.curvature !== b.curvature) return false;
    const off = (b.middle.x - a.middle.x) * a.normal.x + (b.middle.y - a.middle.y) * a.normal.y;
    return a.tangent.x * b.tangent.x + a.tangent.y * b.tangent.y > 0 && Math.abs(off) < FIT && Math.abs(a.tangent.x * b.tangent.y - a.tangent.y * b.tangent.x) * b.length < FIT;
  }
  const c = centreOf(a);
  const d = centreOf(b);
  return a.curvature * b.curvature > 0 && Math.abs(1 / a.curvature - 1 / b.curvature) < FIT && Math.hypot(c.x - d.x, c.y - d.y) < FIT;
}
