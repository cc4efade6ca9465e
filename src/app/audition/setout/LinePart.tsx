// A line of the quilter's own to be sewn with her templates: drawn by hand on the table, or brought in as path data.

import { useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { readPathData } from '../../../geometry/svg/read.ts';
import { writePathData } from '../../../geometry/svg/write.ts';
import { pickPencilUp, putPencilDown } from '../../../session/gesture/drawing-line.ts';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { WordForm } from '../slip/WordForm.tsx';

/** How near the templates should come to a line that was brought in, in inches; a line drawn by hand says it for itself. */
const WITHIN = 1 / 32;

export function LinePart({ on }: { readonly on: OnTable }) {
  const session = useTheSession();
  const isDrawing = useSession((state) => state.pencil !== undefined);
  const bringIn = (line: string) => ask(session, { kind: 'match', area: on.area.id, ...(on.sheet && { sheet: on.sheet.id }), line, within: WITHIN });
  return (
    <SlipPart title="A line of your own">
      <p className="sentence">{isDrawing ? 'Draw the line on the table, in one stroke. Escape gives it up.' : 'Draw a line, and see which of your templates sew it.'}</p>
      <div className="slip-buttons">
        {isDrawing ? <Button className="button" onPress={() => putPencilDown(session)}>Put the pencil down</Button> : <Button className="button" onPress={() => pickPencilUp(session)}>Draw a line</Button>}
        <WordForm as="button" label="A line as path data" text="Bring a line in">{(close) => <PathForm onDone={(line) => { close(); bringIn(line); }} />}</WordForm>
      </div>
    </SlipPart>
  );
}

function PathForm({ onDone }: { readonly onDone: (line: string) => void }) {
  const id = useId();
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string>();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        const read = readPathData<'area'>(text);
        const line = read.ok ? read.value[0] : undefined;
        if (!read.ok) setProblem(read.problem.message);
        else if (line) onDone(writePathData(line));
      }}
    >
      <div className="typed-field">
        <label htmlFor={id}>Path data</label>
        <div className="typed-row words">
          <textarea id={id} rows={3} value={text} spellCheck={false} placeholder="M -4 0 C -2 -2 2 2 4 0" aria-invalid={problem !== undefined} aria-describedby={`${id}-said`} onChange={({ target }) => { setText(target.value); setProblem(undefined); }} />
        </div>
        <p id={`${id}-said`} role="status" className={problem === undefined ? 'typed-hint' : 'typed-wrong'}>{problem ?? 'What stands between the quotes of d="…" in an SVG drawing, in inches from the middle of the area, y downward. The first line of it is taken.'}</p>
      </div>
      <div className="form-foot"><Button className="button main" type="submit">Find templates for it</Button></div>
    </form>
  );
}
