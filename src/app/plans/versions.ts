// The versions of a plan: those she named, and those that were kept by themselves.

import type { Plan } from '../../model/plan.ts';
import { writeJson } from '../../model/json-write.ts';
import type { PlanProblem } from '../../model/codec.ts';
import { type Outcome, fail } from '../../num/outcome.ts';
import { ON_DISK, planDatabase } from './database.ts';
import { type Version, type VersionReason, newId, sizeOfText } from './records.ts';
import { tellWindows } from './windows.ts';

/** The versions of a plan, the newest first. */
export async function listVersions(plan: string): Promise<readonly Version[]> {
  const versions = await (await planDatabase()).getAllFromIndex('versions', 'plan', plan);
  return versions.sort((a, b) => b.at - a.at);
}

/** Keeps a state of a plan as a version. */
export async function keepVersion(plan: string, state: Plan, reason: VersionReason, name?: string): Promise<void> {
  const text = writeJson(state);
  const version: Version = { id: newId(), plan, at: Date.now(), reason, size: sizeOfText(text), ...(name !== undefined && { name }) };
  await putVersion(version, text);
}

/** Names a version; one kept by itself then stays for good. */
export async function nameVersion(version: Version, name: string): Promise<void> {
  await (await planDatabase()).put('versions', { ...version, name, reason: version.reason === 'automatic' ? 'named' : version.reason });
  tellWindows({ kind: 'list' });
}

/** What a deleted version was, to put it back. */
export interface DeletedVersion {
  readonly version: Version;
  readonly text: string;
}

/** Deletes a version; gives what is needed to put it back, or nothing when it was not there. */
export async function deleteVersion(id: string): Promise<DeletedVersion | undefined> {
  const work = (await planDatabase()).transaction(['versions', 'versionTexts', 'pictures'], 'readwrite', ON_DISK);
  const [version, kept] = await Promise.all([work.objectStore('versions').get(id), work.objectStore('versionTexts').get(id)]);
  await Promise.all([work.objectStore('versions').delete(id), work.objectStore('versionTexts').delete(id), work.objectStore('pictures').delete(id), work.done]);
  tellWindows({ kind: 'list' });
  return version && kept && { version, text: kept.text };
}

/** Puts a deleted version back. */
export async function putVersionBack({ version, text }: DeletedVersion): Promise<void> {
  await putVersion(version, text);
}

/** The text of a version; empty when it is not there. */
export async function textOfVersion(id: string): Promise<string> {
  return (await (await planDatabase()).get('versionTexts', id))?.text ?? '';
}

/** The plan as it was in a version, or what is wrong with it. */
export async function planOfVersion(id: string): Promise<Outcome<Plan, readonly PlanProblem[]>> {
  const [{ readPlan }, text] = await Promise.all([import('../../model/codec.ts'), textOfVersion(id)]);
  if (text === '') return fail([{ path: '', expected: 'a version', found: 'nothing', message: 'This version is no longer there.' }]);
  return readPlan(text);
}

async function putVersion(version: Version, text: string): Promise<void> {
  const work = (await planDatabase()).transaction(['plans', 'versions', 'versionTexts'], 'readwrite', ON_DISK);
  const plans = work.objectStore('plans');
  const head = await plans.get(version.plan);
  await Promise.all([
    work.objectStore('versions').put(version),
    work.objectStore('versionTexts').put({ id: version.id, text }),
    head && plans.put({ ...head, lastVersion: Math.max(version.at, head.lastVersion ?? 0) }),
    work.done,
  ]);
  tellWindows({ kind: 'list' });
}
