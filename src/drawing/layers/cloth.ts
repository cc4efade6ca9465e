// The cloth: areas as fills, seams, the raw edge with its allowance line, and keep-outs.

import { carryPath } from '../../geometry/change.ts';
import { offsetClosed } from '../../geometry/offset/offset-closed.ts';
import type { Path } from '../../geometry/path.ts';
import type { Clearance } from '../../model/plan.ts';
import type { Area, LaidKeepOut, LaidTop } from '../../top/area.ts';
import type { Drawn, Layer } from '../display-list.ts';
import { remembered, rememberedPair } from '../remember.ts';
import { within } from '../within.ts';

type Item = Drawn<'quilt'>;

/** The cloth of the whole top; drawn areas and the area of the whole top lie over the pieces and are not filled. */
export const clothOf = rememberedPair((top: LaidTop, clearance: Clearance): readonly Item[] => [
  ...top.areas.filter((area) => area.kind !== 'top' && area.kind !== 'drawn').map(groundOf),
  ...top.seams.map((path) => line('seam', path, 'seam')),
  ...rawEdgeOf(top.rawEdge),
  ...allowanceOf(top.rawEdge, clearance),
  ...top.keepOuts.map(keepOutOf),
]);

/** The cloth of one area: its ground, the seams and raw edges round it, and what of the allowance and the keep-outs lies in it. */
export function clothOfArea(area: Area, top: LaidTop, clearance: Clearance): readonly Item[] {
  const boundary = boundaryOf(area);
  return [
    groundOf(area),
    ...seamsOf(area),
    ...allowanceOf(top.rawEdge, clearance).flatMap((item) => within(boundary, item.path).map((path) => ({ ...item, path }))),
    ...top.keepOuts.flatMap((keepOut) =>
      within(boundary, keepOut.outline).map((path) => (path === keepOut.outline ? keepOutOf(keepOut) : line('keep-out', path, keepOut.id))),
    ),
  ];
}

/** The boundary of an area on the quilt. */
export const boundaryOf = remembered((area: Area): Path<'quilt'> => carryPath(area.frame, area.boundary));

const groundOf = remembered((area: Area): Item => ({ kind: 'path', layer: 'ground', path: boundaryOf(area), filled: true, source: area.id }));

const seamsOf = remembered((area: Area): readonly Item[] =>
  area.seams.map((seam) => line(seam.kind === 'raw' ? 'raw-edge' : 'seam', carryPath(area.frame, seam.path), `${area.id}/${seam.id}`)),
);

const rawEdgeOf = remembered((rawEdge: Path<'quilt'>): readonly Item[] => [line('raw-edge', rawEdge, 'raw-edge')]);

/** The line no stitching may cross; none when no allowance is kept, or when it leaves nothing. */
const allowanceOf = rememberedPair((rawEdge: Path<'quilt'>, clearance: Clearance): readonly Item[] => {
  if (clearance.rawEdge <= 0) return [];
  const inset = offsetClosed(rawEdge, clearance.rawEdge, 'inside');
  return inset.kind === 'loops' ? inset.loops.map((loop) => line('allowance', loop.path, 'raw-edge')) : [];
});

const keepOutOf = remembered((keepOut: LaidKeepOut): Item => ({ kind: 'path', layer: 'keep-out', path: keepOut.outline, filled: true, source: keepOut.id }));

function line(layer: Layer, path: Path<'quilt'>, source: string): Item {
  return { kind: 'path', layer, path, source };
}
