// A template with its marks, face up: what the hand draws on it, lettered, and the names of the etchings and tips that are lined up.

import { boundsOf, grownBounds, middleOfBounds } from '../geometry/bounds.ts';
import { whereIs } from '../geometry/inside.ts';
import { distanceToPath, nearestOnPath } from '../geometry/nearest.ts';
import { pointAlong } from '../geometry/measure.ts';
import { type Path, circle, straight } from '../geometry/path.ts';
import { type Point, type Vec, between, distance, moved, partWay, quarterTurned, unit } from '../geometry/point.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { DrawnMark, Hold } from '../place/marks/hold.ts';
import type { LayingToMark, MarkedTemplate } from '../place/marks/marks.ts';
import type { DisplayItem, DisplayList, Drawn, Layer } from './display-list.ts';
import { etched } from './layers/template.ts';

/** How marks are drawn, in inches: a tick from the edge inwards, a dot on the face, letters to be read at arm's length. */
const TICK = 1 / 4;
const DOT = 1 / 16;
const LETTER = 3 / 16;
const NAME = 1 / 8;

/** The picture of a template with its marks, in template coordinates and inches; every mark's source is `mark:` and its letter. */
export function markedTemplate<Of extends LayingToMark>({ id, shape, marks, layings }: Pick<MarkedTemplate<Of>, 'id' | 'shape' | 'marks' | 'layings'>): DisplayList<'template'> {
  const drawn = (layer: Layer, path: Path<'template'>): Drawn<'template'> => ({ kind: 'path', layer, path, source: id });
  const { outline, windows, etchings } = shape;
  const holds = layings.flatMap(({ holding }) => holding?.holds ?? []);
  const items: readonly DisplayItem<'template'>[] = [
    { ...drawn('template', outline), filled: true, holes: windows.map(({ path }) => path) },
    ...etchings.flatMap(etched).map((path) => drawn('etching', path)),
    drawn('template-edge', outline),
    ...windows.map(({ path }) => drawn('template-edge', path)),
    ...marks.flatMap(({ letter, mark }) => drawnMark(letter, mark, shape)),
    ...namesOf(holds, shape),
  ];
  const { minX, minY, maxX, maxY } = grownBounds(boundsOf(outline), LETTER);
  return { bounds: { x: minX, y: minY, width: maxX - minX, height: maxY - minY }, items };
}

function drawnMark(letter: string, mark: DrawnMark, shape: TemplateShape): readonly DisplayItem<'template'>[] {
  const source = `mark:${letter}`;
  const line = (path: Path<'template'>): DisplayItem<'template'> => ({ kind: 'path', layer: 'mark', path, source });
  const lettered = (at: Point<'template'>): DisplayItem<'template'> => ({ kind: 'text', layer: 'mark', at: { x: at.x, y: at.y + LETTER / 2 }, text: letter, height: LETTER, anchor: 'middle', source });
  if (mark.kind === 'line') {
    // The letter stands beside the first piece, a third of the way along.
    const { vertices } = mark.pieces[0]!;
    const way = unit(between(mark.from, mark.to));
    const at = partWay<'template'>(vertices[0]!, vertices[1]!, 1 / 3);
    const sides = [-1.2, 1.2].map((side) => moved(at, quarterTurned(way), side * LETTER));
    return [...mark.pieces.map(line), lettered(sides.find((side) => holdsLetter(side, shape)) ?? sides[0]!)];
  }
  if (mark.kind === 'dot') return [{ kind: 'path', layer: 'mark', path: circle(mark.at, DOT), filled: true, source }, lettered(moved(mark.at, { x: 1.2 * LETTER, y: -1.2 * LETTER }))];
  const inwards = inwardsAt(mark.at, shape);
  return [line(straight(mark.at, moved(mark.at, inwards, TICK))), lettered(moved(mark.at, inwards, TICK + LETTER))];
}

/** Whether a letter at a place lies whole on the face. */
function holdsLetter(at: Point<'template'>, { outline }: TemplateShape): boolean {
  return whereIs(outline, at) === 'inside' && distanceToPath(outline, at) > LETTER / 2;
}

/** From a place of the outline into the face: outlines run clockwise, so their inside lies on the right. */
function inwardsAt(at: Point<'template'>, { outline }: TemplateShape): Vec<'template'> {
  return quarterTurned(pointAlong(outline, nearestOnPath(outline, at).along).tangent);
}

/** The etched lines and tips that are lined up, each named once beside itself; a cross shows what it is. */
function namesOf(holds: readonly Hold[], shape: TemplateShape): readonly DisplayItem<'template'>[] {
  const middle = middleOfBounds<'template'>(boundsOf(shape.outline)) ?? { x: 0, y: 0 };
  const crosses = new Set(shape.etchings.flatMap((etching) => (etching.kind === 'cross' ? [`etching:${etching.id}`] : [])));
  const named = new Map<string, DisplayItem<'template'>>();
  for (const { by, requirement } of holds) {
    if (by.kind !== 'etched' || named.has(by.put) || crosses.has(by.put)) continue;
    const { feature } = requirement;
    if (feature.kind !== 'point' && feature.kind !== 'line') continue;
    const at = feature.kind === 'line' ? besideLine(feature) : towards(feature.at, middle);
    const anchor = Math.abs(at.x - middle.x) < 1 ? 'middle' : at.x < middle.x ? 'start' : 'end';
    named.set(by.put, { kind: 'text', layer: 'label', at, text: by.name, height: NAME, anchor: feature.kind === 'line' ? 'middle' : anchor, source: by.put });
  }
  return [...named.values()];
}

/** Above a line that lies, to the right of one that stands; off its middle, where other lines cross it. */
function besideLine({ at, way, lever }: { readonly at: Point<'template'>; readonly way: Vec<'template'>; readonly lever: number }): Point<'template'> {
  const off = Math.abs(way.x) > Math.abs(way.y) ? { x: 0, y: -NAME / 2 } : { x: 4 * NAME, y: 0 };
  return moved(moved(at, way, -lever / 3), off);
}

function towards(at: Point<'template'>, middle: Point<'template'>): Point<'template'> {
  const away = distance(at, middle);
  return away > 2 * NAME ? partWay(at, middle, Math.min(1, (2 * NAME) / away)) : moved(at, { x: 0, y: 1 }, 2 * NAME);
}
