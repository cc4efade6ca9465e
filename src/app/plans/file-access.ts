// Files of the quilter's own through the browser's file access (WICG File System Access), where it exists.

interface Pickers {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>;
  readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

/** The parts of a handle that not every browser has. */
interface Permitting {
  readonly queryPermission?: (mode: object) => Promise<PermissionState>;
  readonly requestPermission?: (mode: object) => Promise<PermissionState>;
}

const TYPES = [{ description: 'Needlefall plan', accept: { 'application/json': ['.json'] } }];

/** True where files can be chosen so that Save writes back to them. */
export function hasFileAccess(): boolean {
  return pickers().showOpenFilePicker !== undefined;
}

/** The file she chooses; nothing when she thinks better of it. */
export async function chooseFile(): Promise<FileSystemFileHandle | undefined> {
  const { showOpenFilePicker } = pickers();
  return unlessGivenUp(async () => (await showOpenFilePicker?.call(window, { types: TYPES, id: 'plans' }))?.[0]);
}

/** Where she wants a file; nothing when she thinks better of it. Rejects when the browser cannot ask. */
export async function chooseWhere(suggestedName: string): Promise<FileSystemFileHandle | undefined> {
  const { showSaveFilePicker } = pickers();
  if (!showSaveFilePicker) throw new Error('This browser cannot ask where a file should go.');
  return unlessGivenUp(() => showSaveFilePicker.call(window, { types: TYPES, id: 'plans', suggestedName }));
}

/** Whether the file may be written; asks her when the browser wants that. */
export async function mayWrite(handle: FileSystemFileHandle): Promise<boolean> {
  const { queryPermission, requestPermission } = handle as Permitting;
  const mode = { mode: 'readwrite' };
  if (!queryPermission || (await queryPermission.call(handle, mode)) === 'granted') return true;
  return (await requestPermission?.call(handle, mode)) === 'granted';
}

/** Writes a file as a whole; gives when it was changed last. Until all of it is written the file stays as it was. */
export async function writeFile(handle: FileSystemFileHandle, text: string): Promise<number> {
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
  return (await handle.getFile()).lastModified;
}

/** Whether both are the same file on the disk. */
export async function isSameFile(a: FileSystemFileHandle, b: FileSystemFileHandle): Promise<boolean> {
  try {
    return await a.isSameEntry(b);
  } catch {
    return false;
  }
}

async function unlessGivenUp<Handle>(choose: () => Promise<Handle>): Promise<Handle | undefined> {
  try {
    return await choose();
  } catch (problem) {
    if (problem instanceof DOMException && problem.name === 'AbortError') return undefined;
    throw problem;
  }
}

function pickers(): Pickers {
  return window as unknown as Pickers;
}
