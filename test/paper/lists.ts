// Pictures made by hand for the tests of paper.

import type { DisplayItem, DisplayList } from '../../src/drawing/display-list.ts';
import { type Path, type Vertex, openPath, polygon, straight } from '../../src/geometry/path.ts';

type Item = DisplayItem<'quilt'>;

export function listOf(width: number, height: number, items: readonly Item[]): DisplayList<'quilt'> {
  return { bounds: { x: 0, y: 0, width, height }, items };
}

export function drawn(layer: Item['layer'], path: Path<'quilt'>): Item {
  return { kind: 'path', layer, path, source: layer };
}

export function rectangle(x: number, y: number, width: number, height: number): Path<'quilt'> {
  return polygon([{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }]);
}

/** The border of a king-size top, 110 in square: its edge, its inner seam and one wave of arcs along each side. */
export function kingBorder(): DisplayList<'quilt'> {
  const size = 110;
  const width = 8;
  const sides: readonly ((along: number, across: number) => readonly [number, number])[] = [
    (along, across) => [along, across],
    (along, across) => [size - across, along],
    (along, across) => [size - along, size - across],
    (along, across) => [across, size - along],
  ];
  return listOf(size, size, [
    drawn('seam', rectangle(width, width, size - 2 * width, size - 2 * width)),
    drawn('raw-edge', rectangle(0, 0, size, size)),
    ...sides.map((place) => drawn('needle', wave(place, width, size - width, width / 2))),
  ]);
}

/** Half circles of 2 in across, on either side of a line by turns. */
function wave(place: (along: number, across: number) => readonly [number, number], from: number, to: number, across: number): Path<'quilt'> {
  const vertices: Vertex[] = [];
  for (let along = from, i = 0; along <= to; along += 2, i++) {
    const [x, y] = place(along, across);
    vertices.push({ x, y, bulge: i % 2 === 0 ? 1 : -1 });
  }
  return openPath(vertices);
}

/** Slanting lines across a picture larger than a page, whose crossings of a page's edge can be found. */
export function slants(width: number, height: number): DisplayList<'quilt'> {
  return listOf(width, height, [
    drawn('raw-edge', rectangle(0, 0, width, height)),
    ...[0.2, 0.45, 0.8].map((part) => drawn('needle', straight({ x: 0, y: height * part }, { x: width, y: height * (part - 0.13) }))),
    ...[0.12, 0.3, 0.6].map((part) => drawn('needle', straight({ x: width * part, y: 0 }, { x: width * (part + 0.11), y: height }))),
  ]);
}
