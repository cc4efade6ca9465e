// The layings of a plan as the choice of marks reads them: every placement of the chosen sheets once for each different shape of area,
// with the different ways in which its repeat lays it among the lines there.

import { SAME_ANGLE, SAME_POINT } from '../num/tolerances.ts';
import { shortestTurn } from '../num/angle.ts';
import { carry, poseOf, after, type Pose } from '../geometry/pose.ts';
import type { Laying, LaidImage } from '../place/marks/laying.ts';
import type { SewnStretch } from '../place/wander/wander.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import { chosenSheets } from '../stitch/sheet-areas.ts';
import { countAlong, unitLines } from '../stitch/unit-lines.ts';
import type { Area } from '../top/area.ts';
import type { Evaluation } from './evaluation.ts';

export interface PlanLaying extends Laying {
  readonly laid: LaidPlacement;
  /** The first area it is laid on. */
  readonly area: Area;
  /** Of the plan's kit. */
  readonly template: string;
  readonly foot: string;
}

/** The layings of the chosen sheets, or of one sheet, chosen or not. */
export function layingsOf({ plan, top, placements }: Pick<Evaluation, 'plan' | 'top' | 'placements'>, sheet?: string): readonly PlanLaying[] {
  const wanted = new Set(sheet === undefined ? chosenSheets(plan).map(([id]) => id) : [sheet]);
  const areas = new Map(top.areas.map((area) => [area.id, area] as const));
  return placements.flatMap((laid): readonly PlanLaying[] => {
    const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
    const area = areas.get(laid.areas[0] ?? '');
    if (!placement || !area || !wanted.has(laid.sheet) || laid.images.length === 0) return [];
    const steps = placement.repeat ?? plan.sheets[laid.sheet]!.repeat;
    const count = countAlong(steps, area.side);
    const period = count === undefined ? undefined : area.width / count;
    const { x, y } = laid.needleOffset;
    return [
      {
        id: `${laid.sheet}/${laid.placement}`,
        laid,
        area,
        template: placement.template,
        foot: placement.foot,
        pose: laid.pose,
        lines: unitLines(area, count),
        ...(period !== undefined && { period }),
        images: differentImages(laid.images, period, area.width),
        needle: laid.needle.lines,
        sewn: sewnOf(laid),
        centred: x === 0 && y === 0,
      },
    ];
  });
}

/** What is sewn or, before there is a pass, the outline's needle line all round. */
function sewnOf(laid: LaidPlacement): readonly SewnStretch[] {
  const sewn = laid.passes.flatMap((pass): readonly SewnStretch[] => {
    const line = pass.kind === 'found' ? laid.needle.lines[pass.needleLine] : undefined;
    if (pass.kind !== 'found' || !line) return [];
    return [pass.way === 'clockwise' ? { line, from: pass.start, to: pass.stop } : { line, from: pass.stop, to: pass.start }];
  });
  if (sewn.length > 0) return sewn;
  return laid.needle.lines.filter((line) => line.from === 'outline').map((line) => ({ line, from: 0, to: line.length }));
}

/** The images as they lie in their own division, each different way once. */
function differentImages(images: readonly Pose<'area', 'area'>[], period: number | undefined, width: number): readonly LaidImage[] {
  const found: { readonly motion: Pose<'area', 'area'>; readonly numbers: number[] }[] = [];
  images.forEach((image, number) => {
    const motion = period === undefined ? image : after(image, poseOf<'area', 'area'>(-centreOfDivision(carry(image, { x: 0, y: 0 }).x, period, width), 0));
    const known = found.find((other) => areAlike(other.motion, motion));
    if (known) known.numbers.push(number);
    else found.push({ motion, numbers: [number] });
  });
  return found;
}

function centreOfDivision(x: number, period: number, width: number): number {
  return (Math.floor((x + width / 2) / period) + 0.5) * period - width / 2;
}

function areAlike(a: Pose<'area', 'area'>, b: Pose<'area', 'area'>): boolean {
  return a.flipped === b.flipped && Math.abs(a.x - b.x) <= 10 * SAME_POINT && Math.abs(a.y - b.y) <= 10 * SAME_POINT && Math.abs(shortestTurn(a.angle - b.angle)) <= 10 * SAME_ANGLE;
}
