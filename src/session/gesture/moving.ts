// The gestures that move templates: one finger or the mouse slides them, the handle turns one, two fingers slide and turn at once.
// From picking up to letting go is one step of undo.

import type { Draft } from 'immer';
import { TURN } from '../../num/angle.ts';
import { type Point, angleOf, between, partWay } from '../../geometry/point.ts';
import { type Pose, after, carry, inverse, poseOf, turnAbout } from '../../geometry/pose.ts';
import type { Plan, Registration } from '../../model/plan.ts';
import { abandonGesture, beginGesture, keepGesture, moveGesture } from '../change-plan.ts';
import { type Lie, lies, namedTogether, writeLies } from '../lay/edit.ts';
import type { HandDoes } from '../lay/in-hand.ts';
import { type Moved, moveTo, turningPlace } from '../lay/moves.ts';
import { pickedLayings } from '../lay/pick.ts';
import type { Laid } from '../lay/placed.ts';
import { type Taken, liesTogether } from '../lay/together.ts';
import { pointAt, placeUnder } from '../look.ts';
import type { Session } from '../store.ts';
import { type Down, type Home, waiting } from './looking.ts';
import type { GestureNode, Held, TableEvent } from './node.ts';

/** How near draws: so many CSS pixels, but no more than so many inches on the quilt. */
const REACH_PIXELS = 14;
const REACH_INCHES = 1 / 8;
/** A pin is let go by a pull of so many inches, but not by one of fewer CSS pixels, which a hand hardly feels. */
const PULL_INCHES = 1 / 2;
const PULL_PIXELS = 24;
/** The handle with Shift turns in steps. */
const TURN_STEP = TURN / 24;

/** How near a landmark must be to draw what the hand moves, in inches; nothing draws while Alt is held. */
export function reachNow(session: Session, held: Held | undefined): number {
  return held?.alt ? 0 : Math.min(REACH_INCHES, REACH_PIXELS / session.getState().view.scale);
}

/** What the hand took: the templates as they lay, the first leading, and what is written besides how they lie. */
export interface Grasp {
  readonly taken: readonly Taken[];
  /** What holds the leading one now; the hand may have torn off some. */
  readonly held: readonly Registration[];
  readonly first?: (plan: Draft<Plan>) => void;
}

/** Takes hold of the templates picked out, the one under the hand leading. */
export function graspPicked(session: Session, lead: string): Grasp | undefined {
  const state = session.getState();
  const layings = pickedLayings(state);
  const leading = layings.find(({ id }) => id === lead);
  if (!leading) return undefined;
  const taken = [leading, ...layings.filter((laying) => laying !== leading)].map((laying): Taken => ({ laying, from: lies(state, laying) }));
  return { taken, held: leading.placement.registrations };
}

/** Begins the step of undo of a move. */
export function beginMove(session: Session, what: string, { taken }: Grasp): void {
  beginGesture(session, `${what} ${namedTogether(session.getState(), taken.map(({ laying }) => laying))}`);
}

// ---- one pointer slides ----

/** The template follows one pointer, which went down at `from` on the quilt. */
export function sliding(session: Session, home: Home, down: Down, grasp: Grasp, from: Point<'quilt'>): GestureNode {
  const [lead] = grasp.taken;
  let held = grasp.held;
  let now: Laid = lead!.from;
  const grip = carry(inverse(after(lead!.from, lead!.laying.axes)), from);
  const node: GestureNode = {
    name: 'sliding',
    on: (event) => {
      const ended = endOfMove(session, home, event, [down.pointer]);
      if (ended) return ended;
      if (event.kind === 'down' && event.by !== 'mouse') {
        return twisting(session, home, [down, event], { ...grasp, held, taken: retaken(session, grasp) }, placeUnder(session, lastAt), placeUnder(session, event.at));
      }
      if (event.kind !== 'move' || event.pointer !== down.pointer) return node;
      lastAt = event.at;
      pointAt(session, event.at);
      const wished = slidTo(lead!, from, placeUnder(session, event.at));
      const moved = moveTo(lead!.laying.setting, held, { pose: wished, from: now, grip, reach: reachNow(session, event.held), pull: pullNow(session) });
      held = moved.held;
      now = moved.pose;
      write(session, grasp, 'slide', moved);
      return node;
    },
  };
  let lastAt = down.at;
  return node;
}

function slidTo({ laying, from }: Taken, start: Point<'quilt'>, hand: Point<'quilt'>): Laid {
  const back = inverse(laying.axes);
  const [a, b] = [carry(back, start), carry(back, hand)];
  return { ...from, x: from.x + b.x - a.x, y: from.y + b.y - a.y };
}

// ---- two pointers slide and turn ----

/** The templates follow two fingers, by eye: nothing draws them. What pins them still holds until it is pulled off. */
function twisting(session: Session, home: Home, [first, second]: readonly [Down, Down], grasp: Grasp, a: Point<'quilt'>, b: Point<'quilt'>): GestureNode {
  const [lead] = grasp.taken;
  const fingers = new Map<number, Point<'quilt'>>([[first.pointer, a], [second.pointer, b]]);
  const began = { middle: partWay(a, b, 0.5), angle: angleOf(between(a, b)) };
  const grip = carry(inverse(after(lead!.from, lead!.laying.axes)), began.middle);
  let held = grasp.held;
  let now: Laid = lead!.from;
  const node: GestureNode = {
    name: 'twisting',
    on: (event) => {
      if (event.kind === 'up' && fingers.has(event.pointer)) {
        const rest = [first, second].find(({ pointer }) => pointer !== event.pointer)!;
        const at = fingers.get(rest.pointer)!;
        return sliding(session, home, rest, { ...grasp, held, taken: retaken(session, grasp) }, at);
      }
      const ended = endOfMove(session, home, event, [first.pointer, second.pointer]);
      if (ended) return ended;
      if (event.kind !== 'move' || !fingers.has(event.pointer)) return node;
      fingers.set(event.pointer, placeUnder(session, event.at));
      const [p, q] = [...fingers.values()] as [Point<'quilt'>, Point<'quilt'>];
      const middle = partWay(p, q, 0.5);
      const turn = turnAbout(began.middle, angleOf(between(p, q)) - began.angle);
      const motion = after(turn, poseOf<'quilt', 'quilt'>(middle.x - began.middle.x, middle.y - began.middle.y));
      const moved = moveTo(lead!.laying.setting, held, { pose: carriedBy(lead!, motion), from: now, grip, reach: 0, pull: pullNow(session) });
      held = moved.held;
      now = moved.pose;
      write(session, grasp, 'twist', moved);
      return node;
    },
  };
  return node;
}

function carriedBy({ laying, from }: Taken, motion: Pose<'quilt', 'quilt'>): Laid {
  return after(from, after(laying.axes, after(motion, inverse(laying.axes))));
}

// ---- the handle turns ----

/** The template turns after the handle, about a pin where there is one and about its middle otherwise. */
export function turning(session: Session, home: Home, down: Down, grasp: Grasp): GestureNode {
  const [lead] = grasp.taken;
  const { laying, from } = lead!;
  const about = turningPlace(laying.setting, grasp.held);
  const centre = carry(after(from, laying.axes), about);
  const start = placeUnder(session, down.at);
  const began = angleOf(between(centre, start));
  const grip = carry(inverse(after(from, laying.axes)), start);
  let held = grasp.held;
  let now = from;
  const node: GestureNode = {
    name: 'turning',
    on: (event) => {
      const ended = endOfMove(session, home, event, [down.pointer]);
      if (ended) return ended;
      if (event.kind !== 'move' || event.pointer !== down.pointer) return node;
      pointAt(session, event.at);
      const angle = angleOf(between(centre, placeUnder(session, event.at))) - began;
      const free = carriedBy(lead!, turnAbout(centre, angle));
      const steps = carriedBy(lead!, turnAbout(centre, angle + (Math.round(free.angle / TURN_STEP) * TURN_STEP - free.angle) * (laying.axes.flipped ? -1 : 1)));
      const pose = event.held?.shift ? steps : free;
      const moved = moveTo(laying.setting, held, { pose, from: now, grip, reach: reachNow(session, event.held), pull: pullNow(session) });
      held = moved.held;
      now = moved.pose;
      write(session, grasp, 'turn', moved);
      return node;
    },
  };
  return node;
}

// ---- what they share ----

function pullNow(session: Session): number {
  return Math.max(PULL_INCHES, PULL_PIXELS / session.getState().view.scale);
}

/** Lets go when a pointer is lifted, gives up with Escape or when the system takes the pointer away; undefined when the move goes on. */
function endOfMove(session: Session, home: Home, event: TableEvent, pointers: readonly number[]): GestureNode | undefined {
  if (!session.getState().gesture) return waiting(home, ...pointers);
  if (event.kind === 'up' && pointers.includes(event.pointer)) {
    keepGesture(session);
    return home.rest();
  }
  if ((event.kind === 'key' && event.key === 'Escape') || (event.kind === 'lost' && pointers.includes(event.pointer))) {
    abandonGesture(session);
    return event.kind === 'key' ? waiting(home, ...pointers) : home.rest();
  }
  return undefined;
}

/** The same templates taken again where they lie now. */
function retaken(session: Session, { taken }: Grasp): readonly Taken[] {
  const state = session.getState();
  return taken.map(({ laying }) => ({ laying, from: lies(state, laying) }));
}

function write(session: Session, grasp: Grasp, does: HandDoes, moved: Moved): void {
  writeMove(session, grasp, does, liesTogether(grasp.taken, moved), moved);
}

/** Lays what was taken as the hand has it now, and tells what it is drawn to. */
export function writeMove(session: Session, { taken, first }: Grasp, does: HandDoes, where: ReadonlyMap<string, Lie>, { made, near }: Pick<Moved, 'made' | 'near'>): void {
  const { sheet } = taken[0]!.laying;
  moveGesture(session, (plan) => {
    first?.(plan);
    writeLies(plan, sheet, where);
  });
  session.setState({ inHand: { does, sheet, placements: taken.map(({ laying }) => laying.id), made, near } });
}

