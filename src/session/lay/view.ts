// How the area on the table is looked at.

import { carryBounds } from '../../geometry/bounds.ts';
import type { RepeatStep } from '../../model/plan.ts';
import { countAlong } from '../../stitch/unit-lines.ts';
import { zoomToArea, zoomToStretch } from '../look.ts';
import type { Session } from '../store.ts';
import { axesFor, onTable } from './on-table.ts';

/** So many times as long as wide, an area is not shown whole at first: too little would be seen of its width. */
const LONG = 4;
/** So many times its width is shown of a long one. */
const SHOWN = 2.5;

/** Shows the area on the table as large as the table allows; of a long one, the division that is worked on. */
export function zoomToWork(session: Session): void {
  const on = onTable(session.getState());
  if (!on) return;
  const { area } = on;
  if (area.width < LONG * area.height) return zoomToArea(session, area.id);
  const steps: readonly RepeatStep[] = on.sheet?.sheet.repeat ?? [];
  const count = countAlong(steps, area.side);
  const across = Math.min(area.width, Math.max(SHOWN * area.height, count === undefined ? 0 : (1.5 * area.width) / count)) / 2;
  const { minX, minY, maxX, maxY } = carryBounds(axesFor(on), { minX: -across, maxX: across, minY: -area.height / 2, maxY: area.height / 2 });
  zoomToStretch(session, { x: minX, y: minY, width: maxX - minX, height: maxY - minY });
}
