// The lines that are sewn near a place of the quilt, without walking over all of a large top.

import { type Bounds, boundsMeet, boundsOf, carryBounds, unionBounds } from '../geometry/bounds.ts';
import { carryPath } from '../geometry/change.ts';
import { expand } from '../stitch/expand.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Area } from '../top/area.ts';

/** The stitched lines of these placements whose extents reach into some bounds on the quilt. */
export function linesNear(placements: readonly LaidPlacement[], areas: readonly Area[], within: Bounds): readonly StitchedLine[] {
  const byId = areasById(areas);
  return placements.flatMap((laid) => {
    const byArea = linesByArea(expand(laid, byId));
    return laid.areas.flatMap((id) => {
      const area = byId.get(id);
      if (!area || !boundsMeet(extentOf(area), within, overhangOf(laid, area))) return [];
      return (byArea.get(id) ?? []).filter((line) => boundsMeet(boundsOf(quiltPath(line)), within));
    });
  });
}

/** The areas by their ids. */
export function areasById(areas: readonly Area[]): ReadonlyMap<string, Area> {
  const known = idsOfAreas.get(areas);
  if (known) return known;
  const made = new Map(areas.map((area) => [area.id, area] as const));
  idsOfAreas.set(areas, made);
  return made;
}

const idsOfAreas = new WeakMap<readonly Area[], ReadonlyMap<string, Area>>();
const linesOfAreas = new WeakMap<readonly StitchedLine[], ReadonlyMap<string, readonly StitchedLine[]>>();
const extents = new WeakMap<Area, Bounds>();

function linesByArea(lines: readonly StitchedLine[]): ReadonlyMap<string, readonly StitchedLine[]> {
  const known = linesOfAreas.get(lines);
  if (known) return known;
  const made = new Map<string, StitchedLine[]>();
  for (const line of lines) {
    const some = made.get(line.area);
    if (some) some.push(line);
    else made.set(line.area, [line]);
  }
  linesOfAreas.set(lines, made);
  return made;
}

/** Extents of an area on the quilt. */
export function extentOf(area: Area): Bounds {
  const known = extents.get(area);
  if (known) return known;
  const made = boundsOf(carryPath(area.frame, area.boundary));
  extents.set(area, made);
  return made;
}

/** How far the lines of a placement reach out of its areas at most, in inches. */
function overhangOf(laid: LaidPlacement, area: Area): number {
  const known = overhangs.get(laid);
  if (known !== undefined) return known;
  const { minX, minY, maxX, maxY } = unionBounds(
    laid.passes.flatMap((pass) => (pass.kind === 'missing' ? [] : laid.images.map((image) => carryBounds(image, boundsOf(pass.path))))),
  );
  const { x, y } = laid.needleOffset;
  const out = Math.max(0, -area.width / 2 - minX, maxX - area.width / 2, -area.height / 2 - minY, maxY - area.height / 2);
  // Out of a corner both ways at once, and the needle's own offset besides.
  const overhang = out * Math.SQRT2 + Math.hypot(x, y);
  overhangs.set(laid, overhang);
  return overhang;
}

const overhangs = new WeakMap<LaidPlacement, number>();
