// Plans onto the table: one of the list, an example, a file, a new one. Each answers with what is wrong, or with nothing;
// what lies on the table is put away only when the next plan can be read.

import { setOutInSteps } from '../../engine/evaluate.ts';
import { newPlan } from '../../model/new-plan.ts';
import type { Plan } from '../../model/plan.ts';
import { keepGesture, openPlan } from '../../session/change-plan.ts';
import { type Session, planOf } from '../../session/store.ts';
import { returnTo } from '../../session/plan/lay.ts';
import { saysTheSame } from '../../session/plan/same.ts';
import { planDatabase } from './database.ts';
import { gently } from '../in-steps.ts';
import type { Example } from './examples.ts';
import { isSameFile } from './file-access.ts';
import type { Keeper } from './keeper.ts';
import { type NotOpened, planOfExample, planOfFile } from './open.ts';
import { freeName, listPlans, markLaid, planThatSays, setFile } from './plan-list.ts';
import { readKept } from './read-kept.ts';
import type { PlanFile } from './records.ts';
import { rememberPlan } from './last-plan.ts';
import { keepVersion } from './versions.ts';

/** The table and what keeps the plan on it. */
export interface KeptTable {
  readonly session: Session;
  readonly keeper: Keeper;
}

/** Lays a plan of the list on the table, its steps of undo with it. */
export async function layKept({ session, keeper }: KeptTable, id: string): Promise<NotOpened | undefined> {
  // What was done to it last may still be on its way.
  keepGesture(session);
  await keeper.settle();
  const read = await readKept(await planDatabase(), id);
  if (!read.ok) {
    const gone = { path: '', expected: 'a plan', found: 'nothing', message: 'This plan is no longer in the list.' };
    return read.problem.kind === 'gone' ? { fileName: 'This plan', problems: [gone] } : { fileName: read.problem.name, problems: read.problem.problems };
  }
  const kept = read.value;
  await gently(setOutInSteps(kept.plan));
  keepGesture(session);
  keeper.expect({ kind: 'kept', kept });
  openPlan(session, kept.plan, kept.head.file ? { kind: 'file', name: kept.head.file.name } : { kind: 'new' }, kept.history);
  rememberPlan({ kind: 'own', id });
  // When that cannot be kept, only the next beginning is another.
  markLaid(id).catch(() => undefined);
  if (kept.isBefore) keeper.tellNews('The last state of this plan could not be read; the one before it is on the table. The other is kept among its versions.');
  return undefined;
}

/** Lays an example on the table. It stays as it is: with the first change the table holds a plan of her own. */
export async function layExample({ session, keeper }: KeptTable, example: Example): Promise<NotOpened | undefined> {
  const read = await planOfExample(example);
  if (!read.ok) return { fileName: example.name, problems: read.problem };
  await gently(setOutInSteps(read.value));
  keepGesture(session);
  keeper.expect({ kind: 'example', name: example.name });
  openPlan(session, read.value, { kind: 'example', name: example.name });
  rememberPlan({ kind: 'example', id: example.id });
  return undefined;
}

/** Lays a new plan on the table, shown in the unit of the one before. */
export async function layNew(table: KeptTable): Promise<void> {
  const taken = await listPlans().catch(() => []);
  const plan = newPlan(freeName('New plan', taken.map(({ name }) => name)));
  layOwn(table, { ...plan, shownIn: planOf(table.session.getState()).shownIn });
}

/**
 * Lays the plan of a file on the table and keeps it in the list. A file whose plan is in the list already is that plan: as
 * it is when both say the same; with what the file says now as one step of undo, the state before kept, when they differ.
 */
export async function layFile(table: KeptTable, file: File, handle?: FileSystemFileHandle): Promise<NotOpened | undefined> {
  const read = await planOfFile(file);
  if (!read.ok) return { fileName: file.name, problems: read.problem };
  const plan = read.value;
  const planFile: PlanFile = { name: file.name, revision: 1, modified: file.lastModified, ...(handle && { handle }) };
  const known = await knownPlan(plan, handle).catch(() => undefined);
  if (known === undefined || (await layKept(table, known)) !== undefined) {
    layOwn(table, plan, planFile);
    return undefined;
  }
  const { session, keeper } = table;
  const lying = planOf(session.getState());
  if (!saysTheSame(lying, plan)) {
    await keepVersion(known, lying, 'before-return');
    returnTo(session, `Take what is in ${file.name}`, plan);
    keeper.tellNews(`${file.name} was changed since it was opened here last. What it says now is on the table; undo goes back to what was here.`);
  }
  await keeper.settle();
  const { lying: own } = keeper.store.getState();
  if (own.kind !== 'own' || !own.head) return undefined;
  const remembered = { ...planFile, revision: own.head.revision };
  keeper.rememberFile(remembered);
  await setFile(known, remembered).catch(() => undefined);
  return undefined;
}

/** Lays a plan on the table that is to be kept as one of her own. */
export function layOwn({ session, keeper }: KeptTable, plan: Plan, file?: PlanFile): void {
  keepGesture(session);
  keeper.expect({ kind: 'own', ...(file && { file }) });
  openPlan(session, plan, file ? { kind: 'file', name: file.name } : { kind: 'new' });
  const { lying } = keeper.store.getState();
  if (lying.kind === 'own') rememberPlan({ kind: 'own', id: lying.id });
}

async function knownPlan(plan: Plan, handle: FileSystemFileHandle | undefined): Promise<string | undefined> {
  if (handle) {
    for (const head of await listPlans()) {
      if (head.deleted === undefined && head.file?.handle && (await isSameFile(head.file.handle, handle))) return head.id;
    }
  }
  return planThatSays(plan);
}
