// Small and large pictures of how the pages lie together.

import type { Box, PaperCanvas, Pen } from './canvas.ts';
import { POINT, write } from './lettering.ts';
import { type PageMap, type Tile, printedAt } from './pages.ts';

const CELL: Pen = { width: 0.005, grey: 0.45 };
const GRID: Pen = { width: 0.004, grey: 0.5, dash: [0.05, 0.035] };
const BLANK: Pen = { width: 0.003, grey: 0.75 };

/** The page map in the upper left of a box: this page dark, blank pages crossed through; gives its width and height. */
export function paintPageMap(canvas: PaperCanvas, box: Box, map: PageMap, current: Tile | undefined): { readonly width: number; readonly height: number } {
  const scale = Math.min(box.width / (map.columns * map.liveWidth), box.height / (map.rows * map.liveHeight), GREATEST_CELL / map.liveHeight);
  const width = map.liveWidth * scale;
  const height = map.liveHeight * scale;
  for (const blank of [true, false]) {
    for (const tile of map.tiles) {
      if ((tile.number === undefined) !== blank) continue;
      const cell = { x: box.x + tile.column * width, y: box.y + tile.row * height, width, height };
      if (tile === current) {
        rectangle(canvas, cell);
        canvas.fill(0.35);
      }
      if (blank) crossThrough(canvas, cell);
      rectangle(canvas, cell);
      canvas.stroke(blank ? BLANK : CELL);
    }
  }
  return { width: map.columns * width, height: map.rows * height };
}

const GREATEST_CELL = 0.45;

/**
 * The cells of the pages over a reduced picture, whose (left, top) in its own coordinates comes to (x, y) on the paper, each with its
 * page's name in its corner; blank ones crossed through.
 */
export function paintPageGrid(canvas: PaperCanvas, map: PageMap, place: { readonly x: number; readonly y: number; readonly left: number; readonly top: number; readonly scale: number }): void {
  const boxes = map.tiles.map(({ cell }) => ({
    x: place.x + (cell.minX - place.left) * place.scale,
    y: place.y + (cell.minY - place.top) * place.scale,
    width: (cell.maxX - cell.minX) * place.scale,
    height: (cell.maxY - cell.minY) * place.scale,
  }));
  map.tiles.forEach((tile, i) => {
    if (tile.number !== undefined) return;
    crossThrough(canvas, boxes[i]!);
    rectangle(canvas, boxes[i]!);
    canvas.stroke(BLANK);
  });
  map.tiles.forEach((tile, i) => {
    if (tile.number === undefined) return;
    const box = boxes[i]!;
    paintCellEdges(canvas, map, tile, box);
    const size = Math.min(10 * POINT, box.width * 0.36, box.height * 0.6);
    const words = { face: 'firm', size, grey: 0.1 } as const;
    rectangle(canvas, { x: box.x + size * 0.1, y: box.y + size * 0.1, width: canvas.widthOf(tile.name, words) + size * 0.3, height: size * 0.95 });
    canvas.fill(1);
    write(canvas, box.x + size * 0.25, box.y + size * 0.9, tile.name, words);
  });
}

/** The edges of a cell that no other draws: two dashed lines over each other would look unbroken. */
function paintCellEdges(canvas: PaperCanvas, map: PageMap, { row, column }: Tile, { x, y, width, height }: Box): void {
  const edge = (x1: number, y1: number, x2: number, y2: number) => {
    canvas.moveTo(x1, y1);
    canvas.lineTo(x2, y2);
  };
  edge(x, y, x + width, y);
  edge(x, y, x, y + height);
  if (!printedAt(map, row, column + 1)) edge(x + width, y, x + width, y + height);
  if (!printedAt(map, row + 1, column)) edge(x, y + height, x + width, y + height);
  canvas.stroke(GRID);
}

function rectangle(canvas: PaperCanvas, { x, y, width, height }: Box): void {
  canvas.moveTo(x, y);
  canvas.lineTo(x + width, y);
  canvas.lineTo(x + width, y + height);
  canvas.lineTo(x, y + height);
  canvas.close();
}

function crossThrough(canvas: PaperCanvas, { x, y, width, height }: Box): void {
  canvas.moveTo(x, y);
  canvas.lineTo(x + width, y + height);
  canvas.moveTo(x + width, y);
  canvas.lineTo(x, y + height);
}
