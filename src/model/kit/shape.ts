// What a template is as geometry, whether it came from a family or from its own outline.

import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';

/** The shape of a template in its own coordinates, etched face up. */
export interface TemplateShape {
  /** Closed, simple, clockwise on the etched face. */
  readonly outline: Path<'template'>;
  readonly windows: readonly TemplateWindow[];
  readonly etchings: readonly EtchedShape[];
}

/** A cut-out the foot runs inside: closed, simple, clockwise, within the outline and clear of other windows. */
export interface TemplateWindow {
  readonly id: string;
  readonly path: Path<'template'>;
}

/** A line, point, cross or curve on the template's face. */
export type EtchedShape =
  | { readonly kind: 'line'; readonly id: string; readonly name: string; readonly path: Path<'template'> }
  | { readonly kind: 'point'; readonly id: string; readonly name: string; readonly at: Point<'template'> }
  | { readonly kind: 'cross'; readonly id: string; readonly name: string; readonly at: Point<'template'>; readonly angle: number }
  | { readonly kind: 'curve'; readonly id: string; readonly name: string; readonly path: Path<'template'> };

/** What is wrong with a template's outline, windows or sizes, and where. */
export interface ShapeProblem {
  /** Path of the field below the template: `outline`, `windows.slot`, `sizes.radius`. */
  readonly field: string;
  readonly message: string;
  /** Where outlines cross themselves or each other. */
  readonly at?: Point<'template'>;
}
