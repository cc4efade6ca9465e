// A small true picture of a plan for the list: cloth and stitched lines from the same display list that the table and the
// paper are drawn from, on a grid coarse enough to keep the picture small.

import type { DisplayItem, DisplayList } from '../../drawing/display-list.ts';
import { flatten } from '../../geometry/flatten.ts';
import type { Path } from '../../geometry/path.ts';

export interface PlanPicture {
  /** Of the picture, in its own units. */
  readonly width: number;
  readonly height: number;
  /** In painting order: path data and the class name it is dressed with. */
  readonly parts: readonly { readonly dress: string; readonly d: string }[];
}

/** How fine the grid is, across the longer side; the first whose picture is small enough is taken. */
const GRIDS = [480, 320, 220, 150] as const;
/** In characters of path data. */
const MOST = 40_000;

/** `dressOf` gives the class name of a piece of cloth. An empty list gives an empty picture. */
export function pictureOf(list: DisplayList<'quilt'>, dressOf: (item: DisplayItem<'quilt'>) => string): PlanPicture {
  for (const grid of GRIDS) {
    const picture = onGrid(list, dressOf, grid);
    if (grid === GRIDS[GRIDS.length - 1] || picture.parts.reduce((sum, { d }) => sum + d.length, 0) <= MOST) return picture;
  }
  return { width: 0, height: 0, parts: [] };
}

function onGrid({ bounds, items }: DisplayList<'quilt'>, dressOf: (item: DisplayItem<'quilt'>) => string, grid: number): PlanPicture {
  const longer = Math.max(bounds.width, bounds.height);
  if (!(longer > 0)) return { width: 0, height: 0, parts: [] };
  const scale = grid / longer;
  const seen = new Set<string>();
  const parts = new Map<string, string>();
  const add = (dress: string, d: string) => {
    if (d !== '') parts.set(dress, (parts.get(dress) ?? '') + d);
  };
  const corners = (path: Path<'quilt'>): readonly Corner[] => {
    // Half a step of the grid: finer would be rounded away.
    const points = flatten(path, 0.5 / scale).map(({ x, y }): Corner => [Math.round((x - bounds.x) * scale), Math.round((y - bounds.y) * scale)]);
    return path.closed && points[0] ? [...points, points[0]] : points;
  };
  for (const item of items) {
    if (item.kind !== 'path') continue;
    if (item.layer === 'ground') add(dressOf(item), clothData([item.path, ...(item.holes ?? [])].map(corners)));
    else if (item.layer === 'needle') add('needle', stitchData(corners(item.path), seen));
  }
  return { width: Math.round(bounds.width * scale), height: Math.round(bounds.height * scale), parts: [...parts].map(([dress, d]) => ({ dress, d })) };
}

type Corner = readonly [x: number, y: number];

function clothData(outlines: readonly (readonly Corner[])[]): string {
  return outlines.map((outline) => `M${outline.map(([x, y]) => `${x} ${y}`).join('L')}Z`).join('');
}

/** A line's stretches that no other line has drawn on this grid already. */
function stitchData(line: readonly Corner[], seen: Set<string>): string {
  let data = '';
  let at: Corner | undefined;
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const forth = `${a[0]} ${a[1]} ${b[0]} ${b[1]}`;
    if ((a[0] === b[0] && a[1] === b[1]) || seen.has(forth)) continue;
    seen.add(forth);
    seen.add(`${b[0]} ${b[1]} ${a[0]} ${a[1]}`);
    if (at !== a) data += `M${a[0]} ${a[1]}`;
    data += `l${b[0] - a[0]} ${b[1] - a[1]}`;
    at = b;
  }
  return data;
}
