// A slip of the tour, what it points at ringed, and a line from one to the other. It lies over the work without holding it up:
// everything under it can be used, and Escape takes it away.

import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { useSession, useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';
import { type Box, leaving, overlap, placeSlip } from './place-slip.ts';
import { STOPS, type Stop } from './stops.ts';
import { endTour, showSlip } from './tour.ts';
import './tour.css';

/** So far outside of what is pointed at its ring runs, in CSS pixels. */
const RING_OFF = 5;

export function Tour({ at }: { readonly at: number }) {
  const session = useTheSession();
  const stop = STOPS[Math.min(at, STOPS.length - 1)]!;
  const isFirst = at === 0;
  const isLast = at >= STOPS.length - 1;
  const slip = useRef<HTMLElement>(null);
  const ids = useId();
  const words = useSession((state) => state);
  const length = useLengths();
  const target = useTarget(stop);
  const place = usePlace(slip, target);
  const end = () => {
    endTour(session);
    document.querySelector<HTMLElement>('.table')?.focus({ preventScroll: true });
  };
  useEndWithPlan(end);

  useEffect(() => {
    stop.prepare(session);
    slip.current!.focus({ preventScroll: true });
  }, [session, stop]);
  useKeptInPlace(stop);

  return (
    <>
      <Pointing target={target} isPlace={stop.isPlace === true} slip={place} />
      <section
        ref={slip}
        className="tour-slip sheet-up"
        role="dialog"
        aria-labelledby={`${ids}-title`}
        aria-describedby={`${ids}-words`}
        tabIndex={-1}
        style={place && { left: place.x, top: place.y }}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          event.stopPropagation();
          end();
        }}
      >
        <p className="tour-count">{`${at + 1} of ${STOPS.length}`}</p>
        <h2 id={`${ids}-title`}>{stop.title}</h2>
        <div id={`${ids}-words`}>
          {stop.says(words, length).map((sentence) => <p key={sentence} className="sentence"><Said>{sentence}</Said></p>)}
        </div>
        <div className="tour-foot">
          {!isLast && <Button className="word" onPress={end}><span>Skip the tour</span></Button>}
          {!isFirst && <Button className="button" onPress={() => showSlip(session, at - 1)}>Back</Button>}
          <Button className="button main" onPress={() => (isLast ? end() : showSlip(session, at + 1))}>{isFirst ? 'Show me round' : isLast ? 'To the table' : 'Next'}</Button>
        </div>
      </section>
    </>
  );
}

/** Where the slip's target is on the screen, followed as long as the slip is up. */
function useTarget(stop: Stop): Box | undefined {
  const session = useTheSession();
  const [target, setTarget] = useState<Box>();
  useEffect(() => {
    let frame = 0;
    const follow = () => {
      const found = inSight(stop.target(session.getState()));
      setTarget((before) => (isSame(before, found) ? before : found));
      frame = requestAnimationFrame(follow);
    };
    follow();
    return () => cancelAnimationFrame(frame);
  }, [session, stop]);
  return target;
}

/** The box, unless none of it is on the screen. */
function inSight(box: Box | undefined): Box | undefined {
  return box && overlap(box, { x: 0, y: 0, width: innerWidth, height: innerHeight }) > 0 ? { x: box.x, y: box.y, width: box.width, height: box.height } : undefined;
}

function isSame(a: Box | undefined, b: Box | undefined): boolean {
  return a === b || (a !== undefined && b !== undefined && a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height);
}

function usePlace(slip: { readonly current: HTMLElement | null }, target: Box | undefined): Box | undefined {
  const [place, setPlace] = useState<Box>();
  useLayoutEffect(() => {
    const { offsetWidth: width, offsetHeight: height } = slip.current!;
    const { x, y } = placeSlip(target, { width, height }, { width: innerWidth, height: innerHeight });
    const next = { x: Math.round(x), y: Math.round(y), width, height };
    setPlace((before) => (isSame(before, next) ? before : next));
  });
  return place;
}

/** Coming from another room, the table has its size only after the slip is up: the place is then brought into its middle again. */
function useKeptInPlace(stop: Stop): void {
  const session = useTheSession();
  useEffect(() => {
    if (!stop.isPlace) return undefined;
    return session.subscribe(({ table }, before) => {
      if (table !== before.table) stop.prepare(session);
    });
  }, [session, stop]);
}

/** The tour is of one plan: it ends when another comes onto the table. */
function useEndWithPlan(end: () => void): void {
  const laid = useSession((state) => state.laid);
  const first = useRef(laid);
  useEffect(() => {
    if (laid !== first.current) end();
  });
}

/** The ring round the target and the line to it. */
function Pointing({ target, isPlace, slip }: { readonly target: Box | undefined; readonly isPlace: boolean; readonly slip: Box | undefined }) {
  if (!target || !slip) return null;
  const ring = { x: target.x - RING_OFF, y: target.y - RING_OFF, width: target.width + 2 * RING_OFF, height: target.height + 2 * RING_OFF };
  const [from, to] = [leaving(slip, ring), leaving(ring, slip)];
  return (
    <svg className="tour-pointing" aria-hidden="true">
      <rect {...ring} rx={isPlace ? ring.width / 2 : RING_OFF} />
      {from && to && <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />}
    </svg>
  );
}
