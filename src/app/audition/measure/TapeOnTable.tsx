// The tape measure on the table: a strip from one end to the other with its length. While it is out, a touch lays an end and a drag
// pushes the quilt; templates stay where they are.

import { useEffect, useRef } from 'react';
import { styleOf } from '../../../model/length-style.ts';
import { writeLength } from '../../../num/inches.ts';
import { push } from '../../../session/look.ts';
import { putTapeAway, readTape, tapTape } from '../../../session/measure/measuring.ts';
import type { Session } from '../../../session/store.ts';
import { type ScreenPoint, onQuilt, onScreen } from '../../../session/view.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import './measure.css';

/** What lies within so many CSS pixels of a touch is meant. */
const REACH: { readonly [by: string]: number } = { mouse: 12, pen: 14, touch: 24 };
/** A pointer that moved farther than this, in CSS pixels, pushes the quilt. */
const TAP = 6;

export function TapeOnTable() {
  const session = useTheSession();
  const measuring = useSession((state) => state.measuring);
  const evaluation = useSession((state) => state.evaluation);
  const working = useSession((state) => state.working);
  const view = useSession((state) => state.view);
  const table = useSession((state) => state.table);
  if (!measuring) return null;
  const read = readTape({ ...session.getState(), evaluation, working, measuring });
  const begun = read?.from?.thing.kind === 'place' ? onScreen(view, read.from.thing.at) : undefined;
  const ends = read?.measured && ([read.measured.from, read.measured.to].map((p) => onScreen(view, p)) as [ScreenPoint, ScreenPoint]);
  return (
    <div className="tape-over">
      <Hands />
      <svg width={table.width} height={table.height} aria-hidden="true">
        {begun && !ends && <circle className="tape-end" cx={begun.x} cy={begun.y} r="7" />}
        {ends && (
          <g className="laid-tape">
            <line className="tape-rim" x1={ends[0].x} y1={ends[0].y} x2={ends[1].x} y2={ends[1].y} />
            <line className="tape-strip" x1={ends[0].x} y1={ends[0].y} x2={ends[1].x} y2={ends[1].y} />
            <line className="tape-marks" x1={ends[0].x} y1={ends[0].y} x2={ends[1].x} y2={ends[1].y} />
            {ends.map((end, i) => <circle key={i} className="tape-end" cx={end.x} cy={end.y} r="6" />)}
          </g>
        )}
      </svg>
      {ends && read.measured && (
        <p className="tape-tag" style={{ transform: `translate(${(ends[0].x + ends[1].x) / 2}px, ${(ends[0].y + ends[1].y) / 2}px)` }}>
          <span><Said>{writeLength(read.measured.distance, styleOf(evaluation.plan))}</Said></span>
        </p>
      )}
    </div>
  );
}

/** Takes the hand before the table does, which would pick up what lies there. */
function Hands() {
  const session = useTheSession();
  const over = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const stop = listen(session, over.current!);
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape') putTapeAway(session);
    };
    addEventListener('keydown', onKey);
    return () => {
      stop();
      removeEventListener('keydown', onKey);
    };
  }, [session]);
  return <div ref={over} className="tape-hands" />;
}

function listen(session: Session, element: HTMLElement): () => void {
  let down: { readonly pointer: number; readonly at: ScreenPoint; readonly last: ScreenPoint; readonly isPush: boolean } | undefined;
  const at = (event: PointerEvent): ScreenPoint => {
    const { left, top } = element.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const stop = new AbortController();
  const on = (kind: 'pointerdown' | 'pointermove' | 'pointerup' | 'pointercancel', hear: (event: PointerEvent) => void) => element.addEventListener(kind, hear, { signal: stop.signal });
  on('pointerdown', (event) => {
    event.stopPropagation();
    element.setPointerCapture(event.pointerId);
    down ??= { pointer: event.pointerId, at: at(event), last: at(event), isPush: false };
  });
  on('pointermove', (event) => {
    if (!down || down.pointer !== event.pointerId) return;
    event.stopPropagation();
    const here = at(event);
    const isPush = down.isPush || Math.hypot(here.x - down.at.x, here.y - down.at.y) > TAP;
    if (isPush) push(session, here.x - down.last.x, here.y - down.last.y);
    down = { ...down, last: isPush ? here : down.last, isPush };
  });
  on('pointerup', (event) => {
    if (!down || down.pointer !== event.pointerId) return;
    event.stopPropagation();
    const { view } = session.getState();
    if (!down.isPush) tapTape(session, onQuilt(view, down.at), (REACH[event.pointerType] ?? 12) / view.scale);
    down = undefined;
  });
  on('pointercancel', () => {
    down = undefined;
  });
  return () => stop.abort();
}
