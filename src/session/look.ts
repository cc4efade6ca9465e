// Commands that change how the plan is looked at. None of them changes the plan, so none is a step of undo.

import { boundsOf } from '../geometry/bounds.ts';
import { carryPath } from '../geometry/change.ts';
import { type Point } from '../geometry/point.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import type { Room } from './rooms.ts';
import { NOTHING, type Selection } from './selection.ts';
import type { ShownId } from './shown.ts';
import type { Session, SessionState } from './store.ts';
import { type ScreenPoint, type ScreenSize, type Stretch, type View, framed, keptInSight, onQuilt, onScreen, pushed, recentred, zoomedAbout } from './view.ts';

/** Left round the whole top, or one area, when it is fitted to the table, in CSS pixels; on a small table less. */
const MARGIN_OF_TOP = 40;
const MARGIN_OF_AREA = 72;
/** How much of the quilt always stays on the table, in CSS pixels. */
const STAYS_IN_SIGHT = 80;
/** One step of zoom by key or button. */
export const ZOOM_STEP = 1.25;

/** The whole top, in inches. */
export function stretchOfTop(state: SessionState): Stretch {
  const { width, height } = state.evaluation.top;
  return { x: 0, y: 0, width, height };
}

/** Shows the whole top, and goes on doing so when the table changes its size. */
export function fitTop(session: Session): void {
  const state = session.getState();
  session.setState({ view: framed(stretchOfTop(state), state.table, marginFor(state.table, MARGIN_OF_TOP)), framing: 'top' });
}

/** Shows one area as large as the table allows. An id that is not there changes nothing. */
export function zoomToArea(session: Session, id: string): void {
  const state = session.getState();
  const stretch = stretchOfArea(state, id);
  if (stretch) session.setState({ view: framed(stretch, state.table, marginFor(state.table, MARGIN_OF_AREA)), framing: { area: id } });
}

/** Shows one stitched line as large as the table allows. An id that is not there changes nothing. */
export function zoomToLine(session: Session, id: string): void {
  const line = session.getState().evaluation.lines.find((candidate) => candidate.id === id);
  if (!line) return;
  const { minX, minY, maxX, maxY } = boundsOf(quiltPath(line));
  zoomToStretch(session, { x: minX, y: minY, width: maxX - minX, height: maxY - minY });
}

/** Shows a stretch of the quilt as large as the table allows. */
export function zoomToStretch(session: Session, stretch: Stretch): void {
  session.setState(({ table }) => ({ view: framed(stretch, table, marginFor(table, MARGIN_OF_AREA)), framing: 'free' }));
}

/** Shows a place with a stretch of quilt round it, `across` inches wide and high; near the edge of the top, more of the quilt and less of the table. */
export function zoomToPlace(session: Session, at: Point<'quilt'>, across: number): void {
  const { width, height } = session.getState().evaluation.top;
  zoomToStretch(session, { x: startWithin(at.x, across, width), y: startWithin(at.y, across, height), width: across, height: across });
}

/** Goes nearer by a factor (farther below 1); the place under a point of the table, or under its middle, stays there. */
export function zoomBy(session: Session, factor: number, about?: ScreenPoint): void {
  session.setState((state) => {
    const at = about ?? middleOf(state.table);
    return { view: inSight(state, zoomedAbout(state.view, at, factor)), framing: 'free' };
  });
}

/** Pushes the quilt across the table, in CSS pixels. */
export function push(session: Session, dx: number, dy: number): void {
  session.setState((state) => ({ view: inSight(state, pushed(state.view, dx, dy)), framing: 'free' }));
}

/** Takes a view as it is, such as one a gesture began with. */
export function lookAs(session: Session, view: View, framing: SessionState['framing'] = 'free'): void {
  session.setState((state) => ({ view: framing === 'free' ? inSight(state, view) : view, framing }));
}

/** Tells the session how large the table is, in CSS pixels; what is framed stays framed. */
export function sizeTable(session: Session, table: ScreenSize): void {
  const before = session.getState();
  if (before.table.width === table.width && before.table.height === table.height) return;
  session.setState({ table });
  const { framing } = before;
  if (framing === 'top') fitTop(session);
  else if (framing === 'free') session.setState({ view: recentred(before.view, before.table, table) });
  else zoomToArea(session, framing.area);
}

/** Walks into a room; in Paper one sees at first how the pages fall on all that is printed. */
export function enterRoom(session: Session, room: Room): void {
  const before = session.getState();
  session.setState({ room });
  if (room !== 'paper' || before.room === 'paper') return;
  if (before.print.area === undefined) fitTop(session);
  else zoomToArea(session, before.print.area);
}

/** Shows or hides a group of layers. */
export function show(session: Session, id: ShownId, shown: boolean): void {
  session.setState((state) => {
    const next = new Set(state.shown);
    if (shown) next.add(id);
    else next.delete(id);
    return { shown: next };
  });
}

/** Picks something out. */
export function select(session: Session, selection: Selection): void {
  session.setState({ selection });
}

/** Picks nothing. */
export function selectNothing(session: Session): void {
  session.setState({ selection: NOTHING });
}

/** Says where the pointer is on the table, or that it left. */
export function pointAt(session: Session, pointer: ScreenPoint | undefined): void {
  session.setState({ pointer });
}

/** The place a point of the table shows, and the other way round, as the quilt is seen now. */
export function placeUnder(session: Session, at: ScreenPoint): Point<'quilt'> {
  return onQuilt(session.getState().view, at);
}

export function seenAt(session: Session, p: Point<'quilt'>): ScreenPoint {
  return onScreen(session.getState().view, p);
}

/** An area's extent on the quilt, in inches; undefined when there is no such area. */
export function stretchOfArea(state: SessionState, id: string): Stretch | undefined {
  const area = state.evaluation.top.areas.find((candidate) => candidate.id === id);
  if (!area) return undefined;
  const { minX, minY, maxX, maxY } = boundsOf(carryPath(area.frame, area.boundary));
  return { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
}

/** How much table may be seen beyond the edge of the top, in inches, when a place near the edge is shown. */
const BEYOND = 1;

/** Where a stretch of a length begins that has a place in its middle, or as near to it as keeps it on the top. */
function startWithin(place: number, across: number, whole: number): number {
  return Math.max(-BEYOND, Math.min(place - across / 2, whole + BEYOND - across));
}

/** The margin, or less of it on a small table. */
function marginFor({ width, height }: ScreenSize, margin: number): number {
  return Math.min(margin, Math.min(width, height) / 12);
}

function inSight(state: SessionState, view: View): View {
  return keptInSight(view, stretchOfTop(state), state.table, STAYS_IN_SIGHT);
}

function middleOf(table: ScreenSize): ScreenPoint {
  return { x: table.width / 2, y: table.height / 2 };
}
