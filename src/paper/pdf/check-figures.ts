// The check figures every page bears: a square of 1 in and a bar of 5 cm, so that anyone with a ruler of either kind can tell
// whether the page was printed at its true size.

import { CM_PER_INCH } from '../../num/inches.ts';
import type { PaperCanvas, Pen } from './canvas.ts';
import { POINT, write } from './lettering.ts';

const PEN: Pen = { width: 0.006, grey: 0 };
const TICK: Pen = { width: 0.006, grey: 0.2 };
export const BAR = 5 / CM_PER_INCH;
const TALL = 0.1;
const SHORT = 0.05;

export const CHECK_SENTENCE = 'Check the square on this page: it should measure exactly 1 in. Print at 100 %, not fit to page.';

/** A square of 1 in between the middles of its lines, its upper left corner at (x, y). */
export function paintSquare(canvas: PaperCanvas, x: number, y: number): void {
  canvas.moveTo(x, y);
  canvas.lineTo(x + 1, y);
  canvas.lineTo(x + 1, y + 1);
  canvas.lineTo(x, y + 1);
  canvas.close();
  canvas.stroke(PEN);
  write(canvas, x + 0.5, y + 0.5 + 0.05, '1 in', { face: 'voice', size: 12 * POINT, anchor: 'middle' });
}

/** A bar of 5 cm between the middles of its end ticks, standing on y. */
export function paintBar(canvas: PaperCanvas, x: number, y: number): void {
  canvas.moveTo(x, y);
  canvas.lineTo(x + BAR, y);
  for (const end of [x, x + BAR]) {
    canvas.moveTo(end, y);
    canvas.lineTo(end, y - TALL);
  }
  canvas.stroke(PEN);
  for (let cm = 1; cm < 5; cm++) {
    canvas.moveTo(x + cm / CM_PER_INCH, y);
    canvas.lineTo(x + cm / CM_PER_INCH, y - SHORT);
  }
  canvas.stroke(TICK);
  write(canvas, x + BAR / 2, y - SHORT - 0.02, '5 cm', { face: 'voice', size: 8 * POINT, anchor: 'middle' });
}
