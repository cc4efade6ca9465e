// Names on the picture: areas in their middle, templates in theirs.

import { boundsOf, middleOfBounds } from '../../geometry/bounds.ts';
import type { Drawn, Lettered } from '../display-list.ts';
import type { Area } from '../../top/area.ts';
import { remembered } from '../remember.ts';

/** Capitals stand this part of the lesser side of an area, within limits that can be read at the table. */
const PART_OF_AREA = 1 / 24;
const LEAST_HEIGHT = 1 / 8;
const GREATEST_HEIGHT = 1 / 2;

/** The name of an area, in its middle. */
export const areaLabel = remembered((area: Area): Lettered<'quilt'> => {
  const height = Math.min(GREATEST_HEIGHT, Math.max(LEAST_HEIGHT, Math.min(area.width, area.height) * PART_OF_AREA));
  const at = { x: area.frame.x, y: area.frame.y + height / 2 };
  return { kind: 'text', layer: 'label', at, text: area.name, height, anchor: 'middle', source: area.id };
});

/** The name of a template in the middle of its outline; nothing without an outline. */
export function templateLabel(name: string, drawn: readonly Drawn<'quilt'>[]): readonly Lettered<'quilt'>[] {
  const outline = drawn.find((item) => item.layer === 'template');
  const middle = outline && middleOfBounds<'quilt'>(boundsOf(outline.path));
  return middle ? [{ kind: 'text', layer: 'label', at: middle, text: name, height: LEAST_HEIGHT, anchor: 'middle', source: outline.source }] : [];
}
