// The room left at a place: the largest circle in the space the place lies in, which no line, edge or keep-out enters.
//
// Maths. The room round a place is the distance to the nearest line or arc, and never changes faster than the place moves. A
// grid is filled from the place outward: two neighbours whose circles reach each other surely lie in one space, of others the
// straight way between them is tried. The grid's cells are then searched best first, as for the pole of inaccessibility (a cell
// whose middle has room r holds nothing with more than r plus half its diagonal). From every better place the circle is
// grown: a step is the best move of the plane problem in which each near line or arc is replaced by its tangent (three
// unknowns, the move and the radius, settled by the nearest three of them), taken as far as it truly makes the circle larger.
// Where it ends, lines and arcs are met exactly, as they are never flattened.

import { ROOM_FOUND, ROOM_MISSED, SAME_NUMBER, SAME_POINT } from '../num/tolerances.ts';
import { type Bounds, boundsHold } from '../geometry/bounds.ts';
import { type Frame, type Point, between, distance, quarterTurned, unit } from '../geometry/point.ts';
import { pointOnSegment, tangentOnSegment } from '../geometry/segment.ts';
import { type NearObstacle, type Obstacle, type Obstacles, obstaclesIn } from './obstacles.ts';

export interface RoomLeft<F extends Frame> {
  readonly at: Point<F>;
  /** In inches. */
  readonly radius: number;
  /** Indices of the obstacles the circle touches. */
  readonly touches: readonly number[];
}

/** Cells across the longer side of what is searched. */
const CELLS = 20;
/** So many cells are looked into at most; beyond, what has been found is taken. */
const MOST_CELLS = 400;
/** A space that spans no more than so many cells is searched again, more finely. */
const FEW_CELLS = 6;
/** So many of the nearest lines and arcs are heeded in one step. */
const HEEDED = 8;
const STEPS = 60;

/**
 * The largest circle whose middle lies within some bounds and in the same space as a place; the space may run on beyond.
 * Undefined where the place itself lies on a line, or nearer to something than its distance kept. Where nothing is near, the
 * circle is as wide as twice the bounds and touches nothing.
 */
export function roomLeft<F extends Frame>(all: readonly Obstacle<F>[], from: Point<F>, within: Bounds): RoomLeft<F> | undefined {
  const wide = Math.max(within.maxX - within.minX, within.maxY - within.minY);
  if (!(wide > 0)) return undefined;
  const obstacles = obstaclesIn(all, { minX: within.minX - wide, minY: within.minY - wide, maxX: within.maxX + wide, maxY: within.maxY + wide });
  const roomThere = obstacles.room(from, wide);
  if (roomThere <= 0) return undefined;
  const first = searched(obstacles, from, roomThere, within, wide / CELLS, wide);
  // A space of a few cells is hardly seen by so coarse a grid: once more, about what was found of it.
  const { reached } = first;
  const span = Math.max(reached.maxX - reached.minX, reached.maxY - reached.minY);
  const cell = wide / CELLS;
  if (span >= FEW_CELLS * cell) return first.best;
  const closer = { minX: Math.max(within.minX, reached.minX - cell), minY: Math.max(within.minY, reached.minY - cell), maxX: Math.min(within.maxX, reached.maxX + cell), maxY: Math.min(within.maxY, reached.maxY + cell) };
  const second = searched(obstacles, from, roomThere, closer, (span + 2 * cell) / CELLS, wide);
  return second.best.radius > first.best.radius ? second.best : first.best;
}

interface Cell<F extends Frame> {
  readonly at: Point<F>;
  readonly half: number;
  readonly room: number;
}

interface Searched<F extends Frame> {
  readonly best: RoomLeft<F>;
  /** The extent of the places found to lie in the space. */
  readonly reached: Bounds;
}

function searched<F extends Frame>(obstacles: Obstacles<F>, from: Point<F>, roomThere: number, within: Bounds, step: number, wide: number): Searched<F> {
  let best = grown(obstacles, from, roomThere, within, step, wide);
  const consider = (at: Point<F>, room: number) => {
    if (room <= best.radius) return;
    const tried = grown(obstacles, at, room, within, step, wide);
    if (tried.radius > best.radius) best = tried;
  };
  const cells = filled(obstacles, from, roomThere, within, step, wide);
  const reached = { minX: from.x, minY: from.y, maxX: from.x, maxY: from.y };
  for (const { at } of cells) {
    reached.minX = Math.min(reached.minX, at.x);
    reached.minY = Math.min(reached.minY, at.y);
    reached.maxX = Math.max(reached.maxX, at.x);
    reached.maxY = Math.max(reached.maxY, at.y);
  }
  let open = [...cells].sort((a, b) => b.room - a.room);
  for (let looked = 0; open.length > 0 && looked < MOST_CELLS; ) {
    const finer: Cell<F>[] = [];
    for (const cell of open) {
      consider(cell.at, cell.room);
      if (cell.room + cell.half * Math.SQRT2 <= best.radius + ROOM_MISSED) continue;
      const half = cell.half / 2;
      for (const [x, y] of CORNERS) {
        const at: Point<F> = { x: cell.at.x + x * half, y: cell.at.y + y * half };
        if (!boundsHold(within, at)) continue;
        looked += 1;
        const room = obstacles.room(at, cell.room + half * Math.SQRT2);
        if (room <= 0 || room + half * Math.SQRT2 <= best.radius + ROOM_MISSED) continue;
        if (!overlap(cell.room, room, half * Math.SQRT2) && obstacles.bars(cell.at, at)) continue;
        finer.push({ at, half, room });
      }
    }
    open = finer.sort((a, b) => b.room - a.room);
  }
  return { best, reached };
}

const CORNERS = [[-1, -1], [1, -1], [1, 1], [-1, 1]] as const;
const SIDEWAYS = [[1, 0], [-1, 0], [0, 1], [0, -1]] as const;

/** The cells of a grid through the place that lie in its space. */
function filled<F extends Frame>(obstacles: Obstacles<F>, from: Point<F>, roomThere: number, within: Bounds, step: number, wide: number): readonly Cell<F>[] {
  const key = (i: number, j: number) => i * 4096 + j;
  const seen = new Map<number, Cell<F>>();
  const start: Cell<F> = { at: from, half: step / 2, room: roomThere };
  const queue: { readonly i: number; readonly j: number; readonly cell: Cell<F> }[] = [{ i: 0, j: 0, cell: start }];
  seen.set(key(0, 0), start);
  for (let next = 0; next < queue.length; next++) {
    const { i, j, cell } = queue[next]!;
    for (const [di, dj] of SIDEWAYS) {
      if (seen.has(key(i + di, j + dj))) continue;
      const at: Point<F> = { x: from.x + (i + di) * step, y: from.y + (j + dj) * step };
      if (!boundsHold(within, at)) continue;
      const room = obstacles.room(at, Math.min(wide, cell.room + step));
      if (room <= 0) continue;
      if (!overlap(cell.room, room, step) && obstacles.bars(cell.at, at)) continue;
      const neighbour: Cell<F> = { at, half: step / 2, room };
      seen.set(key(i + di, j + dj), neighbour);
      queue.push({ i: i + di, j: j + dj, cell: neighbour });
    }
  }
  return [...seen.values()];
}

/** Whether two empty circles reach into each other. On either side of a straight line they may touch, and that is not enough. */
function overlap(radius: number, other: number, apart: number): boolean {
  return radius + other > apart + SAME_POINT;
}

// ---- growing a circle from a place ----

function grown<F extends Frame>(obstacles: Obstacles<F>, from: Point<F>, roomThere: number, within: Bounds, reach: number, wide: number): RoomLeft<F> {
  let at = from;
  let room = roomThere;
  let trust = reach;
  for (let i = 0; i < STEPS && trust > ROOM_FOUND; i++) {
    // A step that ends within the circle stays in the space.
    const stride = Math.min(trust, room / 2);
    const near = obstacles.near(at, room + 2 * stride);
    if (near.length === 0) break;
    const tangents = near.slice(0, HEEDED).map((one) => tangentAt(one, at));
    const tried = [bestMove(tangents, stride), ...centres(near, at, stride)]
      .map(([x, y]): Point<F> => ({ x: clamped(at.x + x, within.minX, within.maxX), y: clamped(at.y + y, within.minY, within.maxY) }))
      .map((p) => ({ p, room: obstacles.room(p, Math.min(wide, room + distance(at, p))) }))
      .reduce((a, b) => (a.room >= b.room ? a : b));
    if (tried.room > room + ROOM_FOUND * SAME_NUMBER) {
      const gained = tried.room - room;
      at = tried.p;
      room = tried.room;
      trust = gained > stride / 4 ? trust * 2 : trust / 2;
    } else {
      trust = stride / 4;
    }
  }
  return { at, radius: room, touches: [...new Set(obstacles.near(at, room + ROOM_FOUND).map((one) => one.obstacle))] };
}

/** A line or arc as its tangent: moving by v, the room to it becomes `room` plus v along the normal. */
interface Tangent {
  readonly room: number;
  readonly x: number;
  readonly y: number;
}

function tangentAt<F extends Frame>({ segment, part, room, keep }: NearObstacle<F>, at: Point<F>): Tangent {
  const foot = pointOnSegment(segment, part);
  const away = room + keep > ROOM_FOUND ? unit(between(foot, at)) : quarterTurned(tangentOnSegment(segment, part));
  return { room, x: away.x, y: away.y };
}

/** Inside an arc its own centre may be the best place of all. */
function centres<F extends Frame>(near: readonly NearObstacle<F>[], at: Point<F>, stride: number): readonly (readonly [number, number])[] {
  return near.slice(0, 2).flatMap(({ segment }) => {
    if (segment.kind === 'line' || distance(segment.centre, at) > stride) return [];
    return [[segment.centre.x - at.x, segment.centre.y - at.y] as const];
  });
}

/**
 * The move within a square of half-width `reach` that makes the least of the rooms greatest, all of them taken as straight. A
 * linear programme in the move and the least room: its best is at a corner where three bounds meet, and all are tried.
 */
function bestMove(tangents: readonly Tangent[], reach: number): readonly [number, number] {
  let best: readonly [number, number] = [0, 0];
  let most = Math.min(...tangents.map(({ room }) => room));
  const consider = (x: number, y: number) => {
    if (!(Math.abs(x) <= reach * (1 + SAME_NUMBER) && Math.abs(y) <= reach * (1 + SAME_NUMBER))) return;
    let least = Infinity;
    for (const t of tangents) least = Math.min(least, t.room + t.x * x + t.y * y);
    if (least > most) {
      most = least;
      best = [x, y];
    }
  };
  for (const [x, y] of CORNERS) consider(x * reach, y * reach);
  tangents.forEach((a, i) => {
    for (let j = i + 1; j < tangents.length; j++) {
      const b = tangents[j]!;
      // Where two are equal: a straight line of moves, (dx, dy) . move = gap.
      const [dx, dy, gap] = [a.x - b.x, a.y - b.y, b.room - a.room];
      for (const side of [-reach, reach]) {
        if (Math.abs(dy) > SAME_NUMBER) consider(side, (gap - dx * side) / dy);
        if (Math.abs(dx) > SAME_NUMBER) consider((gap - dy * side) / dx, side);
      }
      for (let k = j + 1; k < tangents.length; k++) {
        const c = tangents[k]!;
        const [ex, ey, other] = [a.x - c.x, a.y - c.y, c.room - a.room];
        const determinant = dx * ey - dy * ex;
        if (Math.abs(determinant) > SAME_NUMBER) consider((gap * ey - dy * other) / determinant, (dx * other - gap * ex) / determinant);
      }
    }
  });
  return best;
}

function clamped(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
