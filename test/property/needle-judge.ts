// Judges one needle line against the edge it came from, by the independent formulas of needle-truth.ts.

import type { OffsetOutcome } from '../../src/geometry/offset/offset-closed.ts';
import { type PlainPath, type Truth, areaOf, distanceTo, placeAlong, truthOf, windingAbout } from './needle-truth.ts';

/** How far off anything may be: a millionth of an inch. */
export const WITHIN = 1e-6;

/** A needle line shorter than this is none: a foot that just fits may stand this far from where its line is. */
const SHORTEST = 1e-4;

/** A few times rounding slack of a length. */
const TIGHT = 1e-8;

export interface Judgement {
  /** What is wrong, in words; empty when all is well. */
  readonly faults: readonly string[];
  /** Greatest distance by which any place of the line was nearer than, or off, the foot's radius. */
  readonly worst: number;
}

interface Options {
  readonly samplesAPiece?: number;
  readonly samplesOfEdge?: number;
  /** The outline was put out of true by next to nothing: places that fit only to rounding slack are let pass. */
  readonly mayBeTight?: boolean;
}

/** All that must be true of an offset of `edge` by `radius`. */
export function judge(edge: PlainPath, radius: number, where: 'outside' | 'inside', offset: OffsetOutcome<'template'>, options: Options = {}): Judgement {
  const faults: string[] = [];
  const truth = truthOf(edge);
  const fault = (what: string) => {
    if (faults.length < 8) faults.push(what);
  };
  const loops = offset.kind === 'loops' ? offset.loops : [];
  let worst = 0;
  const lines = loops.map((loop) => truthOf(loop.path));
  const wanted = where === 'inside' ? (w: number) => w !== 0 : (w: number) => w === 0;
  loops.forEach((loop, k) => {
    const line = lines[k]!;
    if (Math.abs(line.length - loop.length) > WITHIN) fault(`loop ${k} says ${loop.length} long, is ${line.length}`);
    const area = loop.path.closed ? areaOf(line) : 0;
    if (Math.abs(area - loop.area) > WITHIN) fault(`loop ${k} says ${loop.area} enclosed, is ${area} clockwise`);
    if (k > 0 && loop.length > loops[k - 1]!.length + WITHIN) fault(`loop ${k} is longer than the one before`);
    let reached = 0;
    for (const c of loop.contacts) {
      if (c.start !== reached) fault(`loop ${k}: a gap in the contacts at ${reached}, next starts at ${c.start}`);
      reached = c.end;
      const samples = options.samplesAPiece ?? 6;
      for (let i = 0; i <= samples; i++) {
        const part = i / samples;
        const p = placeAlong(line, c.start + (c.end - c.start) * part);
        const away = distanceTo(truth, p.x, p.y);
        worst = Math.max(worst, Math.abs(away - radius));
        if (away < radius - WITHIN) fault(`loop ${k}: ${radius - away} too near at ${p.x},${p.y} (${c.kind} ${c.edge})`);
        if (away > radius + WITHIN) fault(`loop ${k}: ${away - radius} too far at ${p.x},${p.y} (${c.kind} ${c.edge})`);
        if (!wanted(windingAbout(truth, p.x, p.y))) fault(`loop ${k}: on the wrong side at ${p.x},${p.y}`);
        for (const touch of c.opposite ? [c, c.opposite] : [c]) {
          const onEdge = touch.edgeStart + (touch.edgeEnd - touch.edgeStart) * part;
          const q = placeAlong(truth, onEdge, touch.kind === 'edge' ? touch.edge : touch.edge % truth.spans.length);
          const apart = Math.abs(Math.hypot(q.x - p.x, q.y - p.y) - radius);
          worst = Math.max(worst, apart);
          if (apart > WITHIN) fault(`loop ${k}: contact with ${touch.kind} ${touch.edge} off by ${apart} at ${p.x},${p.y}`);
        }
      }
    }
    if (Math.abs(reached - loop.length) > WITHIN) fault(`loop ${k}: contacts end at ${reached} of ${loop.length}`);
  });
  for (const what of edgeFaults(truth, radius, where, offset, lines, options)) fault(what);
  return { faults, worst };
}

/** Every place of the edge is either touched, and then its square at the radius lies on a line, or truly out of reach. */
function edgeFaults(truth: Truth, radius: number, where: 'outside' | 'inside', offset: OffsetOutcome<'template'>, lines: readonly Truth[], options: Options): string[] {
  const faults: string[] = [];
  const samples = options.samplesOfEdge ?? 200;
  const runsClockwise = areaOf(truth) > 0;
  const way = runsClockwise === (where === 'inside') ? 1 : -1;
  const isMissed = (along: number, inset: number) =>
    offset.missed.some(({ start, end }) =>
      start < end ? along > start + inset && along < end - inset : along > start + inset || along < end - inset,
    );
  const clearanceAt = (along: number, hint: number) => {
    const q = placeAlong(truth, along, hint);
    const p = { x: q.x + way * radius * q.nx, y: q.y + way * radius * q.ny };
    return { ...p, away: distanceTo(truth, p.x, p.y) };
  };
  const onLine = (x: number, y: number, within = WITHIN) => lines.some((line) => distanceTo(line, x, y) <= within);
  /** A place the foot can be set down on but not moved from: all places round it are out of reach. */
  const isAlone = (x: number, y: number) =>
    Array.from({ length: 16 }, (_, k) => (Math.PI * k) / 8).every((a) => distanceTo(truth, x + 1e-3 * Math.cos(a), y + 1e-3 * Math.sin(a)) < radius - 1e-11);
  /** A spot of the edge that is touched while all of the edge round it is out of reach, as the end of a slot just as wide as the foot. */
  const isSpot = (along: number, i: number) => {
    const s = truth.spans[i]!;
    return [-1e-4, 1e-4].every((by) => along + by < s.before || along + by > s.before + s.length || clearanceAt(along + by, i).away < radius - 1e-11);
  };
  truth.spans.forEach((s, i) => {
    const count = Math.max(3, Math.round((samples * s.length) / truth.length));
    for (let k = 0; k < count; k++) {
      const along = s.before + (s.length * (k + 0.5)) / count;
      const { x, y, away } = clearanceAt(along, i);
      // Where the foot fits to within rounding slack and no more, both answers are right.
      const q = placeAlong(truth, along, i);
      const isBlocked = (dx: number, dy: number) => distanceTo(truth, x + way * TIGHT * dx, y + way * TIGHT * dy) < radius - TIGHT / 4;
      const isTight = isBlocked(q.nx, q.ny) || (isBlocked(q.ny, -q.nx) && isBlocked(-q.ny, q.nx));
      const isInReach = away >= radius - 1e-11 && (windingAbout(truth, x, y) !== 0) === (where === 'inside');
      const isReachable = isInReach && !(options.mayBeTight === true && isTight);
      if (isReachable && !onLine(x, y, isTight ? SHORTEST : WITHIN) && !isAlone(x, y)) faults.push(`${x},${y} is clear but on no needle line (edge ${i}, ${along} along)`);
      if (isReachable && isMissed(along, 1e-3) && !isAlone(x, y) && !isSpot(along, i)) faults.push(`edge ${i} at ${along} is called missed but can be touched`);
      // A stretch of no more than rounding's length is not reported.
      if (away < radius - WITHIN && s.length > WITHIN && !isMissed(along, -1e-5)) faults.push(`edge ${i} at ${along} cannot be touched (${radius - away} too near) but is not called missed`);
    }
  });
  truth.spans.forEach((out, i) => {
    // Corners: places round the vertex at the radius that are clear must lie on a line too.
    for (let k = 0; k < 8; k++) {
      const angle = (Math.PI / 4) * (k + 0.37);
      const x = out.x0 + radius * Math.cos(angle);
      const y = out.y0 + radius * Math.sin(angle);
      if (distanceTo(truth, x, y) < radius - 1e-11) continue;
      const winding = windingAbout(truth, x, y);
      if ((winding !== 0) !== (where === 'inside')) continue;
      if (!onLine(x, y) && !isAlone(x, y)) faults.push(`${x},${y} about vertex ${i} is clear but on no needle line`);
    }
  });
  const missedLength = offset.missed.reduce((sum, m) => sum + m.length, 0);
  if (missedLength > truth.length + WITHIN) faults.push(`missed ${missedLength} of ${truth.length}`);
  for (const { start, end, length } of offset.missed) {
    const run = end > start ? end - start : end - start + truth.length;
    if (Math.abs(run - length) > 1e-9) faults.push(`missed ${start} to ${end} is not ${length} long`);
  }
  return faults;
}
