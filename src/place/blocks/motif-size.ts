// A motif in the middle of a block, a block on point or a triangle: where it has most room, and which of several sizes suits.
//
// Maths: for a fixed turn, the least distance of the needle line inside each straight edge changes evenly as the template slides. The place with
// the greatest least room is a linear programme in x, y and the room, solved by trying every three edges (and, between parallel edges, every
// two) for the place where all of them have the same room: the centre of the largest inscribed shape (de Berg et al., Computational Geometry, 4).

import { SAME_NUMBER, SAME_POINT } from '../../num/tolerances.ts';
import { fromDegrees } from '../../num/angle.ts';
import type { Point, Vec } from '../../geometry/point.ts';
import { dot } from '../../geometry/point.ts';
import { poseOf } from '../../geometry/pose.ts';
import type { Clearance } from '../../model/plan.ts';
import type { Area } from '../../top/area.ts';
import type { PlaceSetting } from '../place.ts';
import { clearEdges } from './edges.ts';
import { extentAlong } from './extent.ts';
import { type Laid, footLine, roundOutline } from './laid-line.ts';

export interface MotifFit {
  readonly pose: Laid;
  /** Room left within the clearances where there is least, in inches; less than 0 by how much it is too large. */
  readonly room: number;
}

export interface MotifCandidate {
  /** The template's id in the kit, or the name of a family's sizes. */
  readonly id: string;
  readonly setting: PlaceSetting;
}

export interface MotifChoice extends MotifFit {
  readonly id: string;
  /** Room to spare beyond what was wished; less than 0 when it comes too near. */
  readonly spare: number;
}

/**
 * Where a motif turned by an angle (degrees clockwise in the area's own axes) has most room within the clearances; in a rectangle with like
 * clearances its middle comes to the centre. Undefined without a needle line, or in an area with fewer than three straight edges that have seams.
 */
export function motifFit(setting: PlaceSetting, area: Area, clearance: Clearance, degrees = 0, flipped = false): MotifFit | undefined {
  const line = roundOutline(setting);
  if (!line) return undefined;
  const turned = poseOf<'template', 'area'>(0, 0, fromDegrees(degrees), flipped);
  const path = footLine(line, turned);
  const offset = setting.needleOffset ?? { x: 0, y: 0 };
  // Room at each edge when the template's origin lies at (x, y): n . (x, y) + at.
  const sides = clearEdges(area, clearance).map(({ from, inward, clearance: away = 0 }): Side => ({ n: inward, at: extentAlong(path, inward)[0] + dot(offset, inward) - dot({ x: from.x, y: from.y }, inward) - away }));
  const best = mostRoom(sides);
  return best && { pose: { ...turned, x: best.at.x, y: best.at.y }, room: best.room };
}

/**
 * The candidates by how well they fill an area: those that leave at least `wished` inches of room, the fullest first, then those that are too
 * large, the least so first. Each is tried at every angle given (degrees), and comes once.
 */
export function motifChoices(candidates: readonly MotifCandidate[], area: Area, clearance: Clearance, wished = 0, angles: readonly number[] = [0, 45, 90, 135]): readonly MotifChoice[] {
  const choices = candidates.flatMap(({ id, setting }): readonly MotifChoice[] => {
    const fits = angles.flatMap((angle) => motifFit(setting, area, clearance, angle) ?? []).sort((a, b) => b.room - a.room);
    const best = fits[0];
    return best ? [{ id, ...best, spare: best.room - wished }] : [];
  });
  const fitting = ({ spare }: MotifChoice) => spare >= -SAME_POINT;
  return choices.sort((a, b) => Number(fitting(b)) - Number(fitting(a)) || (fitting(a) ? a.spare - b.spare : b.spare - a.spare));
}

interface Side {
  readonly n: Vec<'area'>;
  readonly at: number;
}

/** The place with the greatest least room; nearest to the centre where a strip leaves a choice. */
function mostRoom(sides: readonly Side[]): { readonly at: Point<'area'>; readonly room: number } | undefined {
  if (sides.length < 3) return undefined;
  let best: { readonly at: Point<'area'>; readonly room: number } | undefined;
  const offer = (at: Point<'area'> | undefined) => {
    if (!at) return;
    const room = sides.reduce((least, { n, at: c }) => Math.min(least, n.x * at.x + n.y * at.y + c), Infinity);
    const nearer = best && Math.abs(room - best.room) <= SAME_POINT && Math.hypot(at.x, at.y) < Math.hypot(best.at.x, best.at.y) - SAME_POINT;
    if (!best || room > best.room + SAME_POINT || nearer) best = { at, room };
  };
  sides.forEach((a, i) =>
    sides.slice(i + 1).forEach((b, j) => {
      const opposite = Math.abs(a.n.x * b.n.y - a.n.y * b.n.x) <= SAME_NUMBER && dot(a.n, b.n) < 0;
      // Half way between two edges that face each other, and of that line the place nearest to the middle between any two others.
      if (opposite) {
        const along: Vec<'area'> = { x: -a.n.y, y: a.n.x };
        const across = (b.at - a.at) / 2;
        const on = (t: number): Point<'area'> => ({ x: a.n.x * across + along.x * t, y: a.n.y * across + along.y * t });
        offer(on(0));
        for (const c of sides) for (const d of sides) {
          const [p, q] = [dot(c.n, along), dot(d.n, along)];
          if (p > SAME_NUMBER && q < -SAME_NUMBER) {
            const [base, other] = [c.at + dot(c.n, { x: on(0).x, y: on(0).y }), d.at + dot(d.n, { x: on(0).x, y: on(0).y })];
            offer(on((other - base) / (p - q)));
          }
        }
      }
      for (const c of sides.slice(i + j + 2)) offer(equalRoom(a, b, c));
    }),
  );
  if (!best) return undefined;
  // In a rectangle longer than the motif is wide, the room is set by two edges alone; the middle of the others is meant.
  return centredAlong(sides, best);
}

/** Slid along the way that costs no room to the middle between the edges there. */
function centredAlong(sides: readonly Side[], best: { readonly at: Point<'area'>; readonly room: number }): { readonly at: Point<'area'>; readonly room: number } {
  for (const a of sides) {
    for (const b of sides) {
      if (Math.abs(a.n.x * b.n.y - a.n.y * b.n.x) > SAME_NUMBER || dot(a.n, b.n) >= 0) continue;
      const [roomA, roomB] = [a, b].map(({ n, at }) => n.x * best.at.x + n.y * best.at.y + at) as [number, number];
      const shift = (roomB - roomA) / 2;
      const at = { x: best.at.x + a.n.x * shift, y: best.at.y + a.n.y * shift };
      const room = sides.reduce((least, side) => Math.min(least, side.n.x * at.x + side.n.y * at.y + side.at), Infinity);
      if (room >= best.room - SAME_POINT) best = { at, room: best.room };
    }
  }
  return best;
}

/** Where three edges leave the same room. */
function equalRoom(a: Side, b: Side, c: Side): Point<'area'> | undefined {
  const [ux, uy, u] = [a.n.x - b.n.x, a.n.y - b.n.y, b.at - a.at];
  const [vx, vy, v] = [a.n.x - c.n.x, a.n.y - c.n.y, c.at - a.at];
  const sine = ux * vy - uy * vx;
  if (Math.abs(sine) <= SAME_NUMBER) return undefined;
  return { x: (u * vy - v * uy) / sine, y: (ux * v - vx * u) / sine };
}
