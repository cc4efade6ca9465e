// The stack of tracing sheets at the left of the table; on a tablet, tabs on the vellum's edge, with the stack behind one word.

import { Button } from 'react-aria-components/Button';
import { DialogTrigger } from 'react-aria-components/Dialog';
import { workOn } from '../../../session/lay/on-table.ts';
import { sayAreas } from '../../../session/sheet/area-words.ts';
import { MOST_BESIDE, laySideBySide } from '../../../session/sheet/seen.ts';
import { takeSheet } from '../../../session/sheet/sheets.ts';
import type { Stack } from '../../../session/sheet/stack.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { useStack } from '../use-on-table.ts';
import { PopUp } from '../../words/PopUp.tsx';
import { AreaChooser } from './AreaChooser.tsx';
import { SheetCard } from './SheetCard.tsx';
import './sheets.css';

export function SheetStack() {
  const stack = useStack();
  if (!stack) return <aside className="sheet-stack" aria-label="Tracing sheets" />;
  return (
    <aside className="sheet-stack" aria-label="Tracing sheets">
      <div className="stack-full"><Full stack={stack} /></div>
      <div className="stack-tabs"><Tabs stack={stack} /></div>
    </aside>
  );
}

function Full({ stack, onDone }: { readonly stack: Stack; readonly onDone?: () => void }) {
  const session = useTheSession();
  const isBeside = useSession((state) => state.seen.beside.length > 1);
  const areas = useSession((state) => state.evaluation.top.areas);
  const shown = [...stack.sheets.filter(({ isOnTable }) => isOnTable), ...stack.sheets.filter(({ isOnTable }) => !isOnTable)];
  const all = sayAreas(stack.kind, areas);
  return (
    <>
      <h2>Tracing sheets</h2>
      <AreaChooser stack={stack} />
      {shown.length === 0 ? (
        <button type="button" className="rolled-sheet" onClick={() => takeSheet(session)}>
          <span className="roll" aria-hidden="true" />
          <span className="sentence">{`Take a sheet for ${all}.`}</span>
        </button>
      ) : (
        <ol className="sheet-cards">{shown.map((stacked) => <SheetCard key={stacked.id} stacked={stacked} stack={stack} />)}</ol>
      )}
      <div className="stack-buttons">
        <Button
          className="button"
          isDisabled={stack.sheets.length < 2}
          onPress={() => {
            laySideBySide(session, isBeside ? [] : shown.slice(0, MOST_BESIDE).map(({ id }) => id));
            onDone?.();
          }}
        >
          {isBeside ? 'Lay one alone' : 'Lay side by side'}
        </Button>
        {shown.length > 0 && <Button className="button" onPress={() => { takeSheet(session); onDone?.(); }}>Take a new sheet</Button>}
      </div>
    </>
  );
}

function Tabs({ stack }: { readonly stack: Stack }) {
  const session = useTheSession();
  return (
    <>
      <DialogTrigger>
        <Button className="stack-open" aria-label="Sheets: all about them"><span>Sheets</span></Button>
        <PopUp className="stack-dialog" offset={2}>{(close) => <Full stack={stack} onDone={close} />}</PopUp>
      </DialogTrigger>
      <ul className="tabs">
        {stack.sheets.map(({ id, letter, sheet, isOnTable }) => (
          <li key={id}>
            <button type="button" className={`tab${isOnTable ? ' on-table' : ''}`} aria-pressed={isOnTable} aria-label={`${letter} ${sheet.name}, ${sheet.chosen ? 'sewn' : 'not sewn'}`} onClick={() => workOn(session, { sheet: id })}>
              <span className="tab-letter">{letter}</span>{' '}
              <span className="tab-name" aria-hidden="true">{sheet.name}</span>
            </button>
          </li>
        ))}
        <li><button type="button" className="tab new" aria-label="Take a new sheet" onClick={() => takeSheet(session)}><span className="tab-letter" aria-hidden="true">+</span></button></li>
      </ul>
    </>
  );
}
