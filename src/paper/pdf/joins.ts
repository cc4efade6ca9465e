// What helps to join pages: where to cut, how far the neighbour reaches, and crosses that land on each other. A page is cut along its
// left and top edge and laid over the page to its left and the page above it, so the strip with the check figures goes under.

import type { PaperCanvas, Pen } from './canvas.ts';
import { POINT, type Words, write } from './lettering.ts';
import { type PageMap, type Tile, printedAt } from './pages.ts';

const CUT: Pen = { width: 0.007, grey: 0.35 };
const REACH: Pen = { width: 0.006, grey: 0.5, dash: [0.06, 0.06] };
const CROSS: Pen = { width: 0.005, grey: 0.25 };
const NAME: Words = { face: 'firm', size: 7 * POINT, grey: 0.3 };
const HINT: Words = { face: 'label', size: 6.5 * POINT, grey: 0.4 };

/** Crosses along an edge are no farther apart than this, in inches. */
const CROSSES_APART = 9;
const GREATEST_ARM = 0.15;

export type Side = 'left' | 'right' | 'top' | 'bottom';

/** An overlap strip as it lies on the page: it runs `along` from one end to the other, its middle line `across`. */
interface Strip {
  readonly side: Side;
  readonly neighbour: Tile;
  readonly upright: boolean;
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  /** The edge of the live area it lies at, and where the neighbour's cut edge comes to lie. */
  readonly edge: number;
  readonly landing: number;
}

/** The printed neighbour on each side of a tile. */
export function neighboursOf(map: PageMap, tile: Tile): { readonly [side in Side]?: Tile } {
  const { row, column } = tile;
  const sides = { left: printedAt(map, row, column - 1), right: printedAt(map, row, column + 1), top: printedAt(map, row - 1, column), bottom: printedAt(map, row + 1, column) };
  return Object.fromEntries(Object.entries(sides).filter(([, neighbour]) => neighbour !== undefined));
}

/** Cut lines, landing lines, crosses and the neighbours' names, over the live area whose upper left corner is at (left, top). */
export function paintJoins(canvas: PaperCanvas, map: PageMap, tile: Tile, left: number, top: number): void {
  for (const strip of stripsOf(map, tile, left, top)) {
    if (strip.side === 'left' || strip.side === 'top' || map.overlap === 0) line(canvas, strip, strip.edge, CUT);
    else line(canvas, strip, strip.landing, REACH);
    if (map.overlap > 0) paintCrosses(canvas, strip, map.overlap);
  }
}

/** Where the crosses of a strip lie along it, both ends included; the same for both pages that share it. */
export function crossesAlong(from: number, to: number, overlap: number): readonly number[] {
  const first = from + overlap / 2;
  const last = to - overlap / 2;
  const gaps = Math.max(1, Math.ceil((last - first) / CROSSES_APART));
  return Array.from({ length: gaps + 1 }, (_, i) => first + ((last - first) * i) / gaps);
}

function stripsOf(map: PageMap, tile: Tile, left: number, top: number): readonly Strip[] {
  const { overlap, liveWidth, liveHeight } = map;
  const right = left + liveWidth;
  const bottom = top + liveHeight;
  const neighbours = neighboursOf(map, tile);
  const places: { readonly [side in Side]: Omit<Strip, 'side' | 'neighbour'> } = {
    left: { upright: true, from: top, to: bottom, middle: left + overlap / 2, edge: left, landing: left + overlap },
    right: { upright: true, from: top, to: bottom, middle: right - overlap / 2, edge: right, landing: right - overlap },
    top: { upright: false, from: left, to: right, middle: top + overlap / 2, edge: top, landing: top + overlap },
    bottom: { upright: false, from: left, to: right, middle: bottom - overlap / 2, edge: bottom, landing: bottom - overlap },
  };
  return (Object.keys(places) as Side[]).flatMap((side) => {
    const neighbour = neighbours[side];
    return neighbour ? [{ side, neighbour, ...places[side] }] : [];
  });
}

function line(canvas: PaperCanvas, strip: Strip, at: number, pen: Pen): void {
  if (strip.upright) {
    canvas.moveTo(at, strip.from);
    canvas.lineTo(at, strip.to);
  } else {
    canvas.moveTo(strip.from, at);
    canvas.lineTo(strip.to, at);
  }
  canvas.stroke(pen);
}

function paintCrosses(canvas: PaperCanvas, strip: Strip, overlap: number): void {
  const arm = Math.min(GREATEST_ARM, overlap * 0.4);
  const places = crossesAlong(strip.from, strip.to, overlap);
  const { name } = strip.neighbour;
  // Beyond the square where two strips cross, clear of the dashed lines that bound it.
  const beside = overlap / 2 + 0.05;
  places.forEach((along, i) => {
    const [x, y] = strip.upright ? [strip.middle, along] : [along, strip.middle];
    cross(canvas, x, y, arm);
    if (overlap < 0.25) return;
    // Towards the middle of the page, so that the name stays in the strip.
    const back = i === places.length - 1;
    if (strip.upright) write(canvas, x, back ? y - beside : y + beside + NAME.size * 0.66, name, { ...NAME, anchor: 'middle' });
    else write(canvas, back ? x - beside : x + beside, y + NAME.size * 0.33, name, { ...NAME, anchor: back ? 'end' : 'start' });
  });
  if (overlap >= 0.25) paintHint(canvas, strip, (places[0]! + places[1]!) / 2);
}

function paintHint(canvas: PaperCanvas, strip: Strip, along: number): void {
  const { name } = strip.neighbour;
  const text = strip.side === 'left' || strip.side === 'top' ? `cut along this edge and lay it over ${name}` : `${name} lies over this strip, up to the dashed line`;
  const words: Words = { ...HINT, anchor: 'middle' };
  // Between the edge of the page and the middle of the strip, where reference lines like to run.
  const at = strip.edge + (strip.middle - strip.edge) * 0.45;
  if (!strip.upright) {
    write(canvas, along, at + HINT.size * 0.33, text, words);
    return;
  }
  // Upright words are read from the right, on both strips, as on the spine of a page turned on its side.
  canvas.turned(at, along, -Math.PI / 2, () => {
    write(canvas, at, along + HINT.size * 0.33, text, words);
  });
}

function cross(canvas: PaperCanvas, x: number, y: number, arm: number): void {
  canvas.moveTo(x - arm, y);
  canvas.lineTo(x + arm, y);
  canvas.moveTo(x, y - arm);
  canvas.lineTo(x, y + arm);
  ring(canvas, x, y, arm * 0.55);
  canvas.stroke(CROSS);
}

/** A small circle of four cubics. */
export function ring(canvas: PaperCanvas, x: number, y: number, r: number): void {
  const k = 0.5522847498 * r;
  canvas.moveTo(x + r, y);
  canvas.curveTo(x + r, y + k, x + k, y + r, x, y + r);
  canvas.curveTo(x - k, y + r, x - r, y + k, x - r, y);
  canvas.curveTo(x - r, y - k, x - k, y - r, x, y - r);
  canvas.curveTo(x + k, y - r, x + r, y - k, x + r, y);
}

