// Reference lines: what people line up on, and the lines that divide a border.

import { carryPath } from '../../geometry/change.ts';
import type { Area, ReferenceLine } from '../../top/area.ts';
import type { Drawn } from '../display-list.ts';
import { remembered } from '../remember.ts';
import { boundaryOf } from './cloth.ts';

/**
 * The reference lines of an area on the quilt. Edges are left out where a seam or the raw edge is drawn already; an area of
 * the quilter's own, which has none, is drawn round.
 */
export const referenceLinesOf = remembered((area: Area): readonly Drawn<'quilt'>[] => [
  ...(area.kind === 'drawn' ? [{ kind: 'path', layer: 'reference', path: boundaryOf(area), source: area.id } as const] : []),
  ...area.referenceLines.filter((line) => line.kind !== 'edge').map((line) => drawn(area, line)),
]);

function drawn(area: Area, line: ReferenceLine): Drawn<'quilt'> {
  return {
    kind: 'path',
    layer: line.kind === 'division' ? 'division' : 'reference',
    path: carryPath(area.frame, line.path),
    source: `${area.id}/${line.id}`,
  };
}
