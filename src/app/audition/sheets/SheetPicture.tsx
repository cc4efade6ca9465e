// A true picture of a sheet on an area: the same drawing the table and the paper are made from, small.

import { type CSSProperties, useMemo } from 'react';
import { drawSheet } from '../../../drawing/draw-sheet.ts';
import type { Layer } from '../../../drawing/display-list.ts';
import { boundsOf, sizeOfBounds } from '../../../geometry/bounds.ts';
import { inverse } from '../../../geometry/pose.ts';
import { carryPath } from '../../../geometry/change.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import type { Area } from '../../../top/area.ts';
import { clothFor } from '../../table/cloth.ts';
import { useSession } from '../../use-session.ts';

export interface SheetPictureProps {
  readonly sheet: string;
  readonly area: Area;
  /** Inches from side to side and from top to bottom of the picture; the area's own extent when left out. */
  readonly box?: { readonly width: number; readonly height: number };
  readonly withTemplates?: boolean;
}

/** Left round the area, as a part of its size. */
const MARGIN = 0.06;
const LAYERS: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'needle'];
const WITH_TEMPLATES: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'template', 'template-edge', 'needle'];
/** A border is shown from the middle of it, so many times as long as wide. */
const LONGEST = 4;

export function SheetPicture({ sheet, area, box, withTemplates = false }: SheetPictureProps) {
  // While a hand moves something, the picture waits until it lets go.
  const evaluation = useSession((state) => state.gesture?.settled ?? state.evaluation);
  const isBare = !evaluation.placements.some((laid) => laid.sheet === sheet);
  // In the area's own axes, so that a side of a border and a block on point stand upright.
  const layers = useMemo(() => {
    const list = drawSheet(evaluation, sheet, area.id, withTemplates ? WITH_TEMPLATES : LAYERS);
    const dress = clothFor(evaluation);
    const toArea = inverse(area.frame);
    const drawn = new Map<Layer, { readonly d: string; readonly className: string }[]>();
    for (const item of list.items) {
      if (item.kind !== 'path') continue;
      const d = [item.path, ...(item.holes ?? [])].map((path) => writePathData(carryPath(toArea, path))).join('');
      const some = drawn.get(item.layer) ?? [];
      drawn.set(item.layer, [...some, { d, className: dress(item) }]);
    }
    return [...drawn];
  }, [evaluation, sheet, area, withTemplates]);
  const own = sizeOfBounds(boundsOf(area.boundary));
  const width = box?.width ?? Math.min(own.width, own.height * LONGEST);
  const height = box?.height ?? own.height;
  const round = Math.max(width, height) * MARGIN;
  return (
    <svg
      className={`sheet-picture${isBare ? ' bare' : ''}`}
      style={{ '--fineness': 0.8 } as CSSProperties}
      viewBox={`${-width / 2 - round} ${-height / 2 - round} ${width + 2 * round} ${height + 2 * round}`}
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true"
    >
      {layers.map(([layer, items]) => (
        <g key={layer} className={`layer ${layer}`}>
          {items.map(({ d, className }, i) => <path key={i} className={className} d={d} />)}
        </g>
      ))}
    </svg>
  );
}
