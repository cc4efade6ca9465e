// What can be measured from and to on the area on the table: places and lines, each with a name, in quilt coordinates.

import { carryPath } from '../../geometry/change.ts';
import type { Path } from '../../geometry/path.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { type Pose, after, carry, poseOf } from '../../geometry/pose.ts';
import { landmarks } from '../../place/landmarks.ts';
import { targetOf } from '../../place/target.ts';
import { featureOf } from '../../place/feature.ts';
import { tipsOf } from '../../place/tips.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import { extended } from '../../top/extended.ts';
import type { Area } from '../../top/area.ts';
import { axesOf, laidOn, onTable } from '../lay/on-table.ts';
import { type SessionState, planOf } from '../store.ts';

export type Thing =
  | { readonly kind: 'place'; readonly id: string; readonly name: string; readonly at: Point<'quilt'> }
  | { readonly kind: 'line'; readonly id: string; readonly name: string; readonly path: Path<'quilt'>; readonly isReference?: boolean };

/** All that can be measured on the area on the table: its own places and lines, and those of the templates laid there. */
export function thingsOnTable(state: SessionState): readonly Thing[] {
  const on = onTable(state);
  if (!on) return [];
  const placements = Object.keys(on.sheet?.sheet.placements ?? {});
  return [...ofArea(on.area), ...placements.flatMap((id) => {
    const laid = laidOn(state, on, id);
    return laid ? ofPlacement(laid, on.area, nameOf(state, laid)) : [];
  })];
}

const ofAreas = new WeakMap<Area, readonly Thing[]>();

function ofArea(area: Area): readonly Thing[] {
  const known = ofAreas.get(area);
  if (known) return known;
  const { places } = landmarks(area.referenceLines, new Map());
  const things: readonly Thing[] = [
    ...area.referenceLines.map((line): Thing => ({ kind: 'line', id: `line:${line.id}`, name: line.name, path: carryPath(area.frame, line.kind === 'edge' ? line.path : extended(line.path)), isReference: true })),
    ...places.flatMap(({ on, at }): readonly Thing[] => {
      const target = targetOf(on, area.referenceLines);
      return target.ok ? [{ kind: 'place', id: on, name: target.value.name, at: carry(area.frame, at) }] : [];
    }),
  ];
  ofAreas.set(area, things);
  return things;
}

function ofPlacement(laid: LaidPlacement, area: Area, name: string): readonly Thing[] {
  const axes = axesOf(laid, area);
  const toQuilt = after(laid.pose, axes);
  const { x, y } = laid.needleOffset;
  const needleToQuilt: Pose<'template', 'quilt'> = after(after(laid.pose, poseOf<'area', 'area'>(x, y)), axes);
  const own = (part: string) => `${laid.placement}/${part}`;
  const { etchings, outline } = laid.template;
  const etched = etchings.map((etching): Thing => {
    const thing = { id: own(`etching:${etching.id}`), name: `${etching.name} of ${name}` };
    return etching.kind === 'point' || etching.kind === 'cross' ? { kind: 'place', ...thing, at: carry(toQuilt, etching.at) } : { kind: 'line', ...thing, path: carryPath(toQuilt, etching.path) };
  });
  const tips = tipsOf(outline).map((tip): Thing => {
    const feature = featureOf(tip.id, laid.template, laid.needle);
    return { kind: 'place', id: own(tip.id), name: `${feature.ok ? feature.value.name : tip.id} of ${name}`, at: carry(toQuilt, tip.at) };
  });
  const needle = laid.needle.lines.map((line, i): Thing => ({ kind: 'line', id: own(`needle-line:${i}`), name: line.from === 'outline' ? `needle line of ${name}` : `needle line in ${line.from.replace('window:', 'window ')} of ${name}`, path: carryPath(needleToQuilt, line.path) }));
  const passes = laid.passes.flatMap((pass): readonly Thing[] => {
    if (pass.kind === 'missing') return [];
    const path = carryPath(after(poseOf<'area', 'area'>(x, y), axes), pass.path);
    const [start, stop] = [startOf(path), endOf(path)];
    const ends: readonly Thing[] = start && stop && !path.closed ? [{ kind: 'place', id: own(`start:${pass.pass}`), name: `start of pass ${pass.pass} of ${name}`, at: start }, { kind: 'place', id: own(`stop:${pass.pass}`), name: `end of pass ${pass.pass} of ${name}`, at: stop }] : [];
    return [{ kind: 'line', id: own(`pass:${pass.pass}`), name: `pass ${pass.pass} of ${name}`, path }, ...ends];
  });
  return [...etched, ...tips, { kind: 'line', id: own('edge'), name: `edge of ${name}`, path: carryPath(toQuilt, outline) }, ...needle, ...passes];
}

function nameOf(state: SessionState, laid: LaidPlacement): string {
  const plan = planOf(state);
  const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
  return placement?.name ?? plan.kit.templates[placement?.template ?? '']?.name ?? laid.placement;
}
