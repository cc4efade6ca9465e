// Parallel chords: the needle line arrives at the stop in the direction in which it left the start, so that a line slid along goes on smoothly.
//
// Maths, derived here. With one normal N at both ends, centres D apart and (signed) radii p and q, the chord is D - (q - p) N. It is c
// wide where |D|^2 + (q - p)^2 - 2 (q - p) D.N = c^2: two directions of N. A rise of s along the line itself, from a trough to a crest, is
// D.T = s with T square to N. With a straight stretch at one end its direction is that of both.

import { SAME_NUMBER, WELD } from '../../num/tolerances.ts';
import { shortestTurn } from '../../num/angle.ts';
import { type Vec, angleOf, between, distance, dot, heading, plus, quarterTurned, scaled, size } from '../../geometry/point.ts';
import { type Chord, chordBetween } from './chord.ts';
import { type CurvePlace, type NeedleCurve, type RoundStretch, type StraightStretch, canBeApart, placeByNormal, placeByReach } from './needle-curve.ts';

/** All chords so many inches wide whose ends have one direction, found in closed form; those that run back against it are left out. */
export function parallelChords(curve: NeedleCurve, width: number): readonly Chord[] {
  return eachPair(curve, width, width, (a, b) => arcs(curve, a, b, width), (line, arc, first) => lineWithArc(curve, line, arc, width, first));
}

/** All rises: from a place to another where the line runs the same way, so many inches farther on along that way, whatever the height between them. */
export function risingChords(curve: NeedleCurve, along: number): readonly Chord[] {
  return eachPair(curve, along, curve.widest, (a, b) => risingArcs(curve, a, b, along), (line, arc, first) => risingLine(curve, line, arc, along, first));
}

type ArcPair = (a: RoundStretch, b: RoundStretch) => readonly Chord[];
type LinePair = (line: StraightStretch, arc: RoundStretch, lineFirst: boolean) => readonly Chord[];

/** Two straight stretches of one direction give a chord for every place between them or none; they are left to the symmetric chords. */
function eachPair(curve: NeedleCurve, least: number, most: number, arcPair: ArcPair, linePair: LinePair): readonly Chord[] {
  return curve.stretches.flatMap((a) =>
    curve.stretches.flatMap((b) => {
      if (a === b || !canBeApart(a, b, least, most)) return [];
      if (a.kind === 'arc') return b.kind === 'arc' ? arcPair(a, b) : linePair(b, a, false);
      return b.kind === 'arc' ? linePair(a, b, true) : [];
    }),
  );
}

function arcs(curve: NeedleCurve, a: RoundStretch, b: RoundStretch, width: number): readonly Chord[] {
  const apart = between(a.centre, b.centre);
  const d = size(apart);
  const more = b.rho - a.rho;
  if (d <= WELD) return [];
  if (Math.abs(more) <= WELD) return Math.abs(d - width) <= WELD ? alike(curve, a, b) : [];
  const cosine = (d * d + more * more - width * width) / (2 * more * d);
  if (Math.abs(cosine) > 1) return [];
  const off = Math.acos(cosine);
  return [off, -off].flatMap((turn) => chordsAt(curve, placeByNormal(curve, a, angleOf(apart) + turn), placeByNormal(curve, b, angleOf(apart) + turn)));
}

/** Two like arcs a whole width apart: every place of the one has its fellow on the other. The middle of them stands for all. */
function alike(curve: NeedleCurve, a: RoundStretch, b: RoundStretch): readonly Chord[] {
  const way = Math.sign(a.rho);
  const off = way * shortestTurn(b.normal - a.normal);
  const low = Math.max(0, off);
  const high = Math.min(Math.abs(a.sweep), off + Math.abs(b.sweep));
  if (high <= low) return [];
  const normal = a.normal + (way * (low + high)) / 2;
  return chordsAt(curve, placeByNormal(curve, a, normal), placeByNormal(curve, b, normal));
}

function lineWithArc(curve: NeedleCurve, line: StraightStretch, arc: RoundStretch, width: number, lineFirst: boolean): readonly Chord[] {
  const onArc = placeByNormal(curve, arc, angleOf(quarterTurned(line.way)));
  if (!onArc) return [];
  const to = between(line.from, onArc.at);
  const along = dot(line.way, to);
  const across = dot(quarterTurned(line.way), to);
  if (Math.abs(across) > width) return [];
  const reach = Math.sqrt(width * width - across * across);
  return [along - reach, along + reach].flatMap((at) => {
    const onLine = placeByReach(curve, line, at);
    return lineFirst ? chordsAt(curve, onLine, onArc) : chordsAt(curve, onArc, onLine);
  });
}

function risingArcs(curve: NeedleCurve, a: RoundStretch, b: RoundStretch, along: number): readonly Chord[] {
  const apart = between(a.centre, b.centre);
  const d = size(apart);
  if (d <= WELD || along > d * (1 + SAME_NUMBER)) return [];
  const off = Math.acos(Math.min(1, along / d));
  const ways = off === 0 ? [0] : [off, -off];
  return ways.flatMap((turn) => {
    const normal = angleOf(apart) + turn + Math.PI / 2;
    const across = dot(heading<'template'>(normal), apart);
    // Held at its length, the way from centre to centre turns: across it shrinks by along / across as along grows by 1.
    const grows = Math.abs(across) <= SAME_NUMBER ? Infinity : (-Math.sign(across - (b.rho - a.rho)) * along) / across;
    return chordsAt(curve, placeByNormal(curve, a, normal), placeByNormal(curve, b, normal)).map((chord) => ({ ...chord, grows }));
  });
}

function risingLine(curve: NeedleCurve, line: StraightStretch, arc: RoundStretch, along: number, lineFirst: boolean): readonly Chord[] {
  const onArc = placeByNormal(curve, arc, angleOf(quarterTurned(line.way)));
  if (!onArc) return [];
  const onLine = placeByReach(curve, line, dot(line.way, between(line.from, onArc.at)) + (lineFirst ? -along : along));
  return lineFirst ? chordsAt(curve, onLine, onArc) : chordsAt(curve, onArc, onLine);
}

/** Only chords the line runs along: one that arrives behind its start has come round the long way. */
function chordsAt(curve: NeedleCurve, start: CurvePlace | undefined, stop: CurvePlace | undefined): readonly Chord[] {
  if (!start || !stop || distance(start.at, stop.at) <= WELD) return [];
  const ahead: Vec<'template'> = plus(start.way, scaled(stop.way, 1));
  if (dot(ahead, between(start.at, stop.at)) < 0) return [];
  const chord = chordBetween(curve, start, stop);
  return chord ? [chord] : [];
}
