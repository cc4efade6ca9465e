// Saving the plan to a file of the quilter's own: back to the file it lies in, where she says if the browser can ask, among
// her downloads otherwise. Something else that has changed the file meanwhile is kept as a version before it is written over.

import type { Plan } from '../../model/plan.ts';
import { markSaved } from '../../session/change-plan.ts';
import { saysTheSame } from '../../session/plan/same.ts';
import { planOf } from '../../session/store.ts';
import { chooseWhere, mayWrite, writeFile } from './file-access.ts';
import type { KeptTable } from './lay-plan.ts';
import { planOfFile } from './open.ts';
import { setFile } from './plan-list.ts';
import type { PlanFile } from './records.ts';
import { keepVersion } from './versions.ts';

/** Saves the plan on the table; gives what was done in a sentence, or nothing when she thought better of it. */
export async function savePlan(table: KeptTable, to: 'same' | 'another' = 'same'): Promise<string | undefined> {
  const { session, keeper } = table;
  const state = session.getState();
  const plan = planOf(state);
  const after = state.history.past.at(-1);
  const file = fileOf(table);
  const { writePlan } = await import('../../model/codec.ts');
  const text = writePlan(plan);
  const suggested = file?.name ?? `${fileNameOf(plan.name)}.needlefall.json`;

  let kept: Omit<PlanFile, 'revision'> | undefined;
  let alsoKept = '';
  try {
    const own = to === 'same' && file?.handle && (await mayWrite(file.handle)) ? file.handle : undefined;
    if (own && file && (await keepWhatElseIsThere(table, own, file, plan))) alsoKept = ' Something else had changed that file; what it said is kept among the versions.';
    // A file that has been moved or deleted cannot be written; then she is asked where.
    const modified = own && (await writeFile(own, text).catch(() => undefined));
    if (own && modified !== undefined) kept = { name: own.name, handle: own, modified };
    else {
      const handle = await chooseWhere(suggested);
      if (!handle) return undefined;
      kept = { name: handle.name, handle, modified: await writeFile(handle, text) };
    }
  } catch {
    download(new Blob([text], { type: 'application/json' }), suggested);
    kept = { name: suggested };
  }
  markSaved(session, after, kept.name);
  await keeper.settle();
  const { lying } = keeper.store.getState();
  const remembered = { ...kept, revision: lying.kind === 'own' ? (lying.head?.revision ?? 0) : 0 };
  if (lying.kind === 'own') {
    keeper.rememberFile(remembered);
    await setFile(lying.id, remembered).catch(() => undefined);
  }
  return `${kept.handle ? `Saved to ${kept.name}.` : `${kept.name} lies among your downloads.`}${alsoKept}`;
}

/** A name for a file, from a name for people. */
export function fileNameOf(name: string): string {
  const plain = name.trim().toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return plain === '' ? 'plan' : plain;
}

/** Puts a file among the downloads. */
export function download(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken hold of the file once this turn is over; a minute is ample on a slow machine.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

function fileOf({ keeper }: KeptTable): PlanFile | undefined {
  const { lying } = keeper.store.getState();
  return lying.kind === 'own' ? lying.head?.file : undefined;
}

/** Keeps as a version what something else has written into the file since; true when there was such a thing. */
async function keepWhatElseIsThere({ keeper }: KeptTable, handle: FileSystemFileHandle, file: PlanFile, plan: Plan): Promise<boolean> {
  const { lying } = keeper.store.getState();
  const there = await handle.getFile().catch(() => undefined);
  if (!there || file.modified === undefined || there.lastModified === file.modified || lying.kind !== 'own') return false;
  const read = await planOfFile(there);
  if (!read.ok || saysTheSame(read.value, plan)) return false;
  await keepVersion(lying.id, read.value, 'from-file');
  return true;
}
