// Blocks on point: square blocks turned 45 degrees, in diagonal rows, with setting triangles along the sides and a
// corner triangle in each corner.
//
// Worked out in turned axes: u runs down to the right along a diagonal row, v down to the left across the rows, both
// from the middle of the upper left block. There every block and strip is an upright rectangle; the sides of the layout
// hold u - v and u + v between two values each, and cut what crosses them at 45 degrees. Cell (a, b) has its middle at
// (a, b) times the pitch; the block of row i and column j (from 0) is cell (i + j, i - j), and the block between rows
// to its lower right cell (i + j + 1, i - j).
//
// With sashing, strips part the blocks of a diagonal row and run between the rows. With `sashedRound`, strips also part
// the blocks from the setting triangles, and the cornerstones at the sides are cut in half. Either way the setting
// triangles are half blocks, and the corner triangles quarter blocks.

import { point } from '../geometry/point.ts';
import { type Pose, carry, poseOf } from '../geometry/pose.ts';
import type { Blocks, Side } from '../model/plan.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { CORNERS, type Corner } from './area.ts';
import { type Laid, type Piece, type PieceEdge, rectangleCorners, rectangleEdges } from './piece.ts';
import { cornerTriangle, sideTriangle } from './triangles.ts';

const EIGHTH_TURN = Math.PI / 4;

/** The pieces of an on-point setting of square blocks, its upper left corner at the given place, with its size. */
export function onPointBlocks(blocks: Blocks, left: number, top: number, outside: 'seam' | 'raw'): Laid {
  const grid = gridOf(blocks, left, top, outside);
  const rows = Array.from({ length: grid.rows + grid.columns - 1 }, (_, i) => i - (grid.columns - 1));
  const pieces: Piece[] = rows.flatMap((b) => [...blocksInRow(grid, b), ...endsOfRow(grid, b)]);
  for (const corner of CORNERS) pieces.push(cornerPiece(grid, corner));
  if (grid.sash > 0) {
    const gaps = grid.round ? [-grid.columns, ...rows] : rows.slice(0, -1);
    pieces.push(...rows.flatMap((b) => stripsInRow(grid, b)), ...gaps.flatMap((b) => stripsAfterRow(grid, b)));
  }
  return { width: grid.width, height: grid.height, pieces };
}

interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly size: number;
  readonly sash: number;
  readonly pitch: number;
  readonly round: boolean;
  readonly cornerstones: boolean;
  readonly outside: 'seam' | 'raw';
  /** From the middle of an outer block to the side of the layout, times the square root of two. */
  readonly reach: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** From turned axes to the quilt. */
  readonly turned: Pose<'area', 'quilt'>;
}

function gridOf(blocks: Blocks, left: number, top: number, outside: 'seam' | 'raw'): Grid {
  const { rows, columns, cornerstones, sashing: sash } = blocks;
  const size = blocks.size[0];
  const pitch = size + sash;
  const round = sash > 0 && blocks.sashedRound === true;
  const reach = round ? pitch : size;
  const width = (pitch * (columns - 1) + reach) * Math.SQRT2;
  const height = (pitch * (rows - 1) + reach) * Math.SQRT2;
  const turned = poseOf<'area', 'quilt'>(left + reach / Math.SQRT2, top + reach / Math.SQRT2, EIGHTH_TURN);
  return { rows, columns, size, sash, pitch, round, cornerstones, outside, reach, left, top, width, height, turned };
}

/** First and last block of diagonal row b, as cells; the first comes after the last where the row has no blocks. */
function rangeOfRow(grid: Grid, b: number): { readonly first: number; readonly last: number } {
  return { first: Math.abs(b), last: Math.min(b + 2 * (grid.columns - 1), 2 * (grid.rows - 1) - b) };
}

/** Diagonal rows are counted from 1, from the upper right. */
function rowNumber(grid: Grid, b: number): number {
  return b + grid.columns;
}

/** The frame, turned by an angle, whose origin is a place in turned axes. */
function frameAt(grid: Grid, u: number, v: number, angle: number): Pose<'area', 'quilt'> {
  const at = carry(grid.turned, point(u, v));
  return poseOf(at.x, at.y, angle);
}

function blocksInRow(grid: Grid, b: number): readonly Piece[] {
  const { first, last } = rangeOfRow(grid, b);
  return Array.from({ length: last - first + 1 }, (_, i): Piece => {
    const a = first + i;
    const row = (a + b) / 2 + 1;
    const column = (a - b) / 2 + 1;
    return {
      id: `block:r${row}c${column}`,
      kind: 'block',
      name: Number.isInteger(row)
        ? `block, row ${row}, column ${column}`
        : `block between rows ${row - 0.5} and ${row + 0.5}, columns ${column - 0.5} and ${column + 0.5}`,
      frame: frameAt(grid, a * grid.pitch, b * grid.pitch, EIGHTH_TURN),
      corners: rectangleCorners(grid.size, grid.size),
      edges: rectangleEdges('seam', 'seam', 'seam', 'seam'),
      row,
      column,
    };
  });
}

/** The setting triangles at the two ends of a diagonal row; none where the row ends in a corner of the layout. */
function endsOfRow(grid: Grid, b: number): readonly Piece[] {
  const { pitch, reach } = grid;
  const { first, last } = rangeOfRow(grid, b);
  const ends: Piece[] = [];
  const add = (side: Side, nth: number, u: number) => {
    const middle = carry(grid.turned, point(u, b * pitch));
    ends.push({
      id: `setting-triangle:${side}:${nth}`,
      kind: 'setting-triangle',
      name: `setting triangle ${nth}, ${side}`,
      ...sideTriangle(grid.size, side, middle, grid.outside),
      side,
    });
  };
  if (b !== 0) add(b > 0 ? 'left' : 'top', Math.abs(b), first * pitch - reach);
  const toRight = b + 2 * (grid.columns - 1);
  const toBottom = 2 * (grid.rows - 1) - b;
  if (toRight < toBottom) add('right', (last + b) / 2 + 1, last * pitch + reach);
  if (toRight > toBottom) add('bottom', (last - b) / 2 + 1, last * pitch + reach);
  return ends;
}

function cornerPiece(grid: Grid, corner: Corner): Piece {
  const x = corner === 'top-left' || corner === 'bottom-left' ? grid.left : grid.left + grid.width;
  const y = corner === 'top-left' || corner === 'top-right' ? grid.top : grid.top + grid.height;
  return {
    id: `corner-triangle:${corner}`,
    kind: 'corner-triangle',
    name: `corner triangle, ${corner.replace('-', ' ')}`,
    ...cornerTriangle(grid.size, corner, point(x, y), grid.outside),
    corner,
  };
}

/** Where strips cross a diagonal row: before the first block (with strips all round), between blocks, and after the last. */
function crossingsOfRow(grid: Grid, b: number): readonly number[] {
  if (b <= -grid.columns || b >= grid.rows) return [];
  const { first, last } = rangeOfRow(grid, b);
  const from = grid.round ? first - 1 : first;
  const to = grid.round ? last : last - 1;
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => (from + i + 0.5) * grid.pitch);
}

/** The strips that part the blocks of a diagonal row; their x axis runs across the row, along the strip. */
function stripsInRow(grid: Grid, b: number): readonly Piece[] {
  const d = rowNumber(grid, b);
  return crossingsOfRow(grid, b).map((u, i) => ({
    id: `sashing:down:d${d}n${i + 1}`,
    kind: 'sashing',
    name: `sashing ${i + 1} in diagonal row ${d}`,
    frame: frameAt(grid, u, b * grid.pitch, 3 * EIGHTH_TURN),
    corners: rectangleCorners(grid.size, grid.sash),
    edges: rectangleEdges('seam', 'seam', 'seam', 'seam'),
  }));
}

/** One end of the strip between two diagonal rows: the side that cuts it, and where, for a v across the strip. */
interface StripEnd {
  readonly side: Side;
  readonly at: (v: number) => number;
}

/** The strip between diagonal rows b and b + 1, in one piece or parted by cornerstones wherever another strip meets it. */
function stripsAfterRow(grid: Grid, b: number): readonly Piece[] {
  const d = rowNumber(grid, b);
  const v = (b + 0.5) * grid.pitch;
  const { start, end } = stripEnds(grid, v);
  if (!grid.cornerstones) {
    return [stripPiece(grid, v, start.at, end.at, `sashing:across:d${d}`, `sashing after diagonal row ${d}`, true, true)];
  }
  const half = grid.sash / 2;
  const crossings = mergedInOrder(crossingsOfRow(grid, b), crossingsOfRow(grid, b + 1));
  const pieces: Piece[] = [];
  let from: StripEnd['at'] = start.at;
  let n = 0;
  const addStrip = (to: StripEnd['at'], atStart: boolean, atEnd: boolean) => {
    // Nothing is left beyond a cornerstone that the side of the layout cuts in half.
    if (Math.max(to(v - half) - from(v - half), to(v + half) - from(v + half)) <= SAME_POINT) return;
    n += 1;
    pieces.push(stripPiece(grid, v, from, to, `sashing:across:d${d}n${n}`, `sashing ${n} after diagonal row ${d}`, atStart, atEnd));
  };
  crossings.forEach((u, i) => {
    addStrip(() => u - half, i === 0, false);
    const cutBy = Math.abs(u - start.at(v)) <= SAME_POINT ? start.side : Math.abs(u - end.at(v)) <= SAME_POINT ? end.side : undefined;
    pieces.push(cornerstonePiece(grid, u, v, cutBy, `cornerstone:d${d}n${i + 1}`, `cornerstone ${i + 1} after diagonal row ${d}`));
    from = () => u + half;
  });
  addStrip(end.at, crossings.length === 0, true);
  return pieces;
}

function stripEnds(grid: Grid, v: number): { readonly start: StripEnd; readonly end: StripEnd } {
  const { pitch, reach } = grid;
  const maxX = 2 * pitch * (grid.columns - 1) + reach;
  const maxY = 2 * pitch * (grid.rows - 1) + reach;
  return {
    start: v > 0 ? { side: 'left', at: (across) => across - reach } : { side: 'top', at: (across) => -across - reach },
    end: maxX + v < maxY - v ? { side: 'right', at: (across) => maxX + across } : { side: 'bottom', at: (across) => maxY - across },
  };
}

function stripPiece(grid: Grid, v: number, from: StripEnd['at'], to: StripEnd['at'], id: string, name: string, atStart: boolean, atEnd: boolean): Piece {
  const half = grid.sash / 2;
  const [v0, v1] = [v - half, v + half];
  const lo = Math.min(from(v0), from(v1));
  const hi = Math.max(to(v0), to(v1));
  const u = (lo + hi) / 2;
  return {
    id,
    kind: 'sashing',
    name,
    frame: frameAt(grid, u, v, EIGHTH_TURN),
    corners: [point(from(v0) - u, -half), point(to(v0) - u, -half), point(to(v1) - u, half), point(from(v1) - u, half)],
    edges: rectangleEdges('seam', atEnd ? grid.outside : 'seam', 'seam', atStart ? grid.outside : 'seam'),
  };
}

function cornerstonePiece(grid: Grid, u: number, v: number, cutBy: Side | undefined, id: string, name: string): Piece {
  if (cutBy) return { id, kind: 'cornerstone', name: `half ${name}`, ...sideTriangle(grid.sash, cutBy, carry(grid.turned, point(u, v)), grid.outside), side: cutBy };
  const edges: readonly PieceEdge[] = rectangleEdges('seam', 'seam', 'seam', 'seam');
  return { id, kind: 'cornerstone', name, frame: frameAt(grid, u, v, EIGHTH_TURN), corners: rectangleCorners(grid.sash, grid.sash), edges };
}

function mergedInOrder(a: readonly number[], b: readonly number[]): readonly number[] {
  const all = [...a, ...b].sort((x, y) => x - y);
  return all.filter((u, i) => i === 0 || u - all[i - 1]! > SAME_POINT);
}
