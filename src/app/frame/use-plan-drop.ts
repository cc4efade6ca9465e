// A plan's file dropped anywhere on the page.

import { useEffect, useState } from 'react';

/** True while a file is held over the page; a file let go is handed on, with its handle where the browser gives one. */
export function usePlanDrop(open: (file: File, handle?: FileSystemFileHandle) => Promise<void>): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    let depth = 0;
    const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const stop = new AbortController();
    const listen = (kind: 'dragenter' | 'dragover' | 'dragleave' | 'drop', on: (event: DragEvent) => void) => {
      window.addEventListener<typeof kind>(kind, (event) => carriesFile(event) && on(event), { signal: stop.signal });
    };
    listen('dragenter', (event) => {
      event.preventDefault();
      depth += 1;
      setOver(true);
    });
    listen('dragover', (event) => event.preventDefault());
    listen('dragleave', () => {
      depth -= 1;
      if (depth <= 0) setOver(false);
    });
    listen('drop', (event) => {
      event.preventDefault();
      depth = 0;
      setOver(false);
      const file = event.dataTransfer?.files[0];
      // Both must be asked for before the event is over.
      const handle = handleOf(event.dataTransfer?.items[0]);
      if (file) void handle.then((found) => open(file, found));
    });
    return () => stop.abort();
  }, [open]);
  return over;
}

interface GivesHandle {
  readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>;
}

/** The file's handle, with which saving writes back to it; nothing where the browser gives none. */
async function handleOf(item: DataTransferItem | undefined): Promise<FileSystemFileHandle | undefined> {
  const asking = (item as GivesHandle | undefined)?.getAsFileSystemHandle?.call(item);
  const handle = await asking?.catch(() => null);
  return handle?.kind === 'file' ? (handle as FileSystemFileHandle) : undefined;
}
