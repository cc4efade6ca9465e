// Blocks in rows and columns, side by side or with strips of sashing between them.

import { poseOf } from '../geometry/pose.ts';
import type { Blocks } from '../model/plan.ts';
import { type Laid, type Piece, type PieceEdge, rectangleCorners, rectangleEdges } from './piece.ts';

/**
 * The pieces of a straight setting, its upper left corner at the given place, with its size. Without cornerstones the
 * strips between rows run through across the whole width; with `sashedRound` strips also lie above the first row, below
 * the last and beside the outer columns.
 */
export function straightBlocks(blocks: Blocks, left: number, top: number, outside: 'seam' | 'raw'): Laid {
  const { rows, columns, cornerstones } = blocks;
  const sash = blocks.sashing;
  const [blockWidth, blockHeight] = blocks.size;
  const round = sash > 0 && blocks.sashedRound === true;
  const first = round ? 0 : 1;
  const lastRow = round ? rows : rows - 1;
  const lastColumn = round ? columns : columns - 1;
  const margin = round ? sash : 0;
  const width = columns * blockWidth + (columns - 1) * sash + 2 * margin;
  const height = rows * blockHeight + (rows - 1) * sash + 2 * margin;
  // Middles of blocks and of the strips after them; strip 0 lies before the first block.
  const blockX = (c: number) => left + margin + (c - 0.5) * blockWidth + (c - 1) * sash;
  const blockY = (r: number) => top + margin + (r - 0.5) * blockHeight + (r - 1) * sash;
  const stripX = (c: number) => left + margin + c * blockWidth + (c - 0.5) * sash;
  const stripY = (r: number) => top + margin + r * blockHeight + (r - 0.5) * sash;

  const edgesAt = (atTop: boolean, atRight: boolean, atBottom: boolean, atLeft: boolean): readonly PieceEdge[] => {
    const is = (at: boolean) => (at ? outside : 'seam');
    return rectangleEdges(is(atTop), is(atRight), is(atBottom), is(atLeft));
  };
  const pieces: Piece[] = [];

  for (let r = 1; r <= rows; r++) {
    for (let c = 1; c <= columns; c++) {
      pieces.push({
        id: `block:r${r}c${c}`,
        kind: 'block',
        name: `block, row ${r}, column ${c}`,
        frame: poseOf(blockX(c), blockY(r)),
        corners: rectangleCorners(blockWidth, blockHeight),
        edges: edgesAt(!round && r === 1, !round && c === columns, !round && r === rows, !round && c === 1),
        row: r,
        column: c,
      });
    }
  }
  if (sash <= 0) return { width, height, pieces };

  // Upright strips have their x axis running down, so that upright and level strips of one length are alike.
  for (let r = 1; r <= rows; r++) {
    for (let c = first; c <= lastColumn; c++) {
      pieces.push({
        id: `sashing:down:r${r}c${c}`,
        kind: 'sashing',
        name: `sashing ${c === 0 ? 'left' : 'right'} of row ${r}, column ${Math.max(c, 1)}`,
        frame: poseOf(stripX(c), blockY(r), Math.PI / 2),
        corners: rectangleCorners(blockHeight, sash),
        edges: edgesAt(round && c === columns, !round && r === rows, round && c === 0, !round && r === 1),
        row: r,
        column: c,
      });
    }
  }
  for (let r = first; r <= lastRow; r++) {
    const atTop = round && r === 0;
    const atBottom = round && r === rows;
    const beside = `${r === 0 ? 'above' : 'below'} row ${Math.max(r, 1)}`;
    if (!cornerstones) {
      pieces.push({
        id: `sashing:across:r${r}`,
        kind: 'sashing',
        name: `sashing ${beside}`,
        frame: poseOf(left + width / 2, stripY(r)),
        corners: rectangleCorners(width, sash),
        edges: edgesAt(atTop, true, atBottom, true),
        row: r,
      });
      continue;
    }
    for (let c = 1; c <= columns; c++) {
      pieces.push({
        id: `sashing:across:r${r}c${c}`,
        kind: 'sashing',
        name: `sashing ${beside}, column ${c}`,
        frame: poseOf(blockX(c), stripY(r)),
        corners: rectangleCorners(blockWidth, sash),
        edges: edgesAt(atTop, !round && c === columns, atBottom, !round && c === 1),
        row: r,
        column: c,
      });
    }
    for (let c = first; c <= lastColumn; c++) {
      pieces.push({
        id: `cornerstone:r${r}c${c}`,
        kind: 'cornerstone',
        name: `cornerstone ${beside}, ${c === 0 ? 'left' : 'right'} of column ${Math.max(c, 1)}`,
        frame: poseOf(stripX(c), stripY(r)),
        corners: rectangleCorners(sash, sash),
        edges: edgesAt(atTop, round && c === columns, atBottom, round && c === 0),
        row: r,
        column: c,
      });
    }
  }
  return { width, height, pieces };
}
