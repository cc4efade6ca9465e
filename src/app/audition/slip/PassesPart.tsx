// What is sewn: each pass as a sentence, its start, stop and way changed by touching them.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { styleOf } from '../../../model/length-style.ts';
import type { PassEnd } from '../../../model/plan.ts';
import type { Laying } from '../../../session/lay/setting.ts';
import { type PassWord, type ReadPass, addPass, endChoices, keyOfEnd, putEnd, readPasses, renamePass, sewTheRest, takePassAway, turnPassRound } from '../../../session/sheet/passes.ts';
import { USUAL_DISTANCE } from '../../../place/echo/echo.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import type { Session } from '../../../session/store.ts';
import { onTable } from '../../../session/lay/on-table.ts';
import { select } from '../../../session/look.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { LengthField } from '../../words/LengthField.tsx';
import { Said } from '../../words/Said.tsx';
import { useLengths } from '../../words/lengths.ts';
import { FootSign } from '../../words/signs.tsx';
import { Choose } from './Choose.tsx';
import { MoreMenu } from './MoreMenu.tsx';
import { NameForm } from './NameForm.tsx';
import { SpokenLine } from './SpokenLine.tsx';
import { SpokenWord } from './SpokenWord.tsx';
import { WordForm } from './WordForm.tsx';

export function PassesPart({ laying }: { readonly laying: Laying }) {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const passes = readPasses({ ...session.getState(), evaluation }, laying, styleOf(evaluation.plan));
  const edges = [...new Set(laying.setting.needle.lines.map(({ from }) => from))];
  return (
    <SlipPart title="What is sewn">
      <ul className="pins">
        {passes.map((pass) => <PassRow key={pass.id} laying={laying} read={pass} />)}
      </ul>
      {passes.length === 0 && <p className="aside">Put a finger on the needle line and draw the foot along it, or add a pass here.</p>}
      <div className="slip-buttons">
        {edges.length > 1 ? (
          <MoreMenu as="button" word="Add a pass" about="along which edge" commands={edges.map((edge) => ({ name: edge === 'outline' ? 'Along the outline' : `In ${edge.replace('window:', 'window ')}`, onDo: () => addPass(session, laying.id, edge) }))} />
        ) : (
          <Button className="button" isDisabled={edges.length === 0} onPress={() => addPass(session, laying.id)}>Add a pass</Button>
        )}
      </div>
    </SlipPart>
  );
}

function PassRow({ laying, read }: { readonly laying: Laying; readonly read: ReadPass }) {
  const session = useTheSession();
  const length = useLengths();
  const isPicked = useSession(({ selection }) => selection.kind === 'placement' && selection.placement === laying.id && selection.pass === read.id);
  const [naming, setNaming] = useState(false);
  const { id, pass, laid, letters } = read;
  const about = pass.stop === 'all-round' ? `pass ${letters[0]}` : `pass ${letters[0]} to ${letters[1]}`;
  const word = (which: PassWord, text: string) =>
    which === 'way' ? (
      <SpokenWord label={`Way: ${text}. Sew it the other way`} text={text} onPress={() => turnPassRound(session, laying.id, id)} />
    ) : (
      <WordForm label={which === 'start' ? 'Where it starts' : 'Where it stops'} text={text}>
        {(close) => <EndForm laying={laying} read={read} which={which} onDone={(end) => { putEnd(session, laying.id, id, which, end); close(); }} />}
      </WordForm>
    );
  return (
    <li className={`pin${isPicked ? ' picked' : ''}`}>
      <FootSign size={20} />
      <div>
        {pass.name !== undefined && <p className="row-name">{pass.name}</p>}
        <SpokenLine parts={read.spoken} word={word} />
        <div className="row-note">
          <span><Said>{laid?.kind === 'missing' ? laid.detail : laid ? `${length(laid.length)} along the needle line` : 'Not laid on this area'}</Said></span>
          <MoreMenu
            about={about}
            commands={[
              { name: 'Show it', onDo: () => select(session, { kind: 'placement', sheet: laying.sheet, placement: laying.id, pass: id }) },
              { name: 'Name it', onDo: () => setNaming(true) },
              { name: 'Echo it', isDisabled: laid?.kind !== 'found', onDo: () => echo(session, laying, id) },
              { name: 'Sew the other stretch', isDisabled: pass.stop === 'all-round', onDo: () => sewTheRest(session, laying.id, id) },
              { name: 'Sew all round', isDisabled: pass.stop === 'all-round', onDo: () => putEnd(session, laying.id, id, 'stop', 'all-round') },
              { name: 'Take it away', onDo: () => takePassAway(session, laying.id, id) },
            ]}
          />
        </div>
        {naming && <NameForm label={`Name of ${about}`} name={pass.name ?? ''} onDone={(name) => { setNaming(false); if (name !== undefined) renamePass(session, laying.id, id, name); }} />}
      </div>
    </li>
  );
}

/** Asks for a line beside a pass, at the usual quarter inch. */
function echo(session: Session, laying: Laying, pass: string): void {
  const area = onTable(session.getState())?.area.id;
  if (area !== undefined) ask(session, { kind: 'echo', sheet: laying.sheet, area, placement: laying.id, pass, distance: USUAL_DISTANCE });
}

/** Where a pass starts or stops: at something that crosses there, a distance along, or all round. */
function EndForm({ laying, read, which, onDone }: { readonly laying: Laying; readonly read: ReadPass; readonly which: 'start' | 'stop'; readonly onDone: (end: PassEnd | 'all-round') => void }) {
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  const choices = endChoices(read, laying, styleOf({ shownIn }));
  const now = read.pass[which];
  const [key, setKey] = useState(() => (now === 'all-round' ? '' : (choices.find((choice) => choice.key === keyOfEnd(now))?.key ?? '')));
  const found = read.laid?.kind === 'found' ? read.laid[which] : 0;
  const [along, setAlong] = useState(now !== 'all-round' && 'along' in now ? now.along : Math.round(found * 1000) / 1000);
  const chosen = choices.find((choice) => choice.key === key);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone(chosen ? chosen.end : { along });
      }}
    >
      <Choose label={which === 'start' ? 'Start at' : 'Stop at'} options={choices.map(({ key: id, name }) => ({ id, name }))} value={key} onChoose={setKey} none="A distance along the needle line" />
      {!chosen && <LengthField label="Along" value={along} onValue={setAlong} least={0} most={read.line?.length ?? 0} />}
      <div className="form-foot">
        {which === 'stop' && read.pass.stop !== 'all-round' && read.line?.path.closed && <Button className="button" onPress={() => onDone('all-round')}>All round</Button>}
        <Button className="button main" type="submit">Done</Button>
      </div>
    </form>
  );
}
