// Top: the quilt as it lies, what it is made of, what is shown of it, and the list of everything on it.

import { Suspense, lazy } from 'react';
import { Button } from 'react-aria-components/Button';
import { drawing } from '../../session/gesture/drawing.ts';
import { areaAt } from '../../session/area-at.ts';
import { linesByArea, sewnLength } from '../../session/contents.ts';
import { zoomToArea } from '../../session/look.ts';
import { onQuilt } from '../../session/view.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { DrawnNow } from '../top/DrawnNow.tsx';
import { LeftOutSheets } from '../top/LeftOut.tsx';
import { Table } from '../table/Table.tsx';
import { type Fact, Tape } from '../table/Tape.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { grouped } from '../words/grouped.ts';
import { describeTop } from '../words/describe-top.ts';
import { useLengths, useLongLengths } from '../words/lengths.ts';
import { ShownToggles } from './shown-toggles.tsx';

const TopForms = lazy(() => import('../top/TopForms.tsx').then(({ TopForms: Forms }) => ({ default: Forms })));
const ContentsTree = lazy(() => import('../contents/ContentsTree.tsx').then(({ ContentsTree: List }) => ({ default: List })));

export function TopRoom() {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const length = useLengths();
  const { plan, top } = evaluation;
  return (
    <main className="room">
      <Table label={`The quilt ${plan.name}, seen from above`} rest={drawing} over={<DrawnNow />} />
      <TopTape />
      <Slip
        title={plan.name}
        about={`${length(top.width)} wide, ${length(top.height)} long`}
        foot={<Button className="button main" onPress={() => { location.hash = 'check'; }}>Check this top</Button>}
      >
        <SlipPart title="How it is made">
          {describeTop(plan, length).map((sentence) => <Sentence key={sentence}>{sentence}</Sentence>)}
          {top.problems.map(({ field, message }) => <Aside key={`${field}${message}`}>{message}</Aside>)}
        </SlipPart>
        <LeftOutSheets />
        {/* What comes later comes below what is there, so that nothing moves under the eye. */}
        <Suspense>
          <TopForms />
          <PickedPart onShow={(id) => zoomToArea(session, id)} />
          <SlipPart title="What is shown"><ShownToggles /></SlipPart>
          <SlipPart title="On the table">
            <Suspense><ContentsTree /></Suspense>
          </SlipPart>
        </Suspense>
      </Slip>
    </main>
  );
}

/** What is picked out, in words. */
function PickedPart({ onShow }: { readonly onShow: (id: string) => void }) {
  const selection = useSession((state) => state.selection);
  const evaluation = useSession((state) => state.evaluation);
  const length = useLengths();
  if (selection.kind !== 'area') return null;
  const area = evaluation.top.areas.find(({ id }) => id === selection.area);
  if (!area) return null;
  const lines = linesByArea(evaluation).get(area.id) ?? [];
  const sewn = lines.reduce((sum, line) => sum + line.length, 0);
  const name = area.name.charAt(0).toUpperCase() + area.name.slice(1);
  return (
    <SlipPart title="Picked out">
      <Sentence>{`${name}: ${length(area.width)} by ${length(area.height)}.`}</Sentence>
      <Aside>{lines.length === 0 ? 'Nothing is sewn here.' : `${lines.length === 1 ? '1 line' : `${lines.length} lines`}, ${length(sewn)} in all.`}</Aside>
      <Button className="button" onPress={() => onShow(area.id)}>Show it large</Button>
    </SlipPart>
  );
}

function TopTape() {
  const evaluation = useSession((state) => state.evaluation);
  const under = useSession((state) => state.pointer && areaAt(state.evaluation.top, onQuilt(state.view, state.pointer))?.name);
  const long = useLongLengths();
  const facts: readonly Fact[] = [
    { name: 'Stitched lines', value: grouped(evaluation.lines.length) },
    { name: 'Stitching', value: long(sewnLength(evaluation)) },
    { name: 'Under the pointer', value: under ?? 'nothing' },
  ];
  return <Tape facts={facts} />;
}
