// Names on the picture: areas in their upper left corner (in their middle where they are not upright rectangles), templates in
// their middle. Small, since they stand on a drawing at true size.

import { type Bounds, boundsOf, middleOfBounds, sizeOfBounds } from '../../geometry/bounds.ts';
import { signedArea } from '../../geometry/measure.ts';
import type { Path } from '../../geometry/path.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { Area } from '../../top/area.ts';
import type { Drawn, Lettered } from '../display-list.ts';
import { remembered } from '../remember.ts';
import { boundaryOf } from './cloth.ts';

/** Height of capitals, in inches, less where an area is too narrow for its name. */
const HEIGHT = 3 / 16;
/** Names of templates are smaller than those of areas by this part. */
const TEMPLATE_NAME = 2 / 3;
const INSET = 1 / 8;
/** About how wide a letter is, as a part of the height of capitals. */
const LETTER = 0.72;

/** The name of an area. */
export const areaLabel = remembered((area: Area): Lettered<'quilt'> => {
  const boundary = boundaryOf(area);
  const bounds = boundsOf(boundary);
  const room = sizeOfBounds(bounds).width - 2 * INSET;
  const height = Math.min(HEIGHT, room / (area.name.length * LETTER));
  const item = { kind: 'text', layer: 'label', text: area.name, height, source: area.id } as const;
  if (isUprightRectangle(boundary, bounds)) {
    return { ...item, at: { x: bounds.minX + INSET, y: bounds.minY + INSET + height }, anchor: 'start' };
  }
  return { ...item, at: { x: area.frame.x, y: area.frame.y + height / 2 }, anchor: 'middle' };
});

/** The name of a template in the middle of its outline; nothing without an outline. */
export function templateLabel(name: string, drawn: readonly Drawn<'quilt'>[]): readonly Lettered<'quilt'>[] {
  const outline = drawn.find((item) => item.layer === 'template');
  const middle = outline && middleOfBounds<'quilt'>(boundsOf(outline.path));
  return middle ? [{ kind: 'text', layer: 'label', at: middle, text: name, height: HEIGHT * TEMPLATE_NAME, anchor: 'middle', source: outline.source }] : [];
}

/** Only a rectangle fills its own bounds. */
function isUprightRectangle(boundary: Path<'quilt'>, bounds: Bounds): boolean {
  const { width, height } = sizeOfBounds(bounds);
  return Math.abs(Math.abs(signedArea(boundary)) - width * height) <= SAME_POINT * (width + height);
}
