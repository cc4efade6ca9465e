// Borders from the inside out, each with its corners and what the tape says along its inner seam.

import { Button } from 'react-aria-components/Button';
import type { Border, Side } from '../../model/plan.ts';
import { keepTyped } from '../../session/typing.ts';
import { addBorder, removeBorder, setCorners, typeClearance, typeMeasured, typeWidth } from '../../session/top/borders.ts';
import { SIDES } from '../../top/area.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { OneOf } from '../words/OneOf.tsx';
import { useLengths } from '../words/lengths.ts';
import { Aside } from '../slip/Slip.tsx';

const CORNERS = [
  { id: 'mitred', name: 'mitred' },
  { id: 'squares', name: 'with squares' },
  { id: 'butted', name: 'butted' },
] as const;
const THROUGH = [
  { id: 'top-and-bottom', name: 'top and bottom' },
  { id: 'left-and-right', name: 'left and right' },
] as const;

export function BordersForm() {
  const session = useTheSession();
  const borders = useSession((state) => state.evaluation.plan.top.borders);
  return (
    <div className="top-form">
      {borders.length === 0 && <Aside>No border yet.</Aside>}
      {borders.map((border, i) => <BorderForm key={i} border={border} index={i} outermost={i === borders.length - 1} alone={borders.length === 1} />)}
      <Button className="button" onPress={() => addBorder(session)}>Add a border</Button>
    </div>
  );
}

function BorderForm({ border, index, outermost, alone }: { readonly border: Border; readonly index: number; readonly outermost: boolean; readonly alone: boolean }) {
  const session = useTheSession();
  const keep = () => keepTyped(session);
  const name = alone ? 'the border' : `border ${index + 1}`;
  return (
    <fieldset className="top-border">
      <legend>{alone ? 'Border' : `Border ${index + 1}${outermost ? ', outermost' : index === 0 ? ', innermost' : ''}`}</legend>
      <LengthField label={`width of ${name}`} least={0.25} most={100} {...(outermost && { hint: 'From its inner seam to the raw edge.' })} value={border.width} onValue={(value) => typeWidth(session, index, value)} onKeep={keep} />
      <OneOf label={`corners of ${name}`} options={CORNERS} chosen={border.corners} onChoose={(id) => setCorners(session, index, id)} />
      {border.corners === 'butted' && <OneOf label="sides that run through" options={THROUGH} chosen={border.through ?? 'top-and-bottom'} onChoose={(id) => setCorners(session, index, 'butted', id)} />}
      <MeasuredSides border={border} index={index} />
      <Button className="button" aria-label={`Take off ${name}`} onPress={() => removeBorder(session, index)}>Take it off</Button>
    </fieldset>
  );
}

function MeasuredSides({ border, index }: { readonly border: Border; readonly index: number }) {
  const session = useTheSession();
  const areas = useSession((state) => state.evaluation.top.areas);
  const length = useLengths();
  const keep = () => keepTyped(session);
  const laid = (side: Side) => areas.find((area) => area.kind === 'border-side' && area.border === index + 1 && area.side === side)?.width;
  return (
    <details className="top-measured" open={border.measured !== undefined}>
      <summary>Measured lengths</summary>
      <p className="aside">Measure along the inner seam, from corner to corner. A side left empty is taken as the layout gives it.</p>
      <div className="top-pair">
        {SIDES.map((side) => {
          const measured = border.measured?.[side];
          const width = laid(side);
          return (
            <LengthField
              key={side}
              label={`${side} side, border ${index + 1}`}
              least={0.5}
              most={400}
              value={measured}
              onValue={(value) => typeMeasured(session, index, side, value)}
              onEmpty={() => typeMeasured(session, index, side, undefined)}
              onKeep={keep}
              {...(measured === undefined && width !== undefined && { hint: `${length(width)} as laid out` })}
            />
          );
        })}
      </div>
    </details>
  );
}

export function ClearancesForm() {
  const session = useTheSession();
  const clearance = useSession((state) => state.evaluation.plan.top.clearance);
  const keep = () => keepTyped(session);
  return (
    <div className="top-form top-pair">
      <LengthField label="from the raw edge" least={0} most={12} hint="Seam allowance and binding." value={clearance.rawEdge} onValue={(value) => typeClearance(session, 'rawEdge', value)} onKeep={keep} />
      <LengthField label="from seams" least={0} most={12} value={clearance.seam} onValue={(value) => typeClearance(session, 'seam', value)} onKeep={keep} />
    </div>
  );
}
