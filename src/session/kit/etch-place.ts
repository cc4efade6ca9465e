// Where a pen sets down on the enlarged template: drawn to what is etched there, to the centre lines, to sixteenths of an inch.

import { boundsOf, middleOfBounds } from '../../geometry/bounds.ts';
import { whereIs } from '../../geometry/inside.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { endOf, startOf, straight } from '../../geometry/path.ts';
import { type Point, distance } from '../../geometry/point.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Template } from '../../model/plan.ts';

/** The finest division the pen sets down on by itself, in inches. */
export const PEN_STEP = 1 / 16;

export interface PenPlace {
  readonly at: Point<'template'>;
  /** What it was drawn to, in words; nothing when only to sixteenths. */
  readonly to?: string;
}

/** The place template measures are taken from: where a family has its natural centre, or the middle of an own outline. */
export function centreOf(template: Template, shape: TemplateShape): Point<'template'> {
  return 'family' in template ? { x: 0, y: 0 } : (middleOfBounds<'template'>(boundsOf(shape.outline)) ?? { x: 0, y: 0 });
}

/**
 * Where the pen sets down for a hand at a place: on an etched point, cross or end of a line within `reach` inches; or on a centre
 * line, or level or upright with the start of the line being drawn; otherwise on sixteenths from the centre. Never off the acrylic.
 */
export function penPlace(shape: TemplateShape, centre: Point<'template'>, hand: Point<'template'>, reach: number, start?: Point<'template'>): PenPlace {
  const named = namedPlaces(shape, centre)
    .map((place) => ({ ...place, away: distance(place.at, hand) }))
    .filter(({ away, at }) => away <= reach && (!start || distance(at, start) > 0) && isOnAcrylic(shape, at))
    .sort((a, b) => a.away - b.away)[0];
  if (named) return { at: named.at, to: named.name };
  const across = drawnTo(hand.x, centre.x, start?.x, reach);
  const down = drawnTo(hand.y, centre.y, start?.y, reach);
  const words = [across.to === 'centre' ? 'the centre line down' : undefined, down.to === 'centre' ? 'the centre line across' : undefined, across.to === 'start' ? 'straight up or down from the start' : undefined, down.to === 'start' ? 'level with the start' : undefined].filter((word) => word !== undefined);
  const at = onAcrylic(shape, { x: across.at, y: down.at });
  if (at.x !== across.at || at.y !== down.at) return { at, to: 'the edge' };
  return words.length === 0 ? { at } : { at, to: words.join(', ') };
}

/** The place itself where it lies on the acrylic, or the nearest place of the edge that does. */
export function onAcrylic(shape: TemplateShape, at: Point<'template'>): Point<'template'> {
  if (whereIs(shape.outline, at) === 'outside') return nearestOnPath(shape.outline, at).point;
  const window = shape.windows.find(({ path }) => whereIs(path, at) === 'inside');
  return window ? nearestOnPath(window.path, at).point : at;
}

/** The place reached by going straight from one on the acrylic towards another: the edge stops it. */
export function reachedOnAcrylic(shape: TemplateShape, from: Point<'template'>, to: Point<'template'>): Point<'template'> {
  if (isOnAcrylic(shape, to)) return to;
  const way = straight(from, to);
  const stops = [shape.outline, ...shape.windows.map(({ path }) => path)].flatMap((edge) =>
    meetPaths(way, edge).map((meeting) => (meeting.kind === 'overlap' ? { at: meeting.from, along: meeting.alongA[0] } : { at: meeting.at, along: meeting.alongA })),
  );
  const first = stops.reduce<(typeof stops)[number] | undefined>((best, stop) => (best && best.along <= stop.along ? best : stop), undefined);
  return first?.at ?? from;
}

export function isOnAcrylic(shape: TemplateShape, at: Point<'template'>): boolean {
  return whereIs(shape.outline, at) !== 'outside' && shape.windows.every(({ path }) => whereIs(path, at) !== 'inside');
}

function namedPlaces(shape: TemplateShape, centre: Point<'template'>): readonly { readonly at: Point<'template'>; readonly name: string }[] {
  const etched = shape.etchings.flatMap((etching) => {
    if (etching.kind === 'point' || etching.kind === 'cross') return [{ at: etching.at, name: etching.name }];
    if (etching.kind === 'curve' && etching.path.closed) return [];
    return [startOf(etching.path), endOf(etching.path)].flatMap((at) => (at ? [{ at, name: `the end of ${etching.name}` }] : []));
  });
  return [...etched, { at: centre, name: 'the centre' }];
}

function drawnTo(hand: number, centre: number, start: number | undefined, reach: number): { readonly at: number; readonly to?: 'centre' | 'start' } {
  if (start !== undefined && Math.abs(hand - start) <= reach) return { at: start, to: 'start' };
  if (Math.abs(hand - centre) <= reach) return { at: centre, to: 'centre' };
  return { at: centre + Math.round((hand - centre) / PEN_STEP) * PEN_STEP };
}
