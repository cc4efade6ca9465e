// What the PDF painter needs of a canvas: a few pens, letters and layers. Inches, x to the right and y down from the upper left
// corner of the page, so that the painter knows nothing of points, streams or any platform.

export interface Pen {
  readonly width: number;
  /** 0 is black, 1 is paper. */
  readonly grey: number;
  readonly dash?: readonly number[];
  /** How far into the dashes the line begins, in inches. */
  readonly phase?: number;
  readonly cap?: 'butt' | 'round';
}

/** `voice` is the serif face, `label` the sans, `firm` the heavier sans. */
export type Face = 'voice' | 'label' | 'firm';

export interface Lettering {
  readonly face: Face;
  /** Size of the type, in inches. */
  readonly size: number;
  readonly grey: number;
  /** Set as a true fraction: digits, U+2044, digits. */
  readonly fraction?: boolean;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PaperCanvas {
  /** Ends the page before it and starts another; sides in inches. */
  readonly startPage: (width: number, height: number) => void;
  /** What is painted belongs to a layer that programs can switch off, by this name. */
  readonly inLayer: (name: string, paint: () => void) => void;
  /** What is painted shows only within the box. */
  readonly within: (box: Box, paint: () => void) => void;
  /** What is painted is turned clockwise about a point, by radians. */
  readonly turned: (x: number, y: number, angle: number, paint: () => void) => void;
  readonly moveTo: (x: number, y: number) => void;
  readonly lineTo: (x: number, y: number) => void;
  readonly curveTo: (x1: number, y1: number, x2: number, y2: number, x: number, y: number) => void;
  readonly close: () => void;
  /** Draws along the lines given since the last stroke or fill. */
  readonly stroke: (pen: Pen) => void;
  /** Fills them, holes by the even-odd rule. */
  readonly fill: (grey: number) => void;
  /** Letters from the left, standing on y. */
  readonly letter: (x: number, y: number, text: string, lettering: Lettering) => void;
  /** Width of the text, in inches. */
  readonly widthOf: (text: string, lettering: Lettering) => number;
}
