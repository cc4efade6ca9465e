// The first page: the whole picture, small, with the pages drawn over it; how to join them; what the lines mean.

import type { DisplayItem, Layer } from '../../drawing/display-list.ts';
import { type Bounds, sizeOfBounds } from '../../geometry/bounds.ts';
import type { Frame } from '../../geometry/point.ts';
import { writeLength } from '../../num/inches.ts';
import type { PaperStyle } from '../style.ts';
import type { Box, PaperCanvas } from './canvas.ts';
import { paintLegend } from './legend.ts';
import { POINT, type Words, fitted, write, writeLines } from './lettering.ts';
import type { PageMap } from './pages.ts';
import { paintPageGrid } from './page-map.ts';
import { paintSmallPicture } from './small-picture.ts';

export interface CoverText {
  readonly title: string;
  readonly area: string;
  readonly paper: string;
  readonly shownIn: 'in' | 'cm';
}

const HEADING: Words = { face: 'firm', size: 11 * POINT };
const BODY: Words = { face: 'label', size: 9.5 * POINT };
const LEADING = 0.168;

/** Paints the cover over a box of the page. */
export function paintCover<F extends Frame>(canvas: PaperCanvas, box: Box, text: CoverText, bounds: Bounds, items: readonly DisplayItem<F>[], map: PageMap, layers: readonly Layer[], style: PaperStyle): void {
  const below = paintTitle(canvas, box, text, bounds, map);
  const height = box.y + box.height - below;
  const covered = sizeOfBounds(coveredBy(map));
  const wordsHeight = Math.max(WORDS_HEIGHT, 0.4 + layers.length * 0.22);
  const above = { x: box.x, y: below, width: box.width, height: height - wordsHeight };
  const column = Math.min(3.6, box.width * 0.36);
  const beside = { x: box.x, y: below, width: box.width - column - GAP, height: height - 0.1 };

  if (scaleIn(above, covered) >= scaleIn(beside, covered)) {
    const half = (box.width - GAP) / 2;
    const y = paintWholePicture(canvas, above, items, map, style) + 0.25;
    paintJoining(canvas, { x: box.x, y, width: half, height: 0 }, map, text);
    paintMeanings(canvas, { x: box.x + half + GAP, y, width: half, height: 0 }, layers, style);
  } else {
    paintWholePicture(canvas, beside, items, map, style);
    const side = { x: box.x + beside.width + GAP, y: below + 0.05, width: column, height: 0 };
    const after = paintJoining(canvas, side, map, text);
    paintMeanings(canvas, { ...side, y: after + 0.2 }, layers, style);
  }
}

const GAP = 0.35;
/** What the words below the picture need, in inches. */
const WORDS_HEIGHT = 2.6;
const CAPTION = 0.25;
/** Never so large that it could be taken for the pattern. */
const GREATEST_SCALE = 0.6;

function scaleIn(box: Box, { width, height }: { readonly width: number; readonly height: number }): number {
  return Math.min(box.width / width, (box.height - CAPTION) / height, GREATEST_SCALE);
}

function paintTitle(canvas: PaperCanvas, box: Box, text: CoverText, bounds: Bounds, map: PageMap): number {
  const title: Words = { face: 'voice', size: 24 * POINT, grey: 0.1 };
  const { width, height } = sizeOfBounds(bounds);
  const length = (inches: number) => writeLength(inches, text.shownIn === 'in' ? { unit: 'in', smallest: 16 } : { unit: 'cm', decimals: 1 });
  const pages = map.printed === 1 ? '1 page' : `${map.printed} pages`;
  write(canvas, box.x, box.y + 0.32, fitted(canvas, text.title, box.width, title), title);
  write(canvas, box.x, box.y + 0.6, fitted(canvas, text.area, box.width, { ...BODY, size: 12 * POINT }), { ...BODY, size: 12 * POINT });
  write(canvas, box.x, box.y + 0.81, `Full size: ${length(width)} wide and ${length(height)} high, on ${pages} of ${text.paper} and this one.`, BODY);
  return box.y + 1;
}

/** The picture as large as the box lets it be, with its caption; gives the y below it. */
function paintWholePicture<F extends Frame>(canvas: PaperCanvas, box: Box, items: readonly DisplayItem<F>[], map: PageMap, style: PaperStyle): number {
  const covered = coveredBy(map);
  const { width, height } = sizeOfBounds(covered);
  const scale = scaleIn(box, { width, height });
  const x = box.x + (box.width - width * scale) / 2;
  const place = { x, y: box.y, left: covered.minX, top: covered.minY, scale };
  canvas.within({ x, y: box.y, width: width * scale, height: height * scale }, () => paintSmallPicture(canvas, items, place, style));
  paintPageGrid(canvas, map, place);
  const bottom = box.y + height * scale;
  write(canvas, box.x + box.width / 2, bottom + 0.17, captionOf(map), { ...BODY, size: 8.5 * POINT, grey: 0.35, anchor: 'middle' });
  return bottom + CAPTION;
}

function captionOf(map: PageMap): string {
  const blank = map.tiles.length - map.printed;
  const note = blank === 0 ? '' : blank === 1 ? ' The page crossed through is blank and is not printed.' : ` The ${blank} pages crossed through are blank and are not printed.`;
  return `The whole picture, reduced: not to scale.${note}`;
}

function coveredBy(map: PageMap): Bounds {
  const first = map.tiles[0]!.live;
  const last = map.tiles[map.tiles.length - 1]!.live;
  return { minX: first.minX, minY: first.minY, maxX: last.maxX, maxY: last.maxY };
}

function paintJoining(canvas: PaperCanvas, box: Box, map: PageMap, text: CoverText): number {
  write(canvas, box.x, box.y + 0.12, map.printed === 1 ? 'How to use the page' : 'How to join the pages', HEADING);
  let y = box.y + 0.12 + LEADING + 0.05;
  joiningSteps(map, text).forEach((step, i) => {
    write(canvas, box.x, y, `${i + 1}`, { ...BODY, face: 'firm' });
    y = writeLines(canvas, box.x + 0.2, y, box.width - 0.2, LEADING, step, BODY) + 0.05;
  });
  return y;
}

function joiningSteps(map: PageMap, { shownIn }: CoverText): readonly string[] {
  const measure = 'Print at 100 %, not fit to page. Measure the square on the first page before you print the rest: it should be exactly 1 in, and the bar 5 cm.';
  if (map.printed === 1) return [measure];
  const overlap = writeLength(map.overlap, shownIn === 'in' ? { unit: 'in', smallest: 16 } : { unit: 'cm', decimals: 1 });
  const rowsFirst = map.rows > 1 && map.columns > 1;
  return [
    measure,
    'Lay the pages out as the picture shows: rows are letters, columns are numbers.',
    `Cut each page along the solid line at its left and its top, where there is one. Leave the other edges: neighbours share ${overlap}.`,
    `Lay each page over the one to its left${map.rows > 1 ? ' or above it' : ''}, its cut edge on the dashed line, until crosses lie on crosses. Tape.`,
    ...(rowsFirst ? ['Join the pages of a row first, then lay each row over the bottom of the row above.'] : []),
  ];
}

function paintMeanings(canvas: PaperCanvas, box: Box, layers: readonly Layer[], style: PaperStyle): void {
  write(canvas, box.x, box.y + 0.12, 'What the lines mean', HEADING);
  paintLegend(canvas, { ...box, y: box.y + 0.22 }, layers, style);
}
