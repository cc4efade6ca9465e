// Looking along a parametrised curve closely enough to follow every turn of it, before arcs are fitted.
// The samples are drawn together where the curve turns, until neighbours differ by little in direction and the chord between them agrees; where a
// turn is too sharp to have any length it is a corner (the cusp of a cubic is one), and the curve falls into smooth runs there.

import { SAME_ANGLE, SAME_POINT } from '../../num/tolerances.ts';
import { type Frame, type Point, type Vec, between, cross, distance, dot, unit } from '../point.ts';

/** A curve by its parameter: where it is, and which way it runs as the parameter grows (a vector of any length, such as the derivative). */
export type Curve<F extends Frame> = (t: number) => { readonly point: Point<F>; readonly tangent: Vec<F> };

/** A place on a curve with the unit tangent there, and how much the curve has turned since the run began (radians, without sign). */
export interface Sample<F extends Frame> {
  readonly t: number;
  readonly point: Point<F>;
  readonly tangent: Vec<F>;
  readonly turned: number;
}

/** A stretch of a curve without corners, looked at closely; the samples run in the order of the parameter. */
export interface SmoothRun<F extends Frame> {
  readonly curve: Curve<F>;
  readonly samples: readonly Sample<F>[];
}

/** Neighbouring samples differ in direction by no more than this, in radians. */
const CLOSE_LOOK = 0.2;

/** More samples than this for each of the first steps are the sign of a tangent that does not belong to its curve; then no closer look is taken. */
const MOST_FOR_A_STEP = 200;

/** An interval is halved no further than to this part of the whole; beyond it a double has no more steps to offer. */
const LEAST_PART = 2 ** -44;

/**
 * The smooth runs of a curve from `t0` to `t1`, which is greater. The curve is first looked at in `steps` equal parts, which must be fine enough that no
 * part hides a whole wiggle. Stretches of no length are left out; a curve that goes nowhere, or whose points are not finite, has no runs.
 */
export function smoothRuns<F extends Frame>(curve: Curve<F>, t0: number, t1: number, steps: number): readonly SmoothRun<F>[] {
  const runs: Sample<F>[][] = [];
  const least = (t1 - t0) * LEAST_PART;
  const first = sampleAt(curve, t0, t1);
  let run = [first];
  let finite = isFinite(first);
  let taken = 0;

  const follow = (a: Sample<F>, b: Sample<F>): void => {
    const turn = Math.abs(turnBetween(a.tangent, b.tangent));
    const middle = sampleAt(curve, (a.t + b.t) / 2, b.t);
    if (!isFinite(middle) || !isFinite(b)) {
      finite = false;
      return;
    }
    const length = distance(a.point, middle.point) + distance(middle.point, b.point);
    const isShort = length <= SAME_POINT || b.t - a.t <= least || ++taken > steps * MOST_FOR_A_STEP;
    if (isShort && turn > CLOSE_LOOK) {
      runs.push(run);
      run = [b];
    } else if (isShort || (turn <= CLOSE_LOOK && agrees(a, b) && agrees(a, middle) && agrees(middle, b))) {
      run.push({ ...b, turned: run[run.length - 1]!.turned + turn });
    } else {
      follow(a, middle);
      follow(middle, b);
    }
  };

  let before = first;
  for (let i = 1; i <= steps && finite; i++) {
    const next = sampleAt(curve, i === steps ? t1 : t0 + ((t1 - t0) * i) / steps, t0);
    follow(before, next);
    before = next;
  }
  if (!finite) return [];
  runs.push(run);
  return runs.filter((samples) => lengthOf(samples) > SAME_POINT).map((samples) => ({ curve, samples }));
}

/**
 * The curve at a parameter, with its unit tangent. Where the tangent vanishes (the end of a cubic whose handle has no length) it is taken a
 * millionth of the way towards `other`.
 */
export function sampleAt<F extends Frame>(curve: Curve<F>, t: number, other: number): Sample<F> {
  const { point, tangent } = curve(t);
  const isStill = tangent.x === 0 && tangent.y === 0;
  return { t, point, tangent: unit(isStill ? curve(t + (other - t) * 1e-6).tangent : tangent), turned: 0 };
}

/** The samples of a run strictly between two parameters. */
export function samplesBetween<F extends Frame>(run: SmoothRun<F>, from: number, to: number): readonly Sample<F>[] {
  const first = indexBefore(run, from);
  const last = indexBefore(run, to);
  const { samples } = run;
  return samples.slice(first + 1, samples[last]!.t === to ? last : last + 1);
}

/** The curve of a run at a parameter, with how much it has turned since the run began, told from the samples on either side. */
export function placeOnRun<F extends Frame>(run: SmoothRun<F>, t: number): Sample<F> {
  const low = indexBefore(run, t);
  const before = run.samples[low]!;
  const next = run.samples[low + 1] ?? before;
  const part = next.t === before.t ? 0 : (t - before.t) / (next.t - before.t);
  return { ...sampleAt(run.curve, t, next.t), turned: before.turned + (next.turned - before.turned) * part };
}

/** The index of the last sample of a run not beyond a parameter (its first sample when all are). */
function indexBefore<F extends Frame>({ samples }: SmoothRun<F>, t: number): number {
  let low = 0;
  let high = samples.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (samples[middle]!.t <= t) low = middle;
    else high = middle;
  }
  return low;
}

/** The angle from one unit vector to another, radians, positive clockwise on the screen. */
export function turnBetween<F extends Frame>(a: Vec<F>, b: Vec<F>): number {
  return Math.atan2(cross(a, b), dot(a, b));
}

/**
 * The parameters at which a run turns from one way to the other: where its direction is extreme. A straight stretch between two bends counts
 * once, at its end.
 */
export function inflectionsOf<F extends Frame>(run: SmoothRun<F>): readonly number[] {
  const { samples } = run;
  const found: number[] = [];
  let way = 0;
  for (let i = 1; i < samples.length; i++) {
    const turn = turnBetween(samples[i - 1]!.tangent, samples[i]!.tangent);
    if (Math.abs(turn) <= SAME_ANGLE) continue;
    if (way !== 0 && Math.sign(turn) !== way) {
      found.push(extremeDirection(run.curve, samples[Math.max(0, i - 2)]!.t, samples[i]!.t, samples[i - 1]!.tangent, way));
    }
    way = Math.sign(turn);
  }
  return found;
}

/** The parameter between `a` and `b` at which the direction, measured from `from` and with the sign of `way`, is greatest: golden section. */
function extremeDirection<F extends Frame>(curve: Curve<F>, a: number, b: number, from: Vec<F>, way: number): number {
  const part = (Math.sqrt(5) - 1) / 2;
  const direction = (t: number) => way * turnBetween(from, sampleAt(curve, t, b).tangent);
  let low = a;
  let high = b;
  let left = high - part * (high - low);
  let right = low + part * (high - low);
  let atLeft = direction(left);
  let atRight = direction(right);
  // Forty steps narrow the interval by 2e8, as far as an extreme can be told in doubles.
  for (let i = 0; i < 40; i++) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - part * (high - low);
      atLeft = direction(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + part * (high - low);
      atRight = direction(right);
    }
  }
  return (low + high) / 2;
}

/** Whether the chord between two samples runs the way the curve does at both. */
function agrees<F extends Frame>(a: Sample<F>, b: Sample<F>): boolean {
  const chord = between(a.point, b.point);
  if (Math.hypot(chord.x, chord.y) <= SAME_POINT) return true;
  return Math.abs(turnBetween(a.tangent, unit(chord))) <= CLOSE_LOOK && Math.abs(turnBetween(unit(chord), b.tangent)) <= CLOSE_LOOK;
}

function lengthOf<F extends Frame>(samples: readonly Sample<F>[]): number {
  let length = 0;
  for (let i = 1; i < samples.length; i++) length += distance(samples[i - 1]!.point, samples[i]!.point);
  return length;
}

function isFinite<F extends Frame>(s: Sample<F>): boolean {
  return Number.isFinite(s.point.x) && Number.isFinite(s.point.y) && Number.isFinite(s.tangent.x) && Number.isFinite(s.tangent.y);
}
