// What of a display list comes to lie in a rectangle, found quickly: things by an index, and of long paths only the runs of
// stretches that reach in, so that a border over a hundred pages is not drawn a hundred times.

import Flatbush from 'flatbush';
import type { DisplayItem, DisplayList, Drawn, Layer, Lettered } from '../../drawing/display-list.ts';
import { type Bounds, boundsHold } from '../../geometry/bounds.ts';
import { meetSegments } from '../../geometry/meet-segments.ts';
import { segmentsOf } from '../../geometry/path.ts';
import type { Frame } from '../../geometry/point.ts';
import { type Segment, lineFrom } from '../../geometry/segment.ts';
import { segmentsIn } from '../../geometry/segment-index.ts';
import type { PaperStyle } from '../style.ts';

/** Consecutive segments of a path, counted on beyond its last when they run over the start of a closed one. */
export interface Run {
  readonly first: number;
  readonly count: number;
}

export type Inked<F extends Frame> = { readonly item: Drawn<F>; readonly runs: readonly Run[] | 'all' } | { readonly item: Lettered<F> };

export interface Ink<F extends Frame> {
  readonly items: readonly DisplayItem<F>[];
  /** What reaches into a rectangle, in painting order. */
  readonly in: (box: Bounds) => readonly Inked<F>[];
  /** Whether a line is drawn or a text stands in a rectangle, its edge included. */
  readonly holds: (box: Bounds) => boolean;
}

/** The things of a list that a style draws, of these layers only. */
export function inkOf<F extends Frame>(list: DisplayList<F>, layers: ReadonlySet<Layer>, style: PaperStyle): Ink<F> {
  const items = list.items.filter((item) => layers.has(item.layer) && (item.kind === 'text' || leavesInk(item, style)));
  if (items.length === 0) return { items, in: () => [], holds: () => false };
  const bounds = items.map(roughBounds);
  const index = new Flatbush(items.length);
  for (const b of bounds) index.add(b.minX, b.minY, b.maxX, b.maxY);
  index.finish();
  const found = (box: Bounds) => index.search(box.minX, box.minY, box.maxX, box.maxY).sort((a, b) => a - b);
  return {
    items,
    in: (box) =>
      found(box).flatMap((i): readonly Inked<F>[] => {
        const item = items[i]!;
        if (item.kind === 'text') return [{ item }];
        if (contains(box, bounds[i]!) || item.filled) return [{ item, runs: 'all' }];
        const runs = runsOf(item, segmentsIn(item.path, box));
        return runs === 'all' || runs.length > 0 ? [{ item, runs }] : [];
      }),
    holds: (box) => found(box).some((i) => standsIn(items[i]!, bounds[i]!, box, style)),
  };
}

function leavesInk<F extends Frame>(item: Drawn<F>, style: PaperStyle): boolean {
  const { width, fill } = style[item.layer];
  return width > 0 || (item.filled === true && fill !== undefined);
}

/** A rectangle that surely holds the item: an arc of at most a half turn stays within its rise of its chord. */
function roughBounds<F extends Frame>(item: DisplayItem<F>): Bounds {
  if (item.kind === 'text') return textBounds(item);
  const { vertices } = item.path;
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  let rise = 0;
  for (let i = 0; i < vertices.length; i++) {
    const { x, y, bulge } = vertices[i]!;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
    if (bulge !== 0) {
      const next = vertices[(i + 1) % vertices.length]!;
      rise = Math.max(rise, (Math.abs(bulge) * Math.hypot(next.x - x, next.y - y)) / 2);
    }
  }
  return { minX: minX - rise, minY: minY - rise, maxX: maxX + rise, maxY: maxY + rise };
}

/** A generous box round a text: no letter is wider than one and a half times the height of its capitals. */
function textBounds<F extends Frame>({ at, text, height, anchor }: Lettered<F>): Bounds {
  const width = text.length * height * 1.5;
  const left = at.x - { start: 0, middle: width / 2, end: width }[anchor];
  return { minX: left, minY: at.y - height * 1.5, maxX: left + width, maxY: at.y + height * 0.5 };
}

function contains(outer: Bounds, inner: Bounds): boolean {
  return inner.minX >= outer.minX && inner.maxX <= outer.maxX && inner.minY >= outer.minY && inner.maxY <= outer.maxY;
}

/** Neighbouring segments gathered into runs; on a closed path the last run goes on into the first. */
function runsOf<F extends Frame>(item: Drawn<F>, segments: readonly number[]): readonly Run[] | 'all' {
  const total = item.path.closed ? item.path.vertices.length : item.path.vertices.length - 1;
  if (segments.length === total) return 'all';
  const runs: Run[] = [];
  for (const i of segments) {
    const last = runs.at(-1);
    if (last && last.first + last.count === i) runs[runs.length - 1] = { first: last.first, count: last.count + 1 };
    else runs.push({ first: i, count: 1 });
  }
  const first = runs[0];
  const last = runs.at(-1);
  if (item.path.closed && runs.length > 1 && first!.first === 0 && last!.first + last!.count === total) {
    return [...runs.slice(1, -1), { first: last!.first, count: last!.count + first!.count }];
  }
  return runs;
}

function standsIn<F extends Frame>(item: DisplayItem<F>, bounds: Bounds, box: Bounds, style: PaperStyle): boolean {
  if (item.kind === 'text') return boundsHold(box, item.at);
  if (style[item.layer].width <= 0) return false;
  if (contains(box, bounds)) return true;
  const segments = segmentsOf(item.path);
  return segmentsIn(item.path, box).some((i) => reachesInto(segments[i]!, box));
}

/** Whether a segment has a point in the box, its edge included. */
function reachesInto<F extends Frame>(segment: Segment<F>, box: Bounds): boolean {
  if (boundsHold(box, segment.from) || boundsHold(box, segment.to)) return true;
  const corners = [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.minY },
    { x: box.maxX, y: box.maxY },
    { x: box.minX, y: box.maxY },
  ];
  return corners.some((corner, i) => meetSegments(segment, lineFrom<F>(corner, corners[(i + 1) % 4]!)).length > 0);
}
