// A chord of a needle line: where a unit of a set-out starts and where it stops.

import { type Vec, between, cross, distance, dot, scaled } from '../../geometry/point.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { type CurvePlace, type NeedleCurve, runFrom } from './needle-curve.ts';

export interface Chord {
  /** The needle line runs clockwise, as seen on the etched face, from start to stop. */
  readonly start: CurvePlace;
  readonly stop: CurvePlace;
  /** Inches between them, straight. */
  readonly width: number;
  /** Inches of needle line between them. */
  readonly run: number;
  /** Inches along the needle line over which start and stop may slide together and sew the same line: on a round or straight stretch. */
  readonly slide: number;
  /** Of a rise: how much its height changes as it grows longer, inches to the inch. */
  readonly grows?: number;
}

/** The chord between two places, or undefined when the line does not run from the one to the other. */
export function chordBetween(curve: NeedleCurve, start: CurvePlace, stop: CurvePlace, slide = 0): Chord | undefined {
  const run = runFrom(curve, start.along, stop.along);
  if (run === undefined || run <= SAME_POINT) return undefined;
  return { start, stop, width: distance(start.at, stop.at), run, slide };
}

/** The unit vector from start to stop. */
export function wayOf(chord: Chord): Vec<'template'> {
  return scaled(between(chord.start.at, chord.stop.at), 1 / chord.width);
}

/** Radians by which the line leaves the chord at its start, and by which it arrives at its stop; clockwise, in (-pi, pi]. */
export function anglesOf(chord: Chord): readonly [start: number, stop: number] {
  const u = wayOf(chord);
  const off = (way: Vec<'template'>) => Math.atan2(cross(u, way), dot(u, way));
  return [off(chord.start.way), off(chord.stop.way)];
}
