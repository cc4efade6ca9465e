// The paper's typefaces as bytes, read from the files beside this one; for Node.

import { readFile } from 'node:fs/promises';
import type { PaperFonts } from '../pdf/pdf.edge.ts';

/** Rejects when a font file is not there. */
export async function readPaperFonts(): Promise<PaperFonts> {
  const read = async (name: string) => new Uint8Array(await readFile(new URL(name, import.meta.url)));
  const [voice, label, firm] = await Promise.all([read('./SourceSerif4-Regular.ttf'), read('./SourceSans3-Regular.ttf'), read('./SourceSans3-SemiBold.ttf')]);
  return { voice, label, firm };
}
