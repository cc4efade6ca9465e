// Seeded random poses, segments and paths for the property tests of geometry.

import type { Random } from '../../src/num/random.ts';
import type { Path, Vertex } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import { type Pose, poseOf } from '../../src/geometry/pose.ts';
import { type Segment, arcAround, arcByBulge, lineFrom } from '../../src/geometry/segment.ts';
import { checkSimple } from '../../src/geometry/simple.ts';

export function randomPoint(r: Random, reach = 10): Point<'area'> {
  return point(r.between(-reach, reach), r.between(-reach, reach));
}

export function randomPose(r: Random): Pose<'area', 'quilt'> {
  return poseOf(r.between(-50, 50), r.between(-50, 50), r.between(-Math.PI, Math.PI), r.next() < 0.5);
}

/** Lines and arcs from tiny to large, flat to half round. */
export function randomSegment(r: Random): Segment<'area'> {
  const kind = r.whole(0, 4);
  if (kind === 0) return lineFrom(randomPoint(r), randomPoint(r));
  if (kind === 1) return arcAround(randomPoint(r), r.between(0.1, 8), r.between(-7, 7), r.between(-6.2, 6.2));
  if (kind === 2) return arcByBulge(randomPoint(r), randomPoint(r), 10 ** r.between(-9, -1) * r.pick([-1, 1]));
  const from = randomPoint(r);
  const size = 10 ** r.between(-3, 1);
  return arcByBulge(from, point(from.x + r.between(-size, size), from.y + r.between(-size, size)), r.between(-1, 1));
}

const BULGES = [0, 0.5, -0.5, 1, -1, 0.1, -0.1, Math.tan(Math.PI / 8), -Math.tan(Math.PI / 8)];

/** A path of any shape, crossing itself as it likes. */
export function randomPath(r: Random, closed: boolean): Path<'area'> {
  const count = r.whole(2, 12);
  const vertices = Array.from({ length: count }, () => ({ ...randomPoint(r), bulge: r.next() < 0.4 ? 0 : r.between(-1, 1) }));
  return made(vertices, closed);
}

/** A path on a small grid, with right angles, half turns and quarter turns, so that vertices fall on each other and on sides, and stretches are shared. */
export function gridPath(r: Random, closed: boolean): Path<'area'> {
  const vertices: Vertex[] = [];
  for (let i = r.whole(3, 8); i > 0; i--) {
    const before = vertices[vertices.length - 1];
    // Mostly straight along the grid.
    const stay = before ? r.pick(['x', 'y', 'neither'] as const) : 'neither';
    const x = before && stay === 'x' ? before.x : r.whole(0, 3);
    const y = before && stay === 'y' ? before.y : r.whole(0, 3);
    if (before?.x === x && before.y === y) continue;
    vertices.push({ x, y, bulge: r.next() < 0.6 ? 0 : r.pick(BULGES) });
  }
  return made(vertices, closed);
}

/** A grid path that is an outline; undefined when the draw was not one. */
export function gridOutline(r: Random): Path<'area'> | undefined {
  const outcome = checkSimple(gridPath(r, true));
  return outcome.ok ? outcome.value : undefined;
}

function made(vertices: readonly Vertex[], closed: boolean): Path<'area'> {
  if (closed) return { closed, vertices };
  return { closed, vertices: vertices.map((v, i) => (i === vertices.length - 1 ? { ...v, bulge: 0 } : v)) };
}
