// One placement that follows a stretch of a line at a distance: where the template lies, what is sewn, and how far off it is, measured to the last
// digit along the line.

import { carryPath, stretchOfPath } from '../../geometry/change.ts';
import { pathLength, pointAlong } from '../../geometry/measure.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import type { Path } from '../../geometry/path.ts';
import type { Frame, Point, Vec } from '../../geometry/point.ts';
import type { Pose } from '../../geometry/pose.ts';
import type { EdgeName, NeedleLines } from '../../needle/needle-line.ts';
import { shortestTurn } from '../../num/angle.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { type Freedom, freedomAlong } from './freedom.ts';
import { findFoot, newFoot, pieceHolding } from './needle-track.ts';
import { type Seating, handOf } from './seating.ts';
import { type Seat, deviationAt } from './settle.ts';
import type { LineSide } from './wanted-line.ts';

export interface Following<F extends Frame> {
  /** Which template of those asked about. */
  readonly template: number;
  /** Where the foot's centre has it lie: the needle falls where it should with the foot's own needle offset. */
  readonly pose: Pose<'template', F>;
  readonly pass: FollowingPass;
  /** On which side of the line the needle runs. */
  readonly side: LineSide;
  /** The stretch of the line that is followed, in inches along it; of a closed line `to` may lie beyond its length. */
  readonly from: number;
  readonly to: number;
  readonly deviation: Deviation;
  /** What the template can still do without the needle line changing. */
  readonly freedom: Freedom<F>;
}

/** A stretch of a needle line, in inches along it, clockwise as seen on the etched face. */
export interface FollowingPass {
  readonly edge: EdgeName;
  readonly loop: number;
  readonly start: number;
  readonly stop: number | 'all-round';
  readonly way: 'clockwise' | 'counterclockwise';
  /** In inches. */
  readonly length: number;
}

export interface Deviation {
  /** The greatest along the line, in inches, and where along the line. */
  readonly greatest: number;
  readonly at: number;
  /** The root of the mean square along the line. */
  readonly typical: number;
  /** The greatest along the stretch that is sewn, measured from there to the line. */
  readonly alongTemplate: number;
  /** Along the line, from `from` to `to`: positive where the needle line lies too far away (where the distance is 0: on the right of the line). */
  readonly samples: readonly DeviationSample[];
}

export interface DeviationSample {
  /** Inches along the line. */
  readonly along: number;
  readonly deviation: number;
}

/** Where the pass is to end other than at the feet of the stretch's ends, in inches along the needle line. */
export interface PassEnds {
  readonly start?: number;
  readonly stop?: number;
}

const FEWEST_SAMPLES = 64;
/** Halvings of the place of a peak: by golden section each leaves 0.618 of it. */
const SECTIONS = 30;

/** A seating told in full. `needle` are the needle lines of its template, `needleOffset` how far the needle falls from the foot's centre. */
export function followingOf<F extends Frame>(seating: Seating<F>, needle: NeedleLines, needleOffset: Vec<F>, ends: PassEnds = {}): Following<F> {
  const { line, rail, way, stretch, seat } = seating;
  const from = line.at[stretch.from]!;
  const to = line.at[stretch.to]!;
  const needleLine = needle.lines[rail.needleLine]!;
  const total = needleLine.length;
  const isClosed = needleLine.path.closed;
  const wrapped = (along: number) => (isClosed ? along - Math.floor(along / total) * total : Math.min(total, Math.max(0, along)));
  const first = seating.feet[0] ?? 0;
  const last = seating.feet[seating.feet.length - 1] ?? 0;
  const start = wrapped(ends.start ?? first);
  const stop = wrapped(ends.stop ?? last);
  const goesRound = line.path.closed && isClosed && stretch.to - stretch.from === line.steps;
  const run = way > 0 ? stop - start : start - stop;
  const length = goesRound ? total : run >= 0 || !isClosed ? Math.abs(run) : run + total;
  const low = way > 0 ? start : stop;
  const sewn = stretchOfPath(needleLine.path, low, low + length);
  const samples = samplesOf(seating, sewn);
  const worst = samples.greatest;
  const pose = poseOfSeat<F>(seat, rail.track.flipped);
  return {
    template: rail.template,
    pose: { ...pose, x: pose.x - needleOffset.x, y: pose.y - needleOffset.y },
    pass: { edge: needleLine.from, loop: needleLine.loop, start, stop: goesRound ? 'all-round' : stop, way: way > 0 ? 'clockwise' : 'counterclockwise', length },
    side: line.side,
    from,
    to,
    deviation: { greatest: Math.abs(worst.deviation), at: worst.along, typical: samples.typical, alongTemplate: alongTemplate(seating, sewn), samples: samples.all },
    freedom: freedomAlong(needleLine.path, low, length, pose),
  };
}

/** The pose that a seat means, for the needle itself. */
export function poseOfSeat<F extends Frame>({ angle, x, y }: Seat, flipped: boolean): Pose<'template', F> {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: -(cos * x + sin * y), y: sin * x - cos * y, angle: shortestTurn(-angle), flipped };
}

/**
 * The place along the needle line, in inches, nearest to where the needle should be beside a place of the line: the end of a pass that another goes
 * on from.
 */
export function footOfWanted<F extends Frame>({ line, rail, seat, places, feet }: Seating<F>, place: number): number {
  const cos = Math.cos(seat.angle);
  const sin = Math.sin(seat.angle);
  const x = line.wantedX[place]!;
  const y = line.wantedY[place]!;
  const isNearLast = Math.abs((places[places.length - 1] ?? place) - place) < Math.abs((places[0] ?? place) - place);
  const foot = { ...newFoot(), piece: pieceHolding(rail.track, feet[isNearLast ? feet.length - 1 : 0] ?? 0) };
  findFoot(rail.track, cos * x - sin * y + seat.x, sin * x + cos * y + seat.y, foot);
  return foot.along;
}

interface Samples {
  readonly all: readonly DeviationSample[];
  readonly greatest: DeviationSample;
  readonly typical: number;
}

/** Deviations along the line, those between samples found where they are greatest. */
function samplesOf<F extends Frame>(seating: Seating<F>, sewn: Path<'template'>): Samples {
  const { line, stretch, feet } = seating;
  const between = Math.max(1, Math.ceil(FEWEST_SAMPLES / Math.max(1, stretch.to - stretch.from)));
  const measureAt = measureAlong(seating, sewn);
  const all: DeviationSample[] = [];
  const pieces: number[] = [];
  let piece = pieceHolding(seating.rail.track, feet[0] ?? 0);
  const smooth: boolean[] = [];
  for (let place = stretch.from; place <= stretch.to; place++) {
    const isCorner = line.shadowed[place] === 1;
    const goesOn = place < stretch.to && !isCorner && !line.shadowed[place + 1];
    for (let k = 0; k < (goesOn ? between : 1); k++) {
      const along = line.at[place]! + (k / between) * ((line.at[place + 1] ?? 0) - line.at[place]!);
      const measured = isCorner ? measureAt({ x: line.x[place]!, y: line.y[place]! }, 0, piece) : measureAt(pointAlong(line.path, along).point, line.distance, piece);
      piece = measured.piece;
      all.push({ along, deviation: measured.deviation });
      pieces.push(piece);
      smooth.push(!isCorner);
    }
  }
  let greatest: DeviationSample = all[0] ?? { along: line.at[stretch.from]!, deviation: 0 };
  const size = (i: number) => Math.abs(all[i]?.deviation ?? 0);
  all.forEach((sample, i) => {
    if (size(i) < size(i - 1) || size(i) < size(i + 1)) return;
    const low = smooth[i - 1] ? all[i - 1]!.along : sample.along;
    const high = smooth[i + 1] ? all[i + 1]!.along : sample.along;
    const peak = smooth[i] ? peakBetween(low, high, (along) => measureAt(pointAlong(line.path, along).point, line.distance, pieces[i]!).deviation) : sample;
    for (const each of [sample, peak]) if (Math.abs(each.deviation) > Math.abs(greatest.deviation)) greatest = each;
  });
  const mean = all.reduce((sum, { deviation }) => sum + deviation * deviation, 0) / Math.max(1, all.length);
  return { all, greatest, typical: Math.sqrt(mean) };
}

/** The deviation at a place of the wanted line: from the foot that belongs to it or, where another place of what is sewn is nearer, from there. */
function measureAlong<F extends Frame>({ line, rail, way, seat }: Seating<F>, sewn: Path<'template'>): (from: Point<F>, away: number, piece: number) => { readonly deviation: number; readonly piece: number } {
  const { track } = rail;
  const hand = handOf(line, way);
  const cos = Math.cos(seat.angle);
  const sin = Math.sin(seat.angle);
  const mirror = track.flipped ? -1 : 1;
  const foot = newFoot();
  return ({ x, y }, away, piece) => {
    foot.piece = piece;
    const deviation = deviationAt({ track, hand }, seat, x, y, away, foot);
    const nearest = nearestOnPath(sewn, { x: mirror * (cos * x - sin * y + seat.x), y: sin * x + cos * y + seat.y }).distance;
    const isElsewhere = foot.beyond === 0 && nearest < Math.abs(foot.side) - SAME_POINT;
    return { deviation: isElsewhere ? (hand * foot.side < 0 ? -nearest : nearest) - away : deviation, piece: foot.piece };
  };
}

/** The greatest size between two places, by golden section (Press et al., Numerical Recipes, 10.2). */
function peakBetween(low: number, high: number, at: (along: number) => number): DeviationSample {
  const part = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [low, high];
  for (let i = 0; i < SECTIONS; i++) {
    const c = b - part * (b - a);
    const d = a + part * (b - a);
    if (Math.abs(at(c)) > Math.abs(at(d))) b = d;
    else a = c;
  }
  return { along: (a + b) / 2, deviation: at((a + b) / 2) };
}

/** The greatest deviation seen from what is sewn, measured to the nearest place of the line. */
function alongTemplate<F extends Frame>({ line, rail, seat }: Seating<F>, sewn: Path<'template'>): number {
  const length = pathLength(sewn);
  const steps = Math.max(FEWEST_SAMPLES, Math.min(4 * FEWEST_SAMPLES, Math.ceil(length / line.step)));
  const laid = carryPath(poseOfSeat<F>(seat, rail.track.flipped), sewn);
  let greatest = 0;
  for (let i = 0; i <= steps; i++) {
    const near = nearestOnPath(line.path, pointAlong(laid, (i * length) / steps).point);
    greatest = Math.max(greatest, Math.abs(near.distance - line.distance));
  }
  return greatest;
}
