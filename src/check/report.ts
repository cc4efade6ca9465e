// Making findings: the code gives the severity, and like findings of one pass become one that counts its places.

import type { Point } from '../geometry/point.ts';
import type { Place } from '../model/plan.ts';
import type { StitchedLine } from '../stitch/stitched-line.ts';
import { CODES, type FindingCode } from './codes.ts';
import type { Finding, Where } from './finding.ts';

interface Measures {
  readonly measured?: number;
  readonly limit?: number;
}

/** A finding with the severity its code has. */
export function finding(code: FindingCode, message: string, where: Where, measures: Measures = {}): Finding {
  return { code, severity: CODES[code].severity, message, where, ...measures };
}

/** A place on the quilt as findings carry it. */
export function placeOf(at: Point<'quilt'>): Place {
  return [at.x, at.y];
}

/** Something found of one stitched line; its place is worked out only for the worst of many. */
export interface Hit {
  readonly line: StitchedLine;
  readonly measured: number;
  readonly at: () => Point<'quilt'>;
}

/** What was found of one pass, in however many images and areas. */
export interface PassHits {
  readonly worst: Hit;
  /** Of the lines concerned, each once. */
  readonly lines: readonly string[];
  readonly where: Where;
}

/** Hits gathered by pass, in the order in which passes first appear; the worst is the one for which `measured` is least. */
export function byPass(hits: readonly Hit[]): readonly PassHits[] {
  const groups = new Map<string, Hit[]>();
  for (const hit of hits) {
    const { sheet, placement, pass } = hit.line;
    const key = `${sheet}\n${placement}\n${pass}`;
    const group = groups.get(key);
    if (group) group.push(hit);
    else groups.set(key, [hit]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((a, b) => (b.measured < a.measured ? b : a));
    const lines = [...new Set(group.map((hit) => hit.line.id))];
    const { area, sheet, placement, pass } = worst.line;
    return { worst, lines, where: { area, sheet, placement, pass, lines, at: placeOf(worst.at()) } };
  });
}
