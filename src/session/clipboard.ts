// What is copied from a sheet, as text that lies on the clipboard: placements with the templates and feet they need, or passes.
// The text is a small JSON of our own, so that it can be pasted into another plan, or kept in a note.

import type { Draft } from 'immer';
import { readPlan } from '../model/codec.ts';
import { writeJson } from '../model/json-write.ts';
import { newPlan } from '../model/new-plan.ts';
import type { ById, Foot, Pass, Placement, Plan, Sheet, Template } from '../model/plan.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { changePlan } from './change-plan.ts';
import { freeId } from './free-id.ts';
import { removePicked } from './lay/edit.ts';
import { kindOf, onTable, pickedOn } from './lay/on-table.ts';
import { isMap, saysTheSame } from './plan/same.ts';
import type { Selection } from './selection.ts';
import { type Session, type SessionState, planOf } from './store.ts';

export const CLIP_FORMAT = 'needlefall-clip';

export interface Clip {
  readonly placements: ById<Placement>;
  readonly passes: ById<Pass>;
  /** What the placements need. */
  readonly templates: ById<Template>;
  readonly feet: ById<Foot>;
}

/** The text of what is picked out: a pass when one is picked, otherwise placements; undefined when nothing is. */
export function copied(state: SessionState): string | undefined {
  const { selection } = state;
  const plan = planOf(state);
  const on = onTable(state);
  const sheet = on?.sheet?.sheet;
  const picked = pickedOn(selection, on?.sheet?.id).filter((id) => sheet?.placements[id]);
  if (!sheet || picked.length === 0 || selection.kind !== 'placement') return undefined;
  const pass = selection.pass === undefined ? undefined : sheet.placements[selection.placement]?.passes[selection.pass];
  if (pass && selection.pass !== undefined) return written({ passes: { [selection.pass]: pass } });
  const placements = Object.fromEntries(picked.map((id) => [id, sheet.placements[id]!]));
  const used = <Thing>(map: ById<Thing>, idOf: (placement: Placement) => string): ById<Thing> =>
    Object.fromEntries(Object.values(placements).flatMap((placement) => (map[idOf(placement)] ? [[idOf(placement), map[idOf(placement)]!] as const] : [])));
  return written({ placements, templates: used(plan.kit.templates, ({ template }) => template), feet: used(plan.kit.feet, ({ foot }) => foot) });
}

function written(clip: Partial<Clip>): string {
  return `${writeJson({ format: CLIP_FORMAT, version: 1, ...clip })}\n`;
}

/** The same, and takes it off the sheet. */
export function cut(session: Session): string | undefined {
  const text = copied(session.getState());
  if (text !== undefined) removePicked(session);
  return text;
}

/** What a text holds of ours, or a sentence saying why nothing can be pasted. Text around the JSON, as in a note, is passed over. */
export function readClip(text: string): Outcome<Clip, string> {
  if (text.trim() === '') return fail('There is nothing on the clipboard.');
  const json = inBraces(text);
  const value = json === undefined ? undefined : parsed(json);
  if (!isMap(value)) return fail('What is on the clipboard is no template and no pass. Copy one from a sheet first.');
  if (value['format'] === 'needlefall-plan') return fail('That is a whole plan. Open it as a file instead.');
  if (value['format'] !== CLIP_FORMAT) return fail('What is on the clipboard is no template and no pass. Copy one from a sheet first.');
  const { placements = {}, passes = {}, templates = {}, feet = {} } = value;
  // Read as the plan it would make, so that a clip is held to the same rules as a file.
  const holder = { template: 'none', foot: 'none', flipped: false, pose: { x: 0, y: 0, angle: 0 }, registrations: [], passes };
  const sheet = (held: unknown) => ({ name: 'clip', for: { kind: 'block' }, chosen: false, placements: held, repeat: [], fills: {} });
  const read = readPlan(JSON.stringify({ ...newPlan('clip'), kit: { templates, feet }, sheets: { placements: sheet(placements), passes: sheet({ holder }) } }));
  if (!read.ok) {
    const first = read.problem[0];
    const where = first?.path.replace('sheets.placements.placements', 'placements').replace('sheets.passes.placements.holder.', '').replace('kit.', '');
    return fail(`What is on the clipboard cannot be pasted: at ${where || 'its beginning'} it should have ${first?.expected}, and has ${first?.found}.`);
  }
  const { kit, sheets } = read.value;
  const clip: Clip = { placements: sheets['placements']!.placements, passes: sheets['passes']!.placements['holder']!.passes, templates: kit.templates, feet: kit.feet };
  if (Object.keys(clip.placements).length === 0 && Object.keys(clip.passes).length === 0) return fail('What is on the clipboard holds no template and no pass.');
  return ok(clip);
}

/** How far a placement pasted over the one it was copied from lies beside it, in inches each way. */
const BESIDE = 1;

/** Pastes placements onto the sheet on the table, or passes into the picked placement. Answers with a sentence when it cannot. */
export function paste(session: Session, text: string): string | undefined {
  const read = readClip(text);
  if (!read.ok) return read.problem;
  const clip = read.value;
  const state = session.getState();
  const on = onTable(state);
  if (!on) return 'There is no area to paste on. Measure your top first.';
  if (Object.keys(clip.placements).length > 0) {
    pastePlacements(session, clip);
    return undefined;
  }
  const [picked] = pickedOn(state.selection, on.sheet?.id);
  if (picked === undefined || !on.sheet?.sheet.placements[picked]) return 'Pick out the template the pass is to be sewn along, then paste.';
  pastePasses(session, on.sheet.id, picked, clip.passes);
  return undefined;
}

function pastePlacements(session: Session, clip: Clip): void {
  const state = session.getState();
  const plan = planOf(state);
  const on = onTable(state)!;
  const sheet = on.sheet?.id ?? freeId(plan.sheets, 'sheet');
  const here = on.sheet?.sheet.placements ?? {};
  const templates = broughtAlong(clip.templates, plan.kit.templates);
  const feet = broughtAlong(clip.feet, plan.kit.feet);
  const placements: { [id: string]: Placement } = { ...here };
  const made: { readonly id: string; readonly placement: Placement }[] = [];
  for (const [id, placement] of Object.entries(clip.placements)) {
    const newId = freeId(placements, id);
    const isSame = saysTheSame(here[id]?.pose, placement.pose) && here[id]?.template === placement.template;
    const pasted: Placement = {
      ...placement,
      template: templates.ids.get(placement.template) ?? placement.template,
      foot: feet.ids.get(placement.foot) ?? (placement.foot in plan.kit.feet ? placement.foot : (Object.keys(plan.kit.feet)[0] ?? placement.foot)),
      ...(isSame && { pose: { ...placement.pose, x: placement.pose.x + BESIDE, y: placement.pose.y + BESIDE }, registrations: [] }),
    };
    placements[newId] = pasted;
    made.push({ id: newId, placement: pasted });
  }
  const [first, ...also] = made.map(({ id }) => id);
  const selection: Selection = { kind: 'placement', sheet, placement: first!, ...(also.length > 0 && { also }) };
  changePlan(
    session,
    made.length === 1 ? 'Paste a template' : `Paste ${made.length} templates`,
    (draft: Draft<Plan>) => {
      Object.assign(draft.kit.templates, templates.added);
      Object.assign(draft.kit.feet, feet.added);
      if (!on.sheet) {
        const fresh: Sheet = { name: 'Sheet A', for: kindOf(on.area), chosen: true, placements: {}, repeat: [], fills: {} };
        draft.sheets[sheet] = fresh as Draft<Sheet>;
        draft.sheetOrder?.push(sheet);
      }
      for (const { id, placement } of made) draft.sheets[sheet]!.placements[id] = placement as Draft<Placement>;
    },
    selection,
  );
}

function pastePasses(session: Session, sheet: string, placement: string, passes: ById<Pass>): void {
  const here = { ...planOf(session.getState()).sheets[sheet]!.placements[placement]!.passes };
  const made = Object.entries(passes).map(([id, pass]) => {
    const newId = freeId(here, id);
    here[newId] = pass;
    return [newId, pass] as const;
  });
  changePlan(
    session,
    made.length === 1 ? 'Paste a pass' : `Paste ${made.length} passes`,
    (draft) => {
      for (const [id, pass] of made) draft.sheets[sheet]!.placements[placement]!.passes[id] = pass;
    },
    { kind: 'placement', sheet, placement, pass: made[0]![0] },
  );
}

/** Where each brought thing is in the kit: already there, or added under an id that is free. */
function broughtAlong<Thing extends object>(brought: ById<Thing>, kit: ById<Thing>): { readonly ids: ReadonlyMap<string, string>; readonly added: ById<Thing> } {
  const ids = new Map<string, string>();
  const added: { [id: string]: Thing } = {};
  for (const [id, thing] of Object.entries(brought)) {
    const same = saysTheSame(kit[id], thing) ? id : Object.keys(kit).find((other) => saysTheSame(kit[other], thing));
    const known = same ?? freeId({ ...kit, ...added }, id);
    if (same === undefined) added[known] = thing;
    ids.set(id, known);
  }
  return { ids, added };
}

/** From the first brace to the last. */
function inBraces(text: string): string | undefined {
  const from = text.indexOf('{');
  const to = text.lastIndexOf('}');
  return from >= 0 && to > from ? text.slice(from, to + 1) : undefined;
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
