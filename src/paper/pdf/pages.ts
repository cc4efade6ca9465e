// How a picture at full size falls on pages: a grid of overlapping windows, rows named A, B, C ... and columns 1, 2, 3 ...
// Each place of the picture belongs to one cell, whose edges run along the middle of the overlaps; a page is printed
// when something lies in its cell.

import { type Bounds, middleOfBounds, sizeOfBounds } from '../../geometry/bounds.ts';
import { lettersOf } from '../../num/letters.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { type Orientation, type Paper, type PaperProblem, USUAL_OVERLAP } from './options.ts';
import { type SheetSize, sheetFor } from './sheets.ts';

/** Height of the strip below the picture that bears the check figures, in inches, with the gap above it. */
export const BAND_HEIGHT = 1.2;
export const BAND_GAP = 0.12;

export interface Tile {
  /** `A1`, `B2`. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** What of the picture the page shows, in the picture's coordinates. */
  readonly live: Bounds;
  /** What of the picture belongs to this page and no other. */
  readonly cell: Bounds;
  /** Its place among the printed pages, from 1; undefined when nothing lies in its cell and it is not printed. */
  readonly number: number | undefined;
}

export interface PageMap {
  readonly sheet: SheetSize;
  readonly orientation: Orientation;
  readonly rows: number;
  readonly columns: number;
  readonly overlap: number;
  /** Size of the window each page shows, in inches. */
  readonly liveWidth: number;
  readonly liveHeight: number;
  /** Row by row. */
  readonly tiles: readonly Tile[];
  /** How many are printed. */
  readonly printed: number;
}

export interface Tiling {
  readonly paper: Paper;
  readonly orientation?: Orientation;
  readonly overlap?: number;
}

/**
 * The pages for a picture with these bounds (inches). `holds` tells whether anything is drawn in a rectangle. Without an
 * orientation, the one that prints fewer pages, then the one that uses less paper. Fails when the overlap leaves no room to go on, when
 * a roll is too narrow, and when there is nothing to print.
 */
export function planPages(bounds: Bounds, tiling: Tiling, holds: (box: Bounds) => boolean): Outcome<PageMap, PaperProblem> {
  const orientations: readonly Orientation[] = tiling.orientation ? [tiling.orientation] : ['portrait', 'landscape'];
  const maps = orientations.map((orientation) => mapOf(bounds, tiling, orientation, holds));
  const good = maps.flatMap((map) => (map.ok ? [map.value] : []));
  const best = good.reduce<PageMap | undefined>((a, b) => (a && !needsLess(b, a) ? a : b), undefined);
  return best ? ok(best) : maps[0]!;
}

/** The tile of a row and column that is printed, if it is. */
export function printedAt(map: PageMap, row: number, column: number): Tile | undefined {
  if (row < 0 || column < 0 || row >= map.rows || column >= map.columns) return undefined;
  const tile = map.tiles[row * map.columns + column];
  return tile?.number === undefined ? undefined : tile;
}

function needsLess(a: PageMap, b: PageMap): boolean {
  if (a.printed !== b.printed) return a.printed < b.printed;
  return a.printed * a.sheet.width * a.sheet.height < b.printed * b.sheet.width * b.sheet.height - SAME_POINT;
}

function mapOf(bounds: Bounds, tiling: Tiling, orientation: Orientation, holds: (box: Bounds) => boolean): Outcome<PageMap, PaperProblem> {
  const overlap = tiling.overlap ?? USUAL_OVERLAP;
  const picture = sizeOfBounds(bounds);
  const middle = middleOfBounds(bounds);
  if (!middle) return fail(NOTHING);
  const sheet = sheetFor(tiling.paper, orientation, picture, BAND_HEIGHT + BAND_GAP);
  if (!sheet.ok) return sheet;
  const liveWidth = sheet.value.width - 2 * sheet.value.margin;
  const liveHeight = sheet.value.height - 2 * sheet.value.margin - BAND_HEIGHT - BAND_GAP;
  if (!(overlap >= 0 && overlap * 2 < Math.min(liveWidth, liveHeight))) {
    return fail({ kind: 'overlap-too-wide', message: `Pages must overlap by at least 0 in and by less than half of what they show, ${(Math.min(liveWidth, liveHeight) / 2).toFixed(2)} in; ${overlap} in was asked for.` });
  }
  const across = spans(middle.x, picture.width, liveWidth, overlap);
  const down = spans(middle.y, picture.height, liveHeight, overlap);
  let printed = 0;
  const tiles = down.flatMap((y, row) =>
    across.map((x, column): Tile => {
      const cell = { minX: x.cell[0], maxX: x.cell[1], minY: y.cell[0], maxY: y.cell[1] };
      const live = { minX: x.live[0], maxX: x.live[1], minY: y.live[0], maxY: y.live[1] };
      return { name: `${lettersOf(row)}${column + 1}`, row, column, live, cell, number: holds(cell) ? ++printed : undefined };
    }),
  );
  if (printed === 0) return fail(NOTHING);
  return ok({ sheet: sheet.value, orientation, rows: down.length, columns: across.length, overlap, liveWidth, liveHeight, tiles, printed });
}

const NOTHING: PaperProblem = { kind: 'nothing-to-print', message: 'There is nothing to print: the layers chosen hold no lines here.' };

interface Span {
  readonly live: readonly [number, number];
  readonly cell: readonly [number, number];
}

/** Windows of a size over a length, as few as will do, the picture in the middle of them. */
function spans(middle: number, length: number, live: number, overlap: number): readonly Span[] {
  const count = length <= live + SAME_POINT ? 1 : Math.ceil((length - overlap - SAME_POINT) / (live - overlap));
  const step = live - overlap;
  const first = middle - (count * step + overlap) / 2;
  return Array.from({ length: count }, (_, i) => {
    const start = first + i * step;
    const cell = [start + (i > 0 ? overlap / 2 : 0), start + live - (i < count - 1 ? overlap / 2 : 0)] as const;
    return { live: [start, start + live], cell };
  });
}

