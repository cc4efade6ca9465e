// How far a path of lines and arcs is from a true curve, measured both ways with plain formulas that share nothing with the fit.

import type { Path } from '../../src/geometry/path.ts';
import type { Curve } from '../../src/geometry/fit/look.ts';

interface XY {
  readonly x: number;
  readonly y: number;
}

interface Piece {
  readonly from: XY;
  readonly to: XY;
  readonly bulge: number;
}

export interface Measured {
  /** Greatest distance from the curve to the path. */
  readonly toPath: number;
  /** Greatest distance from the path to the curve. */
  readonly toCurve: number;
  /** Every change of direction between neighbouring pieces, radians, with its place and the shorter of the two pieces. */
  readonly kinks: readonly { readonly at: XY; readonly angle: number; readonly shorter: number }[];
  readonly pieces: number;
}

export function measureFit(path: Path<'template'>, curve: Curve<'template'>, t0: number, t1: number, samples = 600): Measured {
  const pieces = piecesOf(path);
  const ts = Array.from({ length: samples + 1 }, (_, i) => t0 + ((t1 - t0) * i) / samples);
  const points = ts.map((t) => curve(t).point);
  let toPath = 0;
  for (const p of points) toPath = Math.max(toPath, Math.min(...pieces.map((piece) => distanceToPiece(p, piece))));
  let toCurve = 0;
  for (const piece of pieces) {
    for (let i = 0; i <= 8; i++) {
      const p = pointOn(piece, i / 8);
      // A tight turn has two near sides: every place where the distance has a low is looked into.
      const far = points.map((q) => apart(p, q));
      const nearest = Math.min(...far);
      let least = Infinity;
      far.forEach((d, j) => {
        const isLow = d <= (far[j - 1] ?? Infinity) && d <= (far[j + 1] ?? Infinity);
        if (isLow && d <= nearest + 0.1) least = Math.min(least, leastDistance(p, curve, ts[Math.max(0, j - 1)]!, ts[Math.min(samples, j + 1)]!));
      });
      toCurve = Math.max(toCurve, least);
    }
  }
  const around = path.closed ? pieces : pieces.slice(1);
  const kinks = around.map((piece, i) => {
    const before = pieces[path.closed ? (i + pieces.length - 1) % pieces.length : i]!;
    const turn = directionAt(piece, 0) - directionAt(before, 1);
    return { at: piece.from, angle: Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))), shorter: Math.min(apart(piece.from, piece.to), apart(before.from, before.to)) };
  });
  return { toPath, toCurve, kinks, pieces: pieces.length };
}

/** The least distance from a point to a path. */
export function distanceToPath(p: XY, path: Path<'template'>): number {
  return Math.min(...piecesOf(path).map((piece) => distanceToPiece(p, piece)));
}

export function greatestKink(m: Measured): number {
  return Math.max(0, ...m.kinks.map((k) => k.angle));
}

function piecesOf(path: Path<'template'>): readonly Piece[] {
  const { vertices, closed } = path;
  return vertices.slice(0, closed ? undefined : -1).map((v, i) => ({ from: v, to: vertices[(i + 1) % vertices.length]!, bulge: v.bulge }));
}

function apart(a: XY, b: XY): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Direction at the start (0) or end (1): the chord's, turned by half the sweep. */
function directionAt({ from, to, bulge }: Piece, end: 0 | 1): number {
  return Math.atan2(to.y - from.y, to.x - from.x) + (end === 0 ? -1 : 1) * 2 * Math.atan(bulge);
}

/** A point a part of the way: chord from the start at the inscribed angle. */
function pointOn({ from, to, bulge }: Piece, part: number): XY {
  const chord = apart(from, to);
  const sweep = 4 * Math.atan(bulge);
  const reach = bulge === 0 ? chord * part : (chord * Math.sin((sweep * part) / 2)) / Math.sin(sweep / 2);
  const direction = Math.atan2(to.y - from.y, to.x - from.x) - (sweep * (1 - part)) / 2;
  return { x: from.x + reach * Math.cos(direction), y: from.y + reach * Math.sin(direction) };
}

/** Distance to a line or, by its centre and radius, an arc. A piece far away is told by its ends. */
function distanceToPiece(p: XY, piece: Piece): number {
  const ends = Math.min(apart(p, piece.from), apart(p, piece.to));
  const chord = apart(piece.from, piece.to);
  if (chord === 0 || ends > 4 * chord + 0.1) return ends;
  if (piece.bulge === 0) {
    const part = ((p.x - piece.from.x) * (piece.to.x - piece.from.x) + (p.y - piece.from.y) * (piece.to.y - piece.from.y)) / (chord * chord);
    return part <= 0 || part >= 1 ? ends : apart(p, pointOn(piece, part));
  }
  // The circle through the ends, its centre on the perpendicular bisector.
  const radius = (chord * (1 + piece.bulge ** 2)) / (4 * Math.abs(piece.bulge));
  const off = (chord * (1 - piece.bulge ** 2)) / (4 * piece.bulge);
  const centre = {
    x: (piece.from.x + piece.to.x) / 2 - (off * (piece.to.y - piece.from.y)) / chord,
    y: (piece.from.y + piece.to.y) / 2 + (off * (piece.to.x - piece.from.x)) / chord,
  };
  const sweep = 4 * Math.atan(piece.bulge);
  const angle = Math.atan2(p.y - centre.y, p.x - centre.x) - Math.atan2(piece.from.y - centre.y, piece.from.x - centre.x);
  const run = (((Math.sign(sweep) * angle) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return run <= Math.abs(sweep) ? Math.min(ends, Math.abs(apart(p, centre) - radius)) : ends;
}

function leastDistance(p: XY, curve: Curve<'template'>, a: number, b: number): number {
  let low = a;
  let high = b;
  for (let i = 0; i < 40; i++) {
    const third = (high - low) / 3;
    if (apart(p, curve(low + third).point) < apart(p, curve(high - third).point)) high -= third;
    else low += third;
  }
  return apart(p, curve((low + high) / 2).point);
}
