// The PDF as another program sees it: poppler's renderer and readers.

import { beforeAll, describe, expect, it } from 'vitest';
import type { DisplayList } from '../../src/drawing/display-list.ts';
import { circle } from '../../src/geometry/path.ts';
import type { PdfOptions } from '../../src/paper/pdf/options.ts';
import { planPrint } from '../../src/paper/pdf/paint-pdf.ts';
import { readPaperFonts } from '../../src/paper/fonts/read-fonts.edge.ts';
import { CHECK_SENTENCE } from '../../src/paper/pdf/check-figures.ts';
import { type PaperFonts, makePdf } from '../../src/paper/pdf/pdf.edge.ts';
import { drawn, kingBorder, listOf, rectangle, slants } from './lists.ts';
import { type Raster, allPages, darkRuns, pageSizes, rasterOf, wordBoxes, wordsOf } from './raster.ts';

let fonts: PaperFonts;
beforeAll(async () => {
  fonts = await readPaperFonts();
});

async function printed(list: DisplayList<'quilt'>, options: PdfOptions): Promise<Uint8Array> {
  const made = await makePdf(list, options, fonts);
  if (!made.ok) throw new Error(made.problem.message);
  return made.value;
}

function planned(list: DisplayList<'quilt'>, options: PdfOptions) {
  const print = planPrint(list, options);
  if (!print.ok) throw new Error(print.problem.message);
  return print.value;
}

const block = listOf(12, 12, [drawn('raw-edge', rectangle(0, 0, 12, 12)), drawn('needle', circle({ x: 6, y: 6 }, 4))]);
const DPI = 300;
const BAND = 1.2;
/** Relative error allowed of a printed length: a tenth of a per cent. */
const TRUE_SIZE = 0.001;

/** Middles of the outermost dark runs in the lower left corner of a page, where the check figures are. */
function extent(raster: Raster, down: boolean, at: number, from: number, to: number): number {
  const runs = darkRuns(raster, down, at, from, to);
  return runs.length < 2 ? NaN : (runs[runs.length - 1]! - runs[0]!) / raster.dpi;
}

describe('check figures', () => {
  const papers: readonly (readonly [string, Partial<PdfOptions>, number])[] = [
    ['letter', { paper: 'letter' }, 1 / 4],
    ['A4', { paper: 'a4' }, 6 / 25.4],
    ['tabloid on its side', { paper: 'tabloid', orientation: 'landscape' }, 1 / 4],
    ['A3', { paper: 'a3' }, 6 / 25.4],
    ['a roll', { paper: { roll: 24 } }, 1 / 4],
  ];
  for (const [name, options, margin] of papers) {
    it(`are true on every page of ${name}: 1 in is 300 dots, 5 cm is 5 / 2.54 of it (NIST: an inch is 25.4 mm)`, async () => {
      const pdf = await printed(block, { paper: 'letter', title: 'Check', ...options });
      const pages = pageSizes(pdf).length;
      expect(pages).toBeGreaterThan(1);
      for (let page = 1; page <= pages; page++) {
        const raster = rasterOf(pdf, page, DPI);
        const top = raster.height - (margin + BAND) * DPI;
        const inSquare = Math.round(top + 0.3 * DPI);
        const left = margin * DPI;
        expect(Math.abs(extent(raster, false, inSquare, left, left + 1.15 * DPI) - 1), `across, page ${page}`).toBeLessThan(TRUE_SIZE);
        const column = Math.round(left + 0.3 * DPI);
        expect(Math.abs(extent(raster, true, column, top + 3, raster.height - margin * DPI) - 1), `down, page ${page}`).toBeLessThan(TRUE_SIZE);
        // A row through the end ticks of the bar, above the tips of those between.
        const inTicks = Math.round(top + 0.53 * DPI);
        const runs = darkRuns(raster, false, inTicks, left + 1.15 * DPI, left + 3.3 * DPI);
        const bar = (runs[runs.length - 1]! - runs[0]!) / DPI;
        expect(Math.abs(bar / (5 / 2.54) - 1), `bar, page ${page}`).toBeLessThan(TRUE_SIZE);
      }
    });
  }
});

describe('the picture', () => {
  it('is at true size: a circle of 6 in across measures so both ways', async () => {
    const list = listOf(7, 7, [drawn('needle', circle({ x: 3.5, y: 3.5 }, 3))]);
    const raster = rasterOf(await printed(list, { paper: 'letter', title: 'Ring', cover: false }), 1, DPI);
    const middle = { x: raster.width / 2, y: (1 / 4 + (11 - 1 / 2 - BAND - 0.12) / 2) * DPI };
    const across = darkRuns(raster, false, Math.round(middle.y), 0, raster.width - 1);
    const down = darkRuns(raster, true, Math.round(middle.x), 0, raster.height - (BAND + 0.3) * DPI);
    expect(across).toHaveLength(2);
    expect(down).toHaveLength(2);
    expect((across[1]! - across[0]!) / DPI / 6).toBeCloseTo(1, 3);
    expect((down[1]! - down[0]!) / DPI / 6).toBeCloseTo(1, 3);
  });

  it('has its needle line darker than everything beside it', async () => {
    const list = listOf(7, 7, [drawn('template-edge', rectangle(1, 1, 5, 5)), drawn('reference', rectangle(2, 2, 3, 3)), drawn('needle', circle({ x: 3.5, y: 3.5 }, 3))]);
    const raster = rasterOf(await printed(list, { paper: 'letter', title: 'Ring', cover: false }), 1, DPI);
    const row = Math.round((1 / 4 + (11 - 1 / 2 - BAND - 0.12) / 2) * DPI);
    const ink = darkRuns(raster, false, row, 0, raster.width - 1).map((x) => raster.dark(Math.floor(x), row));
    expect(ink[0]).toBeGreaterThan(0.95);
    expect(ink[ink.length - 1]).toBeGreaterThan(0.95);
    for (const other of ink.slice(1, -1)) expect(other).toBeLessThan(0.7);
  });
});

describe('pages', () => {
  it('have the sizes of the standards: letter 612 x 792, A4 595.28 x 841.89 points (ISO 216)', async () => {
    for (const size of pageSizes(await printed(block, { paper: 'letter', orientation: 'portrait', title: '' }))) expect(size).toEqual({ width: 612, height: 792 });
    for (const size of pageSizes(await printed(block, { paper: 'a4', orientation: 'portrait', title: '' }))) {
      expect(size.width).toBeCloseTo((210 / 25.4) * 72, 2);
      expect(size.height).toBeCloseTo((297 / 25.4) * 72, 2);
    }
    for (const size of pageSizes(await printed(block, { paper: 'tabloid', orientation: 'landscape', title: '' }))) expect(size).toEqual({ width: 1224, height: 792 });
  });

  it('bear their name, the plan, the sentence and the legend', async () => {
    const pdf = await printed(block, { paper: 'letter', title: 'Tidewater', area: 'border 1, top' });
    const { map, pages } = planned(block, { paper: 'letter', title: 'Tidewater' });
    map.tiles.forEach((tile, i) => {
      const words = wordsOf(pdf, i + 2).replace(/\s+/g, ' ');
      expect(words).toContain(tile.name);
      expect(words).toContain(`page ${i + 2} of ${pages}`);
      for (const expected of ['Tidewater', 'border 1, top', 'Needle line', 'Raw edge', '1 in', '5 cm']) expect(words).toContain(expected);
      // The sentence is broken over lines that stand beside other words, so it is looked for word by word.
      for (const word of CHECK_SENTENCE.split(' ')) expect(words).toContain(word);
    });
    const cover = wordsOf(pdf, 1);
    for (const expected of ['not to scale', 'How to join the pages', 'What the lines mean', 'Print at 100 %']) expect(cover).toContain(expected);
  });

  it('set fractions as true fractions: narrower than two digits and a stroke in full size', async () => {
    const list = listOf(6, 6.5, [drawn('needle', circle({ x: 3, y: 3 }, 2)), { kind: 'text', layer: 'label', at: { x: 3, y: 6 }, text: '1/2 in', height: 0.33, anchor: 'middle', source: '' }]);
    const pdf = await printed(list, { paper: 'letter', title: '', cover: false });
    const fraction = wordBoxes(pdf, 1).find((word) => word.text === '1⁄2')!;
    // Source Sans 3: raised and lowered figures are 367 units wide, full ones 497, the stroke 86 (the font's own metrics).
    const size = (0.33 / 0.66) * 72;
    expect(fraction.width / size).toBeCloseTo(0.367 + 0.086 + 0.367, 2);
  });

  it('of a king-size border: as many as its map says, all of them open, blank ones left out', async () => {
    const list = kingBorder();
    const { map, pages } = planned(list, { paper: 'letter', title: '' });
    const pdf = await printed(list, { paper: 'letter', title: 'King' });
    expect(pageSizes(pdf)).toHaveLength(pages);
    expect(pages).toBe(map.printed + 1);
    expect(map.printed).toBeLessThan(map.tiles.length / 2);
    const names = wordsOf(pdf, 2, pages);
    for (const tile of map.tiles) {
      const shown = new RegExp(`(^|\\s)${tile.name}\\s`).test(names);
      if (tile.number !== undefined) expect(shown, tile.name).toBe(true);
    }
    // Every page is rendered without a complaint and has ink of the picture, above the strip.
    const { pages: rasters, complaints } = allPages(pdf, 30);
    expect(complaints).toBe('');
    expect(rasters).toHaveLength(pages);
    rasters.forEach((raster, i) => {
      let dark = 0;
      for (let y = 0; y < raster.height - 1.5 * raster.dpi; y++) for (let x = 0; x < raster.width; x++) dark += raster.dark(x, y);
      expect(dark, `page ${i + 1}`).toBeGreaterThan(5);
    });
    expect(pdf.length).toBeLessThan(1_000_000);
  });
});

describe('joining', () => {
  const list = slants(20, 16);
  const options = { paper: 'letter', orientation: 'portrait', title: 'Slants', cover: false } as const;

  for (const side of ['right', 'below'] as const) {
    it(`shows the same in the strip shared with the page ${side}: lines go on where they left off, to three quarters of a dot`, async () => {
      const { map } = planned(list, options);
      const pdf = await printed(list, options);
      const rasters = map.tiles.map((tile) => rasterOf(pdf, tile.number!, DPI));
      const { margin } = map.sheet;
      const live = side === 'right' ? map.liveWidth : map.liveHeight;
      const length = side === 'right' ? map.liveHeight : map.liveWidth;
      let compared = 0;
      map.tiles.forEach((tile, i) => {
        const next = map.tiles.findIndex((other) => other.row === tile.row + (side === 'below' ? 1 : 0) && other.column === tile.column + (side === 'right' ? 1 : 0));
        if (next < 0) return;
        // The strip is the last half inch of this page and the first of the next. A row of dots off its middle, clear of crosses and words.
        const here = Math.round((margin + live - map.overlap / 2 + 0.06) * DPI);
        const there = Math.round((margin + map.overlap / 2 + 0.06) * DPI);
        const needle = (raster: Raster, at: number) => heavyRuns(raster, side === 'right', at, (margin + 0.6) * DPI, (margin + length - 0.6) * DPI);
        const lines = needle(rasters[i]!, here);
        const goneOn = needle(rasters[next]!, there);
        expect(goneOn.length, tile.name).toBe(lines.length);
        lines.forEach((place, n) => expect(Math.abs(place - goneOn[n]!)).toBeLessThanOrEqual(0.75));
        compared += lines.length;
      });
      expect(compared).toBeGreaterThanOrEqual(3);
    });
  }

  it('puts crosses where they land on each other: the same places of the picture on both pages', async () => {
    const { map } = planned(list, options);
    const pdf = await printed(list, options);
    const { margin } = map.sheet;
    const [a, b] = [map.tiles[0]!, map.tiles[1]!];
    const centre = (raster: Raster, x: number, y: number) => [
      runNear(darkRuns(raster, false, Math.round(y * DPI) - 33, (x - 0.1) * DPI, (x + 0.1) * DPI), x * DPI),
      runNear(darkRuns(raster, true, Math.round(x * DPI) - 33, (y - 0.1) * DPI, (y + 0.1) * DPI), y * DPI),
    ];
    const here = centre(rasterOf(pdf, a.number!, DPI), margin + map.liveWidth - map.overlap / 2, margin + map.overlap / 2);
    const there = centre(rasterOf(pdf, b.number!, DPI), margin + map.overlap / 2, margin + map.overlap / 2);
    const step = (map.liveWidth - map.overlap) * DPI;
    expect(here[0]! - step - there[0]!).toBeCloseTo(0, 0);
    expect(here[1]! - there[1]!).toBeCloseTo(0, 0);
  });
});

describe('giving up and refusing', () => {
  it('stops between pages when asked, and says so', async () => {
    let painted = 0;
    const made = await makePdf(kingBorder(), { paper: 'letter', title: '' }, fonts, { onProgress: () => painted++, cancelled: () => painted >= 3 });
    expect(made).toMatchObject({ ok: false, problem: { kind: 'cancelled' } });
    expect(painted).toBe(3);
  });

  it('has a sentence for a roll too narrow, an overlap too wide and an empty picture', async () => {
    expect(await makePdf(block, { paper: { roll: 5 }, title: '' }, fonts)).toMatchObject({ ok: false, problem: { kind: 'paper-too-narrow' } });
    expect(await makePdf(block, { paper: 'letter', overlap: 9, title: '' }, fonts)).toMatchObject({ ok: false, problem: { kind: 'overlap-too-wide' } });
    expect(await makePdf(listOf(5, 5, []), { paper: 'letter', title: '' }, fonts)).toMatchObject({ ok: false, problem: { kind: 'nothing-to-print' } });
  });
});

/** Middles of the runs that hold black, as only the needle line does. */
function heavyRuns(raster: Raster, down: boolean, at: number, from: number, to: number): readonly number[] {
  return darkRuns(raster, down, at, from, to).filter((place) => (down ? raster.dark(at, Math.floor(place)) : raster.dark(Math.floor(place), at)) > 0.95);
}

function runNear(runs: readonly number[], place: number): number {
  return runs.reduce((best, run) => (Math.abs(run - place) < Math.abs(best - place) ? run : best), Infinity);
}
