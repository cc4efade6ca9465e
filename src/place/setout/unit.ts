// A unit: one placement of a template in one division of a border, with the stretch of its needle line that is sewn there.

import { carryPath, reversedPath, stretchOfPath } from '../../geometry/change.ts';
import { type Bounds, boundsOf } from '../../geometry/bounds.ts';
import type { Path } from '../../geometry/path.ts';
import { type Point, type Vec, angleOf, between } from '../../geometry/point.ts';
import { type Pose, after, carry, carryVec, mirrorAcross, poseOf, turnAbout } from '../../geometry/pose.ts';
import { shortestTurn } from '../../num/angle.ts';
import type { Chord } from './chord.ts';
import type { CrestChord } from './crest-chords.ts';
import type { CurvePlace, NeedleCurve } from './needle-curve.ts';

/** Where a unit starts or stops: inches along the needle line, the place in the division's axes, and the angle of the line there as it is sewn, clockwise from along the border. */
export interface UnitEnd {
  readonly along: number;
  readonly at: Point<'area'>;
  readonly angle: number;
}

export interface Unit {
  /** In one division: its centre is the origin, x along the border, -y outward. */
  readonly pose: Pose<'template', 'area'>;
  /** Sewn from left to right. */
  readonly start: UnitEnd;
  readonly stop: UnitEnd;
  /** As seen on the etched face. */
  readonly way: 'clockwise' | 'counterclockwise';
  /** Inches of line. */
  readonly length: number;
  readonly extents: Bounds;
}

/** The line of a unit as it is sewn, in the division's axes. */
export function unitPath(curve: NeedleCurve, unit: Unit): Path<'area'> {
  const [from, to] = unit.way === 'clockwise' ? [unit.start.along, unit.stop.along] : [unit.stop.along, unit.start.along];
  const path = carryPath(unit.pose, stretchOfPath(curve.path, from, to));
  return unit.way === 'clockwise' ? path : reversedPath(path);
}

/** Across a division: the chord laid from the left division line to the right one, its ends at the height `y` (or evenly above and below it when they are not level). */
export function unitAcross(curve: NeedleCurve, chord: Chord, spacing: number, y: number, level: boolean): Unit {
  // A rise runs along the border by its own way; every other chord lies along it whole.
  const along = level ? angleOf(between(chord.start.at, chord.stop.at)) : angleOf(chord.start.way);
  const turned = poseOf<'template', 'area'>(0, 0, -along);
  const start = carry(turned, chord.start.at);
  const stop = carry(turned, chord.stop.at);
  const pose = poseOf<'template', 'area'>(-spacing / 2 - start.x, y - (start.y + stop.y) / 2, shortestTurn(-along));
  return laid(curve, chord, pose);
}

/** From a division line to the crest in the middle: the crest's own way lies along the border. */
export function unitToCrest(curve: NeedleCurve, chord: CrestChord, y: number): Unit {
  const crest = chord.crest === 'stop' ? chord.stop : chord.start;
  const foot = chord.crest === 'stop' ? chord.start : chord.stop;
  const angle = shortestTurn(-angleOf(crest.way));
  const turned = poseOf<'template', 'area'>(0, 0, angle);
  const pose = poseOf<'template', 'area'>(-carry(turned, crest.at).x, y - carry(turned, foot.at).y, angle);
  return laid(curve, chord, pose);
}

/**
 * The four ways in which a unit lies in its division: as it is, turned half round, mirrored across the line along the border at the
 * height `y`, mirrored across the middle. The last two lay the template on its other face.
 */
export function copiesOf(unit: Unit, y: number): readonly [Unit, Unit, Unit, Unit] {
  const middle: Point<'area'> = { x: 0, y };
  return [unit, moved(unit, turnAbout(middle, Math.PI)), moved(unit, mirrorAcross(middle, 0)), moved(unit, mirrorAcross(middle, Math.PI / 2))];
}

function moved(unit: Unit, motion: Pose<'area', 'area'>): Unit {
  const way = carryVec(motion, { x: 1, y: 0 });
  // Sewn from left to right again: whoever turns the border about must start at the other end.
  const backward = way.x < 0;
  const end = ({ along, at, angle }: UnitEnd): UnitEnd => {
    const v: Vec<'area'> = carryVec(motion, { x: Math.cos(angle), y: Math.sin(angle) });
    return { along, at: carry(motion, at), angle: angleOf(backward ? { x: -v.x, y: -v.y } : v) };
  };
  const [start, stop] = backward ? [unit.stop, unit.start] : [unit.start, unit.stop];
  const corner = carry(motion, { x: unit.extents.minX, y: unit.extents.minY });
  const other = carry(motion, { x: unit.extents.maxX, y: unit.extents.maxY });
  return {
    pose: after(unit.pose, motion),
    start: end(start),
    stop: end(stop),
    way: backward === (unit.way === 'clockwise') ? 'counterclockwise' : 'clockwise',
    length: unit.length,
    extents: { minX: Math.min(corner.x, other.x), minY: Math.min(corner.y, other.y), maxX: Math.max(corner.x, other.x), maxY: Math.max(corner.y, other.y) },
  };
}

function laid(curve: NeedleCurve, chord: Chord, pose: Pose<'template', 'area'>): Unit {
  const end = ({ along, at, way }: CurvePlace): UnitEnd => ({ along, at: carry(pose, at), angle: angleOf(carryVec(pose, way)) });
  const extents = boundsOf(carryPath(pose, stretchOfPath(curve.path, chord.start.along, chord.stop.along)));
  const first = end(chord.start);
  const last = end(chord.stop);
  const unit: Unit = { pose, start: first, stop: last, way: 'clockwise', length: chord.run, extents };
  if (first.at.x <= last.at.x) return unit;
  const turn = (e: UnitEnd): UnitEnd => ({ ...e, angle: shortestTurn(e.angle + Math.PI) });
  return { ...unit, start: turn(last), stop: turn(first), way: 'counterclockwise' };
}
