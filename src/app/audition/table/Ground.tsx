// Under the hands: vellum that quiets all but the area worked on, and the reference lines people line up on.

import { useMemo } from 'react';
import { carryPath } from '../../../geometry/change.ts';
import { after, stay } from '../../../geometry/pose.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import type { RepeatStep } from '../../../model/plan.ts';
import { repeatIn } from '../../../stitch/repeat.ts';
import { countAlong, unitLines } from '../../../stitch/unit-lines.ts';
import type { Area } from '../../../top/area.ts';
import { onTable, pickedOn } from '../../../session/lay/on-table.ts';
import { type SessionState, planOf } from '../../../session/store.ts';
import { useSession } from '../../use-session.ts';
import { useDivisionInSight } from './use-division-in-sight.ts';

/** The vellum reaches so far beyond the top, in inches. */
const BEYOND = 400;

export function Ground() {
  const area = useSession((state) => onTable(state)?.area);
  const steps = useSession(stepsHere);
  const met = useSession(metLines);
  useDivisionInSight();
  const lines = useMemo(() => (area ? linesOn(area, steps) : []), [area, steps]);
  const veil = useMemo(() => (area ? writePathData(carryPath(area.frame, area.boundary)) : ''), [area]);
  if (!area) return null;
  const names = new Set(met.split('\n'));
  return (
    <g className="working-ground">
      <path className="veil" fillRule="evenodd" d={`M${-BEYOND} ${-BEYOND}H${BEYOND}V${BEYOND}H${-BEYOND}Z${veil}`} />
      <path className="vellum-sheet" d={veil} />
      {lines.map(({ id, kind, d }) => (
        <path key={id} className={`reference-line ${kind}${names.has(id) ? ' met' : ''}`} d={d} />
      ))}
    </g>
  );
}

/** The repeat that says which lines there are: that of the template picked out, or else the sheet's. */
function stepsHere(state: SessionState): readonly RepeatStep[] {
  const on = onTable(state);
  const [picked] = pickedOn(state.selection, on?.sheet?.id);
  const own = picked === undefined ? undefined : on?.sheet?.sheet.placements[picked]?.repeat;
  return own ?? on?.sheet?.sheet.repeat ?? NO_STEPS;
}

const NO_STEPS: readonly RepeatStep[] = [];

function linesOn(area: Area, steps: readonly RepeatStep[]) {
  const axes = after(repeatIn(area, steps).images[0] ?? stay<'area'>(), area.frame);
  return unitLines(area, countAlong(steps, area.side)).map((line) => {
    // Of one division, its own lines stand where it lies; those that run along the area are drawn where the area has them.
    const { id, kind, path } = line;
    return { id, kind, d: writePathData(carryPath(area.referenceLines.includes(line) ? area.frame : axes, path)) };
  });
}

/** The ids of the reference lines that the template picked out is put on or near to. */
function metLines(state: SessionState): string {
  const on = onTable(state);
  const [picked] = pickedOn(state.selection, on?.sheet?.id);
  const held = picked === undefined || !on?.sheet ? [] : (planOf(state).sheets[on.sheet.id]?.placements[picked]?.registrations ?? []);
  const near = state.inHand?.near?.registration;
  return [...held, ...(near ? [near] : [])].flatMap(({ on: target }) => linesNamed(target)).join('\n');
}

function linesNamed(on: string): readonly string[] {
  if (on.startsWith('line:')) return [on.slice('line:'.length)];
  if (on.startsWith('crossing:')) return on.slice('crossing:'.length).split(',').slice(0, 2);
  return on === 'centre' ? ['vertical-centre', 'horizontal-centre'] : [];
}
