// Common beds: one press brings the top as near to a bed as its blocks allow, and says what it comes to.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { BEDS, coverBed, quiltFor, topNear } from '../../session/top/beds.ts';
import { layTop } from '../../top/lay-top.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';

export function BedChoice() {
  const session = useTheSession();
  const top = useSession((state) => state.evaluation.plan.top);
  const length = useLengths();
  const [drop, setDrop] = useState(12);
  const [isOpen, setOpen] = useState(false);
  return (
    // Each bed is a top laid out for its size, which is done when somebody looks.
    <details className="top-measured" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>For a bed</summary>
      <div className="top-form">
        <LengthField label="drop at the sides and the foot" least={0} most={40} value={drop} onValue={setDrop} />
        <ul className="top-beds">
          {isOpen && BEDS.map((bed) => {
            const wanted = quiltFor(bed, drop);
            const near = layTop(topNear(top, wanted));
            const comes = `A quilt of ${length(wanted.width)} by ${length(wanted.height)}; yours comes to ${length(near.width)} by ${length(near.height)}.`;
            return (
              <li key={bed.id}>
                <Button className="button" aria-label={`${bed.name}. ${comes}`} onPress={() => coverBed(session, bed, drop)}>{bed.name}</Button>
                <span className="aside"><Said>{comes}</Said></span>
              </li>
            );
          })}
        </ul>
        <p className="aside">Mattresses differ; measure yours.</p>
      </div>
    </details>
  );
}
