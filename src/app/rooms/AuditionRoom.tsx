// Audition: the table where templates are tried, with the tracing sheets at its left, the slip at its right, the tape under it
// and the shelf along the near edge.

import { AtLeisure, AtOnce } from '../AtLeisure.tsx';
import { FactsTape } from '../audition/facts/FactsTape.tsx';
import { TapeOnTable } from '../audition/measure/TapeOnTable.tsx';
import { SeenThrough } from '../audition/sheets/SeenThrough.tsx';
import { SheetStack } from '../audition/sheets/SheetStack.tsx';
import { SideBySide, useBeside } from '../audition/sheets/SideBySide.tsx';
import { PlacementSlip } from '../audition/slip/PlacementSlip.tsx';
import { SetOutView } from '../audition/setout/SetOutView.tsx';
import { AuditionTable } from '../audition/table/AuditionTable.tsx';
import { Shelf } from '../audition/table/Shelf.tsx';
import { useStack } from '../audition/use-on-table.ts';
import { useSession } from '../use-session.ts';
import './audition.css';

export function AuditionRoom() {
  const settingOut = useSession((state) => state.settingOut);
  if (settingOut) return <main className="room audition setting-out"><SetOutView settingOut={settingOut} /></main>;
  return (
    <main className="room audition">
      <AtLeisure>
        <SheetStack />
        <OneOrSeveral />
        <FactsTape />
        <PlacementSlip />
      </AtLeisure>
      <Shelf />
    </main>
  );
}

/** The sheet on the table under the hands, or several side by side for the eye. */
function OneOrSeveral() {
  const stack = useStack();
  const beside = useBeside(stack);
  return stack && beside.length > 0 ? <SideBySide stack={stack} sheets={beside} /> : UNDER_THE_HANDS;
}

/** Always the same element, so that a moving hand has none of it made anew; and it is seen as it is, not at leisure. */
const UNDER_THE_HANDS = (
  <AtOnce>
    <AuditionTable over={<SeenThrough />}><TapeOnTable /></AuditionTable>
  </AtOnce>
);
