// Sheets whose areas went with a change of the top: they are kept, and said.

import { sheetsLeftOut } from '../../session/top/left-out.ts';
import { Aside, Sentence, SlipPart } from '../slip/Slip.tsx';
import { useSession } from '../use-session.ts';

export function LeftOutSheets() {
  const evaluation = useSession((state) => state.evaluation);
  const left = sheetsLeftOut(evaluation);
  if (left.length === 0) return null;
  return (
    <SlipPart title="Sheets without their areas">
      {left.map(({ sheet, name, lost }) => (
        <Sentence key={sheet}>{lost === 'all' ? `${name} has no area on this top now.` : `${name} has lost ${lost.length === 1 ? 'one of its areas' : `${lost.length} of its areas`}.`}</Sentence>
      ))}
      <Aside>Nothing is thrown away. They are sewn again when the top has such areas, or put them on others in Audition.</Aside>
    </SlipPart>
  );
}
