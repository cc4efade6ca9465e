// One side of a border set out: every count and every pose of a template with which its needle line starts on a line at one division
// and stops at the next (or level at the crest, to be mirrored there), so that the ends of neighbouring images meet exactly.
// Sources of the maths: symmetric-chords.ts, parallel-chords.ts, crest-chords.ts.

import { JOINT, NEAR_ANGLE, SAME_POINT } from '../../num/tolerances.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { carryPath } from '../../geometry/change.ts';
import type { Frieze } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { Chord } from './chord.ts';
import { cornersOf, roundingsOf } from './corners-inside.ts';
import { countsFor } from './counts.ts';
import { type CrestChord, crestChords, forcedCrestChords, outermostCrestChords } from './crest-chords.ts';
import { distinct } from './distinct.ts';
import { forgivenessOf } from './forgiveness.ts';
import { type NeedleCurve, needleCurve } from './needle-curve.ts';
import { parallelChords, risingChords } from './parallel-chords.ts';
import { kinksOf, mirrorsAcrossCentreLine, patternExtents, startsOnCentreLine, unitRuns } from './pattern.ts';
import { type Found, type FoundUnit, type SetOutResult, better } from './result.ts';
import { type ScoreTerms, scoreOf } from './score.ts';
import { symmetricChords } from './symmetric-chords.ts';
import { type Unit, copiesOf, unitAcross, unitToCrest } from './unit.ts';
import type { BorderSide, Ruler, SetOutWish } from './wish.ts';

/** Why a count gives nothing, and what would work. */
export interface CountRefused {
  readonly count: number;
  readonly spacing: number;
  readonly why: 'wider-than-the-needle-line' | 'no-such-stretch' | 'crosses-the-centre-line' | 'hangs-over';
  /** In inches: by how much the spacing exceeds the widest chord, the line crosses the centre line, or the unit hangs over. */
  readonly by?: number;
}

export type SideSetOut =
  | { readonly kind: 'set-out'; readonly results: readonly SetOutResult[]; readonly refused: readonly CountRefused[] }
  | { readonly kind: 'impossible'; readonly why: SideProblem; readonly refused: readonly CountRefused[] };

export type SideProblem =
  | { readonly kind: 'bad-measure'; readonly what: 'length' | 'width' | 'clearance' }
  | { readonly kind: 'no-counts' }
  | { readonly kind: 'no-needle-line' }
  | { readonly kind: 'starts-on-the-centre-line'; readonly pattern: Frieze }
  /** Every count is refused; the widest chord of the needle line, and the least count with which a division is no wider. */
  | { readonly kind: 'no-count-works'; readonly widest: number; readonly leastCount: number };

/**
 * Every count and pose that works for a side, the best first; lengths in inches, angles in radians, poses in the axes of one
 * division. Results that go into a clearance come after those that keep them. Counts that give nothing say why.
 */
export function setOutSide(side: BorderSide, ruler: Ruler, wish: SetOutWish): SideSetOut {
  const problem = problemOf(side, ruler, wish);
  if (problem) return { kind: 'impossible', why: problem, refused: [] };
  const curves = ruler.needle.lines.map((line) => ({ line, curve: needleCurve(line.path) }));
  const results: SetOutResult[] = [];
  const refused: CountRefused[] = [];
  const counts = countsFor(side, wish);
  for (const count of counts) {
    const tries = curves.map(({ line, curve }) => setOutCount(side, ruler, wish, line, curve, count));
    const found = tries.flatMap((each) => each.results);
    results.push(...found);
    if (found.length === 0) refused.push(mildest(tries.flatMap((each) => each.refused)));
  }
  if (results.length === 0) {
    const widest = Math.max(...curves.map(({ curve }) => curve.widest)) * (unitRuns(wish.pattern) === 'to-crest' ? 2 : 1);
    return { kind: 'impossible', why: { kind: 'no-count-works', widest, leastCount: Math.ceil(side.length / widest) }, refused };
  }
  return { kind: 'set-out', results: results.sort(better), refused };
}

function problemOf({ length, width, outerClearance, innerClearance }: BorderSide, { needle }: Ruler, wish: SetOutWish): SideProblem | undefined {
  if (!(length > 0)) return { kind: 'bad-measure', what: 'length' };
  if (!(width > 0)) return { kind: 'bad-measure', what: 'width' };
  if (!(outerClearance >= 0 && innerClearance >= 0 && outerClearance + innerClearance < width)) return { kind: 'bad-measure', what: 'clearance' };
  if (startsOnCentreLine(wish.pattern) && wish.base !== undefined && wish.base !== 0) return { kind: 'starts-on-the-centre-line', pattern: wish.pattern };
  if (needle.lines.length === 0) return { kind: 'no-needle-line' };
  return countsFor({ length, width, outerClearance, innerClearance }, wish).length === 0 ? { kind: 'no-counts' } : undefined;
}

interface Tried {
  readonly results: readonly SetOutResult[];
  readonly refused: readonly CountRefused[];
}

function setOutCount(side: BorderSide, ruler: Ruler, wish: SetOutWish, line: NeedleLine, curve: NeedleCurve, count: number): Tried {
  const spacing = side.length / count;
  const refuse = (why: CountRefused['why'], by?: number): CountRefused => ({ count, spacing, why, ...(by !== undefined && { by }) });
  const need = unitRuns(wish.pattern) === 'to-crest' ? spacing / 2 : spacing;
  if (need > curve.widest + SAME_POINT) return { results: [], refused: [refuse('wider-than-the-needle-line', need - curve.widest)] };

  const results: SetOutResult[] = [];
  const refused: CountRefused[] = [];
  for (const each of distinct(unitsFor(side, wish, curve, spacing))) {
    const over = overhangOf(wish.pattern, each.unit, spacing);
    const across = crossing(wish.pattern, each.unit);
    if (over > JOINT && wish.overhang !== true) refused.push(refuse('hangs-over', over));
    else if (across > JOINT) refused.push(refuse('crosses-the-centre-line', across));
    else results.push(layIn(side, ruler, wish, curve, line, { ...each, count, spacing, overhang: over }));
  }
  return { results, refused: results.length === 0 && refused.length === 0 ? [refuse('no-such-stretch')] : refused };
}

function unitsFor(side: BorderSide, wish: SetOutWish, curve: NeedleCurve, spacing: number): readonly FoundUnit[] {
  const across = (found: Found, chords: readonly Chord[]) => chords.map((chord) => ({ chord, found, unit: unitAcross(curve, chord, spacing, 0, found !== 'rise') }));
  const { pattern } = wish;
  if (unitRuns(pattern) === 'to-crest') {
    return crestsFor(curve, spacing / 2, wishedHeight(side, wish, 'crest')).map(({ chord, found }) => ({ chord, found, unit: unitToCrest(curve, chord, 0) }));
  }
  const goesOn = pattern === 'run' || pattern === 'twin' || pattern === 'spin';
  return [
    ...across('symmetric', symmetricChords(curve, spacing, wish.overhang === true)),
    ...(goesOn ? across('parallel', parallelChords(curve, spacing)) : []),
    ...(pattern === 'scallop' ? across('rise', risingChords(curve, spacing)) : []),
  ];
}

/** Crests of the wished height; those whose height is settled; and, when none has the wished height, the nearest to it there is. */
function crestsFor(curve: NeedleCurve, half: number, height: number): readonly { readonly chord: CrestChord; readonly found: Found }[] {
  const exact = crestChords(curve, half, height).map((chord) => ({ chord, found: 'crest' as const }));
  const only = forcedCrestChords(curve, half).map((chord) => ({ chord, found: 'only-crest' as const }));
  if (exact.length > 0) return [...exact, ...only];
  const off = (chord: CrestChord) => Math.abs(Math.abs(chord.height) - height);
  const nearest = outermostCrestChords(curve, half)
    .filter((chord) => Math.abs(chord.height) > SAME_POINT)
    .sort((a, b) => off(a) - off(b))
    .slice(0, NEAREST_TRIED);
  return [...only, ...nearest.map((chord) => ({ chord, found: 'nearest-crest' as const }))];
}

/** How many of the nearest crests are looked at, since some hang over or cross the centre line. */
const NEAREST_TRIED = 8;

interface ToLay extends FoundUnit {
  readonly count: number;
  readonly spacing: number;
  readonly overhang: number;
}

function layIn(side: BorderSide, ruler: Ruler, wish: SetOutWish, curve: NeedleCurve, line: NeedleLine, { chord, found, unit: raw, count, spacing, overhang }: ToLay): SetOutResult {
  const { pattern } = wish;
  const asked = pointing(wish.crest ?? 'outward', raw);
  const base = baseFor(side, wish, asked, found);
  const unit = lifted(asked, base);
  const extents = patternExtents(pattern, unit, spacing);
  const clearance = { outer: extents.minY + side.width / 2, inner: side.width / 2 - extents.maxY };
  const short = Math.max(0, side.outerClearance - clearance.outer, side.innerClearance - clearance.inner);
  const height = found === 'rise' ? asked.extents.maxY - asked.extents.minY : Math.max(-asked.extents.minY, asked.extents.maxY);
  const kinks = kinksOf(pattern, unit, Math.abs(base) <= SAME_POINT);
  const corners = cornersOf(curve, chord, NEAR_ANGLE);
  const template = boundsOf(carryPath(unit.pose, ruler.shape.outline));
  const depth = template.maxY - template.minY;
  const wished = wishedHeight(side, wish, found === 'rise' ? 'rise' : 'crest');
  const terms: ScoreTerms = {
    spacing: wish.spacing === undefined ? 0 : Math.abs(spacing - wish.spacing) / wish.spacing,
    height: Math.abs(height - wished) / Math.max(wished, SAME_POINT),
    joints: (Math.max(kinks.start, kinks.stop, kinks.crest) + Math.abs(kinks.start - kinks.stop)) / (Math.PI / 2),
    reach: wish.reach === undefined ? 0 : Math.max(0, depth - wish.reach) / wish.reach,
    corners,
    roundings: roundingsOf(curve, chord),
    sides: 0,
    room: short / Math.max(wished, SAME_POINT),
    overhang: overhang / spacing,
  };
  return {
    pattern, count, spacing, edge: line.from, loop: line.loop, found, unit, slide: chord.slide, base, height, clearance,
    fits: short <= SAME_POINT, kinks, overhang, corners, depth, withinReach: wish.reach === undefined || depth <= wish.reach,
    forgiveness: forgivenessOf(curve, chord, found, unit, count), terms, score: scoreOf(terms, wish.weights),
  };
}

/** How far the unit reaches beyond its division or, to a crest, beyond its half of it. */
function overhangOf(pattern: Frieze, { start, extents }: Unit, spacing: number): number {
  const half = spacing / 2;
  const [left, right] = unitRuns(pattern) === 'across' ? [-half, half] : start.at.x < -half / 2 ? [-half, 0] : [0, half];
  return Math.max(0, left - extents.minX, extents.maxX - right);
}

/** The unit with its bulge the wished way: as it was found, or turned half round, which keeps the etched face up. */
function pointing(crest: 'outward' | 'inward', unit: Unit): Unit {
  const points = crest === 'outward' ? -unit.extents.minY - unit.extents.maxY : unit.extents.minY + unit.extents.maxY;
  return points >= -SAME_POINT ? unit : copiesOf(unit, 0)[1];
}

/** How far outward the line lies on which the unit starts. */
function baseFor(side: BorderSide, { base = 0, pattern }: SetOutWish, { extents }: Unit, found: Found): number {
  const centred = base === 'middle' || (found === 'rise' && base === 0);
  if (!centred) return base;
  if (mirrorsAcrossCentreLine(pattern)) return 0;
  const shift = base === 'middle' ? (side.innerClearance - side.outerClearance) / 2 : 0;
  return (extents.minY + extents.maxY) / 2 + shift;
}

function lifted(unit: Unit, base: number): Unit {
  if (base === 0) return unit;
  const up = (end: Unit['start']) => ({ ...end, at: { x: end.at.x, y: end.at.y - base } });
  return {
    ...unit,
    pose: { ...unit.pose, y: unit.pose.y - base },
    start: up(unit.start),
    stop: up(unit.stop),
    extents: { ...unit.extents, minY: unit.extents.minY - base, maxY: unit.extents.maxY - base },
  };
}

/** The wished height of a crest over its line, or of a rise over its trough: all the room there is when nothing is wished. */
export function wishedHeight(side: BorderSide, { height, base = 0, pattern, crest = 'outward' }: SetOutWish, of: 'crest' | 'rise'): number {
  if (height !== undefined) return height;
  const outer = side.width / 2 - side.outerClearance;
  const inner = side.width / 2 - side.innerClearance;
  const least = Math.min(outer, inner);
  if (of === 'rise') return base === 'middle' ? outer + inner : 2 * least;
  const bothSides = pattern !== 'run' && pattern !== 'scallop';
  if (base === 'middle') return bothSides ? least : outer + inner;
  if (bothSides) return least - Math.abs(base);
  return crest === 'outward' ? outer - base : inner + base;
}

/** By how much a unit that is mirrored across the centre line lies on both sides of it. */
function crossing(pattern: Frieze, { extents }: Unit): number {
  return mirrorsAcrossCentreLine(pattern) ? Math.max(0, Math.min(-extents.minY, extents.maxY)) : 0;
}

const GRAVITY: readonly CountRefused['why'][] = ['hangs-over', 'crosses-the-centre-line', 'no-such-stretch', 'wider-than-the-needle-line'];

/** Of the reasons of several poses and needle lines, the one that comes nearest to working. */
function mildest(refused: readonly CountRefused[]): CountRefused {
  return [...refused].sort((a, b) => GRAVITY.indexOf(a.why) - GRAVITY.indexOf(b.why) || (a.by ?? 0) - (b.by ?? 0))[0]!;
}
