// What each arrangement along a border asks of its unit, and what becomes of the unit in it.

import { type Bounds, carryBounds, unionBounds } from '../../geometry/bounds.ts';
import { shortestTurn } from '../../num/angle.ts';
import type { Frieze } from '../../model/plan.ts';
import { friezeMotions } from '../frieze.ts';
import type { Unit } from './unit.ts';

/** Whether a unit goes from division to division, or from a division to the crest in its middle and is mirrored there. */
export function unitRuns(pattern: Frieze): 'across' | 'to-crest' {
  return pattern === 'wave' || pattern === 'lantern' ? 'to-crest' : 'across';
}

/** Whether the arrangement holds together only when the unit's ends lie on the centre line; the others may start at another height. */
export function startsOnCentreLine(pattern: Frieze): boolean {
  return pattern === 'step' || pattern === 'spin' || pattern === 'wave';
}

/** Whether each division is sewn on both sides of the centre line, so that a unit that crosses it would cross its own image. */
export function mirrorsAcrossCentreLine(pattern: Frieze): boolean {
  return pattern === 'twin' || pattern === 'lantern';
}

/** Whether every other division is changed, so that the border meets itself in phase all round only with an even count. */
export function alternates(pattern: Frieze): boolean {
  return pattern === 'step' || pattern === 'scallop' || pattern === 'spin' || pattern === 'wave';
}

/** Extents of two divisions sewn out, which hold every image there is, in the axes of the border: only y tells. */
export function patternExtents(pattern: Frieze, unit: Unit, spacing: number): Bounds {
  return unionBounds(friezeMotions(pattern, 2, 2 * spacing).map((motion) => carryBounds(motion, unit.extents)));
}

/** The angles in radians, 0 to pi, by which the sewn line turns where one image meets the next; 0 is smooth. */
export interface Kinks {
  /** At the division lines; where units are mirrored there, every other one may differ. */
  readonly start: number;
  readonly stop: number;
  /** Where the unit is mirrored in the middle of its division. */
  readonly crest: number;
}

/**
 * How sharply the line turns at its joints. Where two lines cross at a division (twin and lantern on the centre line), the eye follows the
 * smoother way through.
 */
export function kinksOf(pattern: Frieze, unit: Unit, onCentreLine: boolean): Kinks {
  const a = unit.start.angle;
  const b = unit.stop.angle;
  const turn = (angle: number) => Math.abs(shortestTurn(angle));
  const [crestAngle, foot] = Math.abs(unit.start.at.x) < Math.abs(unit.stop.at.x) ? [a, b] : [b, a];
  const crest = unitRuns(pattern) === 'to-crest' ? turn(2 * crestAngle) : 0;
  switch (pattern) {
    case 'run': return both(turn(b - a), crest);
    case 'step': return both(turn(b + a), crest);
    case 'scallop': return { start: turn(2 * a), stop: turn(2 * b), crest };
    case 'spin': return both(0, crest);
    case 'twin': return both(onCentreLine ? Math.min(turn(b - a), turn(b + a)) : turn(b - a), crest);
    case 'wave': return both(0, crest);
    case 'lantern': return both(onCentreLine ? 0 : turn(2 * foot), crest);
  }
}

function both(joint: number, crest: number): Kinks {
  return { start: joint, stop: joint, crest };
}
