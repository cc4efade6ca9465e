// A display list as the layers of a small picture, in the quilt's axes or in an area's own.

import type { DisplayItem, DisplayList, Layer } from '../../../drawing/display-list.ts';
import { type Bounds, boundsMeet, boundsOf } from '../../../geometry/bounds.ts';
import { carryPath } from '../../../geometry/change.ts';
import type { Pose } from '../../../geometry/pose.ts';
import { writePathData } from '../../../geometry/svg/write.ts';

export type PictureLayer = readonly [Layer, readonly { readonly d: string; readonly className: string }[]];

export interface PictureOptions {
  /** How an item is dressed: its class. */
  readonly dress: (item: Extract<DisplayItem<'quilt'>, { kind: 'path' }>) => string;
  /** Into an area's own axes, so that a side of a border and a block on point stand upright. */
  readonly toArea?: Pose<'quilt', 'area'>;
  /** Only what comes near this part of the quilt. */
  readonly near?: Bounds;
}

/** The paths of a display list by layer; letters are left out. */
export function pictureLayers(list: DisplayList<'quilt'>, { dress, toArea, near }: PictureOptions): readonly PictureLayer[] {
  const layers = new Map<Layer, { readonly d: string; readonly className: string }[]>();
  for (const item of list.items) {
    if (item.kind !== 'path' || (near && !boundsMeet(boundsOf(item.path), near))) continue;
    const d = [item.path, ...(item.holes ?? [])].map((path) => (toArea ? writePathData(carryPath(toArea, path)) : writePathData(path))).join('');
    const some = layers.get(item.layer);
    if (some) some.push({ d, className: dress(item) });
    else layers.set(item.layer, [{ d, className: dress(item) }]);
  }
  return [...layers];
}

export function PictureLayers({ layers }: { readonly layers: readonly PictureLayer[] }) {
  return layers.map(([layer, items]) => (
    <g key={layer} className={`layer ${layer}`}>
      {items.map(({ d, className }, i) => <path key={i} className={className} d={d} />)}
    </g>
  ));
}
