// A plan's file dropped anywhere on the page.

import { useEffect, useState } from 'react';

/** True while a file is held over the page; a file let go is handed on. */
export function usePlanDrop(open: (file: File) => Promise<void>): boolean {
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
      if (file) void open(file);
    });
    return () => stop.abort();
  }, [open]);
  return over;
}
