// Findings as they are read and looked at: numbered as on paper, known again by a key, and led through spot by spot.

import { boundsOf } from '../geometry/bounds.ts';
import { nearestOnPath } from '../geometry/nearest.ts';
import type { Point } from '../geometry/point.ts';
import { findingKey } from '../check/finding-key.ts';
import type { Finding, Severity } from '../check/finding.ts';
import { remembered } from '../drawing/remember.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import { quiltPath } from '../stitch/quilt-path.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import type { Stretch } from './view.ts';

export interface NumberedFinding {
  /** The same as long as the same thing is found at the same part of the plan; findings alike are counted on. */
  readonly key: string;
  /** From 1, as written in the sign. */
  readonly number: number;
  readonly finding: Finding;
}

/** The findings of an evaluation with their numbers, in the order in which they should be read. */
export const numberedFindings = remembered((findings: readonly Finding[]): readonly NumberedFinding[] => {
  const seen = new Map<string, number>();
  return findings.map((finding, index) => {
    const key = findingKey(finding);
    const nth = (seen.get(key) ?? 0) + 1;
    seen.set(key, nth);
    return { key: nth === 1 ? key : `${key}#${nth}`, number: index + 1, finding };
  });
});

/** How many findings there are of each severity, what is left so left out. */
export function countBySeverity(findings: readonly Finding[]): { readonly [severity in Severity]: number } {
  const count = (severity: Severity) => findings.filter((finding) => finding.severity === severity && finding.accepted === undefined).length;
  return { error: count('error'), warning: count('warning'), note: count('note') };
}

/** Where on the quilt a finding is: its own place, or the middle of its first line or of its area; undefined when it is about the plan. */
export function placeOf(evaluation: Evaluation, finding: Finding): Point<'quilt'> | undefined {
  const { at, area } = finding.where;
  if (at) return { x: at[0], y: at[1] };
  const [line] = linesOf(evaluation, finding);
  if (line) {
    const { x, y, width, height } = stretchOf(line);
    return { x: x + width / 2, y: y + height / 2 };
  }
  const of = area === undefined ? undefined : evaluation.top.areas.find((candidate) => candidate.id === area);
  return of && { x: of.frame.x, y: of.frame.y };
}

/** The stitched lines a finding concerns. */
export function linesOf(evaluation: Evaluation, { where }: Finding): readonly StitchedLine[] {
  if (where.lines === undefined || where.lines.length === 0) return [];
  const ids = new Set(where.lines);
  return evaluation.lines.filter((line) => ids.has(line.id));
}

/** One spot to look at: the worst, at its own place, or another line that is concerned. */
export type Spot = { readonly kind: 'place'; readonly at: Point<'quilt'>; readonly area: string | undefined } | { readonly kind: 'line'; readonly line: StitchedLine; readonly stretch: Stretch };

/** All spots of a finding: its own place first, then every other line it concerns. Empty when it has no place on the quilt. */
export function spotsOf(evaluation: Evaluation, finding: Finding): readonly Spot[] {
  const at = placeOf(evaluation, finding);
  if (!at) return [];
  const first: Spot = { kind: 'place', at, area: finding.where.area };
  const lines = linesOf(evaluation, finding);
  if (lines.length < 2) return [first];
  const away = lines.map((line) => (finding.where.area === undefined || line.area === finding.where.area ? nearestOnPath(quiltPath(line), at).distance : Infinity));
  const worst = away.indexOf(Math.min(...away));
  return [first, ...lines.flatMap((line, index): readonly Spot[] => (index === worst ? [] : [{ kind: 'line', line, stretch: stretchOf(line) }]))];
}

function stretchOf(line: StitchedLine): Stretch {
  const { minX, minY, maxX, maxY } = boundsOf(quiltPath(line));
  return { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
}
