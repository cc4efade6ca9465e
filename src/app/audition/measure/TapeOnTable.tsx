// The tape measure on the table: a strip from one end to the other with its length. While it is out, a touch lays an end.

import { useState } from 'react';
import { styleOf } from '../../../model/length-style.ts';
import { writeLength } from '../../../num/inches.ts';
import { putTapeAway, readTape, tapTape } from '../../../session/measure/measuring.ts';
import { type ScreenPoint, onQuilt, onScreen } from '../../../session/view.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import './measure.css';

/** What lies within so many CSS pixels of a touch is meant. */
const REACH = { mouse: 12, pen: 14, touch: 24 } as const;

export function TapeOnTable() {
  const session = useTheSession();
  const measuring = useSession((state) => state.measuring);
  const evaluation = useSession((state) => state.evaluation);
  const working = useSession((state) => state.working);
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  const [pressed, setPressed] = useState<ScreenPoint>();
  if (!measuring) return null;
  const read = readTape({ ...session.getState(), evaluation, working, measuring });
  const begun = read?.from?.thing.kind === 'place' ? onScreen(view, read.from.thing.at) : undefined;
  const ends = read?.measured && ([read.measured.from, read.measured.to].map((p) => onScreen(view, p)) as [ScreenPoint, ScreenPoint]);
  const at = (event: React.PointerEvent): ScreenPoint => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  return (
    <div
      className="tape-over"
      // A press that does not move lays an end; a drag still pushes the quilt, since the table under it hears the same pointer.
      onPointerDown={(event) => setPressed(at(event))}
      onPointerUp={(event) => {
        const here = at(event);
        if (!pressed || Math.hypot(here.x - pressed.x, here.y - pressed.y) > 6) return;
        const by = event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';
        tapTape(session, onQuilt(view, here), REACH[by] / view.scale);
        event.stopPropagation();
      }}
      onKeyDown={(event) => event.key === 'Escape' && putTapeAway(session)}
    >
      <svg width={table.width} height={table.height} aria-hidden="true">
        {begun && !ends && <circle className="tape-end" cx={begun.x} cy={begun.y} r="7" />}
        {ends && (
          <g className="laid-tape">
            <line className="tape-strip" x1={ends[0].x} y1={ends[0].y} x2={ends[1].x} y2={ends[1].y} />
            <line className="tape-marks" x1={ends[0].x} y1={ends[0].y} x2={ends[1].x} y2={ends[1].y} />
            {ends.map((end, i) => <circle key={i} className="tape-end" cx={end.x} cy={end.y} r="6" />)}
          </g>
        )}
      </svg>
      {ends && read.measured && (
        <p className="tape-tag" style={{ transform: `translate(${(ends[0].x + ends[1].x) / 2}px, ${(ends[0].y + ends[1].y) / 2}px)` }}>
          <span>{writeLength(read.measured.distance, styleOf(evaluation.plan))}</span>
        </p>
      )}
    </div>
  );
}
