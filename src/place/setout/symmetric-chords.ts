// Symmetric chords: the needle line leaves one end as it arrives at the other, as if mirrored in the middle between them.
//
// Maths, derived here. Along the chord let u be the x axis, and let the line leave it at the angle a, S = sin a. The normals are N1 =
// (-S, cos a) at the start and N2 = (S, cos a) at the stop, and the centres of two arcs of (signed) radii p and q lie at p N1 and
// (c, 0) + q N2. So their distance d obeys
//
//   4 p q S^2 + 2 c (p + q) S + c^2 + (q - p)^2 - d^2 = 0,
//
// a quadratic for S; the direction from centre to centre then gives the direction of u. With a straight stretch at one end and a centre
// at the distance h to its right, 2 q S^2 + c S + h - q = 0. Two straight stretches that differ in direction by g have a = -g / 2.
// On one circle S = -c / 2p, and the chord may slide round. (Pairs of places that one circle touches are the symmetry set of a
// curve: Bruce, Giblin and Gibson, "Symmetry sets", 1985, from memory. Within a stretch of rising curvature there are none, by Vogt's
// theorem, so a fitted chain of arcs adds none of its own but those within one arc.)

import { TURN, normalised, shortestTurn } from '../../num/angle.ts';
import { SAME_ANGLE, SAME_NUMBER, WELD } from '../../num/tolerances.ts';
import { angleOf, between, cross, distance, dot, heading, moved, quarterTurned } from '../../geometry/point.ts';
import { type Chord, chordBetween } from './chord.ts';
import { type CurvePlace, type NeedleCurve, type RoundStretch, type StraightStretch, type Stretch, canBeApart, onOneCircle, placeByNormal, placeByReach, reachOf } from './needle-curve.ts';

/** All symmetric chords so many inches wide, found in closed form; `backward` also those that start by running away from the chord. */
export function symmetricChords(curve: NeedleCurve, width: number, backward = false): readonly Chord[] {
  const found: Chord[] = [];
  const from = (angle: number) => backward || Math.abs(shortestTurn(angle)) <= Math.PI / 2 + SAME_ANGLE;
  for (const a of curve.stretches) {
    for (const b of curve.stretches) {
      if (!canBeApart(a, b, width, width)) continue;
      for (const chord of pair(curve, a, b, width, from)) if (Math.abs(chord.width - width) <= WELD * 10) found.push(chord);
    }
  }
  return found;
}

type Allowed = (angle: number) => boolean;

function pair(curve: NeedleCurve, a: Stretch, b: Stretch, width: number, allowed: Allowed): readonly Chord[] {
  if (a.kind === 'arc') return b.kind === 'arc' ? arcAndArc(curve, a, b, width, allowed) : arcAndLine(curve, a, b, width, allowed);
  return b.kind === 'arc' ? lineAndArc(curve, a, b, width, allowed) : lineAndLine(curve, a, b, width, allowed);
}

function arcAndArc(curve: NeedleCurve, a: RoundStretch, b: RoundStretch, width: number, allowed: Allowed): readonly Chord[] {
  if (onOneCircle(a, b)) return onTheCircle(curve, a, b, width, allowed);
  const apart = between(a.centre, b.centre);
  const d = distance(a.centre, b.centre);
  const p = a.rho;
  const q = b.rho;
  if (d <= WELD) return [];
  return sines(4 * p * q, 2 * width * (p + q), width * width + (q - p) ** 2 - d * d).flatMap((angle) => {
    if (!allowed(angle)) return [];
    const along = width + (p + q) * Math.sin(angle);
    const across = (q - p) * Math.cos(angle);
    const u = angleOf(apart) - Math.atan2(across, along);
    return chordsAt(curve, placeByNormal(curve, a, u + angle + Math.PI / 2), placeByNormal(curve, b, u - angle + Math.PI / 2));
  });
}

/** Both ends on one circle: the middle of the slide, and how far it goes either way. */
function onTheCircle(curve: NeedleCurve, a: RoundStretch, b: RoundStretch, width: number, allowed: Allowed): readonly Chord[] {
  const rho = a.rho;
  const radius = Math.abs(rho);
  if (width > 2 * radius + SAME_NUMBER * radius) return [];
  const half = Math.asin(Math.min(1, width / (2 * radius)));
  const way = Math.sign(rho);
  return [half, Math.PI - half].flatMap((turned) => {
    // The line turns by twice this from start to stop, and leaves the chord by as much to the other side.
    if (!allowed(-way * turned)) return [];
    const sweep = 2 * turned;
    const whole = Math.abs(a.sweep);
    if (a === b && whole >= TURN - SAME_ANGLE) return chordsAt(curve, placeByNormal(curve, a, a.normal), placeByNormal(curve, a, a.normal + way * sweep), a.length);
    // Offsets of the start along `a` for which the stop lies on `b`.
    const offset = normalised(way * (b.normal - a.normal)) - sweep;
    return [offset - TURN, offset, offset + TURN].flatMap((first) => {
      const low = Math.max(0, first);
      const high = Math.min(whole, first + Math.abs(b.sweep));
      if (high - low < -SAME_ANGLE) return [];
      const middle = Math.min(whole, Math.max(0, (low + high) / 2));
      const start = placeByNormal(curve, a, a.normal + way * middle);
      const stop = placeByNormal(curve, b, a.normal + way * (middle + sweep));
      return chordsAt(curve, start, stop, Math.max(0, high - low) * radius);
    });
  });
}

function lineAndArc(curve: NeedleCurve, a: StraightStretch, b: RoundStretch, width: number, allowed: Allowed): readonly Chord[] {
  const h = dot(quarterTurned(a.way), between(a.from, b.centre));
  return sines(2 * b.rho, width, h - b.rho).flatMap((angle) => {
    if (!allowed(angle)) return [];
    const u = angleOf(a.way) - angle;
    const stop = placeByNormal(curve, b, u - angle + Math.PI / 2);
    const start = stop && placeByReach(curve, a, reachOf(a, moved(stop.at, heading(u), -width)));
    return chordsAt(curve, start, stop);
  });
}

function arcAndLine(curve: NeedleCurve, a: RoundStretch, b: StraightStretch, width: number, allowed: Allowed): readonly Chord[] {
  const h = dot(quarterTurned(b.way), between(b.from, a.centre));
  return sines(2 * a.rho, width, h - a.rho).flatMap((angle) => {
    if (!allowed(angle)) return [];
    const u = angleOf(b.way) + angle;
    const start = placeByNormal(curve, a, u + angle + Math.PI / 2);
    const stop = start && placeByReach(curve, b, reachOf(b, moved(start.at, heading(u), width)));
    return chordsAt(curve, start, stop);
  });
}

function lineAndLine(curve: NeedleCurve, a: StraightStretch, b: StraightStretch, width: number, allowed: Allowed): readonly Chord[] {
  if (a === b) {
    const spare = a.length - width;
    return spare < -WELD ? [] : chordsAt(curve, placeByReach(curve, a, spare / 2), placeByReach(curve, a, spare / 2 + width), Math.max(0, spare));
  }
  const turned = shortestTurn(angleOf(b.way) - angleOf(a.way));
  const det = cross(a.way, b.way);
  // Side by side, a symmetric chord is square to both and only their distance: a case of no width but one.
  if (Math.abs(det) <= SAME_ANGLE) return [];
  return [-turned / 2, Math.PI - turned / 2].flatMap((angle) => {
    if (!allowed(angle)) return [];
    const u = heading<'template'>(angleOf(a.way) - angle);
    const to = moved(b.from, u, -width);
    const reach = cross(between(a.from, to), b.way) / det;
    const start = placeByReach(curve, a, reach);
    const stop = start && placeByReach(curve, b, reachOf(b, moved(start.at, u, width)));
    return chordsAt(curve, start, stop);
  });
}

function chordsAt(curve: NeedleCurve, start: CurvePlace | undefined, stop: CurvePlace | undefined, slide = 0): readonly Chord[] {
  const chord = start && stop && chordBetween(curve, start, stop, slide);
  return chord ? [chord] : [];
}

/** The angles whose sine solves a S^2 + b S + c = 0: up to four. */
function sines(a: number, b: number, c: number): readonly number[] {
  const size = Math.abs(a) + Math.abs(b) + Math.abs(c);
  const under = b * b - 4 * a * c;
  if (under < -SAME_NUMBER * size * size) return [];
  const root = Math.sqrt(Math.max(0, under));
  // The form that loses no digits when b is large beside a.
  const sum = -(b + (b >= 0 ? root : -root)) / 2;
  const first = a !== 0 ? sum / a : Infinity;
  const second = sum !== 0 ? c / sum : Infinity;
  const angles: number[] = [];
  for (const sine of Math.abs(first - second) <= SAME_NUMBER ? [first] : [first, second]) {
    if (!(Math.abs(sine) <= 1 + SAME_NUMBER)) continue;
    const angle = Math.asin(Math.max(-1, Math.min(1, sine)));
    angles.push(angle, Math.PI - angle);
  }
  return angles;
}
