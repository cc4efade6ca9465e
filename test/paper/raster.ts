// Looking at PDFs through poppler, a reader that shares nothing with the writer: pages as grey pixels, words, sizes.

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Darkness of each pixel, 0 for paper and 1 for black, row by row. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly dpi: number;
  readonly dark: (x: number, y: number) => number;
}

/** One page of a PDF as pixels; pages count from 1. */
export function rasterOf(pdf: Uint8Array, page: number, dpi: number): Raster {
  return withFile(pdf, (file, folder) => {
    execFileSync('pdftoppm', ['-gray', '-r', `${dpi}`, '-f', `${page}`, '-l', `${page}`, '-singlefile', file, join(folder, 'page')]);
    return readPgm(readFileSync(join(folder, 'page.pgm')), dpi);
  });
}

/** Every page as pixels at once, and what the renderer complains of. */
export function allPages(pdf: Uint8Array, dpi: number): { readonly pages: readonly Raster[]; readonly complaints: string } {
  return withFile(pdf, (file, folder) => {
    const { stderr, status } = spawnSync('pdftoppm', ['-gray', '-r', `${dpi}`, file, join(folder, 'page')]);
    const names = readdirSync(folder).filter((name) => name.endsWith('.pgm')).sort();
    return { pages: names.map((name) => readPgm(readFileSync(join(folder, name)), dpi)), complaints: `${stderr.toString()}${status === 0 ? '' : `exit ${status}`}` };
  });
}

/** What `pdfinfo` says of each page's size, in points. */
export function pageSizes(pdf: Uint8Array): readonly { readonly width: number; readonly height: number }[] {
  const info = withFile(pdf, (file) => execFileSync('pdfinfo', ['-f', '1', '-l', '10000', file]).toString());
  return [...info.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gm)].map(([, width, height]) => ({ width: Number(width), height: Number(height) }));
}

/** The words of some pages, as a reader would copy them. */
export function wordsOf(pdf: Uint8Array, first: number, last = first): string {
  return withFile(pdf, (file) => execFileSync('pdftotext', ['-layout', '-f', `${first}`, '-l', `${last}`, file, '-']).toString());
}

/** Words of a page with their boxes in points. */
export function wordBoxes(pdf: Uint8Array, page: number): readonly { readonly text: string; readonly width: number; readonly height: number }[] {
  const html = withFile(pdf, (file) => execFileSync('pdftotext', ['-bbox', '-f', `${page}`, '-l', `${page}`, file, '-']).toString());
  return [...html.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g)].map((m) => ({
    text: m[5]!,
    width: Number(m[3]) - Number(m[1]),
    height: Number(m[4]) - Number(m[2]),
  }));
}

/** Middles of the dark runs met along a row (or, `down`, along a column) of pixels between two places, in pixels, to a part of a pixel. */
export function darkRuns(raster: Raster, down: boolean, at: number, from: number, to: number): readonly number[] {
  const runs: number[] = [];
  let weight = 0;
  let moment = 0;
  for (let i = Math.round(from); i <= Math.round(to); i++) {
    const dark = down ? raster.dark(at, i) : raster.dark(i, at);
    if (dark > 0.04) {
      weight += dark;
      moment += dark * (i + 0.5);
    } else if (weight > 0) {
      runs.push(moment / weight);
      weight = moment = 0;
    }
  }
  return runs;
}

function withFile<T>(pdf: Uint8Array, look: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'needlefall-paper-'));
  try {
    const file = join(folder, 'print.pdf');
    writeFileSync(file, pdf);
    return look(file, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Portable graymap, binary form (netpbm's P5). */
function readPgm(bytes: Uint8Array, dpi: number): Raster {
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(Buffer.from(bytes.subarray(0, 64)).toString('latin1'));
  if (!header) throw new Error('not a PGM of 8 bits');
  const width = Number(header[1]);
  const height = Number(header[2]);
  const start = header[0].length;
  return { width, height, dpi, dark: (x, y) => 1 - bytes[start + y * width + x]! / 255 };
}
