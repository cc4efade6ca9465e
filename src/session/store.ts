// The session: the plan that lies on the table with all that follows from it, what was done to it, and how it is looked at.
// It knows neither React nor the document of a browser; screens subscribe to it and send it commands.

import { type StoreApi, createStore } from 'zustand/vanilla';
import { type Patch, enablePatches } from 'immer';
import { evaluate } from '../engine/evaluate.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import type { Point } from '../geometry/point.ts';
import type { Plan } from '../model/plan.ts';
import type { KitPick } from './kit/kit-pick.ts';
import type { FootPlace, InHand } from './lay/in-hand.ts';
import type { Working } from './lay/working.ts';
import { type History, type HistoryStep, NO_HISTORY } from './history.ts';
import { type PrintChoice, USUAL_PRINT } from './print-choice.ts';
import type { Room } from './rooms.ts';
import { NOTHING, type Selection } from './selection.ts';
import type { SettingOut } from './setout/asked.ts';
import { ONE_SHEET, type SheetsSeen } from './sheet/sheets-seen.ts';
import { type ShownId, USUALLY_SHOWN } from './shown.ts';
import type { Measuring } from './measure/tape.ts';
import type { Drawing } from './top/drawing.ts';
import type { ScreenPoint, ScreenSize, View } from './view.ts';

enablePatches();

/** Where the plan on the table came from. */
export type PlanSource =
  | { readonly kind: 'example'; readonly name: string }
  | { readonly kind: 'file'; readonly name: string }
  | { readonly kind: 'new' };

/** What the view is held to while the table changes its size, or `free`. */
export type Framing = 'top' | 'free' | { readonly area: string };

/** A change of the plan under way, from picking up to letting go. */
export interface OpenGesture {
  readonly label: string;
  readonly from: Plan;
  /** All that followed from the plan it began with: what still lies on the table while the hand moves the rest. */
  readonly settled: Evaluation;
  /** What has been changed since it began. */
  readonly forward: readonly Patch[];
  readonly back: readonly Patch[];
  readonly selectedBefore: Selection;
}

export interface SessionState {
  /** All that follows from the plan; the plan itself is `evaluation.plan`. */
  readonly evaluation: Evaluation;
  readonly source: PlanSource;
  /** How many plans have lain on this table, this one included: what tells one from the next. */
  readonly laid: number;
  /** The last step done when the plan was saved to its file; undefined as it was opened. */
  readonly savedAfter: HistoryStep | undefined;
  readonly history: History;
  readonly gesture: OpenGesture | undefined;
  readonly selection: Selection;
  /** What lies on the table in Audition. */
  readonly working: Working;
  /** What the hand has, and what it is near, while a template is moved or a pass traced. */
  readonly inHand: InHand | undefined;
  /** The rectangle drawn over the bare table to pick several templates out, by two of its corners in CSS pixels. */
  readonly gathering: readonly [ScreenPoint, ScreenPoint] | undefined;
  /** Where the foot's ring stands on a needle line. */
  readonly foot: FootPlace | undefined;
  /** How several tracing sheets are looked at. */
  readonly seen: SheetsSeen;
  /** The line drawn by hand so far, while the pencil is in use. */
  readonly pencil: readonly Point<'quilt'>[] | undefined;
  /** What is being set out, in place of the table. */
  readonly settingOut: SettingOut | undefined;
  /** The tape measure, while it is in use. */
  readonly measuring: Measuring | undefined;
  /** What is picked out in Kit; whatever comes first when undefined. */
  readonly kitPick: KitPick | undefined;
  /** What is being drawn on the top, if anything. */
  readonly drawing: Drawing | undefined;
  readonly room: Room;
  readonly view: View;
  readonly framing: Framing;
  readonly table: ScreenSize;
  readonly shown: ReadonlySet<ShownId>;
  readonly print: PrintChoice;
  /** Where the pointer is on the table, in CSS pixels. */
  readonly pointer: ScreenPoint | undefined;
}

export type Session = StoreApi<SessionState>;

/** A session with a plan on the table and nothing done yet. */
export function createSession(plan: Plan, source: PlanSource): Session {
  return createStore<SessionState>(() => ({
    evaluation: evaluate(plan),
    source,
    laid: 1,
    savedAfter: undefined,
    history: NO_HISTORY,
    gesture: undefined,
    selection: NOTHING,
    working: { sheet: undefined, area: undefined },
    inHand: undefined,
    drawing: undefined,
    gathering: undefined,
    foot: undefined,
    seen: ONE_SHEET,
    pencil: undefined,
    settingOut: undefined,
    measuring: undefined,
    kitPick: undefined,
    room: 'top',
    view: { x: 0, y: 0, scale: 8 },
    framing: 'top',
    table: { width: 0, height: 0 },
    shown: USUALLY_SHOWN,
    print: USUAL_PRINT,
    pointer: undefined,
  }));
}

/** The plan that lies on the table. */
export function planOf(state: SessionState): Plan {
  return state.evaluation.plan;
}

/** True when something was done since the plan was opened or saved. */
export function isChanged(state: SessionState): boolean {
  return state.history.past.at(-1) !== state.savedAfter;
}
