// A template where it is first laid on an area: its tint, edges, etchings, the edge the foot misses, and the needle line
// that no pass uses.

import { carryPath, stretchOfPath } from '../../geometry/change.ts';
import { fromDegrees } from '../../num/angle.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import { type Path, circle, straight } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { type Pose, after, carryVec, poseOf } from '../../geometry/pose.ts';
import type { EtchedShape, TemplateShape } from '../../model/kit/shape.ts';
import type { EdgeName, NeedleLine } from '../../needle/needle-line.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import type { Area } from '../../top/area.ts';
import type { Drawn, Layer } from '../display-list.ts';
import { rememberedPair } from '../remember.ts';

/** How large the sign of an etched point and of an etched cross is drawn, in inches. */
const POINT_RADIUS = 1 / 32;
const CROSS_ARM = 3 / 16;

/** A placement's template at its first image on one of its areas. */
export const templateOf = rememberedPair((laid: LaidPlacement, area: Area): readonly Drawn<'quilt'>[] => {
  const first = laid.images[0];
  const to = after(first ? after(laid.pose, first) : laid.pose, area.frame);
  const source = `${laid.sheet}/${laid.placement}`;
  const line = (layer: Layer, path: Path<'template'>): Drawn<'quilt'> => ({ kind: 'path', layer, path: carryPath(to, path), source });
  const { outline, windows, etchings } = laid.template;
  return [
    { ...line('template', outline), filled: true, holes: windows.map((window) => carryPath(to, window.path)) },
    ...etchings.flatMap(etched).map((path) => line('etching', path)),
    ...laid.needle.missed.flatMap((missed) => {
      const edge = edgeNamed(laid.template, missed.from);
      return edge ? [line('missed-edge', stretchOfPath(edge, missed.start, missed.end))] : [];
    }),
    line('template-edge', outline),
    ...windows.map((window) => line('template-edge', window.path)),
    ...unsewn(laid, needlePose(laid, area, to)).map((path): Drawn<'quilt'> => ({ kind: 'path', layer: 'needle-unsewn', path, source })),
  ];
});

function edgeNamed({ outline, windows }: TemplateShape, name: EdgeName): Path<'template'> | undefined {
  return name === 'outline' ? outline : windows.find((window) => `window:${window.id}` === name)?.path;
}

/** The lines that show an etching: of a point a small ring, of a cross its arms. */
export function etched(etching: EtchedShape): readonly Path<'template'>[] {
  switch (etching.kind) {
    case 'line':
    case 'curve':
      return [etching.path];
    case 'point':
      return [circle(etching.at, POINT_RADIUS)];
    case 'cross':
      return [0, 90].map((turn) => arm(etching.at, etching.angle + fromDegrees(turn)));
  }
}

function arm(at: Point<'template'>, angle: number): Path<'template'> {
  const x = CROSS_ARM * Math.cos(angle);
  const y = CROSS_ARM * Math.sin(angle);
  return straight({ x: at.x - x, y: at.y - y }, { x: at.x + x, y: at.y + y });
}

/** Where the needle is when the foot is on the template: the needle's own offset belongs to the machine and does not turn with it. */
function needlePose(laid: LaidPlacement, area: Area, to: Pose<'template', 'quilt'>): Pose<'template', 'quilt'> {
  const { x, y } = carryVec(area.frame, laid.needleOffset);
  return x === 0 && y === 0 ? to : after(to, poseOf<'quilt', 'quilt'>(x, y));
}

/** The needle lines less the stretches that passes sew. */
function unsewn(laid: LaidPlacement, to: Pose<'template', 'quilt'>): readonly Path<'quilt'>[] {
  return laid.needle.lines.flatMap((needleLine, index) => {
    const sewn = laid.passes.flatMap((pass) => (pass.kind === 'found' && pass.needleLine === index ? [clockwise(pass)] : []));
    return stretchesLeft(needleLine, sewn).map((path) => carryPath(to, path));
  });
}

interface Stretch {
  readonly start: number;
  readonly stop: number;
}

/** The stretch in the direction of the needle line, whichever way it is sewn. */
function clockwise(pass: { readonly start: number; readonly stop: number; readonly way: 'clockwise' | 'counterclockwise' }): Stretch {
  return pass.way === 'clockwise' ? pass : { start: pass.stop, stop: pass.start };
}

/** What is left of a needle line; a stretch whose stop comes before its start runs over the needle line's own start. */
function stretchesLeft({ path, length }: NeedleLine, sewn: readonly Stretch[]): readonly Path<'template'>[] {
  if (sewn.length === 0) return [path];
  const spans = sewn
    .flatMap(({ start, stop }) => (stop > start ? [{ start, stop }] : [{ start, stop: length }, { start: 0, stop }]))
    .sort((a, b) => a.start - b.start);
  const gaps: { start: number; stop: number }[] = [];
  let reached = 0;
  for (const span of [...spans, { start: length, stop: length }]) {
    if (span.start - reached > SAME_POINT) gaps.push({ start: reached, stop: span.start });
    reached = Math.max(reached, span.stop);
  }
  // On a closed line the gap at the end goes on into the gap at the start.
  const last = gaps.at(-1);
  const first = gaps[0];
  if (path.closed && first && last && gaps.length > 1 && first.start === 0 && last.stop === length) {
    return [...gaps.slice(1, -1), { start: last.start, stop: first.stop }].map((gap) => stretchOfPath(path, gap.start, gap.stop));
  }
  return gaps.map((gap) => stretchOfPath(path, gap.start, gap.stop));
}
