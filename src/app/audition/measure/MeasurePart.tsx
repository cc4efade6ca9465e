// The tape measure on the slip: by touch on the table, or from lists.

import { useMemo } from 'react';
import { Button } from 'react-aria-components/Button';
import { styleOf } from '../../../model/length-style.ts';
import { layEnd, putTapeAway, readTape, sayTape } from '../../../session/measure/measuring.ts';
import { thingsOnTable } from '../../../session/measure/things.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { Choose } from '../slip/Choose.tsx';

/** Only while the tape is out. */
export function MeasurePart() {
  const session = useTheSession();
  const measuring = useSession((state) => state.measuring);
  const evaluation = useSession((state) => state.evaluation);
  const working = useSession((state) => state.working);
  const isOut = measuring !== undefined;
  const things = useMemo(() => (isOut ? thingsOnTable({ ...session.getState(), evaluation, working }).map(({ id, name }) => ({ id, name })) : []), [session, evaluation, working, isOut]);
  if (!measuring) return null;
  const read = readTape({ ...session.getState(), evaluation, working, measuring });
  const said = read ? sayTape(read, styleOf(evaluation.plan)) : [];
  const end = (which: 'from' | 'to') => {
    const laid = measuring[which];
    return laid && 'on' in laid ? laid.on : '';
  };
  return (
    <SlipPart title="Tape measure">
      <div role="status" className="tape-said">{said.map((sentence) => <p key={sentence} className="sentence"><Said>{sentence}</Said></p>)}</div>
      <Choose label="From" options={things} value={end('from')} onChoose={(on) => layEnd(session, 'from', on === '' ? undefined : { on })} none="Touch it on the table, or choose here" />
      <Choose label="To" options={things} value={end('to')} onChoose={(on) => layEnd(session, 'to', on === '' ? undefined : { on })} none="Touch it on the table, or choose here" />
      <div className="slip-buttons"><Button className="button" onPress={() => putTapeAway(session)}>Put the tape away</Button></div>
    </SlipPart>
  );
}
