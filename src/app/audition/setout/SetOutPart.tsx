// Where setting out begins: on the slip about a sheet, or about an area that has none yet.

import { Button } from 'react-aria-components/Button';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useTheSession } from '../../use-session.ts';

/** On the sides of borders; nothing elsewhere. */
export function SetOutPart({ on: { area: { kind, border } } }: { readonly on: OnTable }) {
  const session = useTheSession();
  if (kind !== 'border-side' || border === undefined) return null;
  return (
    <SlipPart title="Make it come out even">
      <p className="sentence">Which counts and lies of your templates make all four sides come out even?</p>
      <div className="slip-buttons"><Button className="button" onPress={() => ask(session, { kind: 'border', border })}>Set out the border</Button></div>
    </SlipPart>
  );
}
