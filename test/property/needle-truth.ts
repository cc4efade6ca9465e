// The independent judge of needle lines. It shares no code with the offset, nor with the project's measures of segments:
// it reads vertices and bulges and has its own formulas for lengths, places, distances and winding.

export interface PlainVertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

export interface PlainPath {
  readonly closed: boolean;
  readonly vertices: readonly PlainVertex[];
}

interface Span {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly chord: number;
  /** Signed sagitta to the left of the chord as drawn with y up; 0 for a line. */
  readonly bulge: number;
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly length: number;
  readonly before: number;
}

export interface Truth {
  readonly spans: readonly Span[];
  readonly length: number;
}

/** Bulges this flat (sagitta under a thousandth of a millionth) are straight to the judge. */
const STRAIGHT = 1e-12;

/** Bulges below this are flat: the centre is more than a hundred chords away. */
const FLAT = 1e-3;

export function truthOf(path: PlainPath): Truth {
  const spans: Span[] = [];
  let before = 0;
  const n = path.vertices.length;
  for (let i = 0; i < (path.closed ? n : n - 1); i++) {
    const a = path.vertices[i]!;
    const b = path.vertices[(i + 1) % n]!;
    const chord = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    const isArc = chord > 0 && Math.abs(a.bulge) * chord > STRAIGHT;
    // Circle through the ends and the apex of the arc: R = (h^2 + s^2) / 2 s with half chord h and sagitta s.
    const sagitta = (a.bulge * chord) / 2;
    const radius = isArc ? (chord * chord) / (8 * Math.abs(sagitta)) + Math.abs(sagitta) / 2 : 0;
    const offset = isArc ? radius - Math.abs(sagitta) : 0;
    const ux = chord === 0 ? 1 : (b.x - a.x) / chord;
    const uy = chord === 0 ? 0 : (b.y - a.y) / chord;
    // A positive bulge sags to the left of the run on paper with y down, so that its centre lies to the right.
    const way = Math.sign(a.bulge);
    const cx = (a.x + b.x) / 2 - uy * offset * way;
    const cy = (a.y + b.y) / 2 + ux * offset * way;
    const length = isArc ? radius * 4 * Math.atan(Math.abs(a.bulge)) : chord;
    spans.push({ x0: a.x, y0: a.y, x1: b.x, y1: b.y, chord, bulge: isArc ? a.bulge : 0, cx, cy, radius, length, before });
    before += length;
  }
  return { spans, length: before };
}

/** Place and unit normal (to the right of the run, y down) a part of the way along a span. */
function placeOn(s: Span, t: number): { x: number; y: number; nx: number; ny: number } {
  const ux = s.chord === 0 ? 1 : (s.x1 - s.x0) / s.chord;
  const uy = s.chord === 0 ? 0 : (s.y1 - s.y0) / s.chord;
  if (s.bulge === 0) return { x: s.x0 + (s.x1 - s.x0) * t, y: s.y0 + (s.y1 - s.y0) * t, nx: -uy, ny: ux };
  // In the frame of the chord, about its middle: the arc x = R sin f, y = R (cos h - cos f), for f from -h to h.
  const half = 2 * Math.atan(s.bulge);
  const f = (2 * t - 1) * Math.abs(half);
  const alongChord = s.radius * Math.sin(f);
  const lift = -2 * s.radius * Math.sin((Math.abs(half) - f) / 2) * Math.sin((Math.abs(half) + f) / 2) * Math.sign(s.bulge);
  const mx = (s.x0 + s.x1) / 2;
  const my = (s.y0 + s.y1) / 2;
  const turn = f * Math.sign(s.bulge);
  const tx = ux * Math.cos(turn) - uy * Math.sin(turn);
  const ty = uy * Math.cos(turn) + ux * Math.sin(turn);
  return { x: mx + ux * alongChord - uy * lift, y: my + uy * alongChord + ux * lift, nx: -ty, ny: tx };
}

/** Place and right-hand normal so many inches along; at a joint that of the span `hint` names, if it reaches there. */
export function placeAlong(truth: Truth, along: number, hint?: number): { x: number; y: number; nx: number; ny: number } {
  let i = hint ?? truth.spans.findIndex((s) => along <= s.before + s.length);
  if (i < 0) i = truth.spans.length - 1;
  const s = truth.spans[i]!;
  return placeOn(s, s.length === 0 ? 0 : (along - s.before) / s.length);
}

/** Shortest distance from a place to a path. */
export function distanceTo(truth: Truth, x: number, y: number): number {
  let best = Infinity;
  for (const s of truth.spans) best = Math.min(best, distanceToSpan(s, x, y));
  return best;
}

function distanceToSpan(s: Span, x: number, y: number): number {
  const dx = s.x1 - s.x0;
  const dy = s.y1 - s.y0;
  const px = x - s.x0;
  const py = y - s.y0;
  const toStart = Math.sqrt(px * px + py * py);
  const toEnd = Math.sqrt((x - s.x1) ** 2 + (y - s.y1) ** 2);
  const nearEnd = Math.min(toStart, toEnd);
  if (s.bulge === 0) {
    const along = px * dx + py * dy;
    if (along <= 0 || along >= s.chord * s.chord) return nearEnd;
    return Math.abs(px * dy - py * dx) / s.chord;
  }
  // The nearest place on the whole circle is on the arc when it lies on the arc's side of the chord.
  const rx = x - s.cx;
  const ry = y - s.cy;
  const r = Math.sqrt(rx * rx + ry * ry);
  if (r === 0) return s.radius;
  const qx = s.cx + (rx / r) * s.radius - s.x0;
  const qy = s.cy + (ry / r) * s.radius - s.y0;
  const isOnArc = Math.abs(s.bulge) < FLAT ? isBetweenEnds(s, px, py) : (dx * qy - dy * qx) * s.bulge < 0;
  // |r - R| by the power of the point with respect to an end of the arc, which keeps the digits of flat arcs.
  const power = px * px + py * py - 2 * (px * (s.cx - s.x0) + py * (s.cy - s.y0));
  return isOnArc ? Math.min(nearEnd, Math.abs(power) / (r + s.radius)) : nearEnd;
}

/** For a flat arc, whose centre is too far off to reckon by: whether a place near it lies between the squares at its ends. */
function isBetweenEnds(s: Span, px: number, py: number): boolean {
  const dx = s.x1 - s.x0;
  const dy = s.y1 - s.y0;
  const cos = Math.cos(2 * Math.atan(s.bulge));
  const sin = Math.sin(2 * Math.atan(s.bulge));
  const afterStart = px * (dx * cos + dy * sin) + py * (dy * cos - dx * sin);
  const afterEnd = (px - dx) * (dx * cos - dy * sin) + (py - dy) * (dy * cos + dx * sin);
  return afterStart > 0 && afterEnd < 0;
}

/** How often a closed path goes round a place, by the sum of the angles it is seen under. */
export function windingAbout(truth: Truth, x: number, y: number): number {
  let angle = 0;
  for (const s of truth.spans) {
    const ax = s.x0 - x;
    const ay = s.y0 - y;
    const bx = s.x1 - x;
    const by = s.y1 - y;
    const turn = ax * by - ay * bx;
    const seen = Math.atan2(turn, ax * bx + ay * by);
    // Between an arc and its chord the arc passes on the other side of the place; on the chord it is seen under a half turn.
    const isUnderArc = s.bulge !== 0 && turn * s.bulge <= 0 && Math.hypot(x - s.cx, y - s.cy) < s.radius;
    if (!isUnderArc) angle += seen;
    else angle += Math.sign(s.bulge) * (turn === 0 ? Math.PI : 2 * Math.PI) + (turn === 0 ? 0 : seen);
  }
  return Math.round(angle / (2 * Math.PI));
}

/** The signed area a closed path goes round (positive clockwise with y down): Green's formula, span by span. */
export function areaOf(truth: Truth): number {
  let twice = 0;
  const first = truth.spans[0]!;
  for (const s of truth.spans) {
    twice += (s.x0 - first.x0) * (s.y1 - first.y0) - (s.x1 - first.x0) * (s.y0 - first.y0);
    const sweep = 4 * Math.atan(s.bulge);
    if (s.bulge !== 0) twice += s.radius * s.radius * (sweep - Math.sin(sweep));
  }
  return twice / 2;
}
