// The true picture of an offer: the plan as it would be with the offer's sheets alone, drawn like the table and the paper.

import { type CSSProperties, useMemo } from 'react';
import type { Layer } from '../../../drawing/display-list.ts';
import { drawTop } from '../../../drawing/draw.ts';
import { setOut } from '../../../engine/evaluate.ts';
import { type Bounds, boundsOf, carryBounds } from '../../../geometry/bounds.ts';
import type { Plan } from '../../../model/plan.ts';
import type { Asked } from '../../../session/setout/asked.ts';
import type { Offer } from '../../../session/setout/offer.ts';
import type { LaidTop } from '../../../top/area.ts';
import { clothFor } from '../../table/cloth.ts';
import { useSession } from '../../use-session.ts';
import { PictureLayers, pictureLayers } from '../sheets/PictureLayers.tsx';

const LAYERS: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'division', 'needle'];

export function OfferPicture({ asked, offer }: { readonly asked: Asked; readonly offer: Offer }) {
  const plan = useSession((state) => state.evaluation.plan);
  const { kit, top, shownIn } = plan;
  const drawn = useMemo(() => draw({ ...plan, kit, top, shownIn, sheets: Object.fromEntries(offer.sheets.map((sheet, i) => [`offer-${i}`, { ...sheet, chosen: true }])) }, asked), [kit, top, shownIn, asked, offer]);
  const { box } = drawn;
  return (
    <svg
      className="offer-picture"
      style={{ '--fineness': 0.9 } as CSSProperties}
      viewBox={`${box.minX} ${box.minY} ${box.maxX - box.minX} ${box.maxY - box.minY}`}
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true"
    >
      <PictureLayers layers={drawn.layers} />
    </svg>
  );
}

function draw(plan: Plan, asked: Asked) {
  const evaluation = setOut(plan);
  const box = boxOf(asked, evaluation.top);
  return { box, layers: pictureLayers(drawTop(evaluation, { layers: LAYERS }), { dress: clothFor(evaluation), near: box }) };
}

/** Of a border, its top side with both corners and as much of the quilt below; otherwise the area with a little round it. */
function boxOf(asked: Asked, { areas, width }: LaidTop): Bounds {
  if (asked.kind === 'border') {
    const side = areas.find((area) => area.kind === 'border-side' && area.border === asked.border && area.side === 'top');
    if (side) {
      const { minX, maxX, minY } = carryBounds(side.frame, boundsOf(side.boundary));
      const left = Math.max(0, minX - side.height * 1.1);
      const right = Math.min(width, maxX + side.height * 1.1);
      return { minX: left, maxX: right, minY, maxY: minY + (right - left) * 0.21 };
    }
  }
  const area = 'area' in asked ? areas.find(({ id }) => id === asked.area) : areas[0];
  if (!area) return { minX: 0, minY: 0, maxX: width, maxY: width };
  const { minX, minY, maxX, maxY } = carryBounds(area.frame, boundsOf(area.boundary));
  const round = Math.max(maxX - minX, maxY - minY) * 0.05;
  return { minX: minX - round, minY: minY - round, maxX: maxX + round, maxY: maxY + round };
}
