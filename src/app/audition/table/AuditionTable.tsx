// The table in Audition: the area worked on under clear vellum, the rest quiet, templates of acrylic, and hands that move them.

import { type ReactNode, useEffect } from 'react';
import { auditioning } from '../../../session/gesture/auditioning.ts';
import { drawingLine } from '../../../session/gesture/drawing-line.ts';
import { HAND_KEYS } from '../../../session/gesture/keys.ts';
import type { GestureNode } from '../../../session/gesture/node.ts';
import type { Session } from '../../../session/store.ts';
import { onTable } from '../../../session/lay/on-table.ts';
import { zoomToWork } from '../../../session/lay/view.ts';
import type { Layer } from '../../../drawing/display-list.ts';
import { LOOKING_KEYS } from '../../table/hands.ts';
import { Table } from '../../table/Table.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { Ground } from './Ground.tsx';
import { Ink } from './Ink.tsx';
import { Marks } from './Marks.tsx';
import { NearTag } from './NearTag.tsx';
import { PencilLine } from './PencilLine.tsx';
import { Templates } from './Templates.tsx';
import './audition-table.css';

const KEYS: ReadonlySet<string> = new Set([...LOOKING_KEYS, ...HAND_KEYS]);
const LAYERS: ReadonlySet<Layer> = new Set<Layer>(['ground', 'seam', 'raw-edge', 'allowance', 'keep-out', 'needle']);

const HELP =
  'With a template picked out, arrow keys move it by a sixteenth of an inch, with Shift a quarter, with Alt a sixty-fourth. ' +
  'Comma and full stop turn it by one degree, with Shift fifteen, with Alt a tenth. F flips it, P puts it on what lies near, Delete puts it away. ' +
  'Square brackets run the foot along the needle line. Enter sets where the needle goes down, arrows run the foot, Enter sets where it stops. ' +
  'Page up and page down pick another template. Escape gives up. With nothing picked, arrow keys push the quilt; plus, minus and 0 go nearer, farther and show all.';

/** Hands that can also take up a pencil. */
const hands = (session: Session): GestureNode => drawingLine(session, auditioning(session));

export interface AuditionTableProps {
  /** Drawn on the quilt in its own inches, over the vellum and below the lines that are worked on. */
  readonly over?: ReactNode;
  /** Fixed to the screen, over everything. */
  readonly children?: ReactNode;
}

export function AuditionTable({ over, children }: AuditionTableProps) {
  const session = useTheSession();
  const area = useSession((state) => onTable(state)?.area);
  const sheet = useSession((state) => onTable(state)?.sheet?.sheet.name);
  const shape = area?.id;
  useEffect(() => {
    if (shape !== undefined) zoomToWork(session);
  }, [session, shape]);
  const label = `${area ? sentenceCase(area.name) : 'The table'}${sheet === undefined ? '' : `, under the sheet ${sheet}`}`;
  return (
    <Table
      label={label}
      layers={LAYERS}
      rest={hands}
      keys={KEYS}
      help={HELP}
      over={<><Ground />{over}<Ink /><PencilLine /></>}
      onQuilt={(view) => <Templates view={view} />}
    >
      <Marks />
      <NearTag />
      {children}
    </Table>
  );
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
