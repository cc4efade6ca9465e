// What a frame leaves open round the centre: the largest circle and the largest upright rectangle about the centre that no line crosses.
//
// Maths: the circle's radius is the distance from the centre to the nearest line. A rectangle of half width w can be as high as the nearest
// line to the middle among those within w of it; the product is looked for on a row of widths and closed in on by golden sections.

import { boundsOf } from '../../geometry/bounds.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { distanceToPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf, straight } from '../../geometry/path.ts';
import { type Point, moved } from '../../geometry/point.ts';
import { partOfAngle } from '../../geometry/segment.ts';

export interface Opening {
  /** Of the largest circle about the centre, in inches. */
  readonly radius: number;
  /** Width and height of the upright rectangle about the centre that is largest by area, in inches. */
  readonly rectangle: { readonly width: number; readonly height: number };
  /** The side of the largest upright square about the centre. */
  readonly square: number;
}

const WIDTHS = 96;
const HALVINGS = 50;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The opening round the centre of an area, within its boundary and clear of some lines (the area's own axes). */
export function openingOf(boundary: Path<'area'>, lines: readonly Path<'area'>[]): Opening {
  const all = [boundary, ...lines];
  const centre: Point<'area'> = { x: 0, y: 0 };
  const radius = Math.min(...all.map((path) => distanceToPath(path, centre)));
  const half = boundsOf(boundary).maxX;
  const height = (w: number) => heightFor(all, w);
  const area = (w: number) => w * height(w);
  const step = half / WIDTHS;
  let best = step;
  for (let i = 2; i <= WIDTHS; i++) if (area(i * step) > area(best)) best = i * step;
  let [low, high] = [best - step, Math.min(half, best + step)];
  for (let n = 0; n < HALVINGS; n++) {
    const [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (area(a) >= area(b)) high = b;
    else low = a;
  }
  const w = area(best) > area((low + high) / 2) ? best : (low + high) / 2;
  // The height falls as the width grows: they are equal once.
  let [less, more] = [0, half];
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (less + more) / 2;
    if (height(middle) >= middle) less = middle;
    else more = middle;
  }
  return { radius, rectangle: { width: 2 * w, height: 2 * height(w) }, square: 2 * less };
}

/** How far up and down from the centre the nearest line within `w` to either side of it lies. */
function heightFor(lines: readonly Path<'area'>[], w: number): number {
  let least = Infinity;
  const meet = (p: Point<'area'>) => {
    if (Math.abs(p.x) < w) least = Math.min(least, Math.abs(p.y));
  };
  for (const path of lines) {
    for (const s of segmentsOf(path)) {
      meet(s.from);
      meet(s.to);
      if (s.kind === 'arc') for (const y of [s.radius, -s.radius]) if (partOfAngle(s, Math.atan2(y, 0)) <= 1) meet(moved(s.centre, { x: 0, y }));
      if (s.kind === 'arc') for (const x of [s.radius, -s.radius]) if (partOfAngle(s, Math.atan2(0, x)) <= 1) meet(moved(s.centre, { x, y: 0 }));
    }
    const { minY, maxY } = boundsOf(path);
    for (const x of [-w, w]) {
      for (const meeting of meetPaths(straight<'area'>({ x, y: minY - 1 }, { x, y: maxY + 1 }), path)) least = Math.min(least, Math.abs(meeting.kind === 'overlap' ? Math.min(Math.abs(meeting.from.y), Math.abs(meeting.to.y)) : meeting.at.y));
    }
    // A line that lies along the middle within the width shuts the opening; one that runs through the middle is met here.
    for (const meeting of meetPaths(straight<'area'>({ x: -w, y: 0 }, { x: w, y: 0 }), path)) if (meeting.kind !== 'overlap' && Math.abs(meeting.at.x) < w) least = 0;
  }
  return least;
}
