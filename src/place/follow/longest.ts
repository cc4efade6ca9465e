// The longest stretch of a line that one placement follows within a tolerance, and the least deviation along the whole of it.
// Whatever follows a stretch follows every part of it, so stretches are tried from long to short until some are followed; those are then
// lengthened at both ends and slid along the line as far as they go.

import type { Frame } from '../../geometry/point.ts';
import { EYE } from '../../num/tolerances.ts';
import { firstThatFollow, look } from './look.ts';
import { type EndsOf, type Rail, type Seating, follows, looseEnds, reseated } from './seating.ts';
import type { Stretch } from './starts.ts';
import type { WantedLine } from './wanted-line.ts';

/** Each try is so much shorter than the one before. */
const SHORTER = 0.8;
/** Stretches of one length start this part of it apart. */
const APART = 0.25;
const LOOKED = 17;
const ROUGH = 33;
export const FINE = 129;
const ROUNDS = 14;
/** So many of the stretches that are followed are lengthened. */
const LENGTHENED = 5;

/** The seating that follows the whole line with the least greatest deviation; undefined where no needle line is long enough. */
export function alongWhole<F extends Frame>(lines: readonly WantedLine<F>[], rails: readonly Rail[], tolerance: number): Seating<F> | undefined {
  const steps = lines[0]?.steps ?? 0;
  const rough = [...look(lines, [{ from: 0, to: steps }], rails, { most: 48, looked: ROUGH, settled: ROUGH, rounds: ROUNDS, gain: EYE / 1024 })].sort((a, b) => a.greatest - b.greatest);
  const following = rough.filter((each) => follows(each, tolerance));
  return finest((following.length > 0 ? following : rough).slice(0, 8), tolerance);
}

/** The best of a few, settled to the last digit; those that then follow within the tolerance before those that do not. */
export function finest<F extends Frame>(few: readonly Seating<F>[], tolerance: number, ends: EndsOf = looseEnds): Seating<F> | undefined {
  const least = Math.min(...few.map(({ greatest }) => greatest));
  const settled = few.filter((each) => each.greatest <= 4 * least + tolerance).map((each) => reseated(each, each.stretch, ends, FINE, { rounds: 60 }));
  const following = settled.filter((each) => follows(each, tolerance));
  return (following.length > 0 ? following : settled).sort((a, b) => a.greatest - b.greatest)[0];
}

/**
 * The seating that follows the longest stretch within a tolerance, in inches, with the least deviation on it; after it shorter ones, should a last look
 * find it wanting. None where nothing as long as `least` inches is followed.
 */
export function longestWithin<F extends Frame>(lines: readonly WantedLine<F>[], rails: readonly Rail[], tolerance: number, least: number): readonly Seating<F>[] {
  const line = lines[0];
  if (!line) return [];
  const shortest = Math.max(2, Math.ceil(least / line.step));
  const sizes: number[] = [];
  for (let steps = line.steps; steps >= shortest; steps = Math.floor(steps * SHORTER)) sizes.push(steps);
  // What is followed at one size is followed at every shorter one, so the longest is found by halving.
  let followed: readonly Seating<F>[] = [];
  for (let low = 0, high = sizes.length; low < high; ) {
    const middle = (low + high) >> 1;
    const here = followedAt(lines, windowsOf(line, sizes[middle]!), rails, tolerance);
    if (here.length > 0) {
      followed = here;
      high = middle;
    } else low = middle + 1;
  }
  const longer = followed.map((each) => lengthenedBoth(each, tolerance)).sort((a, b) => extent(b.stretch) - extent(a.stretch));
  const longest = longer[0];
  if (!longest) return [];
  // Of the stretches as long, the one with the least deviation.
  const best = finest(longer.filter(({ stretch }) => extent(stretch) === extent(longest.stretch)), tolerance) ?? longest;
  return [best, ...longer.filter(({ stretch }) => extent(stretch) < extent(longest.stretch))];
}

function followedAt<F extends Frame>(lines: readonly WantedLine<F>[], stretches: readonly Stretch[], rails: readonly Rail[], tolerance: number): readonly Seating<F>[] {
  const size = extent(stretches[0]!) * lines[0]!.step;
  const seatings = look(lines, stretches, rails, { most: 60, looked: LOOKED, settled: LOOKED, rounds: ROUNDS, enough: tolerance, gain: tolerance / 256, alike: tolerance / 2, apart: apartFor(size, tolerance) });
  return firstThatFollow(seatings, tolerance, LENGTHENED, (each) => within(each, each.stretch, tolerance));
}

/**
 * How far apart places may lie at a first look, in inches, that may come to follow within a tolerance: besides the tolerance twice over, what comes of
 * measuring by inches along.
 */
export function apartFor(size: number, tolerance: number): number {
  return 2 * tolerance + size / 24 + EYE;
}

/** How many steps of the line a stretch is long. */
export function extent({ from, to }: Stretch): number {
  return to - from;
}

function windowsOf<F extends Frame>(line: WantedLine<F>, steps: number): readonly Stretch[] {
  if (steps >= line.steps) return [{ from: 0, to: line.steps }];
  const range = line.path.closed ? line.steps : line.steps - steps;
  const count = Math.max(1, Math.ceil(range / Math.max(1, steps * APART)));
  const starts = new Set(Array.from({ length: count + (line.path.closed ? 0 : 1) }, (_, i) => Math.round((i * range) / count)));
  return [...starts].map((from) => ({ from, to: from + steps }));
}

/** Lengthened at either end, then slid along the line as long as it grows. */
function lengthenedBoth<F extends Frame>(start: Seating<F>, tolerance: number): Seating<F> {
  let best = lengthened(lengthened(start, tolerance, 1), tolerance, -1);
  const { line } = best;
  for (let by = Math.ceil(extent(best.stretch) / 6); by >= 1 && extent(best.stretch) < line.steps; ) {
    const longer = [1, -1]
      .map((way): Stretch => (way > 0 ? { from: best.stretch.from + by, to: best.stretch.to + by + 1 } : { from: best.stretch.from - by - 1, to: best.stretch.to - by }))
      .map((stretch) => within(best, stretch, tolerance))
      .find((each) => each !== undefined);
    if (longer) best = lengthened(lengthened(longer, tolerance, 1), tolerance, -1);
    else by = by === 1 ? 0 : Math.ceil(by / 3);
  }
  return best;
}

/** As far as one end will go. */
export function lengthened<F extends Frame>(start: Seating<F>, tolerance: number, way: 1 | -1, ends: EndsOf = looseEnds): Seating<F> {
  let best = start;
  for (let by = Math.max(1, Math.ceil(extent(start.stretch) / 3)); by >= 1; ) {
    const { from, to } = best.stretch;
    const room = best.line.path.closed ? best.line.steps - extent(best.stretch) : way > 0 ? best.line.steps - to : from;
    const step = Math.min(by, room);
    if (step < 1) break;
    const longer = within(best, way > 0 ? { from, to: to + step } : { from: from - step, to }, tolerance, ends);
    if (longer) best = longer;
    else by = step === 1 ? 0 : Math.ceil(step / 2);
  }
  return best;
}

/** The seating settled on a stretch, if it follows it within the tolerance. */
export function within<F extends Frame>(before: Seating<F>, wanted: Stretch, tolerance: number, ends: EndsOf = looseEnds): Seating<F> | undefined {
  const stretch = onLine(before.line, wanted);
  if (!stretch) return undefined;
  const settled = reseated(before, stretch, ends, ROUGH, { rounds: ROUNDS, enough: tolerance, gain: tolerance / 256 });
  return follows(settled, tolerance) ? settled : undefined;
}

/** A stretch by numbers the line has; undefined when it runs off an open one. */
function onLine<F extends Frame>({ path, steps }: WantedLine<F>, { from, to }: Stretch): Stretch | undefined {
  if (!path.closed) return from >= 0 && to <= steps ? { from, to } : undefined;
  if (to - from > steps) return undefined;
  const round = from < 0 ? steps : from >= steps ? -steps : 0;
  return { from: from + round, to: to + round };
}
