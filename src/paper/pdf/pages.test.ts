import { describe, expect, it } from 'vitest';
import type { Bounds } from '../../geometry/bounds.ts';
import { random } from '../../num/random.ts';
import type { Paper } from './options.ts';
import { BAND_GAP, BAND_HEIGHT, type PageMap, type Tiling, planPages, printedAt } from './pages.ts';
import { sheetFor } from './sheets.ts';

const everywhere = () => true;
const box = (width: number, height: number): Bounds => ({ minX: 0, minY: 0, maxX: width, maxY: height });

function planned(bounds: Bounds, tiling: Tiling, holds: (box: Bounds) => boolean = everywhere): PageMap {
  const map = planPages(bounds, tiling, holds);
  if (!map.ok) throw new Error(map.problem.message);
  return map.value;
}

describe('sheetFor', () => {
  it('knows A4 as 210 x 297 mm and A3 as 297 x 420 (ISO 216), letter and tabloid by ANSI Y14.1', () => {
    const size = (paper: Paper) => {
      const sheet = sheetFor(paper, 'portrait', { width: 1, height: 1 }, 0);
      return sheet.ok ? [sheet.value.width, sheet.value.height] : [];
    };
    expect(size('a4').map((x) => x * 25.4)).toEqual([expect.closeTo(210, 9), expect.closeTo(297, 9)]);
    expect(size('a3').map((x) => x * 25.4)).toEqual([expect.closeTo(297, 9), expect.closeTo(420, 9)]);
    expect(size('letter')).toEqual([8.5, 11]);
    expect(size('tabloid')).toEqual([11, 17]);
  });
});

describe('planPages', () => {
  it('puts on one page what fits, to the last hair', () => {
    expect(planned(box(8, 6), { paper: 'letter' })).toMatchObject({ rows: 1, columns: 1, printed: 1 });
    expect(planned(box(8.01, 6), { paper: 'letter', orientation: 'portrait' }).columns).toBe(2);
  });

  it('needs 1 + ceil((length - page) / (page - overlap)) pages, counted by hand for a 110 in border on letter upright', () => {
    // 8 in are shown and 7 1/2 gained by each further page: 8 + 14 x 7.5 = 113.
    const map = planned(box(110, 5), { paper: 'letter', orientation: 'portrait' });
    expect(map).toMatchObject({ rows: 1, columns: 15, printed: 15 });
  });

  it('turns the paper when that takes fewer pages', () => {
    // On its side a letter page shows 10 1/2 in: 10.5 + 10 x 10 = 110.5, so 11 pages instead of 15.
    expect(planned(box(110, 5), { paper: 'letter' })).toMatchObject({ orientation: 'landscape', columns: 11 });
    expect(planned(box(5, 110), { paper: 'letter' })).toMatchObject({ orientation: 'portrait', columns: 1 });
  });

  it('shows every place, in cells that share none of it, whatever the size, seed 5', () => {
    const { between } = random(5);
    for (let i = 0; i < 200; i++) {
      const bounds = { minX: between(-9, 9), minY: between(-9, 9), maxX: between(10, 130), maxY: between(10, 130) };
      const overlap = between(0, 2);
      const map = planned(bounds, { paper: (['letter', 'a4', 'tabloid', 'a3'] as const)[i % 4]!, overlap });
      const cells = map.tiles.reduce((sum, { cell }) => sum + (cell.maxX - cell.minX) * (cell.maxY - cell.minY), 0);
      const first = map.tiles[0]!.cell;
      const last = map.tiles.at(-1)!.cell;
      expect(cells).toBeCloseTo((last.maxX - first.minX) * (last.maxY - first.minY), 6);
      expect(first.minX).toBeLessThanOrEqual(bounds.minX + 1e-9);
      expect(last.maxY).toBeGreaterThanOrEqual(bounds.maxY - 1e-9);
      // One page fewer in either direction would not reach.
      const reach = (count: number, live: number) => count * (live - overlap) + overlap;
      if (map.columns > 1) expect(reach(map.columns - 1, map.liveWidth)).toBeLessThan(bounds.maxX - bounds.minX);
      if (map.rows > 1) expect(reach(map.rows - 1, map.liveHeight)).toBeLessThan(bounds.maxY - bounds.minY);
      for (const tile of map.tiles) {
        const right = map.tiles.find((other) => other.row === tile.row && other.column === tile.column + 1);
        if (right) expect(tile.live.maxX - right.live.minX).toBeCloseTo(overlap, 9);
      }
    }
  });

  it('names rows by letters and columns by numbers, and numbers only the pages it prints', () => {
    const map = planned(box(30, 400), { paper: 'letter', orientation: 'portrait' }, (cell) => cell.maxX < 12);
    expect(map.tiles[0]!.name).toBe('A1');
    expect(map.tiles[map.columns + 1]!.name).toBe('B2');
    expect(map.tiles.at(-1)!.name).toMatch(/^A[P-Z]4$/);
    expect(map.tiles.filter((tile) => tile.number !== undefined).map((tile) => tile.number)).toEqual(Array.from({ length: map.printed }, (_, i) => i + 1));
    expect(printedAt(map, 0, 3)).toBeUndefined();
    expect(printedAt(map, 0, -1)).toBeUndefined();
    expect(printedAt(map, 0, 0)?.name).toBe('A1');
  });

  it('cuts a roll to the length the picture needs, and no longer than a PDF page can be (200 in, ISO 32000 annex C)', () => {
    const strip = planned(box(110, 5), { paper: { roll: 24 } });
    expect(strip).toMatchObject({ printed: 1, orientation: 'landscape' });
    expect(strip.sheet.width).toBeCloseTo(110.5, 12);
    const tall = planned(box(20, 60), { paper: { roll: 24 } });
    expect(tall.sheet.height).toBeCloseTo(60 + 0.5 + BAND_HEIGHT + BAND_GAP, 12);
    expect(planned(box(20, 300), { paper: { roll: 24 } }).sheet.height).toBe(200);
  });
});
