// A full-size print, page after page, on any canvas. The painter stops after each page to say how far it is; whoever drives
// it goes on, rests or gives up.

import { type DisplayList, LAYERS, type Layer } from '../../drawing/display-list.ts';
import type { Bounds } from '../../geometry/bounds.ts';
import type { Frame } from '../../geometry/point.ts';
import { type Outcome, ok } from '../../num/outcome.ts';
import { PAPER_STYLE } from '../style.ts';
import { paintBand } from './band.ts';
import type { Box, PaperCanvas } from './canvas.ts';
import { paintCover } from './cover.ts';
import { type Ink, inkOf } from './ink.ts';
import { neighboursOf, paintJoins } from './joins.ts';
import { explained } from './legend.ts';
import type { PaperProblem, PdfOptions } from './options.ts';
import { BAND_GAP, BAND_HEIGHT, type PageMap, type Tile, planPages } from './pages.ts';
import { paintPicture } from './picture.ts';
import { paperName } from './sheets.ts';

export interface PagePainted {
  /** Pages painted so far, the cover counted, and how many there are. */
  readonly done: number;
  readonly of: number;
}

/** A print planned but not yet painted. */
export interface Print<F extends Frame> {
  readonly map: PageMap;
  readonly ink: Ink<F>;
  /** Pages in all, the cover counted. */
  readonly pages: number;
}

const WHOLE_TOP = 'The whole top';

/** How a list falls on pages, or why it cannot be printed. */
export function planPrint<F extends Frame>(list: DisplayList<F>, options: PdfOptions): Outcome<Print<F>, PaperProblem> {
  const ink = inkOf(list, new Set<Layer>(options.layers ?? LAYERS), options.style ?? PAPER_STYLE);
  const map = planPages(boundsOfList(list), options, ink.holds);
  return map.ok ? ok({ map: map.value, ink, pages: map.value.printed + (options.cover === false ? 0 : 1) }) : map;
}

/** Paints a planned print; yields after every page. */
export function* paintPdf<F extends Frame>(list: DisplayList<F>, print: Print<F>, options: PdfOptions, canvas: PaperCanvas): Generator<PagePainted, void, void> {
  const { map, ink, pages } = print;
  const style = options.style ?? PAPER_STYLE;
  const { title } = options;
  const area = options.area ?? WHOLE_TOP;
  const layers = explained(new Set(ink.items.map((item) => item.layer)));
  let done = 0;

  if (options.cover !== false) {
    const page = coverSize(map);
    canvas.startPage(page.width, page.height);
    const inner = within(page, map.sheet.margin);
    const box = { ...inner, height: inner.height - BAND_HEIGHT - BAND_GAP };
    const text = { title, area, paper: paperName(options.paper), shownIn: options.shownIn ?? 'in' };
    paintCover(canvas, box, text, boundsOfList(list), ink.items, map, layers, style);
    paintBand(canvas, inner.x, inner.y + inner.height - BAND_HEIGHT, inner.width, { title, area, name: 'Cover', number: 1, of: pages }, map, undefined, layers, style);
    yield { done: ++done, of: pages };
  }

  for (const tile of map.tiles) {
    if (tile.number === undefined) continue;
    const { width, height, margin } = map.sheet;
    canvas.startPage(width, height);
    paintPicture(canvas, ink, { shows: tile.live, x: margin, y: margin, clip: clipOf(map, tile) }, style);
    paintJoins(canvas, map, tile, margin, margin);
    const text = { title, area, name: tile.name, number: ++done, of: pages };
    paintBand(canvas, margin, height - margin - BAND_HEIGHT, width - 2 * margin, text, map, tile, layers, style);
    yield { done, of: pages };
  }
}

/** On a roll the cover is cut off after a letter sheet's height; otherwise it is a sheet like the others. */
function coverSize({ sheet }: PageMap): { readonly width: number; readonly height: number } {
  const isLong = Math.max(sheet.width, sheet.height) > LONGEST_COVER;
  return isLong ? { width: Math.min(sheet.width, LONGEST_COVER), height: Math.min(sheet.height, ROLL_COVER) } : sheet;
}

const LONGEST_COVER = 17;
const ROLL_COVER = 11;

function within({ width, height }: { readonly width: number; readonly height: number }, margin: number): Box {
  return { x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin };
}

/** The live area, and a hair beyond it where no page follows, so that a line on the very edge keeps its full weight. */
function clipOf(map: PageMap, tile: Tile): Box {
  const beside = neighboursOf(map, tile);
  const hair = (side: 'left' | 'right' | 'top' | 'bottom') => (beside[side] ? 0 : HAIR);
  const { margin } = map.sheet;
  return {
    x: margin - hair('left'),
    y: margin - hair('top'),
    width: map.liveWidth + hair('left') + hair('right'),
    height: map.liveHeight + hair('top') + hair('bottom'),
  };
}

const HAIR = 1 / 32;

function boundsOfList<F extends Frame>({ bounds }: DisplayList<F>): Bounds {
  return { minX: bounds.x, minY: bounds.y, maxX: bounds.x + bounds.width, maxY: bounds.y + bounds.height };
}
