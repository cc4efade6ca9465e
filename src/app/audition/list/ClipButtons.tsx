// Copy, cut and paste as buttons, and the sentence that says what came of it.

import { Button } from 'react-aria-components/Button';
import { pickedOn } from '../../../session/lay/on-table.ts';
import { useSession } from '../../use-session.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { Said } from '../../words/Said.tsx';
import { useOnTable } from '../use-on-table.ts';
import type { ClipHands } from './use-clipboard.ts';

export function ClipButtons({ clip }: { readonly clip: ClipHands }) {
  const selection = useSession((state) => state.selection);
  const on = useOnTable();
  const isPicked = pickedOn(selection, on?.sheet?.id).some((id) => on?.sheet?.sheet.placements[id]);
  const what = isPicked && selection.kind === 'placement' && selection.pass !== undefined ? 'pass' : 'template';
  return (
    <SlipPart title="Carry it elsewhere">
      <div className="slip-buttons">
        <Button className="button" isDisabled={!isPicked} onPress={clip.copy}>{`Copy the ${what}`}</Button>
        <Button className="button" isDisabled={!isPicked} onPress={clip.cut}>Cut</Button>
        <Button className="button" onPress={clip.paste}>Paste</Button>
      </div>
      <p role="status" className="aside"><Said>{clip.said}</Said></p>
    </SlipPart>
  );
}
