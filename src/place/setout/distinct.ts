// Poses that sew the same line count once: a template with symmetries of its own finds each line several times over.

import { FIT } from '../../num/tolerances.ts';
import { anglesOf } from './chord.ts';
import type { FoundUnit } from './result.ts';

/**
 * The units whose lines differ, also when mirrored or turned about, by more than a fitted edge may stray. Of like ones the first stands, with
 * the longest slide of all.
 */
export function distinct(units: readonly FoundUnit[]): readonly FoundUnit[] {
  const kept: FoundUnit[] = [];
  for (const unit of units) {
    const at = kept.findIndex((other) => sameLine(unit, other));
    const other = kept[at];
    if (!other) kept.push(unit);
    else if (other.chord.slide < unit.chord.slide) kept[at] = { ...unit, found: other.found };
  }
  return kept;
}

function sameLine(a: FoundUnit, b: FoundUnit): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) <= 2 * FIT;
  if (!near(a.chord.run, b.chord.run)) return false;
  const [e, f] = [a.unit.extents, b.unit.extents];
  if (!near(e.maxY - e.minY, f.maxY - f.minY) || !near(e.maxX - e.minX, f.maxX - f.minX)) return false;
  const bulge = (u: FoundUnit) => Math.max(-u.unit.extents.minY, u.unit.extents.maxY);
  if (!near(bulge(a), bulge(b))) return false;
  const [s, t] = anglesOf(a.chord).map((angle) => Math.abs(angle)) as [number, number];
  const [u, v] = anglesOf(b.chord).map((angle) => Math.abs(angle)) as [number, number];
  // As lengths on a chord this wide, so that one tolerance serves.
  const level = a.chord.width;
  return (near(s * level, u * level) && near(t * level, v * level)) || (near(s * level, v * level) && near(t * level, u * level));
}
