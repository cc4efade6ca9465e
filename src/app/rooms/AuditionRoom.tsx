// Audition: the table where templates are tried, with the tracing sheets at its left, the slip at its right, the tape under it
// and the shelf along the near edge.

import { AuditionTable } from '../audition/table/AuditionTable.tsx';
import { Shelf } from '../audition/table/Shelf.tsx';
import './audition.css';

export function AuditionRoom() {
  return (
    <main className="room audition">
      <AuditionTable />
      <Shelf />
    </main>
  );
}
