// Over which areas a sheet is sewn: all of their kind, only this one, all but this one, or those ticked in the list.

import { Button } from 'react-aria-components/Button';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { allOfKind, countedAreas, sayAreas } from '../../../session/sheet/area-words.ts';
import { setAreas } from '../../../session/sheet/sheets.ts';
import { areasFor } from '../../../stitch/sheet-areas.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { WordForm } from './WordForm.tsx';

export function AreasOf({ on }: { readonly on: OnTable }) {
  const areas = useSession((state) => state.evaluation.top.areas);
  if (!on.sheet) return null;
  const target = on.sheet.sheet.for;
  return (
    <WordForm label="Over which areas" text={sayAreas(target, areas)}>
      {(close) => <Which on={on} onDone={close} />}
    </WordForm>
  );
}

function Which({ on, onDone }: { readonly on: OnTable; readonly onDone: () => void }) {
  const session = useTheSession();
  const areas = useSession((state) => state.evaluation.top.areas);
  const { id, sheet } = on.sheet!;
  const all = areasFor(allOfKind(sheet.for), areas);
  const mine = new Set(areasFor(sheet.for, areas).map((area) => area.id));
  const set = (which: Parameters<typeof setAreas>[2]) => setAreas(session, id, which);
  const toggle = (area: string) => {
    const without = all.filter((one) => (one.id === area ? mine.has(area) : !mine.has(one.id))).map((one) => one.id);
    if (without.length < all.length) set({ except: without });
  };
  return (
    <div className="which-areas">
      <div className="form-foot wide">
        <Button className="button" onPress={() => { set({}); onDone(); }}>{`All ${countedAreas(sheet.for, all.length)}`}</Button>
        <Button className="button" onPress={() => { set({ only: [on.area.id] }); onDone(); }}>Only this one</Button>
        <Button className="button" isDisabled={all.length < 2} onPress={() => { set({ except: [on.area.id] }); onDone(); }}>All but this one</Button>
      </div>
      <ul className="ticks" aria-label="Areas">
        {all.map((area) => (
          <li key={area.id}>
            <label className="tick"><input type="checkbox" checked={mine.has(area.id)} disabled={mine.size === 1 && mine.has(area.id)} onChange={() => toggle(area.id)} /> {area.name}</label>
          </li>
        ))}
      </ul>
    </div>
  );
}
