// Ink that is not dry: the lines of what the hand moves, drawn anew at every move; those of a sheet that is only tried and not sewn,
// which the quilt's own picture does not show; and, over the vellum, all lines of the sheet on the area that is worked on.

import { useLayoutEffect, useRef } from 'react';
import type { Bounds } from '../../../geometry/bounds.ts';
import { onTable } from '../../../session/lay/on-table.ts';
import { type SessionState, planOf } from '../../../session/store.ts';
import type { LaidPlacement } from '../../../stitch/laid-placement.ts';
import type { Area } from '../../../top/area.ts';
import { movedPlacements } from '../../table/in-hand.ts';
import { useTheSession } from '../../use-session.ts';
import { inkData } from './ink-data.ts';

/** Lines on other areas follow as often as leaves the hand most of the time: so many times as long as they took to draw. */
const REST_TIMES = 3;
/** Drawn beyond the table's edges, so that a push of the quilt does not bare what is not drawn; part of its size. */
const RIM = 0.35;
/** In milliseconds. */
const VIEW_RESTS = 60;

export function Ink() {
  const session = useTheSession();
  const here = useRef<SVGPathElement>(null);
  const elsewhere = useRef<SVGPathElement>(null);

  useLayoutEffect(() => {
    let mayDrawAt = 0;
    let late: ReturnType<typeof setTimeout> | undefined;
    const drawElsewhere = () => {
      clearTimeout(late);
      const began = performance.now();
      if (began < mayDrawAt) {
        late = setTimeout(drawElsewhere, mayDrawAt - began);
        return;
      }
      const state = session.getState();
      elsewhere.current!.setAttribute('d', inkOn(state, wetPlacements(state), (area) => area.id !== onTable(state)?.area.id));
      const took = performance.now() - began;
      mayDrawAt = began + took * (1 + REST_TIMES);
    };
    const draw = () => {
      const state = session.getState();
      const area = onTable(state)?.area;
      here.current!.setAttribute('d', area ? inkOn(state, sheetHere(state, area), (candidate) => candidate === area) : '');
      drawElsewhere();
    };
    draw();
    let rested: ReturnType<typeof setTimeout> | undefined;
    const stop = session.subscribe((now, before) => {
      if (now.evaluation !== before.evaluation || now.gesture !== before.gesture || now.working !== before.working) draw();
      else if (now.view !== before.view || now.table !== before.table) {
        // What comes into sight is drawn when the view rests.
        clearTimeout(rested);
        rested = setTimeout(draw, VIEW_RESTS);
      }
    });
    return () => {
      clearTimeout(late);
      clearTimeout(rested);
      stop();
    };
  }, [session]);

  return (
    <g className="wet-ink">
      <path ref={elsewhere} />
      <path ref={here} />
    </g>
  );
}

/** The lines of some placements on the areas asked for, as far as they are in sight. */
function inkOn(state: SessionState, placements: readonly LaidPlacement[], wanted: (area: Area) => boolean): string {
  const areaById = new Map(state.evaluation.top.areas.map((area) => [area.id, area] as const));
  const inSight = stretchInSight(state);
  return placements
    .map((laid) => inkData(laid, laid.areas.flatMap((id) => areaById.get(id) ?? []).filter(wanted), inSight))
    .join('');
}

/** All that the sheet on the table has on its area, and what the hand moves there besides. */
function sheetHere(state: SessionState, area: Area): readonly LaidPlacement[] {
  const mine = onTable(state)?.sheet?.id;
  const moved = wetPlacements(state);
  return state.evaluation.placements.filter((laid) => laid.areas.includes(area.id) && (laid.sheet === mine || moved.includes(laid)));
}

/** What the hand moves, of sheets that are sewn and of the one on the table; and all of the latter when it is not sewn. */
function wetPlacements(state: SessionState): readonly LaidPlacement[] {
  const { sheets } = planOf(state);
  const mine = onTable(state)?.sheet?.id;
  const moved = movedPlacements(state).filter((laid) => laid.sheet === mine || sheets[laid.sheet]?.chosen);
  if (mine === undefined || sheets[mine]?.chosen) return moved;
  return [...moved.filter((laid) => laid.sheet !== mine), ...state.evaluation.placements.filter((laid) => laid.sheet === mine)];
}

function stretchInSight({ view, table }: SessionState): Bounds {
  const x = (table.width * RIM) / view.scale;
  const y = (table.height * RIM) / view.scale;
  return { minX: view.x - x, minY: view.y - y, maxX: view.x + table.width / view.scale + x, maxY: view.y + table.height / view.scale + y };
}
