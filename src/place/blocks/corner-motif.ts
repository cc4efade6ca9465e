// A motif in a corner, mirrored on the diagonal: as near to the corner as the clearances let the needle go.
//
// What is asked of the template (its centre line along the diagonal, a tip on it) leaves it one or two ways to move. It is nearest to the corner
// where the needle line touches the clearance of one edge, or of both: each such touching is one more registration, so that the plan finds the
// place again when the top is measured anew. Of those whose whole needle line keeps every clearance, the nearest to the corner comes first.

import { SAME_POINT } from '../../num/tolerances.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { type Point, distance, heading } from '../../geometry/point.ts';
import { poseOf } from '../../geometry/pose.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { carryPath } from '../../geometry/change.ts';
import type { Clearance, Registration, RepeatStep } from '../../model/plan.ts';
import type { Area } from '../../top/area.ts';
import { type PlaceSetting, requirementOf } from '../place.ts';
import { register } from '../register.ts';
import { extentAlong } from './extent.ts';
import { clearEdges, roomWithin } from './edges.ts';
import { type Laid, footLine, roundOutline } from './laid-line.ts';

export interface CornerMotif {
  readonly pose: Laid;
  readonly registrations: readonly Registration[];
  /** From the corner to the nearest place of the needle line, in inches. */
  readonly fromCorner: number;
  /** Least room left within the clearances, in inches: 0 where it touches one. */
  readonly room: number;
  readonly repeat: readonly RepeatStep[];
}

export interface CornerWish {
  /** What of the template is put where, but for how near to the corner. */
  readonly registrations: readonly Registration[];
  /** Which corner of the area: where its first edge starts when left out. */
  readonly corner?: Point<'area'>;
  /** The reference line it is mirrored across. */
  readonly mirror: string;
}

/** The places nearest to a corner, nearest first (inches, radians, the area's own axes); or why there is none. */
export function cornerMotif(wish: CornerWish, area: Area, clearance: Clearance, setting: PlaceSetting): Outcome<readonly CornerMotif[], string> {
  const line = roundOutline(setting);
  if (!line) return fail('The template gives no needle line with this foot.');
  const edges = clearEdges(area, clearance);
  const corner = wish.corner ?? edges[0]?.from;
  if (!corner) return fail('This area has no straight edges.');
  const beside = edges.filter(({ from, to, line: named, clearance: away }) => named && away !== undefined && (distance(from, corner) <= SAME_POINT || distance(to, corner) <= SAME_POINT));
  if (beside.length === 0) return fail('There is no seam beside this corner to stay clear of; lay the template by eye.');
  const touching = beside.map(({ line: named, clearance: away }): Registration => ({ put: 'needle-line', on: `line:${named!.id}`, distance: away! }));
  const asked = [...touching.map((one) => [one]), touching];
  const { x, y } = setting.needleOffset ?? { x: 0, y: 0 };
  const span = extentAlong(line.path, heading(0))[1] - extentAlong(line.path, heading(0))[0];
  const from = poseOf<'template', 'area'>(corner.x / 2, corner.y / 2);
  const found: CornerMotif[] = [];
  let told: string | undefined;
  for (const more of asked) {
    const registrations = [...wish.registrations, ...more];
    const read = registrations.map((registration) => requirementOf(registration, setting));
    const wrong = read.find((one) => !one.ok);
    if (wrong && !wrong.ok) {
      told = wrong.problem;
      continue;
    }
    const requirements = read.flatMap((one) => (one.ok ? [one.value] : []));
    const registered = register(requirements, { from, outline: setting.shape.outline, search: 'all', faces: 'either' });
    if (registered.kind !== 'fixed' && registered.kind !== 'overfixed') continue;
    for (const pose of registered.poses) {
      const sewn = carryPath(poseOf<'area', 'area'>(x, y), footLine(line, pose));
      const room = roomWithin(sewn, edges);
      const fromCorner = nearestOnPath(sewn, corner).distance;
      if (room < -SLACK || fromCorner > span + distance(corner, { x: 0, y: 0 }) || found.some((other) => sameLaid(other.pose, pose))) continue;
      found.push({ pose, registrations, fromCorner, room: Math.max(0, room), repeat: [{ mirror: wish.mirror }] });
    }
  }
  if (found.length === 0) return fail(told ?? 'The template does not fit into this corner with its needle line within the clearances.');
  return ok(found.sort((a, b) => a.fromCorner - b.fromCorner || Number(a.pose.flipped) - Number(b.pose.flipped)));
}

/** What a registration that is met may still be off, in inches. */
const SLACK = 10 * SAME_POINT;

function sameLaid(a: Laid, b: Laid): boolean {
  return a.flipped === b.flipped && Math.hypot(a.x - b.x, a.y - b.y) <= 1e4 * SAME_POINT && Math.abs(Math.sin((a.angle - b.angle) / 2)) <= 1e4 * SAME_POINT;
}
