// The whole picture reduced, for the cover: lines a little lighter than true, points that would fall together left out.

import type { DisplayItem, Layer } from '../../drawing/display-list.ts';
import type { Path } from '../../geometry/path.ts';
import type { Frame } from '../../geometry/point.ts';
import { arcByBulge } from '../../geometry/segment.ts';
import type { PaperStyle } from '../style.ts';
import { curvesOfArc } from './arc-curves.ts';
import type { PaperCanvas, Pen } from './canvas.ts';

/** Where the picture's (left, top) comes to lie, and how many inches of paper an inch of it takes. */
export interface Reduction {
  readonly x: number;
  readonly y: number;
  readonly left: number;
  readonly top: number;
  readonly scale: number;
}

/** What would be too small to see, in inches on the paper: points nearer than this are one, arcs flatter are straight. */
const TOO_SMALL = 0.004;

const THINNEST = 0.004;
/** How far towards the paper the greys are moved, so that the names of the pages can be read over a dense picture. */
const LIGHTER = 0.3;

const SHOWN: readonly Layer[] = ['seam', 'raw-edge', 'keep-out', 'template-edge', 'needle'];

/** Paints the lines that tell what the picture is; texts and fine lines are left out. */
export function paintSmallPicture<F extends Frame>(canvas: PaperCanvas, items: readonly DisplayItem<F>[], at: Reduction, style: PaperStyle): void {
  for (const layer of SHOWN) {
    const here = items.filter((item) => item.layer === layer);
    if (here.length === 0) continue;
    const { width, grey } = style[layer];
    const pen: Pen = { width: Math.max(THINNEST, width * Math.sqrt(at.scale) * 0.5), grey: grey + (1 - grey) * LIGHTER, cap: 'round' };
    canvas.inLayer(style[layer].name, () => {
      for (const item of here) if (item.kind === 'path') trace(canvas, item.path, at, pen);
    });
  }
}

function trace<F extends Frame>(canvas: PaperCanvas, path: Path<F>, { x, y, left, top, scale }: Reduction, pen: Pen): void {
  const { vertices, closed } = path;
  const total = closed ? vertices.length : vertices.length - 1;
  const first = vertices[0];
  if (!first) return;
  const across = (v: number) => x + (v - left) * scale;
  const down = (v: number) => y + (v - top) * scale;
  canvas.moveTo(across(first.x), down(first.y));
  let from = first;
  for (let i = 0; i < total; i++) {
    const a = vertices[i]!;
    const b = vertices[(i + 1) % vertices.length]!;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const rises = (Math.abs(a.bulge) * chord * scale) / 2 > TOO_SMALL;
    if (!rises) {
      if (i < total - 1 && Math.hypot(b.x - from.x, b.y - from.y) * scale < TOO_SMALL) continue;
      canvas.lineTo(across(b.x), down(b.y));
      from = b;
      continue;
    }
    const arc = arcByBulge<F>(a, b, a.bulge);
    if (from !== a) canvas.lineTo(across(a.x), down(a.y));
    from = b;
    if (arc.kind === 'line') canvas.lineTo(across(b.x), down(b.y));
    else for (const [x1, y1, x2, y2, x3, y3] of curvesOfArc(arc, TOO_SMALL / scale)) canvas.curveTo(across(x1), down(y1), across(x2), down(y2), across(x3), down(y3));
  }
  canvas.stroke(pen);
}
