// Commands on tracing sheets. Each is one step of undo.

import type { Draft } from 'immer';
import type { Plan, Sheet, SheetFor } from '../../model/plan.ts';
import { lettersOf } from '../../num/letters.ts';
import { areasFor, sheetIds } from '../../stitch/sheet-areas.ts';
import type { Area } from '../../top/area.ts';
import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { workOn } from '../lay/on-table.ts';
import { NOTHING } from '../selection.ts';
import { type Session, type SessionState, planOf } from '../store.ts';
import { allOfKind } from './area-words.ts';
import { sewInstead } from './sew-instead.ts';
import { idsInStack, stackOf } from './stack.ts';

/** Takes a new sheet for all areas of the kind on the table (or for those told) and lays it there. The first sheet for an area is sewn. */
export function takeSheet(session: Session, target?: SheetFor): string | undefined {
  const state = session.getState();
  const wanted = target ?? stackOf(state)?.kind;
  if (!wanted) return undefined;
  const mine = areasFor(wanted, state.evaluation.top.areas);
  const sheet: Sheet = { name: freeName(state, wanted), for: wanted, chosen: !isSewnAlready(state, mine), placements: {}, repeat: [], fills: {} };
  return addSheet(session, `Take ${sheet.name}`, 'sheet', sheet);
}

/** Lays a copy of a sheet on top of it; the copy is not sewn until it is chosen. */
export function copySheet(session: Session, id: string): string | undefined {
  const sheet = planOf(session.getState()).sheets[id];
  if (!sheet) return undefined;
  return addSheet(session, `Copy ${sheet.name}`, id, { ...sheet, name: `${sheet.name}, copy`, chosen: false }, id);
}

/** Names a sheet; a name of nothing but spaces is not taken. */
export function renameSheet(session: Session, id: string, name: string): void {
  const trimmed = name.trim();
  if (trimmed === '') return;
  changeSheet(session, id, 'Name the sheet', (sheet) => {
    sheet.name = trimmed;
  });
}

/** Puts a sheet away, with all that lies on it; undo brings it back. */
export function putSheetAway(session: Session, id: string): void {
  const plan = planOf(session.getState());
  const sheet = plan.sheets[id];
  if (!sheet) return;
  const { selection } = session.getState();
  const goes = (selection.kind === 'sheet' || selection.kind === 'placement') && selection.sheet === id;
  changePlan(
    session,
    `Put ${sheet.name} away`,
    (draft) => {
      delete draft.sheets[id];
      if (draft.sheetOrder) draft.sheetOrder = draft.sheetOrder.filter((other) => other !== id);
    },
    goes ? NOTHING : selection,
  );
}

/** Moves a sheet up its stack by so many places, or down when less than 0. */
export function moveSheet(session: Session, id: string, by: number): void {
  const state = session.getState();
  const sheet = planOf(state).sheets[id];
  if (!sheet) return;
  const stack = idsInStack(state, sheet.for);
  const other = stack[stack.indexOf(id) + by];
  if (by === 0 || other === undefined) return;
  changePlan(session, `Move ${sheet.name}`, (draft) => {
    const order = sheetIds(planOf(state)).filter((candidate) => candidate !== id);
    const at = order.indexOf(other) + (by > 0 ? 1 : 0);
    draft.sheetOrder = [...order.slice(0, at), id, ...order.slice(at)];
  });
}

/**
 * Chooses a sheet to be sewn. Other sheets that were to be sewn on the same areas are left out; one that is for more areas than
 * these goes on being sewn on the rest.
 */
export function chooseToSew(session: Session, id: string): void {
  const state = session.getState();
  const plan = planOf(state);
  const sheet = plan.sheets[id];
  if (!sheet) return;
  changePlan(session, `Choose ${sheet.name}`, (draft) => sewInstead(draft, id, state.evaluation.top.areas));
}

/** Leaves a sheet out of what is sewn; it stays in its stack. */
export function leaveOut(session: Session, id: string): void {
  const name = planOf(session.getState()).sheets[id]?.name;
  changeSheet(session, id, `Leave ${name} out`, (sheet) => {
    sheet.chosen = false;
  });
}

/** Which areas a sheet is for: all of its kind, only some, or all but some. */
export function setAreas(session: Session, id: string, which: { readonly only?: readonly string[] } | { readonly except: readonly string[] }): void {
  changeSheet(session, id, 'Say what the sheet is for', (sheet) => {
    const target = allOfKind(sheet.for) as Draft<SheetFor>;
    if ('except' in which && which.except.length > 0) target.except = [...which.except];
    if ('only' in which && which.only) target.only = [...which.only];
    sheet.for = target;
  });
}

/** Notes on a sheet; none when the text is empty. */
export function noteOnSheet(session: Session, id: string, notes: string): void {
  changeSheet(session, id, 'Note on the sheet', (sheet) => {
    if (notes.trim() === '') delete sheet.notes;
    else sheet.notes = notes.trim();
  });
}

function changeSheet(session: Session, id: string, label: string, change: (sheet: Draft<Sheet>) => void): void {
  if (!planOf(session.getState()).sheets[id]) return;
  changePlan(session, label, (draft) => change(draft.sheets[id]!));
}

/** Adds a sheet at the top of the pile, or just above another, and lays it on the table. */
function addSheet(session: Session, label: string, base: string, sheet: Sheet, above?: string): string {
  const plan = planOf(session.getState());
  const id = freeId(plan.sheets, base);
  changePlan(
    session,
    label,
    (draft: Draft<Plan>) => {
      draft.sheets[id] = sheet as Draft<Sheet>;
      if (above !== undefined) draft.sheetOrder = sheetIds(plan).flatMap((other) => (other === above ? [other, id] : [other]));
      else draft.sheetOrder?.push(id);
    },
    NOTHING,
  );
  const { working, evaluation } = session.getState();
  const stays = areasFor(sheet.for, evaluation.top.areas).some((area) => area.id === working.area);
  workOn(session, { sheet: id, ...(!stays && { area: undefined }) });
  return id;
}

function freeName(state: SessionState, target: SheetFor): string {
  const names = new Set(Object.values(planOf(state).sheets).map(({ name }) => name));
  let i = idsInStack(state, target).length;
  while (names.has(`Sheet ${lettersOf(i)}`)) i += 1;
  return `Sheet ${lettersOf(i)}`;
}

function isSewnAlready(state: SessionState, mine: readonly Area[]): boolean {
  const { areas } = state.evaluation.top;
  return Object.values(planOf(state).sheets).some((sheet) => sheet.chosen && areasFor(sheet.for, areas).some((area) => mine.includes(area)));
}
