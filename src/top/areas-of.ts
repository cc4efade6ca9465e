// Pieces become areas: like pieces share one boundary, one set of seams and one set of reference lines.

import { boundsOfPoints, sizeOfBounds } from '../geometry/bounds.ts';
import { type Path, polygon, straight } from '../geometry/path.ts';
import type { Area, ReferenceLine, Seam } from './area.ts';
import type { Piece } from './piece.ts';
import { referenceLinesOf } from './reference-lines.ts';

/** The pieces as areas; like ones share their boundary, seams and reference lines. */
export function areasOf(pieces: readonly Piece[]): readonly Area[] {
  const shapes = new Map<string, AreaShape>();
  return pieces.map((piece) => {
    const key = shapeKey(piece);
    let shape = shapes.get(key);
    if (!shape) {
      shape = shapeOfPiece(piece);
      shapes.set(key, shape);
    }
    const { id, kind, name, frame, border, side, corner, row, column } = piece;
    return {
      id, kind, name, frame, ...shape, shape: key,
      ...(border !== undefined && { border }),
      ...(side !== undefined && { side }),
      ...(corner !== undefined && { corner }),
      ...(row !== undefined && { row }),
      ...(column !== undefined && { column }),
    };
  });
}

interface AreaShape {
  readonly width: number;
  readonly height: number;
  readonly boundary: Path<'area'>;
  readonly seams: readonly Seam[];
  readonly referenceLines: readonly ReferenceLine[];
}

function shapeOfPiece(piece: Piece): AreaShape {
  const corners = piece.measured ?? piece.corners;
  const seams: Seam[] = piece.edges.flatMap((edge, i) =>
    edge.is === 'open' ? [] : [{ id: `edge-${edge.name}`, kind: edge.is, path: straight(corners[i]!, corners[(i + 1) % corners.length]!) }],
  );
  if (piece.mitred) seams.push({ id: 'mitre', kind: 'seam', path: straight(corners[0]!, corners[2]!) });
  return { ...sizeOfBounds(boundsOfPoints(corners)), boundary: polygon(corners), seams, referenceLines: referenceLinesOf(piece.kind, corners, piece.edges) };
}

/** Pieces with the same key are alike in their own axes, rounding aside. */
function shapeKey(piece: Piece): string {
  const corners = piece.measured ?? piece.corners;
  const edges = piece.edges.map((edge) => `${edge.name}:${edge.is}`).join(' ');
  return `${piece.kind} ${corners.map(({ x, y }) => `${rounded(x)},${rounded(y)}`).join(' ')} ${edges}${piece.mitred ? ' mitred' : ''}`;
}

/** To a millionth of an inch, far below what anyone cuts and far above rounding; a zero has no sign. */
function rounded(x: number): number {
  return Math.round(x * 1e6) / 1e6 + 0;
}
