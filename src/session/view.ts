// How the quilt is seen on the table: which place lies in the table's upper left corner, and how large an inch is.
// Screen lengths are CSS pixels from the table's upper left corner; quilt lengths are inches.

import type { Point } from '../geometry/point.ts';

export interface View {
  /** Quilt coordinates of the table's upper left corner. */
  readonly x: number;
  readonly y: number;
  /** CSS pixels to the inch. */
  readonly scale: number;
}

export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

export interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

/** A stretch of the quilt, in inches. */
export interface Stretch {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How near and how far one can look, in CSS pixels to the inch. */
export const LEAST_SCALE = 0.5;
export const MOST_SCALE = 2000;

/** Where a place on the quilt is seen. */
export function onScreen(view: View, p: Point<'quilt'>): ScreenPoint {
  return { x: (p.x - view.x) * view.scale, y: (p.y - view.y) * view.scale };
}

/** The place on the quilt that is seen at a point of the table. */
export function onQuilt(view: View, at: ScreenPoint): Point<'quilt'> {
  return { x: view.x + at.x / view.scale, y: view.y + at.y / view.scale };
}

/** The view in which a stretch of the quilt fills the table but for a margin in CSS pixels, and lies in its middle. */
export function framed(stretch: Stretch, table: ScreenSize, margin: number): View {
  const room = (whole: number) => Math.max(whole - 2 * margin, whole / 2, 1);
  const across = stretch.width > 0 ? room(table.width) / stretch.width : MOST_SCALE;
  const down = stretch.height > 0 ? room(table.height) / stretch.height : MOST_SCALE;
  const scale = clampedScale(Math.min(across, down));
  return {
    scale,
    x: stretch.x + stretch.width / 2 - table.width / scale / 2,
    y: stretch.y + stretch.height / 2 - table.height / scale / 2,
  };
}

/** The view nearer by a factor (or farther, below 1), with the place under a point of the table staying there. */
export function zoomedAbout(view: View, at: ScreenPoint, factor: number): View {
  const scale = clampedScale(view.scale * factor);
  const held = onQuilt(view, at);
  return { scale, x: held.x - at.x / scale, y: held.y - at.y / scale };
}

/** The view after the quilt has been pushed across the table. */
export function pushed(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x - dx / view.scale, y: view.y - dy / view.scale };
}

/** The view after the table changed its size, with the same place in its middle. */
export function recentred(view: View, before: ScreenSize, after: ScreenSize): View {
  return pushed(view, (after.width - before.width) / 2, (after.height - before.height) / 2);
}

/** The view kept from losing the quilt: some of it always stays on the table. */
export function keptInSight(view: View, quilt: Stretch, table: ScreenSize, least: number): View {
  const inSight = (start: number, from: number, length: number, whole: number) => {
    const seen = Math.min(least, (length * view.scale) / 2, whole / 2) / view.scale;
    return Math.min(Math.max(start, from + seen - whole / view.scale), from + length - seen);
  };
  const x = inSight(view.x, quilt.x, quilt.width, table.width);
  const y = inSight(view.y, quilt.y, quilt.height, table.height);
  return x === view.x && y === view.y ? view : { ...view, x, y };
}

function clampedScale(scale: number): number {
  return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale));
}
