// The list of plans, and what can be done with a plan that does not lie on the table.

import { type Draft, produceWithPatches } from 'immer';
import type { Plan } from '../../model/plan.ts';
import { writeJson } from '../../model/json-write.ts';
import { recorded } from '../../session/history.ts';
import { NOTHING } from '../../session/selection.ts';
import { ON_DISK, ofPlan, planDatabase } from './database.ts';
import { readKept } from './read-kept.ts';
import { type PlanFile, type PlanHead, newId } from './records.ts';
import { tellWindows } from './windows.ts';
import { type PlanWrite, writePlanRecords } from './write-plan.ts';

/** A deleted plan can be brought back for so long. */
export const KEPT_WHEN_DELETED = 30 * 24 * 3_600_000;

/** All plans, those deleted lately included, the last changed first. */
export async function listPlans(): Promise<readonly PlanHead[]> {
  const heads = await (await planDatabase()).getAll('plans');
  return heads.sort((a, b) => b.changed - a.changed);
}

/** Plans that are not deleted, the one that was laid on a table (or made) last first. */
export async function plansByUse(): Promise<readonly PlanHead[]> {
  const heads = (await listPlans()).filter(({ deleted }) => deleted === undefined);
  const when = ({ laid, made }: PlanHead) => laid ?? made;
  return heads.sort((a, b) => when(b) - when(a));
}

/** Remembers that a plan is laid on a table now. */
export async function markLaid(id: string): Promise<void> {
  await changeHead(id, (head) => ({ ...head, laid: Date.now() }));
}

/** Names a plan that lies on no table, as a step of undo. A plan that is not there stays away. */
export async function nameKept(id: string, name: string): Promise<void> {
  await changeKept(id, 'Name the plan', (plan) => {
    plan.name = name;
  });
}

/** Makes a plan of the list anew under another name; gives its id, or nothing when there is nothing that can be read. */
export async function duplicatePlan(id: string): Promise<string | undefined> {
  const kept = await readKept(await planDatabase(), id);
  if (!kept.ok) return undefined;
  const names = (await listPlans()).filter((head) => head.deleted === undefined).map((head) => head.name);
  return keepNewPlan({ ...kept.value.plan, name: freeName(`${kept.value.plan.name}, copy`, names) });
}

/** Keeps a plan as a new one in the list; gives its id. */
export async function keepNewPlan(plan: Plan, from: Pick<PlanWrite, 'fromExample' | 'file'> = {}): Promise<string> {
  const id = newId();
  const write = { id, base: 0, plan, steps: [], done: 0, stepsFrom: 0, ...from };
  await writePlanRecords(await planDatabase(), write);
  tellWindows({ kind: 'list' });
  return id;
}

/** Takes a plan out of the list. It can be brought back for some time. */
export async function deletePlan(id: string): Promise<void> {
  await changeHead(id, (head) => ({ ...head, deleted: Date.now() }));
}

/** Puts a deleted plan back in the list. */
export async function bringBack(id: string): Promise<void> {
  await changeHead(id, ({ deleted: _, ...head }) => head);
}

/** Says which file a plan lies in. */
export async function setFile(id: string, file: PlanFile): Promise<void> {
  await changeHead(id, (head) => ({ ...head, file }));
}

/** Lets a plan go for good, with its versions. */
export async function forgetPlan(id: string): Promise<void> {
  const db = await planDatabase();
  const work = db.transaction(['plans', 'texts', 'steps', 'versions', 'versionTexts', 'pictures'], 'readwrite', ON_DISK);
  const versions = await work.objectStore('versions').index('plan').getAllKeys(id);
  await Promise.all([
    work.objectStore('plans').delete(id),
    work.objectStore('texts').delete(ofPlan(id)),
    work.objectStore('steps').delete(ofPlan(id)),
    ...(['versions', 'versionTexts', 'pictures'] as const).flatMap((store) => versions.map((version) => work.objectStore(store).delete(version))),
    work.objectStore('pictures').delete(id),
    work.done,
  ]);
  tellWindows({ kind: 'list' });
}

/** Lets go of what was deleted long ago. */
export async function forgetLongDeleted(): Promise<void> {
  for (const { id, deleted } of await listPlans()) {
    if (deleted !== undefined && Date.now() - deleted > KEPT_WHEN_DELETED) await forgetPlan(id);
  }
}

/** The plan of the list that says exactly this, if there is one. */
export async function planThatSays(plan: Plan): Promise<string | undefined> {
  const db = await planDatabase();
  const text = writeJson(plan);
  for (const head of await listPlans()) {
    if (head.name !== plan.name || head.deleted !== undefined) continue;
    if ((await db.get('texts', [head.id, head.revision % 2]))?.text === text) return head.id;
  }
  return undefined;
}

/** A name like this one that is not among those given: "Tidewater", "Tidewater 2", "Tidewater 3". */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  for (let n = 2; ; n++) if (!taken.includes(`${name} ${n}`)) return `${name} ${n}`;
}

async function changeKept(id: string, label: string, recipe: (plan: Draft<Plan>) => void): Promise<void> {
  const db = await planDatabase();
  // Again when another window writes in between.
  for (;;) {
    const kept = await readKept(db, id);
    if (!kept.ok) return;
    const { head, plan, history } = kept.value;
    const [changed, forward, back] = produceWithPatches(plan, recipe);
    const { past } = recorded(history, { label, forward, back, selectedBefore: NOTHING, selectedAfter: NOTHING });
    const written = await writePlanRecords(db, { id, base: head.revision, plan: changed, steps: past, done: past.length, stepsFrom: past.length - 1 });
    if (written.kind === 'behind') continue;
    tellWindows({ kind: 'kept', plan: id, revision: written.head.revision, instead: false });
    return tellWindows({ kind: 'list' });
  }
}

async function changeHead(id: string, change: (head: PlanHead) => PlanHead): Promise<void> {
  const work = (await planDatabase()).transaction('plans', 'readwrite', ON_DISK);
  const head = await work.store.get(id);
  if (head) await work.store.put(change(head));
  await work.done;
  tellWindows({ kind: 'list' });
}
