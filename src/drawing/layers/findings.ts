// Findings where they are: a filled diamond is to be mended before sewing, an open triangle to be looked at and decided, an open ring
// is good to know. Each bears its number in the list of findings.

import type { Finding, Severity } from '../../check/finding.ts';
import { type Path, circle, polygon } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import type { Area } from '../../top/area.ts';
import type { DisplayItem } from '../display-list.ts';
import { remembered, rememberedPair } from '../remember.ts';

/** Half the width of a sign, in inches. */
const HALF_SIGN = 1 / 8;
const NUMBER_HEIGHT = 1 / 8;

/** The sign of a finding and its number, counted from 1. */
export interface Sign {
  readonly finding: Finding;
  readonly at: Point<'quilt'>;
  readonly number: number;
}

/** The findings that have a place: their own, or else the middle of the area they are about. What is left so bears no sign. */
export const signsOf = rememberedPair((findings: readonly Finding[], areas: readonly Area[]): readonly Sign[] => {
  const areaById = new Map(areas.map((area) => [area.id, area] as const));
  return findings.flatMap((finding, index) => {
    const at = placeOf(finding, areaById);
    return at && finding.accepted === undefined ? [{ finding, at, number: index + 1 }] : [];
  });
});

/** What is drawn for a finding. */
export const drawnSign = remembered(({ finding, at, number }: Sign): readonly DisplayItem<'quilt'>[] => {
  const source = `finding:${number}`;
  const beside = { x: at.x + HALF_SIGN * 1.5, y: at.y + NUMBER_HEIGHT / 2 };
  return [
    { kind: 'path', layer: 'finding', path: shapeOf(finding.severity, at), filled: finding.severity === 'error', source },
    { kind: 'text', layer: 'finding', at: beside, text: `${number}`, height: NUMBER_HEIGHT, anchor: 'start', source },
  ];
});

function placeOf(finding: Finding, areaById: ReadonlyMap<string, Area>): Point<'quilt'> | undefined {
  const { at, area } = finding.where;
  if (at) return { x: at[0], y: at[1] };
  const frame = area === undefined ? undefined : areaById.get(area)?.frame;
  return frame && { x: frame.x, y: frame.y };
}

function shapeOf(severity: Severity, { x, y }: Point<'quilt'>): Path<'quilt'> {
  const r = HALF_SIGN;
  switch (severity) {
    case 'error':
      return polygon([{ x, y: y - r }, { x: x + r, y }, { x, y: y + r }, { x: x - r, y }]);
    case 'warning':
      return polygon([{ x, y: y - r }, { x: x + r, y: y + r }, { x: x - r, y: y + r }]);
    case 'note':
      return circle({ x, y }, r);
  }
}
