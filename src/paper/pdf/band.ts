// The strip below the picture on every page: check figures, which page this is, and what the lines mean in short.

import type { Layer } from '../../drawing/display-list.ts';
import type { PaperStyle } from '../style.ts';
import type { PaperCanvas } from './canvas.ts';
import { BAR, CHECK_SENTENCE, paintBar, paintSquare } from './check-figures.ts';
import { paintSmallLegend } from './legend.ts';
import { POINT, fitted, write, writeLines } from './lettering.ts';
import { paintPageMap } from './page-map.ts';
import { BAND_HEIGHT, type PageMap, type Tile } from './pages.ts';

export interface BandText {
  readonly title: string;
  readonly area: string;
  /** `A1`, or what else stands on the page. */
  readonly name: string;
  readonly number: number;
  readonly of: number;
}

const SQUARE_INSET = 0.06;
const GAP = 0.16;
const NAME_WIDTH = 0.95;
const MAP_WIDTH = 0.95;

/** Paints the strip with its upper left corner at (x, y), over a width in inches. */
export function paintBand(canvas: PaperCanvas, x: number, y: number, width: number, text: BandText, map: PageMap, tile: Tile | undefined, layers: readonly Layer[], style: PaperStyle): void {
  paintSquare(canvas, x + SQUARE_INSET, y + 0.1);

  const barX = x + SQUARE_INSET + 1 + GAP;
  write(canvas, barX, y + 0.19, fitted(canvas, text.title, BAR, { face: 'firm', size: 9 * POINT }), { face: 'firm', size: 9 * POINT });
  write(canvas, barX, y + 0.33, fitted(canvas, text.area, BAR, { face: 'label', size: 8 * POINT }), { face: 'label', size: 8 * POINT });
  paintBar(canvas, barX, y + 0.6);
  writeLines(canvas, barX, y + 0.77, BAR + 0.08, 0.125, CHECK_SENTENCE, { face: 'label', size: 7.5 * POINT });

  const nameX = barX + BAR + GAP;
  const size = Math.min(34 * POINT, NAME_WIDTH * 0.62);
  const fits = fittedSize(canvas, text.name, NAME_WIDTH, size);
  write(canvas, nameX, y + 0.46, text.name, { face: 'voice', size: fits });
  write(canvas, nameX, y + 0.66, `page ${text.number} of ${text.of}`, { face: 'label', size: 8 * POINT });

  const mapX = nameX + NAME_WIDTH + 0.12;
  paintPageMap(canvas, { x: mapX, y: y + 0.1, width: MAP_WIDTH, height: BAND_HEIGHT - 0.2 }, map, tile);

  const legendX = mapX + MAP_WIDTH + GAP;
  paintSmallLegend(canvas, { x: legendX, y: y + 0.1, width: Math.min(3.6, x + width - legendX), height: BAND_HEIGHT - 0.15 }, layers, style);
}

function fittedSize(canvas: PaperCanvas, text: string, width: number, size: number): number {
  const natural = canvas.widthOf(text, { face: 'voice', size, grey: 0 });
  return natural <= width ? size : (size * width) / natural;
}
