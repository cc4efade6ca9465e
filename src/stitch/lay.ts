// Laying placements: each placement of a sheet, once for every different shape of area the sheet is for.

import { carryPath } from '../geometry/change.ts';
import { after, carryVec, inverse, poseOf } from '../geometry/pose.ts';
import { shapeOf } from '../model/kit/shape-of.ts';
import type { Foot, Kit, Placement, Sheet, Template } from '../model/plan.ts';
import { needleLines } from '../needle/needle-lines.ts';
import { place } from '../place/place.ts';
import type { StitchedHere } from '../place/target.ts';
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
  const all: LaidPlacement[] = [];
  for (const [placementId, placement] of Object.entries(sheet.placements)) {
    const template = kit.templates[placement.template];
    const foot = kit.feet[placement.foot];
    if (!template || !foot) continue;
    const steps = placement.repeat ?? sheet.repeat;
    const leansOnLines = placement.registrations.some(({ on }) => on.startsWith('stitched:') || on.startsWith('end:'));
    for (const { key, areas: alike } of likeAreas(targets, steps, foot)) {
      const earlier = leansOnLines ? all.filter((laid) => laid.areas.includes(alike[0]!.id)) : [];
      const laid = layOnce({ sheet: id, placementId, placement, template, foot, steps, areas: alike, key, earlier });
      if (laid) all.push(laid);
    }
  }
  return all;
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
  /** Placements of the sheet laid before it, where its registrations lean on their lines. */
  readonly earlier: readonly LaidPlacement[];
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
    a.areas.every((area, i) => area === b.areas[i]) &&
    a.earlier.length === b.earlier.length &&
    a.earlier.every((laid, i) => laid === b.earlier[i])
  );
}

function lay({ sheet, placementId, placement, template, foot, steps, areas, key, earlier }: Laying): LaidPlacement | undefined {
  const shape = shapeOf(template);
  const area = areas[0];
  if (!shape.ok || !area) return undefined;
  const needle = needleLines(shape.value, foot.diameter);
  const [x, y] = foot.needleOffset;
  const needleOffset = carryVec(inverse(area.frame), { x, y });
  const lines = unitLines(area, countAlong(steps, area.side));
  const { pose, standing } = place(placement, { shape: shape.value, needle, lines, stitched: linesOf(earlier), needleOffset });
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
    standing,
    needleOffset,
    passes,
    images,
    repeatProblems: problems,
  };
}

/** Where the needle sewed for placements laid earlier, by `placement/pass`, and their images by `placement/pass/image`, in the area's own axes. */
export function linesOf(earlier: readonly LaidPlacement[]): StitchedHere {
  return new Map(
    earlier.flatMap((laid) =>
      laid.passes.flatMap((pass) =>
        pass.kind === 'missing'
          ? []
          : laid.images.flatMap((image, i) => {
              const path = carryPath(after(image, poseOf<'area', 'area'>(laid.needleOffset.x, laid.needleOffset.y)), pass.path);
              const name = `${laid.placement}/${pass.pass}`;
              return [...(i === 0 ? [[name, path] as const] : []), [`${name}/${i}`, path] as const];
            }),
      ),
    ),
  );
}
