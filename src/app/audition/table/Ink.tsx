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

/**
 * Lines on other areas follow part by part, a part being a run of areas: so long is drawn at a time, in milliseconds, and then rested so
 * many times as long, which leaves the hand most of the time however large the top is.
 */
const AT_A_TIME = 3;
const REST_TIMES = 2;
const PARTS = 16;
/** Drawn beyond the table's edges, so that a push of the quilt does not bare what is not drawn; part of its size. */
const RIM = 0.35;
/** In milliseconds. */
const VIEW_RESTS = 60;

export function Ink() {
  const session = useTheSession();
  const here = useRef<SVGPathElement>(null);
  const elsewhere = useRef<SVGGElement>(null);

  useLayoutEffect(() => {
    const parts = [...elsewhere.current!.querySelectorAll('path')];
    let behind = new Set<number>();
    let next = 0;
    let isBare = true;
    let late: ReturnType<typeof setTimeout> | undefined;
    const drawParts = (forSoLong: number) => {
      late = undefined;
      const began = performance.now();
      const state = session.getState();
      const wet = wetPlacements(state);
      const { areas } = state.evaluation.top;
      const mine = onTable(state)?.area.id;
      while (behind.size > 0 && (wet.length === 0 || performance.now() - began < forSoLong)) {
        if (behind.delete(next)) {
          const inPart = areas.filter((area, i) => Math.floor((i * PARTS) / areas.length) === next && area.id !== mine);
          parts[next]!.setAttribute('d', inkOn(state, wet, inPart));
        }
        next = (next + 1) % PARTS;
      }
      isBare = wet.length === 0;
      if (behind.size > 0) late = setTimeout(() => drawParts(AT_A_TIME), REST_TIMES * (performance.now() - began));
    };
    const draw = () => {
      const state = session.getState();
      const area = onTable(state)?.area;
      here.current!.setAttribute('d', area ? inkOn(state, sheetHere(state, area), [area]) : '');
      behind = new Set(parts.keys());
      const isDry = wetPlacements(state).length === 0;
      if (isDry && isBare) return behind.clear();
      // What is picked up, or let go, leaves the settled picture or comes back to it in one piece.
      const inOnePiece = isDry || isBare;
      if (inOnePiece) clearTimeout(late);
      if (inOnePiece || late === undefined) drawParts(inOnePiece ? Infinity : AT_A_TIME);
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
      <g ref={elsewhere}>{Array.from({ length: PARTS }, (_, part) => <path key={part} />)}</g>
      <path ref={here} />
    </g>
  );
}

/** The lines of some placements on these areas, as far as they are in sight. */
function inkOn(state: SessionState, placements: readonly LaidPlacement[], areas: readonly Area[]): string {
  const inSight = stretchInSight(state);
  return placements
    .map((laid) => {
      const wanted = new Set(laid.areas);
      return inkData(laid, areas.filter(({ id }) => wanted.has(id)), inSight);
    })
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
