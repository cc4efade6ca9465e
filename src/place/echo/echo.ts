// Echoing a stitched line: the pose of a template whose needle line stays at a distance from it with the least greatest deviation, along the whole
// of it or along the longest stretch within a tolerance; and, where one placement cannot, a chain of placements that can.
// Maths: see follow/settle.ts (least greatest deviation), follow/starts.ts (where it begins) and follow/longest.ts (how far it goes).
// An echo at distance 0 is the line itself: matching a line is the same question.

import type { Path } from '../../geometry/path.ts';
import { pathLength } from '../../geometry/measure.ts';
import type { Frame, Vec } from '../../geometry/point.ts';
import type { NeedleLines } from '../../needle/needle-line.ts';
import { EYE, SAME_POINT } from '../../num/tolerances.ts';
import { type Chain, chainAlong } from '../follow/chain.ts';
import { type Following, followingOf } from '../follow/following.ts';
import { FINE, alongWhole, longestWithin } from '../follow/longest.ts';
import { needleTrack } from '../follow/needle-track.ts';
import { type Rail, type Seating, looseEnds, reseated } from '../follow/seating.ts';
import { type LineSide, wantedLine } from '../follow/wanted-line.ts';

/** A template that may be laid, by its needle lines. */
export interface Candidate {
  readonly needle: NeedleLines;
  /** Which faces may lie up; both when left out. */
  readonly faces?: 'both' | 'etched-up';
}

export interface EchoOptions<F extends Frame> {
  /** From the line, in inches; a quarter of an inch when left out. */
  readonly distance?: number;
  /** As the line runs; the better one when left out. */
  readonly side?: LineSide | 'either';
  /** How far off still counts as following, in inches; what an eye would see when left out. */
  readonly tolerance?: number;
  /** How far the needle falls from the foot's centre, as the line's frame sees it. */
  readonly needleOffset?: Vec<F>;
  /** Stretches shorter than this are not worth a placement, in inches. */
  readonly least?: number;
  /** Whether to look for a chain of placements where one cannot follow the whole line. */
  readonly chain?: boolean;
}

export type Echo<F extends Frame> =
  /** One placement follows the whole line within the tolerance; `exact` when it is off by no more than rounding. */
  | { readonly kind: 'whole'; readonly best: Following<F>; readonly exact: boolean }
  /** The longest stretch one placement follows within the tolerance. `whole`: the least it is off when laid along all of the line, where it is long enough. */
  | { readonly kind: 'part'; readonly best: Following<F>; readonly whole?: Following<F>; readonly chain?: Chain<F> }
  /** No stretch worth a placement is followed within the tolerance. */
  | { readonly kind: 'none'; readonly whole?: Following<F> }
  | { readonly kind: 'unusable'; readonly detail: string };

/** The distance quilters echo at when nothing else is said, in inches. */
export const USUAL_DISTANCE = 1 / 4;
/** The shortest stretch worth laying a template for, in inches. */
export const SHORTEST_STRETCH = 1 / 2;

/** The echo of a line (inches, any frame) by one template; its pose carries template coordinates to the line's frame. */
export function echo<F extends Frame>(line: Path<F>, template: Candidate, options: EchoOptions<F> = {}): Echo<F> {
  const { tolerance = EYE, needleOffset = { x: 0, y: 0 } } = options;
  const unusable = quarrelWith(line, options);
  if (unusable !== undefined) return { kind: 'unusable', detail: unusable };
  const lines = wantedLines(line, options);
  const rails = railsOf([template]);
  const tell = (seating: Seating<F>) => followingOf(seating, template.needle, needleOffset);
  const alongAll = alongWhole(lines, rails, tolerance);
  const whole = alongAll && tell(alongAll);
  if (whole && whole.deviation.greatest <= tolerance) return { kind: 'whole', best: whole, exact: whole.deviation.greatest <= SAME_POINT };
  const longest = longestWithin(lines, rails, tolerance, options.least ?? SHORTEST_STRETCH);
  const best = longest
    .flatMap((each) => trimmed(each, tolerance, tell) ?? [])
    .sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!best) return { kind: 'none', ...(whole && { whole }) };
  const chain = options.chain ? chainAlong(lines, rails, [template.needle], { tolerance, needleOffset, least: options.least ?? SHORTEST_STRETCH }) : undefined;
  return { kind: 'part', best, ...(whole && { whole }), ...(chain && { chain }) };
}

/** Told in full and, where the last digit shows more than the tolerance, shortened step by step until it is within. */
function trimmed<F extends Frame>(seating: Seating<F>, tolerance: number, tell: (seating: Seating<F>) => Following<F>): Following<F> | undefined {
  let now = seating;
  for (let tries = 0; tries < MOST_TRIMS && now.stretch.to - now.stretch.from > 2; tries++) {
    const told = tell(now);
    if (told.deviation.greatest <= tolerance) return told;
    const { from, to } = now.stretch;
    const isNearFrom = told.deviation.at - told.from < told.to - told.deviation.at;
    now = reseated(now, isNearFrom ? { from: from + 1, to } : { from, to: to - 1 }, looseEnds, FINE, { rounds: 30 });
  }
  return undefined;
}

const MOST_TRIMS = 40;

/** The line with its wanted sides; at distance 0 both sides are the same. */
export function wantedLines<F extends Frame>(line: Path<F>, { distance = USUAL_DISTANCE, side = 'either' }: EchoOptions<F>) {
  const sides: readonly LineSide[] = distance === 0 ? ['right'] : side === 'either' ? ['left', 'right'] : [side];
  return sides.map((each) => wantedLine(line, distance, each));
}

/** Every needle line of the templates, on every face it may lie on. */
export function railsOf(templates: readonly Candidate[]): readonly Rail[] {
  return templates.flatMap(({ needle, faces = 'both' }, template) =>
    needle.lines.flatMap(({ path }, needleLine) =>
      (faces === 'both' ? [false, true] : [false]).map((flipped): Rail => ({ track: needleTrack(path, flipped), template, needleLine })),
    ),
  );
}

/** What makes a question unanswerable, in a sentence; undefined when nothing does. */
export function quarrelWith<F extends Frame>(line: Path<F>, { distance = USUAL_DISTANCE, tolerance = EYE }: EchoOptions<F>): string | undefined {
  if (!(pathLength(line) > SAME_POINT)) return 'The line has no length.';
  if (!(distance >= 0) || !Number.isFinite(distance)) return 'The distance is to be 0 or more.';
  if (!(tolerance > 0) || !Number.isFinite(tolerance)) return 'The tolerance is to be more than 0.';
  return undefined;
}
