// The drawer below the board: feet at one scale, and thread, bobbin, batting and machine in a few words.

import { Button } from 'react-aria-components/Button';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import type { Foot } from '../../model/plan.ts';
import { USUAL_FOOT, addFoot } from '../../session/kit/feet.ts';
import type { KitPick } from '../../session/kit/kit-pick.ts';
import { pickInKit } from '../../session/kit/pick.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';
import { type WriteLength, useFineLengths, useLengths } from '../words/lengths.ts';
import { FootPicture } from './FootPicture.tsx';
import { sayBatting, sayBobbin, sayMachine, sayThread } from './material-words.ts';

/** The widest foot is drawn so wide at the most, in CSS pixels; and no foot larger than so many pixels to the inch. */
const WIDEST = 54;
const LARGEST_INCH = 96;

export function Drawer({ pick }: { readonly pick: KitPick | undefined }) {
  const session = useTheSession();
  const { kit, materials, machine, shownIn } = useSession((state) => state.evaluation.plan);
  const length = useLengths();
  const fine = useFineLengths();
  const onMachine = footOnTheMachine(kit)?.id;
  const feet = Object.entries(kit.feet);
  const scale = Math.min(LARGEST_INCH, WIDEST / Math.max(1 / 8, ...feet.map(([, { diameter }]) => diameter)));
  const rows = [
    { kind: 'thread', name: 'Thread', says: sayThread(materials) },
    { kind: 'bobbin', name: 'Bobbin', says: sayBobbin(materials, shownIn) },
    { kind: 'batting', name: 'Batting', says: sayBatting(materials, length) },
    { kind: 'machine', name: 'Stitch', says: sayMachine(machine) },
  ] as const;
  return (
    <section className="drawer" aria-label="Drawer: feet, thread, bobbin, batting, machine">
      <div className="drawer-feet">
        <ListBox
          className="feet-list"
          aria-label="Feet"
          layout="grid"
          selectionMode="single"
          selectionBehavior="replace"
          selectedKeys={pick?.kind === 'foot' ? [pick.foot] : []}
          onSelectionChange={(keys) => {
            const [id] = keys === 'all' ? [] : [...keys];
            if (id !== undefined) pickInKit(session, { kind: 'foot', foot: String(id) });
          }}
          items={feet.map(([id, foot]) => ({ id, foot }))}
          dependencies={[onMachine, scale, shownIn]}
        >
          {({ id, foot }) => (
            <ListBoxItem id={id} textValue={foot.name} className="foot-thing">
              <FootPicture foot={foot} scale={scale} />
              <span className="foot-words">
                <span className="thing-name">{foot.name}</span>
                <span className="thing-about"><Said>{sayFoot(foot, fine)}</Said></span>
                {id === onMachine && <span className="thing-about on-machine">on the machine</span>}
              </span>
            </ListBoxItem>
          )}
        </ListBox>
        <Button className="button add-foot" onPress={() => addFoot(session, USUAL_FOOT)}>Add a foot</Button>
      </div>
      <ul className="drawer-rows">
        {rows.map(({ kind, name, says }) => (
          <li key={kind}>
            <button type="button" className="drawer-row" aria-pressed={pick?.kind === kind} onClick={() => pickInKit(session, { kind })}>
              <span className="drawer-name">{name}</span>
              <span><Said>{says}</Said></span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function sayFoot({ diameter, needleOffset: [x, y] }: Foot, fine: WriteLength): string {
  if (x === 0 && y === 0) return `${fine(diameter)} across`;
  const across = x === 0 ? [] : [`${fine(Math.abs(x))} ${x > 0 ? 'right' : 'left'}`];
  const along = y === 0 ? [] : [`${fine(Math.abs(y))} ${y > 0 ? 'towards you' : 'away'}`];
  return `${fine(diameter)}, needle ${[...across, ...along].join(', ')}`;
}
