// The one display list, in inches and quilt coordinates (or a page's), that every painter draws from: screen, PDF,
// SVG and DXF show the same lines because they read the same list.

import type { Frame, Point } from '../geometry/point.ts';
import type { Path } from '../geometry/path.ts';

/** In painting order, from the ground up. The needle line comes last: nothing lies over it, nothing is as dark. */
export const LAYERS = [
  'ground',
  'seam',
  'raw-edge',
  'allowance',
  'keep-out',
  'reference',
  'division',
  'template',
  'etching',
  'missed-edge',
  'template-edge',
  'needle-unsewn',
  'needle',
  'mark',
  'finding',
  'label',
] as const;

export type Layer = (typeof LAYERS)[number];

export interface Drawn<F extends Frame> {
  readonly kind: 'path';
  readonly layer: Layer;
  readonly path: Path<F>;
  /** Filled with the layer's tint as well as drawn; only for closed paths. */
  readonly filled?: boolean;
  /** Closed paths inside it that the fill leaves open, such as a template's windows. */
  readonly holes?: readonly Path<F>[];
  /** What it stands for: an area id, a stitched line id, `sheet/placement` of a template, `finding:` and its number. */
  readonly source: string;
}

export interface Lettered<F extends Frame> {
  readonly kind: 'text';
  readonly layer: Layer;
  readonly at: Point<F>;
  readonly text: string;
  /** Height of the capitals, in inches. */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly source: string;
}

export type DisplayItem<F extends Frame> = Drawn<F> | Lettered<F>;

/** The list is made anew for every evaluation, but its items are the same objects as long as what they stand for is. */
export interface DisplayList<F extends Frame> {
  /** Left, top, width and height of what is drawn, in inches. */
  readonly bounds: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly items: readonly DisplayItem<F>[];
}
