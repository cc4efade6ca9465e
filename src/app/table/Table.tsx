// The table with the quilt on it. The quilt is drawn for the view it was last still in; while the hand moves it, the whole
// drawing is moved and stretched at once, and drawn anew when the hand rests or the drawing no longer covers the table.

import { type CSSProperties, type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Layer } from '../../drawing/display-list.ts';
import { looking } from '../../session/gesture/looking.ts';
import type { GestureNode } from '../../session/gesture/node.ts';
import { sizeTable } from '../../session/look.ts';
import { layersOf } from '../../session/shown.ts';
import type { Session } from '../../session/store.ts';
import type { View } from '../../session/view.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { clothFor } from './cloth.ts';
import { drawnForScreen } from './drawn.ts';
import { LOOKING_KEYS, listenToHands } from './hands.ts';
import { Picked } from './Picked.tsx';
import { linesInHand } from './in-hand.ts';
import { Rulers } from './Rulers.tsx';
import { type ScreenPainter, screenPainter } from './svg-painter.ts';
import './table.css';

/** The hand rests when the view has been the same for so long, in milliseconds. */
const REST = 140;
/** Part of the table's larger side that is drawn beyond its edges. */
const RIM = 0.35;
/** From this scale on (CSS pixels to the inch) lines have their full weight; farther off they are finer, so that the picture stays clear. */
const NEAR = 14;
const FINEST = 0.36;

export interface TableProps {
  /** What the quilt is, for those who hear it. */
  readonly label: string;
  /** The layers shown; those the quilter chose when left out. */
  readonly layers?: ReadonlySet<Layer>;
  /** Drawn over the quilt in its own inches, below everything that is fixed to the screen. */
  readonly over?: ReactNode;
  /** Lies on the quilt in CSS pixels of the view it is drawn for, and moves with it. */
  readonly onQuilt?: (drawnFor: View) => ReactNode;
  /** Fixed to the screen: signs and tags. */
  readonly children?: ReactNode;
  /** What hands do here when nothing is held; looking when left out. One for as long as the table stands. */
  readonly rest?: (session: Session) => GestureNode;
  readonly keys?: ReadonlySet<string>;
  /** What the keys do, for those who hear it. */
  readonly help?: string;
}

const HELP = 'Arrow keys push the quilt, plus and minus go nearer and farther, 0 shows all of it. The list beside the table names everything on it.';

export function Table({ label, layers, over, onQuilt, children, rest = looking, keys = LOOKING_KEYS, help = HELP }: TableProps) {
  const session = useTheSession();
  const table = useRef<HTMLDivElement>(null);
  const [drawnFor, setDrawnFor] = useState<View>(() => session.getState().view);
  const size = useSession((state) => state.table);
  const carrier = useCarrier(session, drawnFor, setDrawnFor);

  useLayoutEffect(() => {
    const element = table.current!;
    // The observer speaks once at the beginning and before anything is painted; asking for the size here would have the whole page laid out
    // an extra time. What follows is drawn at once, so that no picture of another size is seen.
    const observer = new ResizeObserver(() => flushSync(() => sizeTable(session, { width: element.clientWidth, height: element.clientHeight })));
    observer.observe(element);
    const stop = listenToHands(element, rest(session), keys);
    return () => {
      observer.disconnect();
      stop();
    };
  }, [session, rest, keys]);

  return (
    <div className="table-place">
      <Rulers />
      <div ref={table} className="table" role="application" aria-label={label} aria-describedby="table-keys" tabIndex={0}>
        <p id="table-keys" className="only-heard">{help}</p>
        <div ref={carrier} className="carrier">
          <ShadowOfTop view={drawnFor} />
          <Settled view={drawnFor} layers={layers} />
          <svg className="moving" width={size.width} height={size.height} aria-hidden="true">
            <g transform={`translate(${-drawnFor.x * drawnFor.scale} ${-drawnFor.y * drawnFor.scale}) scale(${drawnFor.scale})`}>
              {over}
              <Picked />
            </g>
          </svg>
          {onQuilt?.(drawnFor)}
        </div>
        {children}
      </div>
    </div>
  );
}

/** The settled layer: everything the plan gives, painted once for each view the hand rests in. */
function Settled({ view, layers }: { readonly view: View; readonly layers: ReadonlySet<Layer> | undefined }) {
  const svg = useRef<SVGSVGElement>(null);
  const painter = useRef<ScreenPainter>(undefined);
  // While the hand moves something, the rest of the picture stays as it was; what moves is drawn by those who move it.
  const evaluation = useSession((state) => state.gesture?.settled ?? state.evaluation);
  const inHand = useSession(linesInHand);
  const shown = useSession((state) => state.shown);
  const table = useSession((state) => state.table);
  const list = drawnForScreen(evaluation);
  const rim = rimOf(table.width, table.height);

  useLayoutEffect(() => {
    painter.current ??= screenPainter(svg.current!);
    painter.current.paint(list, clothFor(evaluation));
  }, [list, evaluation]);
  useLayoutEffect(() => painter.current!.lift(inHand === '' ? [] : inHand.split('\n')), [inHand, list]);
  useLayoutEffect(() => painter.current!.show(layers ?? layersOf(shown)), [layers, shown]);
  useLayoutEffect(() => painter.current!.look(view, table, rim), [view, table, rim]);

  return <svg ref={svg} className="settled" style={{ left: -rim, top: -rim, '--fineness': finenessAt(view.scale) } as CSSProperties} aria-hidden="true" />;
}

/** The top lies on the table, so it throws a little shadow. */
function ShadowOfTop({ view }: { readonly view: View }) {
  const { width, height } = useSession((state) => state.evaluation.top);
  const { x, y, scale } = view;
  return <div className="top-shadow" style={{ left: -x * scale, top: -y * scale, width: width * scale, height: height * scale }} />;
}

/** Moves the drawing with the view, and asks for it to be drawn anew when the view rests or leaves what is drawn. */
function useCarrier(session: Session, drawnFor: View, draw: (view: View) => void) {
  const carrier = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    let rest: ReturnType<typeof setTimeout> | undefined;
    const follow = () => {
      const { view, table } = session.getState();
      const growth = view.scale / drawnFor.scale;
      const dx = (drawnFor.x - view.x) * view.scale;
      const dy = (drawnFor.y - view.y) * view.scale;
      carrier.current!.style.transform = view === drawnFor ? '' : `translate(${dx}px, ${dy}px) scale(${growth})`;
      clearTimeout(rest);
      if (view === drawnFor) return;
      const rim = rimOf(table.width, table.height) * growth;
      const covers = dx - rim <= 0 && dy - rim <= 0 && dx + table.width * growth + rim >= table.width && dy + table.height * growth + rim >= table.height;
      if (!covers || growth > 6) draw(view);
      else rest = setTimeout(() => draw(view), REST);
    };
    follow();
    const stop = session.subscribe((state, before) => {
      if (state.view !== before.view || state.table !== before.table) follow();
    });
    return () => {
      clearTimeout(rest);
      stop();
    };
  }, [session, drawnFor, draw]);
  return carrier;
}

function finenessAt(scale: number): number {
  return Math.min(1, Math.max(FINEST, 0.25 + (0.75 * scale) / NEAR));
}

function rimOf(width: number, height: number): number {
  return Math.round(Math.max(width, height) * RIM);
}
