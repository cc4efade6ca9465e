// Line-arc paths written as path data: M, L, A and Z only, arcs kept.
// Source: SVG 2 (W3C), 9.3 "Path data". The sweep flag is 1 for an arc that turns clockwise on the screen.

import { SAME_NUMBER, SAME_POINT } from '../../num/tolerances.ts';
import { type Path, segmentsOf } from '../path.ts';
import { type Frame, type Point, distance } from '../point.ts';
import { type Arc, arcByBulge, pointOnSegment, stretchOfSegment } from '../segment.ts';
import { circularArc } from './endpoint-arc.ts';

/**
 * The path as path data, in inches; nothing for a path without vertices. Read back it is the same path to the twelfth digit. An arc so near a
 * half turn that its radius would not bring it back gets a radius of all digits, or is written as two.
 */
export function writePathData<F extends Frame>(path: Path<F>): string {
  const first = path.vertices[0];
  if (!first) return '';
  const segments = segmentsOf(path);
  const written = segments.map((s, i) => {
    if (s.kind === 'arc') return arcData(s);
    // Z draws the last line of a closed path.
    return path.closed && i === segments.length - 1 ? '' : `L ${pair(s.to)}`;
  });
  return [`M ${pair(first)}`, ...written, path.closed ? 'Z' : ''].filter((part) => part !== '').join(' ');
}

function arcData<F extends Frame>(arc: Arc<F>): string {
  const data = (radius: string, a: Arc<F>) => `A ${radius} ${radius} 0 0 ${a.sweep > 0 ? 1 : 0} ${pair(a.to)}`;
  const short = numberData(arc.radius);
  if (isReadBack(arc, Number(short))) return data(short, arc);
  // Near a half turn the rise hangs on the last digits of the radius.
  const half = distance(rounded(arc.from), rounded(arc.to)) / 2;
  const full = half / Math.sin(Math.abs(arc.sweep) / 2);
  if (isReadBack(arc, full)) return data(String(full), arc);
  const halves = [stretchOfSegment(arc, 0, 0.5), stretchOfSegment(arc, 0.5, 1)];
  return halves.map((part) => (part.kind === 'arc' ? data(short, part) : `L ${pair(part.to)}`)).join(' ');
}

/** Whether the arc a reader makes of the written numbers passes through the same middle. */
function isReadBack<F extends Frame>(arc: Arc<F>, radius: number): boolean {
  const from = rounded(arc.from);
  const to = rounded(arc.to);
  const read = circularArc(from, radius, false, arc.sweep > 0, to);
  const middle = pointOnSegment(arcByBulge(from, to, read.vertices[0]!.bulge), 0.5);
  return distance(middle, pointOnSegment(arc, 0.5)) <= SAME_POINT;
}

function rounded<F extends Frame>(p: Point<F>): Point<F> {
  return { x: Number(numberData(p.x)), y: Number(numberData(p.y)) };
}

function pair(p: { readonly x: number; readonly y: number }): string {
  return `${numberData(p.x)} ${numberData(p.y)}`;
}

/** A number in as few digits as bring it back, and no more than twelve; what is nothing but rounding is 0. */
export function numberData(value: number): string {
  return Math.abs(value) <= SAME_NUMBER ? '0' : String(Number(value.toPrecision(12)));
}
