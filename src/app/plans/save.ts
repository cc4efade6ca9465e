// Saving the plan to a file of the quilter's own: where she says, if the browser can ask; among her downloads otherwise.

import { markSaved } from '../../session/change-plan.ts';
import { type Session, planOf } from '../../session/store.ts';

/** True when it was saved, false when she thought better of it. */
export async function savePlan(session: Session): Promise<boolean> {
  const state = session.getState();
  const plan = planOf(state);
  const after = state.history.past.at(-1);
  const { writePlan } = await import('../../model/codec.ts');
  const suggested = state.source.kind === 'file' ? state.source.name : `${fileNameOf(plan.name)}.needlefall.json`;
  const name = await keepFile(new Blob([writePlan(plan)], { type: 'application/json' }), suggested);
  if (name === undefined) return false;
  markSaved(session, after, name);
  return true;
}

/** A name for a file, from a name for people. */
export function fileNameOf(name: string): string {
  const plain = name.trim().toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return plain === '' ? 'plan' : plain;
}

interface FilePicker {
  showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

/** Keeps a file under a name; answers with the name it got, or nothing when it was not kept. */
async function keepFile(file: Blob, suggested: string): Promise<string | undefined> {
  const { showSaveFilePicker } = window as unknown as FilePicker;
  if (!showSaveFilePicker) {
    download(file, suggested);
    return suggested;
  }
  try {
    const types = [{ description: 'Needlefall plan', accept: { 'application/json': ['.json'] } }];
    const handle = await showSaveFilePicker.call(window, { suggestedName: suggested, types });
    const stream = await handle.createWritable();
    await stream.write(file);
    await stream.close();
    return handle.name;
  } catch (problem) {
    if (problem instanceof DOMException && problem.name === 'AbortError') return undefined;
    download(file, suggested);
    return suggested;
  }
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
