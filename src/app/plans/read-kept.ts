// A plan as it was kept: its text read and checked like a file's, with its steps of undo. When the last text cannot be
// read, the one before it is taken, and the one that cannot be read is kept among the versions.

import type { Plan } from '../../model/plan.ts';
import type { PlanProblem } from '../../model/codec.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { type History, NO_HISTORY } from '../../session/history.ts';
import { ON_DISK, type PlanDatabase, ofPlan } from './database.ts';
import { type PlanHead, newId, sizeOfText } from './records.ts';

export interface KeptPlan {
  readonly head: PlanHead;
  readonly plan: Plan;
  readonly history: History;
  /** True when the last text could not be read and this is the one before. */
  readonly isBefore: boolean;
}

export type NotRead = { readonly kind: 'gone' } | { readonly kind: 'unreadable'; readonly name: string; readonly problems: readonly PlanProblem[] };

/** Reads a plan from the database; rejects only when the database itself fails. */
export async function readKept(db: PlanDatabase, id: string): Promise<Outcome<KeptPlan, NotRead>> {
  const work = db.transaction(['plans', 'texts', 'steps']);
  const [head, texts, steps] = await Promise.all([
    work.objectStore('plans').get(id),
    work.objectStore('texts').getAll(ofPlan(id)),
    work.objectStore('steps').getAll(ofPlan(id)),
    work.done,
  ]);
  if (!head) return fail({ kind: 'gone' });
  const { readPlan } = await import('../../model/codec.ts');
  const [last, before] = [...texts].sort((a, b) => b.revision - a.revision);
  const read = readPlan(last?.text ?? '');
  if (read.ok) {
    const all = steps.map(({ step }) => step);
    const { done, kept } = head.steps;
    // Steps that are not all there would undo to something that never was.
    const history = all.length === kept ? { past: all.slice(0, done), future: all.slice(done).reverse() } : NO_HISTORY;
    return ok({ head, plan: read.value, history, isBefore: false });
  }
  if (last) await keepUnreadable(db, id, last.text);
  const earlier = before && readPlan(before.text);
  if (!earlier?.ok) return fail({ kind: 'unreadable', name: head.name, problems: read.problem });
  return ok({ head, plan: earlier.value, history: NO_HISTORY, isBefore: true });
}

async function keepUnreadable(db: PlanDatabase, plan: string, text: string): Promise<void> {
  const kept = await db.getAllFromIndex('versions', 'plan', plan);
  if (kept.some(({ reason }) => reason === 'unreadable')) return;
  const work = db.transaction(['versions', 'versionTexts'], 'readwrite', ON_DISK);
  const id = newId();
  void work.objectStore('versions').put({ id, plan, at: Date.now(), reason: 'unreadable', size: sizeOfText(text) });
  void work.objectStore('versionTexts').put({ id, text });
  await work.done;
}
