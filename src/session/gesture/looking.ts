// The gestures of looking: push the quilt about, pinch it nearer, tap an area, double tap to see it large.

import { areaAt } from '../area-at.ts';
import { ZOOM_STEP, fitTop, lookAs, placeUnder, pointAt, push, select, selectNothing, zoomBy, zoomToArea } from '../look.ts';
import type { Session } from '../store.ts';
import { type ScreenPoint, pushed, zoomedAbout } from '../view.ts';
import type { GestureNode, Hand, TableEvent } from './node.ts';
import { type Burst, burstOf, factorOf } from './wheel.ts';

/** A pointer that moved less than this, in CSS pixels, was a tap. */
const TAP_REACH: { readonly [hand in Hand]: number } = { mouse: 4, pen: 6, touch: 10 };
/** Two taps within this time (milliseconds) and reach (CSS pixels) are a double tap. */
const DOUBLE_TIME = 350;
const DOUBLE_REACH = 24;
/** An arrow key pushes the quilt this far, in CSS pixels; with Shift four times as far. */
const KEY_PUSH = 48;

export interface Tap {
  readonly at: ScreenPoint;
  readonly time: number;
}

/** Where gestures of looking return to, and what a tap means there. */
export interface Home {
  readonly rest: (lastTap?: Tap) => GestureNode;
  readonly tapped: (at: ScreenPoint) => void;
  readonly tappedTwice: (at: ScreenPoint) => void;
}

/** Nothing is held. Where every gesture of looking begins and ends. */
export function looking(session: Session, lastTap?: Tap): GestureNode {
  const home: Home = { rest: (tap) => looking(session, tap), tapped: (at) => tapped(session, at), tappedTwice: (at) => tappedTwice(session, at) };
  let burst: Burst | undefined;
  let hovering: ScreenPoint | undefined;
  const node: GestureNode = {
    name: 'looking',
    on: (event) => {
      switch (event.kind) {
        case 'down':
          return pressing(session, event, lastTap, home);
        case 'move':
          hovering = event.at;
          pointAt(session, event.at);
          return node;
        case 'lost':
          hovering = undefined;
          pointAt(session, undefined);
          return node;
        case 'wheel': {
          burst = burstOf(burst, event);
          if (burst.means === 'zoom') zoomBy(session, factorOf(event.dy, event.held.control), event.at);
          else if (event.held.shift && event.dx === 0) push(session, -event.dy, 0);
          else push(session, -event.dx, -event.dy);
          pointAt(session, event.at);
          return node;
        }
        case 'key':
          onKey(session, event, hovering ?? session.getState().pointer);
          return node;
        case 'up':
        case 'keys-up':
          return node;
      }
    },
  };
  return node;
}

export type Down = Extract<TableEvent, { readonly kind: 'down' }>;

/** A pointer is down and has not moved: a tap, or the beginning of a push. */
export function pressing(session: Session, down: Down, lastTap: Tap | undefined, home: Home): GestureNode {
  const node: GestureNode = {
    name: 'pressing',
    on: (event) => {
      if (event.kind === 'down' && event.pointer !== down.pointer) return pinching(session, [down, event], home);
      if (event.kind === 'key' && event.key === 'Escape') return waiting(home, down.pointer);
      if (!('pointer' in event) || event.pointer !== down.pointer) return node;
      if (event.kind === 'lost') return home.rest();
      if (event.kind === 'move' && hasMoved(down, event.at)) return pushing(session, down, home).on(event);
      if (event.kind === 'up') {
        const tap = { at: event.at, time: event.time };
        if (!isSecondTap(lastTap, tap)) {
          home.tapped(tap.at);
          return home.rest(tap);
        }
        home.tappedTwice(tap.at);
        return home.rest();
      }
      return node;
    },
  };
  return node;
}

/** True when a pointer went farther than a tap may. */
export function hasMoved(down: Down, at: ScreenPoint): boolean {
  return apart(at, down.at) > TAP_REACH[down.by];
}

/** True when a tap follows another closely enough to be one with it. */
export function isSecondTap(first: Tap | undefined, second: Tap): boolean {
  return first !== undefined && second.time - first.time < DOUBLE_TIME && apart(second.at, first.at) < DOUBLE_REACH;
}

/** One pointer pushes the quilt. */
function pushing(session: Session, down: Down, home: Home): GestureNode {
  const { view: began, framing } = session.getState();
  let at = down.at;
  const node: GestureNode = {
    name: 'pushing',
    on: (event) => {
      if (event.kind === 'key' && event.key === 'Escape') {
        lookAs(session, began, framing);
        return waiting(home, down.pointer);
      }
      if (event.kind === 'down' && event.pointer !== down.pointer) return pinching(session, [{ ...down, at }, event], home);
      if (!('pointer' in event) || event.pointer !== down.pointer) return node;
      if (event.kind === 'up' || event.kind === 'lost') return home.rest();
      at = event.at;
      lookAs(session, pushed(began, at.x - down.at.x, at.y - down.at.y));
      pointAt(session, at);
      return node;
    },
  };
  return node;
}

/** Two pointers push the quilt and bring it nearer; what lies under the middle of them stays under it. */
function pinching(session: Session, [first, second]: readonly [Down, Down], home: Home): GestureNode {
  const { view: began, framing } = session.getState();
  const fingers = new Map<number, ScreenPoint>([[first.pointer, first.at], [second.pointer, second.at]]);
  const middle = middleOf(first.at, second.at);
  const spread = Math.max(1, apart(first.at, second.at));
  const node: GestureNode = {
    name: 'pinching',
    on: (event) => {
      if (event.kind === 'key' && event.key === 'Escape') {
        lookAs(session, began, framing);
        return waiting(home, first.pointer, second.pointer);
      }
      if (!('pointer' in event) || !fingers.has(event.pointer)) return node;
      if (event.kind === 'up' || event.kind === 'lost') {
        fingers.delete(event.pointer);
        const [rest] = fingers;
        if (!rest) return home.rest();
        return pushing(session, { ...first, pointer: rest[0], at: rest[1] }, home);
      }
      fingers.set(event.pointer, event.at);
      const [a, b] = [...fingers.values()] as [ScreenPoint, ScreenPoint];
      const now = middleOf(a, b);
      const nearer = zoomedAbout(began, middle, apart(a, b) / spread);
      lookAs(session, pushed(nearer, now.x - middle.x, now.y - middle.y));
      return node;
    },
  };
  return node;
}

/** A gesture was given up with the pointers still down: nothing happens until they are lifted. */
export function waiting(home: Pick<Home, 'rest'>, ...pointers: readonly number[]): GestureNode {
  const down = new Set(pointers);
  const node: GestureNode = {
    name: 'waiting',
    on: (event) => {
      if (event.kind === 'up' || event.kind === 'lost') down.delete(event.pointer);
      return down.size === 0 ? home.rest() : node;
    },
  };
  return node;
}

function tapped(session: Session, at: ScreenPoint): void {
  const area = areaAt(session.getState().evaluation.top, placeUnder(session, at));
  if (area) select(session, { kind: 'area', area: area.id });
  else selectNothing(session);
}

function tappedTwice(session: Session, at: ScreenPoint): void {
  const { evaluation, framing } = session.getState();
  const area = areaAt(evaluation.top, placeUnder(session, at));
  const already = typeof framing === 'object' && framing.area === area?.id;
  if (!area || already) return fitTop(session);
  select(session, { kind: 'area', area: area.id });
  zoomToArea(session, area.id);
}

function onKey(session: Session, { key, held }: Extract<TableEvent, { readonly kind: 'key' }>, at: ScreenPoint | undefined): void {
  const far = held.shift ? KEY_PUSH * 4 : KEY_PUSH;
  switch (key) {
    case '+':
    case '=':
      return zoomBy(session, ZOOM_STEP, at);
    case '-':
    case '_':
      return zoomBy(session, 1 / ZOOM_STEP, at);
    case '0':
      return fitTop(session);
    case 'ArrowLeft':
      return push(session, far, 0);
    case 'ArrowRight':
      return push(session, -far, 0);
    case 'ArrowUp':
      return push(session, 0, far);
    case 'ArrowDown':
      return push(session, 0, -far);
    case 'Enter': {
      const { selection } = session.getState();
      if (selection.kind === 'area') zoomToArea(session, selection.area);
      return;
    }
    case 'Escape':
      return selectNothing(session);
    default:
  }
}

export function apart(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

export function middleOf(a: ScreenPoint, b: ScreenPoint): ScreenPoint {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
