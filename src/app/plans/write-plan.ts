// One write of a plan: text, head, steps of undo and, when one is due, a version of the state before; all of it in one
// transaction, so that it is there as a whole or not at all.

import type { Plan } from '../../model/plan.ts';
import { writeJson } from '../../model/json-write.ts';
import type { HistoryStep } from '../../session/history.ts';
import { ON_DISK, type PlanDatabase, ofPlan } from './database.ts';
import { type PlanHead, type Version, newId, sizeOfText } from './records.ts';
import { isVersionDue, versionsToThin } from './version-thinning.ts';

export interface PlanWrite {
  readonly id: string;
  /** The revision this state was made from; 0 for a plan that is not there yet. */
  readonly base: number;
  readonly plan: Plan;
  /** All steps of undo, those that can be redone last. */
  readonly steps: readonly HistoryStep[];
  readonly done: number;
  /** The first of them that differs from what is kept. */
  readonly stepsFrom: number;
  readonly fromExample?: string;
  readonly file?: PlanHead['file'];
  /** States that would be lost by this write, kept as versions with it. */
  readonly alsoKeep?: readonly { readonly reason: Version['reason']; readonly plan: Plan }[];
}

export type Written =
  | { readonly kind: 'written'; readonly head: PlanHead; readonly versions: boolean }
  /** Another window has written a later revision: nothing was changed. */
  | { readonly kind: 'behind'; readonly revision: number };

/** Rejects when the database could not write, and then nothing of it was. */
export async function writePlanRecords(db: PlanDatabase, write: PlanWrite): Promise<Written> {
  const text = writeJson(write.plan);
  const now = Date.now();
  const work = db.transaction(['plans', 'texts', 'steps', 'versions', 'versionTexts', 'pictures'], 'readwrite', ON_DISK);
  // A request that fails ends the transaction, and it is the transaction's own rejection that is heard.
  work.done.catch(() => undefined);
  const send = (request: Promise<unknown>) => void request.catch(() => undefined);
  const [plans, texts, steps] = [work.objectStore('plans'), work.objectStore('texts'), work.objectStore('steps')];
  const before = await plans.get(write.id);
  const revision = before?.revision ?? 0;
  if (revision !== write.base && before) {
    await work.done;
    return { kind: 'behind', revision };
  }

  const keep = (version: Version, versionText: string) => {
    send(work.objectStore('versions').put(version));
    send(work.objectStore('versionTexts').put({ id: version.id, text: versionText }));
  };
  let lastVersion = before?.lastVersion;
  if (before && isVersionDue({ made: before.made, changed: before.changed, lastVersion }, now)) {
    const last = await texts.get([write.id, before.revision % 2]);
    if (last && last.text !== text) {
      keep({ id: newId(), plan: write.id, at: before.changed, reason: 'automatic', size: before.size }, last.text);
      lastVersion = before.changed;
      const versions = await work.objectStore('versions').index('plan').getAll(write.id);
      const dated = versions.map(({ id, at, reason }) => ({ id, at, automatic: reason === 'automatic' }));
      for (const id of versionsToThin(dated, now, -new Date(now).getTimezoneOffset() * 60_000)) {
        send(work.objectStore('versions').delete(id));
        send(work.objectStore('versionTexts').delete(id));
        send(work.objectStore('pictures').delete(id));
      }
    }
  }
  for (const { reason, plan } of write.alsoKeep ?? []) {
    const other = writeJson(plan);
    keep({ id: newId(), plan: write.id, at: now, reason, size: sizeOfText(other) }, other);
    lastVersion = now;
  }

  const head: PlanHead = {
    ...(before ?? { id: write.id, made: now, laid: now, ...(write.fromExample !== undefined && { fromExample: write.fromExample }), ...(write.file && { file: write.file }) }),
    name: write.plan.name,
    changed: now,
    revision: revision + 1,
    size: sizeOfText(text),
    steps: { kept: write.steps.length, done: write.done },
    ...(lastVersion !== undefined && { lastVersion }),
  };
  // What is changed is wanted: a plan deleted in another window comes back with it.
  const { deleted: _, ...alive } = head;
  send(plans.put(alive));
  send(texts.put({ plan: write.id, place: (alive.revision % 2) as 0 | 1, revision: alive.revision, text }));
  if (before && before.steps.kept > write.stepsFrom) send(steps.delete(ofPlan(write.id, write.stepsFrom)));
  write.steps.slice(write.stepsFrom).forEach((step, i) => send(steps.put({ plan: write.id, at: write.stepsFrom + i, step })));
  await work.done;
  return { kind: 'written', head: alive, versions: lastVersion !== before?.lastVersion };
}
