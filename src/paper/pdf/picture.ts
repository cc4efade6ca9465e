// Painting what of the picture lies on a page, at true size.

import type { Drawn, Layer } from '../../drawing/display-list.ts';
import type { Bounds } from '../../geometry/bounds.ts';
import { lengthsBefore } from '../../geometry/measure.ts';
import type { Frame } from '../../geometry/point.ts';
import { arcByBulge } from '../../geometry/segment.ts';
import type { LineStyle, PaperStyle } from '../style.ts';
import { curvesOfArc } from './arc-curves.ts';
import type { Box, PaperCanvas } from './canvas.ts';
import type { Ink, Inked, Run } from './ink.ts';
import { write } from './lettering.ts';

/** Capitals of the label face as a part of its size (Source Sans 3: 660 of 1000 units). */
export const CAPITALS = 0.66;

/** Where the picture lies on a page: the picture's (left, top) comes to (x, y) on the paper. */
export interface Window {
  readonly shows: Bounds;
  readonly x: number;
  readonly y: number;
  /** What of the paper may be painted. */
  readonly clip: Box;
}

/** Paints all that reaches into the window, layer by layer, clipped to it. */
export function paintPicture<F extends Frame>(canvas: PaperCanvas, ink: Ink<F>, window: Window, style: PaperStyle): void {
  const across = window.x - window.shows.minX;
  const down = window.y - window.shows.minY;
  const reach = Math.max(...Object.values(style).map((line) => line.width));
  const { minX, minY, maxX, maxY } = window.shows;
  const found = ink.in({ minX: minX - reach, minY: minY - reach, maxX: maxX + reach, maxY: maxY + reach });
  canvas.within(window.clip, () => {
    for (const [layer, things] of byLayer(found)) {
      const line = style[layer];
      canvas.inLayer(line.name, () => {
        for (const thing of things) paintThing(canvas, thing, line, across, down);
      });
    }
  });
}

/** Things come in painting order, so those of a layer follow each other. */
function byLayer<F extends Frame>(things: readonly Inked<F>[]): ReadonlyMap<Layer, readonly Inked<F>[]> {
  const layers = new Map<Layer, Inked<F>[]>();
  for (const thing of things) {
    const known = layers.get(thing.item.layer);
    if (known) known.push(thing);
    else layers.set(thing.item.layer, [thing]);
  }
  return layers;
}

function paintThing<F extends Frame>(canvas: PaperCanvas, thing: Inked<F>, line: LineStyle, across: number, down: number): void {
  if (!('runs' in thing)) {
    const { at, text, height, anchor } = thing.item;
    write(canvas, at.x + across, at.y + down, text, { face: 'label', size: height / CAPITALS, grey: line.grey, anchor });
    return;
  }
  const { item, runs } = thing;
  if (item.filled && line.fill !== undefined) {
    trace(canvas, item, 'all', across, down);
    for (const path of item.holes ?? []) trace(canvas, { ...item, path }, 'all', across, down);
    canvas.fill(line.fill);
  }
  if (line.width <= 0) return;
  for (const run of runs === 'all' ? (['all'] as const) : runs) {
    trace(canvas, item, run, across, down);
    const phase = line.dash.length > 0 && run !== 'all' ? lengthsBefore(item.path)[run.first]! : 0;
    canvas.stroke({ width: line.width, grey: line.grey, dash: line.dash, phase, cap: line.cap });
  }
}

/** Leads the pen along a path or a run of it. */
function trace<F extends Frame>(canvas: PaperCanvas, item: Drawn<F>, run: Run | 'all', across: number, down: number): void {
  const { vertices, closed } = item.path;
  const total = closed ? vertices.length : vertices.length - 1;
  const { first, count } = run === 'all' ? { first: 0, count: total } : run;
  const start = vertices[first];
  if (!start) return;
  canvas.moveTo(start.x + across, start.y + down);
  for (let i = first; i < first + count; i++) {
    const a = vertices[i % vertices.length]!;
    const b = vertices[(i + 1) % vertices.length]!;
    const segment = a.bulge === 0 ? undefined : arcByBulge<F>(a, b, a.bulge);
    if (segment?.kind !== 'arc') {
      canvas.lineTo(b.x + across, b.y + down);
      continue;
    }
    for (const [x1, y1, x2, y2, x, y] of curvesOfArc(segment)) {
      canvas.curveTo(x1 + across, y1 + down, x2 + across, y2 + down, x + across, y + down);
    }
  }
  if (run === 'all' && closed) canvas.close();
}
