// Findings gathered for reading: the same thing wrong in many places is one entry with many places, and entries are
// numbered in the order in which they should be read.

import { boundsOf } from '../geometry/bounds.ts';
import type { Point } from '../geometry/point.ts';
import type { Finding, Severity } from '../check/finding.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import { quiltPath } from '../stitch/quilt-path.ts';

export interface FindingGroup {
  /** The same as long as the same thing is found at the same part of the plan. */
  readonly key: string;
  /** From 1, as written in the sign. */
  readonly number: number;
  readonly severity: Severity;
  readonly code: string;
  /** The worst of them, which speaks for all. */
  readonly worst: Finding;
  /** All of them, the worst first. */
  readonly findings: readonly Finding[];
}

const ORDER: readonly Severity[] = ['error', 'warning', 'note'];

const groupsOf = new WeakMap<readonly Finding[], readonly FindingGroup[]>();

/** Findings of one evaluation in groups: those to mend first, then those to look at, then those good to know. */
export function groupFindings(findings: readonly Finding[]): readonly FindingGroup[] {
  const known = groupsOf.get(findings);
  if (known) return known;
  const byKey = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = keyOf(finding);
    const group = byKey.get(key);
    if (group) group.push(finding);
    else byKey.set(key, [finding]);
  }
  const groups = [...byKey]
    .map(([key, all]) => ({ key, all: [...all].sort((a, b) => excess(b) - excess(a)) }))
    .sort((a, b) => rank(a.all[0]!) - rank(b.all[0]!))
    .map(({ key, all }, index): FindingGroup => {
      const worst = all[0]!;
      return { key, number: index + 1, severity: worst.severity, code: worst.code, worst, findings: all };
    });
  groupsOf.set(findings, groups);
  return groups;
}

/** How many groups there are of each severity. */
export function countBySeverity(groups: readonly FindingGroup[]): { readonly [severity in Severity]: number } {
  const count = (severity: Severity) => groups.filter((group) => group.severity === severity).length;
  return { error: count('error'), warning: count('warning'), note: count('note') };
}

/** Where on the quilt a finding is: its own place, or the middle of its line or area; undefined when it is about the plan. */
export function placeOf(evaluation: Evaluation, finding: Finding): Point<'quilt'> | undefined {
  const { at, lines, area } = finding.where;
  if (at) return { x: at[0], y: at[1] };
  const line = lines?.[0] === undefined ? undefined : evaluation.lines.find((candidate) => candidate.id === lines[0]);
  if (line) {
    const { minX, minY, maxX, maxY } = boundsOf(quiltPath(line));
    return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  }
  const of = area === undefined ? undefined : evaluation.top.areas.find((candidate) => candidate.id === area);
  return of && { x: of.frame.x, y: of.frame.y };
}

function keyOf({ code, severity, where }: Finding): string {
  return [severity, code, where.sheet ?? '', where.placement ?? '', where.pass ?? '', where.field ?? ''].join('|');
}

function rank(finding: Finding): number {
  return ORDER.indexOf(finding.severity);
}

/** How far beyond its limit a finding is, in whatever it measures. */
function excess({ measured, limit }: Finding): number {
  return measured === undefined ? 0 : Math.abs(measured - (limit ?? 0));
}
