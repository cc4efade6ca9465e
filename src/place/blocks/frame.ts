// A frame from the corners: a template laid on one corner of a block, its cross on the corner and its lines along the sides, mirrored across both
// centre lines; and the opening that remains for what is appliqued there.

import { SAME_POINT } from '../../num/tolerances.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { carryPath, stretchOfPath } from '../../geometry/change.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { type Path, polygon } from '../../geometry/path.ts';
import { type Point, distance, dot, moved } from '../../geometry/point.ts';
import { type Pose, after, mirrorAcross, poseOf, stay } from '../../geometry/pose.ts';
import type { Clearance, Pass, Registration, RepeatStep } from '../../model/plan.ts';
import type { Area } from '../../top/area.ts';
import { type PlaceSetting, requirementOf } from '../place.ts';
import { register } from '../register.ts';
import { type ClearEdge, clearEdges } from './edges.ts';
import { type Laid, footLine, roundOutline } from './laid-line.ts';
import { type Opening, openingOf } from './opening.ts';

export interface Frame {
  readonly pose: Laid;
  readonly registrations: readonly Registration[];
  /** What of the needle line is sewn: from clearance to clearance, the way that faces the centre. */
  readonly pass: Pass;
  readonly opening: Opening;
  readonly repeat: readonly RepeatStep[];
}

/** What lies where when nothing else is said: the cross on the upper left corner, the centre lines along the sides. */
export const FROM_THE_CORNER: readonly Registration[] = [
  { put: 'etching:cross', on: 'crossing:edge-top,edge-left' },
  { put: 'etching:centre-across', on: 'line:edge-top' },
];

/** The frames a template makes of a rectangular area, the one that leaves most room first (inches, radians, the area's own axes); or why it makes none. */
export function frame(area: Area, clearance: Clearance, setting: PlaceSetting, registrations: readonly Registration[] = FROM_THE_CORNER): Outcome<readonly Frame[], string> {
  const line = roundOutline(setting);
  if (!line) return fail('The template gives no needle line with this foot.');
  const read = registrations.map((registration) => requirementOf(registration, setting));
  for (const one of read) if (!one.ok) return fail(one.problem);
  const edges = clearEdges(area, clearance);
  const from = poseOf<'template', 'area'>(-area.width / 2, -area.height / 2);
  const registered = register(read.flatMap((one) => (one.ok ? [one.value] : [])), { from, outline: setting.shape.outline, search: 'all', faces: 'either' });
  if (registered.kind === 'impossible') return fail('What is asked of the template contradicts itself.');
  if (registered.kind === 'free') return fail('The template can still move; say what else lies where.');
  const { x, y } = setting.needleOffset ?? { x: 0, y: 0 };
  const sees = insideOf(edges);
  if (!sees) return fail('Only an area with four straight sides is framed from its corners.');
  const frames = registered.poses.flatMap((pose): readonly Frame[] => {
    const sewn = carryPath(poseOf<'area', 'area'>(x, y), footLine(line, pose));
    const within = stretchWithin(sewn, sees);
    if (!within) return [];
    const path = within === 'all' ? sewn : stretchOfPath(sewn, within.from, within.to);
    const opening = openingOf(area.boundary, FOUR.map((motion) => carryPath(motion, path)));
    const pass: Pass = within === 'all' ? { start: { along: 0 }, stop: 'all-round', way: 'clockwise' } : { start: { along: within.from }, stop: { along: within.to }, way: 'clockwise' };
    return [{ pose, registrations, pass, opening, repeat: [{ mirror: 'line:vertical-centre' }, { mirror: 'line:horizontal-centre' }] }];
  });
  if (frames.length === 0) return fail('No part of the needle line lies within the clearances of the area.');
  return ok([...distinctFrames(frames)].sort((a, b) => b.opening.radius - a.opening.radius));
}

const UPRIGHT = mirrorAcross<'area'>({ x: 0, y: 0 }, Math.PI / 2);
const LEVEL = mirrorAcross<'area'>({ x: 0, y: 0 }, 0);
const FOUR: readonly Pose<'area', 'area'>[] = [stay(), UPRIGHT, LEVEL, after(UPRIGHT, LEVEL)];

/** The rectangle the needle may sew in: the area less its clearances. */
function insideOf(edges: readonly ClearEdge[]): Path<'area'> | undefined {
  if (edges.length !== 4) return undefined;
  const lines = edges.map(({ from, inward, clearance = 0 }) => ({ n: inward, d: dot({ x: from.x, y: from.y }, inward) + clearance }));
  const corners = lines.map(({ n, d }, i): Point<'area'> => {
    const { n: m, d: e } = lines[(i + 1) % 4]!;
    const sine = n.x * m.y - n.y * m.x;
    return { x: (d * m.y - e * n.y) / sine, y: (n.x * e - m.x * d) / sine };
  });
  return polygon(corners);
}

/** The stretch of a closed line within a closed one that comes nearest to the centre; all of it when it does not leave. */
function stretchWithin(line: Path<'area'>, inside: Path<'area'>): { readonly from: number; readonly to: number } | 'all' | undefined {
  const cuts = meetPaths(line, inside).flatMap((meeting) => (meeting.kind === 'overlap' ? [...meeting.alongA] : [meeting.alongA])).sort((a, b) => a - b);
  const total = pathLength(line);
  const nearness = (along: number) => distance({ x: 0, y: 0 }, pointAlong(line, along).point);
  const holds = (p: Point<'area'>) => inside.vertices.every((a, i) => {
    const b = inside.vertices[(i + 1) % inside.vertices.length]!;
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) >= -SAME_POINT;
  });
  if (cuts.length === 0) return holds(pointAlong(line, 0).point) ? 'all' : undefined;
  const pieces = cuts.map((from, i) => ({ from, to: cuts[i + 1] ?? cuts[0]! + total })).filter(({ from, to }) => to - from > SAME_POINT && holds(pointAlong(line, (from + to) / 2).point));
  const best = pieces.reduce<(typeof pieces)[number] | undefined>((one, piece) => (one && nearness((one.from + one.to) / 2) <= nearness((piece.from + piece.to) / 2) ? one : piece), undefined);
  return best && { from: best.from, to: best.to % total };
}

/** A symmetric template frames the same way in several poses: the first of each. */
function distinctFrames(frames: readonly Frame[]): readonly Frame[] {
  return frames.filter(({ opening, pose }, i) => !frames.slice(0, i).some((other) => other.pose.flipped === pose.flipped && Math.abs(other.opening.radius - opening.radius) <= 1e3 * SAME_POINT && distance(moved({ x: 0, y: 0 }, { x: pose.x, y: pose.y }), { x: other.pose.x, y: other.pose.y }) <= 1e3 * SAME_POINT));
}
