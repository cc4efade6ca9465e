// The lines of an area that people line up on: edges, centre lines, and diagonals where they mean something.
// A strip has no use for its diagonals; the two kinds of triangle have the altitude on their long edge instead, as the
// vertical centre line of a setting triangle and the diagonal of a corner triangle.

import { boundsOfPoints } from '../geometry/bounds.ts';
import { straight } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import type { AreaKind } from '../model/plan.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import type { ReferenceLine } from './area.ts';
import type { EdgeName, PieceEdge } from './piece.ts';

type At = Point<'area'>;

const WITH_DIAGONALS: readonly AreaKind[] = ['block', 'cornerstone', 'panel', 'border-corner', 'drawn', 'top'];
const WITH_BIAS: readonly AreaKind[] = ['block', 'panel', 'drawn', 'top'];

/** The reference lines of a straight-sided area, given its corners clockwise in its own axes and the names of its edges. */
export function referenceLinesOf(kind: AreaKind, corners: readonly At[], edges: readonly PieceEdge[]): readonly ReferenceLine[] {
  return [...inside(kind, corners, edges), ...edges.map((edge, i) => edgeLine(kind, edge.name, corners[i]!, corners[(i + 1) % corners.length]!))];
}

/** The two centre lines through the origin of an area of this extent. */
export function centreLines(left: number, top: number, right: number, bottom: number, names = CENTRE_NAMES): readonly ReferenceLine[] {
  return [
    { id: 'vertical-centre', kind: 'centre', name: names.vertical, path: straight({ x: 0, y: top }, { x: 0, y: bottom }) },
    { id: 'horizontal-centre', kind: 'centre', name: names.horizontal, path: straight({ x: left, y: 0 }, { x: right, y: 0 }) },
  ];
}

/** The diagonals of an extent about the origin and, where those are not at 45 degrees and `withBias` asks for them, the lines that are. */
export function diagonals(width: number, height: number, withBias: boolean, downName = 'diagonal down to the right'): readonly ReferenceLine[] {
  const x = width / 2;
  const y = height / 2;
  const lines: ReferenceLine[] = [
    { id: 'diagonal-down', kind: 'diagonal', name: downName, path: straight({ x: -x, y: -y }, { x, y }) },
    { id: 'diagonal-up', kind: 'diagonal', name: 'diagonal up to the right', path: straight({ x: -x, y }, { x, y: -y }) },
  ];
  if (!withBias || Math.abs(width - height) < SAME_POINT) return lines;
  const b = Math.min(x, y);
  return [
    ...lines,
    { id: 'bias-down', kind: 'diagonal', name: '45-degree line down to the right', path: straight({ x: -b, y: -b }, { x: b, y: b }) },
    { id: 'bias-up', kind: 'diagonal', name: '45-degree line up to the right', path: straight({ x: -b, y: b }, { x: b, y: -b }) },
  ];
}

const CENTRE_NAMES = { vertical: 'vertical centre line', horizontal: 'horizontal centre line' };

function inside(kind: AreaKind, corners: readonly At[], edges: readonly PieceEdge[]): readonly ReferenceLine[] {
  if (corners.length === 3) {
    const long = edges.findIndex((edge) => edge.name === 'long');
    return long < 0 ? [altitude('vertical-centre', 'centre', 'vertical centre line', corners, 0)] : [altitude('diagonal-down', 'diagonal', 'diagonal from the corner', corners, long)];
  }
  const { minX, minY, maxX, maxY } = boundsOfPoints(corners);
  const centres = centreLines(minX, minY, maxX, maxY, kind === 'border-side' ? { vertical: 'middle of the side', horizontal: 'centre line along the border' } : CENTRE_NAMES);
  if (!WITH_DIAGONALS.includes(kind)) return centres;
  return [...centres, ...diagonals(maxX - minX, maxY - minY, WITH_BIAS.includes(kind), kind === 'border-corner' ? 'mitre diagonal' : undefined)];
}

/** From top to bottom or left to right: between the middle of the long edge and the right angle across from it. */
function altitude(id: string, kind: ReferenceLine['kind'], name: string, corners: readonly At[], longEdge: number): ReferenceLine {
  const a = corners[longEdge]!;
  const b = corners[(longEdge + 1) % 3]!;
  const rightAngle = corners[(longEdge + 2) % 3]!;
  const middle: At = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return { id, kind, name, path: middle.y < rightAngle.y ? straight(middle, rightAngle) : straight(rightAngle, middle) };
}

function edgeLine(kind: AreaKind, edge: EdgeName, from: At, to: At): ReferenceLine {
  return { id: `edge-${edge}`, kind: 'edge', name: EDGE_NAMES[kind]?.[edge] ?? PLAIN_EDGE_NAMES[edge], path: straight(from, to) };
}

type EdgeNames = { readonly [edge in EdgeName]: string };

const PLAIN_EDGE_NAMES: EdgeNames = { top: 'top edge', right: 'right edge', bottom: 'bottom edge', left: 'left edge', long: 'long edge' };

/** Before and after the corner: as one goes clockwise round the top. */
const EDGE_NAMES: { readonly [kind in AreaKind]?: EdgeNames } = {
  sashing: { top: 'first long edge', right: 'right end', bottom: 'second long edge', left: 'left end', long: 'long edge' },
  'border-side': { top: 'outer edge', right: 'right end', bottom: 'inner edge', left: 'left end', long: 'long edge' },
  'border-corner': { top: 'outer edge after the corner', right: 'inner edge after the corner', bottom: 'inner edge before the corner', left: 'outer edge before the corner', long: 'long edge' },
  'setting-triangle': { top: 'long edge', right: 'right short edge', bottom: 'bottom edge', left: 'left short edge', long: 'long edge' },
  'corner-triangle': { top: 'short edge after the corner', right: 'right edge', bottom: 'bottom edge', left: 'short edge before the corner', long: 'long edge' },
};
