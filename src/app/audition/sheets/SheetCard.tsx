// One sheet of the stack: its picture, its letter and name, how strongly it shows through, and what can be done with it.

import { useId, useState } from 'react';
import { workOn } from '../../../session/lay/on-table.ts';
import { seeThrough } from '../../../session/sheet/seen.ts';
import { chooseToSew, copySheet, leaveOut, moveSheet, putSheetAway, renameSheet } from '../../../session/sheet/sheets.ts';
import type { Stack, Stacked } from '../../../session/sheet/stack.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { MoreMenu } from '../slip/MoreMenu.tsx';
import { NameForm } from '../slip/NameForm.tsx';
import { SheetPicture } from './SheetPicture.tsx';

export function SheetCard({ stacked, stack }: { readonly stacked: Stacked; readonly stack: Stack }) {
  const session = useTheSession();
  const strengthId = useId();
  const { id, sheet, letter, isOnTable } = stacked;
  const strength = useSession((state) => state.seen.through[id] ?? 0);
  const [naming, setNaming] = useState(false);
  const at = stack.sheets.indexOf(stacked);
  const state = isOnTable ? (sheet.chosen ? 'On the table, sewn' : 'On the table') : sheet.chosen ? 'Chosen, sewn' : 'Not sewn';
  return (
    <li className={`sheet-card${isOnTable ? ' on-table' : ''}`}>
      <button type="button" className="sheet-press" aria-pressed={isOnTable} onClick={() => workOn(session, { sheet: id })}>
        <SheetPicture sheet={id} area={stack.on.area} />
        <span className="sheet-name"><b>{letter}</b> {sheet.name}</span>{' '}
        <span className="sheet-state">{state}</span>
      </button>
      <div className="sheet-more">
        <MoreMenu
          about={`sheet ${letter}, ${sheet.name}`}
          commands={[
            sheet.chosen ? { name: 'Leave it out', onDo: () => leaveOut(session, id) } : { name: 'Choose this', onDo: () => chooseToSew(session, id) },
            { name: 'Rename it', onDo: () => setNaming(true) },
            { name: 'Copy it', onDo: () => copySheet(session, id) },
            { name: 'Move it down the stack', isDisabled: at === 0, onDo: () => moveSheet(session, id, -1) },
            { name: 'Move it up the stack', isDisabled: at === stack.sheets.length - 1, onDo: () => moveSheet(session, id, 1) },
            { name: 'Put away', onDo: () => putSheetAway(session, id) },
          ]}
        />
      </div>
      {naming && <NameForm label={`Name of sheet ${letter}`} name={sheet.name} onDone={(name) => { setNaming(false); if (name !== undefined) renameSheet(session, id, name); }} />}
      {!isOnTable && (
        <label className="strength" htmlFor={strengthId}>
          <span className="only-heard">{`How strongly sheet ${letter} shows through, in per cent`}</span>
          <input id={strengthId} type="range" min={0} max={100} step={5} value={Math.round(strength * 100)} aria-valuetext={strength === 0 ? 'not seen' : `${Math.round(strength * 100)} per cent`} onChange={({ target }) => seeThrough(session, id, Number(target.value) / 100)} />
          <span className="strength-said" aria-hidden="true">{`${Math.round(strength * 100)} %`}</span>
        </label>
      )}
    </li>
  );
}
