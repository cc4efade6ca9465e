// Laying placements: each placement of a sheet, once for every different shape of area the sheet is for.

import { TURN } from '../num/angle.ts';
import { fromDegrees } from '../num/angle.ts';
import { carryVec, inverse, poseOf } from '../geometry/pose.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import type { Foot, Kit, Placement, Sheet, Template } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import type { Area } from '../top/area.ts';
import type { LaidPlacement } from './laid-placement.ts';
import { findPass } from './pass.ts';
import { repeatIn } from './repeat.ts';
import { areasFor, likeAreas } from './sheet-areas.ts';
import { countAlong, unitLines } from './unit-lines.ts';

/**
 * Every placement of a sheet laid on the areas it is for. A placement whose template or foot is not in the kit, or whose
 * template has no good shape, is left out; the checks say so.
 */
export function laySheet(id: string, sheet: Sheet, kit: Kit, areas: readonly Area[]): readonly LaidPlacement[] {
  const targets = areasFor(sheet.for, areas);
  return Object.entries(sheet.placements).flatMap(([placementId, placement]) => {
    const template = kit.templates[placement.template];
    const foot = kit.feet[placement.foot];
    if (!template || !foot) return [];
    const steps = placement.repeat ?? sheet.repeat;
    return likeAreas(targets, steps, foot).flatMap((group) => {
      const laid = layOnce({ sheet: id, placementId, placement, template, foot, steps, areas: group.areas, key: group.key });
      return laid ? [laid] : [];
    });
  });
}

interface Laying {
  readonly sheet: string;
  readonly placementId: string;
  readonly placement: Placement;
  readonly template: Template;
  readonly foot: Foot;
  readonly steps: Sheet['repeat'];
  readonly areas: readonly Area[];
  readonly key: string;
}

/** What was laid before for the same placement object, so that an edit elsewhere finds it again. */
const laidBefore = new WeakMap<Placement, Map<string, { readonly of: Laying; readonly laid: LaidPlacement | undefined }>>();

function layOnce(laying: Laying): LaidPlacement | undefined {
  const known = laidBefore.get(laying.placement) ?? new Map<string, { readonly of: Laying; readonly laid: LaidPlacement | undefined }>();
  laidBefore.set(laying.placement, known);
  const name = `${laying.sheet}/${laying.placementId}/${laying.key}`;
  const before = known.get(name);
  if (before && sameLaying(before.of, laying)) return before.laid;
  const laid = lay(laying);
  known.set(name, { of: laying, laid });
  return laid;
}

function sameLaying(a: Laying, b: Laying): boolean {
  return (
    a.template === b.template &&
    a.foot === b.foot &&
    a.steps === b.steps &&
    a.areas.length === b.areas.length &&
    a.areas.every((area, i) => area === b.areas[i])
  );
}

function lay({ sheet, placementId, placement, template, foot, steps, areas, key }: Laying): LaidPlacement | undefined {
  const shape = shapeOf(template);
  const area = areas[0];
  if (!shape.ok || !area) return undefined;
  const needle = needleLines(shape.value, foot.diameter);
  const pose = poseOf<'template', 'area'>(placement.pose.x, placement.pose.y, fromDegrees(placement.pose.angle) % TURN, placement.flipped);
  const [x, y] = foot.needleOffset;
  const needleOffset = carryVec(inverse(area.frame), { x, y });
  const lines = unitLines(area, countAlong(steps, area.side));
  const passes = Object.entries(placement.passes).map(([id, pass]) => findPass(id, pass, { needle, pose, needleOffset, lines }));
  const { images, problems } = repeatIn(area, steps);
  return {
    sheet,
    placement: placementId,
    shape: key,
    areas: areas.map((member) => member.id),
    template: shape.value,
    needle,
    pose,
    needleOffset,
    passes,
    images,
    repeatProblems: problems,
  };
}
