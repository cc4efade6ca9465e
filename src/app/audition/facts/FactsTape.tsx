// The tape of facts under the table: what would be measured by hand, always in sight and live while a template is moved.

import { Button } from 'react-aria-components/Button';
import type { Facts } from '../../../session/measure/facts.ts';
import { putTapeAway, takeTape } from '../../../session/measure/measuring.ts';
import { numberedFindings } from '../../../session/numbered-findings.ts';
import { select } from '../../../session/look.ts';
import { oneArea } from '../../../session/sheet/area-words.ts';
import { kindOf } from '../../../session/lay/on-table.ts';
import { SAME_POINT } from '../../../num/tolerances.ts';
import { type Fact, Tape } from '../../table/Tape.tsx';
import { useFindingsAtLeisure, useSession, useTheSession } from '../../use-session.ts';
import { type WriteLength, useLengths } from '../../words/lengths.ts';
import { FindingSign } from '../../words/signs.tsx';
import { useOnTable } from '../use-on-table.ts';
import { useFacts } from './use-facts.ts';
import './facts.css';

export function FactsTape() {
  const session = useTheSession();
  const length = useLengths();
  const facts = useFacts();
  const on = useOnTable();
  const isMeasuring = useSession((state) => state.measuring !== undefined);
  const here = on ? oneArea(kindOf(on.area)) : 'area';
  return (
    <Tape facts={facts ? said(facts, length, here) : NOTHING}>
      <SheetFindings />
      <Button className={`button tape-button${isMeasuring ? ' taken' : ''}`} aria-pressed={isMeasuring} onPress={() => (isMeasuring ? putTapeAway(session) : takeTape(session))}>Measure</Button>
    </Tape>
  );
}

const NOTHING: readonly Fact[] = ['To the nearest seam', 'To the nearest line', 'Room left', 'Length'].map((name) => ({ name, value: 'nothing here' }));

function said({ seam, line, room, length: sewn, angle }: Facts, length: WriteLength, here: string): readonly Fact[] {
  return [
    {
      name: seam ? (seam.distance < -SAME_POINT ? `Over the ${seam.name}` : `To the ${seam.name}`) : 'To the nearest seam',
      value: seam ? length(Math.abs(seam.distance)) : 'none near',
    },
    { name: line ? `To ${line.name}` : 'To the nearest line', value: line ? (line.distance === 0 ? 'they meet' : length(line.distance)) : 'none near' },
    { name: room ? (room.isHere ? 'Room left here' : room.area ? `Room left, in ${room.area.name}` : 'Room left') : 'Room left', value: room ? `${length(2 * room.circle.radius)} across` : 'none here' },
    { name: `Length in this ${here}`, value: length(sewn.sheet) },
    ...(angle === undefined ? [] : [{ name: 'Turned', value: `${Math.round(angle * 10) / 10 + 0} degrees` }]),
  ];
}

/** How many findings there are on the sheet on the table; pressing leads to the first. */
function SheetFindings() {
  const session = useTheSession();
  const sheet = useOnTable()?.sheet?.id;
  const findings = useFindingsAtLeisure();
  if (!findings) return <p className="tape-findings none">Looking it over</p>;
  const mine = numberedFindings(findings).filter(({ finding }) => sheet !== undefined && finding.accepted === undefined && (finding.where.sheet === sheet || finding.where.other?.sheet === sheet));
  const [first] = mine;
  if (!first) return <p className="tape-findings none">Nothing found</p>;
  return (
    <Button
      className="button tape-findings"
      onPress={() => {
        select(session, { kind: 'finding', finding: first.key, spot: 0 });
        location.hash = 'check';
      }}
    >
      <FindingSign severity={first.finding.severity} />
      {mine.length === 1 ? '1 finding' : `${mine.length} findings`}
    </Button>
  );
}
