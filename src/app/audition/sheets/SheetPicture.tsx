// A true picture of a sheet on an area: the same drawing the table and the paper are made from, small.

import { type CSSProperties, useMemo } from 'react';
import { drawSheet } from '../../../drawing/draw-sheet.ts';
import type { Layer } from '../../../drawing/display-list.ts';
import { boundsOf, sizeOfBounds } from '../../../geometry/bounds.ts';
import { inverse } from '../../../geometry/pose.ts';
import type { Area } from '../../../top/area.ts';
import { clothFor } from '../../table/cloth.ts';
import { useSession } from '../../use-session.ts';
import { PictureLayers, pictureLayers } from './PictureLayers.tsx';

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
    return pictureLayers(drawSheet(evaluation, sheet, area.id, withTemplates ? WITH_TEMPLATES : LAYERS), { dress: clothFor(evaluation), toArea: inverse(area.frame) });
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
      <PictureLayers layers={layers} />
    </svg>
  );
}
