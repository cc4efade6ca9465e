// Audition: the table where templates are tried, with the tracing sheets at its left, the slip at its right, the tape under it
// and the shelf along the near edge.

import { FactsTape } from '../audition/facts/FactsTape.tsx';
import { TapeOnTable } from '../audition/measure/TapeOnTable.tsx';
import { SeenThrough } from '../audition/sheets/SeenThrough.tsx';
import { SheetStack } from '../audition/sheets/SheetStack.tsx';
import { SideBySide, useBeside } from '../audition/sheets/SideBySide.tsx';
import { PlacementSlip } from '../audition/slip/PlacementSlip.tsx';
import { AuditionTable } from '../audition/table/AuditionTable.tsx';
import { Shelf } from '../audition/table/Shelf.tsx';
import { useStack } from '../audition/use-on-table.ts';
import './audition.css';

export function AuditionRoom() {
  const stack = useStack();
  const beside = useBeside(stack);
  return (
    <main className="room audition">
      <SheetStack />
      {stack && beside.length > 0 ? <SideBySide stack={stack} sheets={beside} /> : <AuditionTable over={<SeenThrough />}><TapeOnTable /></AuditionTable>}
      <FactsTape />
      <PlacementSlip />
      <Shelf />
    </main>
  );
}
