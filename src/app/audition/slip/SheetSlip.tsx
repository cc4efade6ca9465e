// The slip about the sheet on the table, when no template is picked out; and what to do when there is no sheet, or no top.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { layTemplate } from '../../../session/lay/bring-in.ts';
import { sayAreas } from '../../../session/sheet/area-words.ts';
import { kindOf } from '../../../session/lay/on-table.ts';
import { chooseToSew, leaveOut, noteOnSheet, renameSheet, takeSheet } from '../../../session/sheet/sheets.ts';
import { TextField } from '../../kit/TextField.tsx';
import { Sentence, Slip, SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { AuditionList } from '../list/AuditionList.tsx';
import { ClipButtons } from '../list/ClipButtons.tsx';
import type { ClipHands } from '../list/use-clipboard.ts';
import { MeasurePart } from '../measure/MeasurePart.tsx';
import { useStack } from '../use-on-table.ts';
import { LinePart } from '../setout/LinePart.tsx';
import { SetOutPart } from '../setout/SetOutPart.tsx';
import { MoreMenu } from './MoreMenu.tsx';
import { NameForm } from './NameForm.tsx';
import { RepeatPart } from './RepeatPart.tsx';

/** No area at all. */
export function NoTopSlip() {
  return (
    <Slip title="A blank table" foot={<a className="button main" href="#top">Measure your top</a>}>
      <SlipPart title="What to do first">
        <Sentence>Measure your top, or lay down a photograph of it.</Sentence>
      </SlipPart>
    </Slip>
  );
}

export function SheetSlip({ on, clip }: { readonly on: OnTable; readonly clip: ClipHands }) {
  const session = useTheSession();
  const areas = useSession((state) => state.evaluation.top.areas);
  const [naming, setNaming] = useState(false);
  if (!on.sheet) return <NoSheetSlip on={on} clip={clip} />;
  const { id, sheet } = on.sheet;
  const count = Object.keys(sheet.placements).length;
  const state = sheet.chosen ? 'Chosen: this sheet is sewn.' : 'Not chosen: it is only tried.';
  return (
    <Slip
      title={sheet.name}
      about={`For ${sayAreas(sheet.for, areas)}. ${state}`}
      foot={sheet.chosen ? <Button className="button main" onPress={() => { location.hash = 'check'; }}>Check this top</Button> : <Button className="button main" onPress={() => chooseToSew(session, id)}>Choose this</Button>}
    >
      {naming && <NameForm label="Name of the sheet" name={sheet.name} onDone={(name) => { setNaming(false); if (name !== undefined) renameSheet(session, id, name); }} />}
      <MeasurePart />
      <SlipPart title="On this sheet">
        <Sentence>{count === 0 ? 'Lay a template on it: pull one up from the shelf, or choose one here.' : count === 1 ? 'One template lies on it. Touch it to read how.' : `${count} templates lie on it. Touch one to read how.`}</Sentence>
        <div className="slip-buttons">
          <LayTemplate />
          <Button className="button" onPress={() => setNaming(true)}>Rename it</Button>
          {sheet.chosen && <Button className="button" onPress={() => leaveOut(session, id)}>Leave it out</Button>}
        </div>
      </SlipPart>
      {count > 0 && <RepeatPart on={on} />}
      <SetOutPart on={on} />
      <LinePart on={on} />
      <ClipButtons clip={clip} />
      <SlipPart title="On this table"><AuditionList on={on} /></SlipPart>
      <SlipPart title="Notes"><TextField label="What to remember about this sheet" lines={3} value={sheet.notes ?? ''} onKeep={(notes) => noteOnSheet(session, id, notes)} /></SlipPart>
    </Slip>
  );
}

function NoSheetSlip({ on, clip }: { readonly on: OnTable; readonly clip: ClipHands }) {
  const session = useTheSession();
  const areas = useSession((state) => state.evaluation.top.areas);
  const all = sayAreas(useStack()?.kind ?? kindOf(on.area), areas);
  return (
    <Slip title="No sheet yet" about={`For ${all}.`} foot={<Button className="button main" onPress={() => takeSheet(session)}>{`Take a sheet for ${all}`}</Button>}>
      <MeasurePart />
      <SlipPart title="What to do next">
        <Sentence>{`Take a sheet for ${all}.`}</Sentence>
        <Sentence>Or lay a template: a sheet comes with it.</Sentence>
        <div className="slip-buttons"><LayTemplate /></div>
      </SlipPart>
      <SetOutPart on={on} />
      <LinePart on={on} />
      <ClipButtons clip={clip} />
    </Slip>
  );
}

/** The shelf as a list. */
export function LayTemplate() {
  const session = useTheSession();
  const templates = useSession((state) => state.evaluation.plan.kit.templates);
  const shelf = Object.entries(templates).filter(([, { hidden }]) => !hidden);
  return <MoreMenu as="button" word="Lay a template" about="on the middle of the area" commands={shelf.map(([id, { name }]) => ({ name, onDo: () => layTemplate(session, id) }))} />;
}
