// The pen that etches: a state machine fed with what the hand does on the enlarged template. A line is drawn by pressing at one
// end and letting go at the other, or by setting down twice; points and crosses by setting down once. Escape takes the pen up.

import { type Point, distance } from '../../geometry/point.ts';
import type { Etching } from '../../model/plan.ts';
import { PEN_STEP, type PenPlace } from './etch-place.ts';

export type PenTool = 'line' | 'point' | 'cross';

export interface Pen {
  readonly tool: PenTool;
  /** Where the pen is. */
  readonly place: PenPlace | undefined;
  /** Where the line under way began. */
  readonly start: Point<'template'> | undefined;
  /** The hand is pressing since it set the start. */
  readonly pressed: boolean;
}

export type PenEvent =
  | { readonly kind: 'tool'; readonly tool: PenTool }
  | { readonly kind: 'move' | 'down' | 'up'; readonly place: PenPlace }
  /** Set down where the pen is, by key. */
  | { readonly kind: 'set' }
  /** The hand left, without pressing. */
  | { readonly kind: 'leave' }
  | { readonly kind: 'escape' };

export interface PenStep {
  readonly pen: Pen;
  /** What was drawn by this event. */
  readonly made?: Etching;
}

export const PEN_UP: Pen = { tool: 'line', place: undefined, start: undefined, pressed: false };

/** The pen after an event, and what it drew. A line shorter than the pen's step is none. */
export function penAfter(pen: Pen, event: PenEvent): PenStep {
  switch (event.kind) {
    case 'tool':
      return { pen: { ...pen, tool: event.tool, start: undefined, pressed: false } };
    case 'move':
      return { pen: { ...pen, place: event.place } };
    case 'leave':
      return { pen: pen.pressed ? pen : { ...pen, place: undefined } };
    case 'escape':
      return { pen: { ...pen, start: undefined, pressed: false } };
    case 'down': {
      const there: Pen = { ...pen, place: event.place };
      if (pen.tool !== 'line') return { pen: there, made: mark(pen.tool, event.place.at) };
      return pen.start ? lineTo(there, event.place.at) : { pen: { ...there, start: event.place.at, pressed: true } };
    }
    case 'up': {
      const there: Pen = { ...pen, place: event.place, pressed: false };
      return pen.pressed && pen.start && isLine(pen.start, event.place.at) ? lineTo(there, event.place.at) : { pen: there };
    }
    case 'set': {
      const at = pen.place?.at;
      if (!at) return { pen };
      if (pen.tool !== 'line') return { pen, made: mark(pen.tool, at) };
      return pen.start ? lineTo(pen, at) : { pen: { ...pen, start: at } };
    }
  }
}

function lineTo(pen: Pen, to: Point<'template'>): PenStep {
  const { start } = pen;
  if (!start || !isLine(start, to)) return { pen };
  return { pen: { ...pen, start: undefined, pressed: false }, made: { kind: 'line', from: [start.x, start.y], to: [to.x, to.y] } };
}

function isLine(from: Point<'template'>, to: Point<'template'>): boolean {
  return distance(from, to) >= PEN_STEP;
}

function mark(tool: 'point' | 'cross', { x, y }: Point<'template'>): Etching {
  return tool === 'point' ? { kind: 'point', at: [x, y] } : { kind: 'cross', at: [x, y], angle: 0 };
}
