// Sizes of paper and how near to its edge a printer reaches.
// Sources: ISO 216 (A sizes, in millimetres); ANSI/ASME Y14.1 (A and B sizes, called letter and tabloid); the greatest side of a PDF
// page is 14,400 units of 1/72 in (ISO 32000, annex C).

import { MM_PER_INCH } from '../../num/inches.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { Orientation, Paper, PaperProblem } from './options.ts';

/** A sheet as it lies before the reader, in inches; nothing is printed nearer to its edge than the margin. */
export interface SheetSize {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

export const GREATEST_SIDE = 200;
/** Narrower rolls leave no room for the check figures. */
export const LEAST_ROLL = 8;

const INCH_MARGIN = 1 / 4;
const METRIC_MARGIN = 6 / MM_PER_INCH;

const UPRIGHT = {
  letter: { width: 8.5, height: 11, margin: INCH_MARGIN },
  tabloid: { width: 11, height: 17, margin: INCH_MARGIN },
  a4: { width: 210 / MM_PER_INCH, height: 297 / MM_PER_INCH, margin: METRIC_MARGIN },
  a3: { width: 297 / MM_PER_INCH, height: 420 / MM_PER_INCH, margin: METRIC_MARGIN },
} as const satisfies { readonly [name in Paper & string]: SheetSize };

/** The paper in plain words. */
export function paperName(paper: Paper): string {
  if (typeof paper !== 'string') return `a roll ${Number(paper.roll.toFixed(2))} in wide`;
  return { letter: 'letter', tabloid: 'tabloid', a4: 'A4', a3: 'A3' }[paper];
}

/**
 * The sheet for a picture of a size in inches. A roll is cut as long as the picture needs (`extra` beyond its height for what
 * is printed below it), up to the longest page a PDF can have.
 */
export function sheetFor(paper: Paper, orientation: Orientation, picture: { readonly width: number; readonly height: number }, extra: number): Outcome<SheetSize, PaperProblem> {
  if (typeof paper === 'string') {
    const { width, height, margin } = UPRIGHT[paper];
    return ok(orientation === 'portrait' ? { width, height, margin } : { width: height, height: width, margin });
  }
  if (!(paper.roll >= LEAST_ROLL && paper.roll <= GREATEST_SIDE)) {
    return fail({ kind: 'paper-too-narrow', message: `A roll must be from ${LEAST_ROLL} to ${GREATEST_SIDE} in wide; this one is ${paper.roll} in.` });
  }
  const margins = 2 * INCH_MARGIN;
  const length = (needed: number) => Math.min(GREATEST_SIDE, Math.max(LEAST_ROLL, needed));
  return ok(
    orientation === 'portrait'
      ? { width: paper.roll, height: length(picture.height + margins + extra), margin: INCH_MARGIN }
      : { width: length(picture.width + margins), height: paper.roll, margin: INCH_MARGIN },
  );
}
