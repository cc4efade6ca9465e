// Two to four sheets side by side, at one scale, in place of the table: looked at, compared, and one chosen.

import { Button } from 'react-aria-components/Button';
import { expand } from '../../../stitch/expand.ts';
import { workOn } from '../../../session/lay/on-table.ts';
import { laySideBySide, toggleBeside } from '../../../session/sheet/seen.ts';
import { chooseToSew } from '../../../session/sheet/sheets.ts';
import type { Stack, Stacked } from '../../../session/sheet/stack.ts';
import { oneArea } from '../../../session/sheet/area-words.ts';
import { areasById } from '../../../space/lines-near.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { useLengths } from '../../words/lengths.ts';
import { SheetPicture } from './SheetPicture.tsx';

/** The sheets of the stack that lie side by side; fewer than two when they do not. */
export function useBeside(stack: Stack | undefined): readonly Stacked[] {
  const beside = useSession((state) => state.seen.beside);
  const found = beside.flatMap((id) => stack?.sheets.find((stacked) => stacked.id === id) ?? []);
  return found.length < 2 ? [] : found;
}

export function SideBySide({ stack, sheets }: { readonly stack: Stack; readonly sheets: readonly Stacked[] }) {
  const session = useTheSession();
  const { area } = stack.on;
  return (
    <section className="table-place side-by-side" aria-label="Sheets side by side">
      <header>
        <h1>{`Side by side, on ${area.name}`}</h1>
        <Button className="button" onPress={() => laySideBySide(session, [])}>Lay one alone</Button>
      </header>
      <ul className={`beside of-${sheets.length}`}>
        {sheets.map((stacked) => (
          <li key={stacked.id} className={`beside-sheet${stacked.sheet.chosen ? ' chosen' : ''}`}>
            <SheetPicture sheet={stacked.id} area={area} box={{ width: area.width, height: area.height }} />
            <div className="beside-words">
              <h2><b>{stacked.letter}</b> {stacked.sheet.name}</h2>
              <Sewn stacked={stacked} area={area.id} what={oneArea(stack.kind)} />
              <div className="slip-buttons">
                {stacked.sheet.chosen ? <p className="is-chosen">Chosen</p> : <Button className="button" aria-label={`Choose this: sheet ${stacked.letter}`} onPress={() => chooseToSew(session, stacked.id)}>Choose this</Button>}
                <Button
                  className="button"
                  aria-label={`Lay it on the table: sheet ${stacked.letter}`}
                  onPress={() => {
                    laySideBySide(session, []);
                    workOn(session, { sheet: stacked.id });
                  }}
                >
                  Lay it on the table
                </Button>
                {sheets.length > 2 && <Button className="word" aria-label={`Lift off: sheet ${stacked.letter}`} onPress={() => toggleBeside(session, stacked.id)}><span>Lift off</span></Button>}
              </div>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** How much is sewn of a sheet on one area. */
function Sewn({ stacked, area, what }: { readonly stacked: Stacked; readonly area: string; readonly what: string }) {
  const length = useLengths();
  const top = useSession((state) => state.evaluation.top);
  const placements = useSession((state) => state.evaluation.placements);
  const lines = placements.filter((laid) => laid.sheet === stacked.id && laid.areas.includes(area)).flatMap((laid) => expand(laid, areasById(top.areas)).filter((line) => line.area === area));
  if (lines.length === 0) return <p className="aside">Nothing is sewn on it yet.</p>;
  return <p className="aside"><Said>{`${lines.length === 1 ? '1 line' : `${lines.length} lines`} in this ${what}, ${length(lines.reduce((sum, line) => sum + line.length, 0))} of stitching.`}</Said></p>;
}
