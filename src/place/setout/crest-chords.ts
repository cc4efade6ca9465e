// From the centre line to the crest: the needle line starts at a division and stops, running level, in the middle of it. What is
// sewn from there is the mirror image, so that the crest is smooth.
//
// Maths, derived here. Let the crest lie on a stretch with the centre C and the (signed) radius p, T the way of the line there and N to its
// right. The other end lies w back along T and h down along N from it, at C + V with V = (h - p) N - w T: a vector of fixed length that
// turns with N. It ends on another stretch where a circle about C meets it, which gives N in closed form; on the same circle h is forced,
// h = p - sqrt(p^2 - w^2) with the sign of p. As the crest slides along the needle line, h is greatest or least where V points at the
// other stretch's centre.

import { SAME_ANGLE, SAME_NUMBER, WELD } from '../../num/tolerances.ts';
import { type Point, type Vec, angleOf, between, cross, distance, dot, moved, plus, quarterTurned, scaled, size } from '../../geometry/point.ts';
import { type Chord, chordBetween } from './chord.ts';
import { type CurvePlace, type NeedleCurve, type RoundStretch, type StraightStretch, type Stretch, canBeApart, onOneCircle, placeByNormal, placeByReach, reachOf } from './needle-curve.ts';

export interface CrestChord extends Chord {
  readonly crest: 'start' | 'stop';
  /** How far the crest lies to the left of the way the line runs there, seen from the other end; inches. */
  readonly height: number;
}

/** Whether the line runs up to the crest (1) or away from it (-1). */
type Sense = 1 | -1;
const SENSES: readonly Sense[] = [1, -1];

/** All chords whose crest lies half a division on and a height off (to either side), in closed form. */
export function crestChords(curve: NeedleCurve, half: number, height: number): readonly CrestChord[] {
  const apart = Math.hypot(half, height);
  return eachPair(curve, apart, apart, (top, foot, found) => {
    for (const sense of SENSES) {
      found.push(...exact(curve, top, foot, half, height, sense));
      if (height > 0) found.push(...exact(curve, top, foot, half, -height, sense));
    }
  });
}

/** Chords on one circle, whose height the width settles. */
export function forcedCrestChords(curve: NeedleCurve, half: number): readonly CrestChord[] {
  return eachPair(curve, half, curve.widest, (top, foot, found) => {
    if (top.kind === 'line' ? top === foot : foot.kind === 'arc' && onOneCircle(top, foot)) for (const sense of SENSES) found.push(...forced(curve, top, foot, half, sense));
  });
}

/**
 * Chords among which the greatest and the least height of every family are: where the crest is at the end of a stretch, and where sliding
 * it changes the height no more.
 */
export function outermostCrestChords(curve: NeedleCurve, half: number): readonly CrestChord[] {
  const atEnds = SENSES.flatMap((sense) => curve.stretches.flatMap((top) => crestAtStart(curve, top, half, sense)));
  const between = eachPair(curve, half, curve.widest, (top, foot, found) => {
    if (top.kind === 'arc' && foot.kind === 'arc') for (const sense of SENSES) found.push(...turning(curve, top, foot, half, sense));
  });
  return [...atEnds, ...between];
}

/** What a function finds on all pairs of stretches that have places from `least` to `most` inches apart. */
function eachPair(curve: NeedleCurve, least: number, most: number, look: (top: Stretch, foot: Stretch, found: CrestChord[]) => void): readonly CrestChord[] {
  const found: CrestChord[] = [];
  for (const top of curve.stretches) {
    for (const foot of curve.stretches) if (canBeApart(top, foot, least, most)) look(top, foot, found);
  }
  return found;
}

function exact(curve: NeedleCurve, top: Stretch, foot: Stretch, half: number, h: number, sense: Sense): readonly CrestChord[] {
  if (top.kind === 'line') return levelTop(curve, top, foot, half, h, sense);
  const v: Point<'template'> = { x: h - top.rho, y: sense * half };
  const q = Math.hypot(v.x, v.y);
  const off = Math.atan2(v.y, v.x);
  if (q <= WELD) return [];
  return ways(top, foot, q).flatMap((way) => crestBy(curve, top, foot, way - off, { x: top.centre.x + q * Math.cos(way), y: top.centre.y + q * Math.sin(way) }, sense));
}

/** The directions from the top's centre in which a place at a distance q lies on the foot's line or circle. */
function ways(top: RoundStretch, foot: Stretch, q: number): readonly number[] {
  if (foot.kind === 'line') {
    const n = quarterTurned(foot.way);
    const cosine = dot(n, between(top.centre, foot.from)) / q;
    if (Math.abs(cosine) > 1 + SAME_NUMBER) return [];
    const turn = Math.acos(Math.max(-1, Math.min(1, cosine)));
    return [angleOf(n) + turn, angleOf(n) - turn];
  }
  const apart = between(foot.centre, top.centre);
  const d = size(apart);
  if (d <= WELD) return [];
  const cosine = (foot.rho * foot.rho - d * d - q * q) / (2 * d * q);
  if (Math.abs(cosine) > 1) return [];
  const turn = Math.acos(cosine);
  return [angleOf(apart) + turn, angleOf(apart) - turn];
}

function crestBy(curve: NeedleCurve, top: RoundStretch, foot: Stretch, normal: number, at: Point<'template'>, sense: Sense, slide = 0): readonly CrestChord[] {
  const crest = placeByNormal(curve, top, normal);
  const other = crest && placeOn(curve, foot, at);
  return crest && other ? crestChord(curve, crest, other, sense, slide) : [];
}

/** A straight crest: it slides along until the other end meets the foot. */
function levelTop(curve: NeedleCurve, top: StraightStretch, foot: Stretch, half: number, h: number, sense: Sense): readonly CrestChord[] {
  const n = quarterTurned(top.way);
  const from = plus(scaled(top.way, -sense * half), scaled(n, h));
  const started = moved(top.from, from);
  return meets(started, top.way, foot).flatMap((reach) => {
    const crest = placeByReach(curve, top, reach);
    const other = crest && placeOn(curve, foot, moved(crest.at, from));
    return crest && other ? crestChord(curve, crest, other, sense) : [];
  });
}

/** How far along a ray's line it meets the line or circle of a stretch. */
function meets(from: Point<'template'>, way: Vec<'template'>, s: Stretch): readonly number[] {
  if (s.kind === 'line') {
    const det = cross(way, s.way);
    return Math.abs(det) <= SAME_ANGLE ? [] : [cross(between(from, s.from), s.way) / det];
  }
  const to = between(from, s.centre);
  const along = dot(way, to);
  const off = cross(way, to);
  const under = s.rho * s.rho - off * off;
  if (under < 0) return [];
  return [along - Math.sqrt(under), along + Math.sqrt(under)];
}

function forced(curve: NeedleCurve, top: Stretch, foot: Stretch, half: number, sense: Sense): readonly CrestChord[] {
  if (top.kind === 'line' || foot.kind === 'line') {
    if (top !== foot || top.kind === 'arc' || top.length < half) return [];
    const spare = top.length - half;
    const [first, last] = [placeByReach(curve, top, spare / 2), placeByReach(curve, top, spare / 2 + half)];
    return first && last ? crestChord(curve, ...(sense === 1 ? ([last, first] as const) : ([first, last] as const)), sense, spare) : [];
  }
  const radius = Math.abs(top.rho);
  if (!onOneCircle(top, foot) || half > radius) return [];
  const way = Math.sign(top.rho);
  const turn = Math.asin(half / radius);
  return [turn, Math.PI - turn].flatMap((sweep) => {
    // The crest's normal for which the other end lies on the foot: the middle of those that do.
    const away = -sense * way * sweep;
    const range = shared(top, foot, away);
    return range.flatMap(({ middle, width }) => {
      const crest = placeByNormal(curve, top, top.normal + way * middle);
      const other = crest && placeByNormal(curve, foot, top.normal + way * middle + away);
      return crest && other ? crestChord(curve, crest, other, sense, width * radius) : [];
    });
  });
}

/** The stretches of turning along `top` (radians from its start) for which the place turned by `away` from it lies on `foot`. */
function shared(top: RoundStretch, foot: RoundStretch, away: number): readonly { readonly middle: number; readonly width: number }[] {
  const way = Math.sign(top.rho);
  const turn = 2 * Math.PI;
  const whole = Math.abs(top.sweep);
  if (top === foot && whole >= turn - SAME_ANGLE) return [{ middle: 0, width: turn }];
  const raw = way * (foot.normal - top.normal - away);
  const offset = raw - turn * Math.floor(raw / turn);
  return [offset - turn, offset].flatMap((first) => {
    const low = Math.max(0, first);
    const high = Math.min(whole, first + Math.abs(foot.sweep));
    return high - low < -SAME_ANGLE ? [] : [{ middle: Math.min(whole, Math.max(0, (low + high) / 2)), width: Math.max(0, high - low) }];
  });
}

function crestAtStart(curve: NeedleCurve, top: Stretch, half: number, sense: Sense): readonly CrestChord[] {
  const crest = top.kind === 'arc' ? placeByNormal(curve, top, top.normal) : placeByReach(curve, top, 0);
  if (!crest) return [];
  const n = quarterTurned(crest.way);
  const from = moved(crest.at, crest.way, -sense * half);
  const found: CrestChord[] = [];
  for (const foot of curve.stretches) {
    // Only those the line down from there can meet.
    if (Math.abs(dot(crest.way, between(from, foot.middle))) > foot.spread + WELD) continue;
    for (const reach of meets(from, n, foot)) {
      const other = placeOn(curve, foot, moved(from, n, reach));
      if (other) found.push(...crestChord(curve, crest, other, sense));
    }
  }
  return found;
}

function turning(curve: NeedleCurve, top: RoundStretch, foot: RoundStretch, half: number, sense: Sense): readonly CrestChord[] {
  const apart = between(top.centre, foot.centre);
  const d = size(apart);
  if (d <= WELD) return [];
  return [1, -1].flatMap((side) => {
    const at = moved(foot.centre, scaled(apart, 1 / d), side * Math.abs(foot.rho));
    const q = distance(top.centre, at);
    if (q < half || !placeOn(curve, foot, at)) return [];
    const level = Math.sqrt(q * q - half * half);
    const way = angleOf(between(top.centre, at));
    return [level, -level].flatMap((x) => crestBy(curve, top, foot, way - Math.atan2(sense * half, x), at, sense));
  });
}

function placeOn(curve: NeedleCurve, s: Stretch, at: Point<'template'>): CurvePlace | undefined {
  if (s.kind === 'line') return placeByReach(curve, s, reachOf(s, at));
  return placeByNormal(curve, s, angleOf(scaled(between(at, s.centre), Math.sign(s.rho))));
}

function crestChord(curve: NeedleCurve, crest: CurvePlace, other: CurvePlace, sense: Sense, slide = 0): readonly CrestChord[] {
  const chord = sense === 1 ? chordBetween(curve, other, crest, slide) : chordBetween(curve, crest, other, slide);
  if (!chord) return [];
  const height = dot(quarterTurned(crest.way), between(crest.at, other.at));
  return [{ ...chord, crest: sense === 1 ? 'stop' : 'start', height }];
}
