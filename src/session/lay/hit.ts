// What lies under a hand on the table in Audition.

import { boundsHold, boundsOf, carryBounds } from '../../geometry/bounds.ts';
import { whereIs } from '../../geometry/inside.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { after, carry, inverse } from '../../geometry/pose.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { LaidPlacement } from '../../stitch/laid-placement.ts';
import type { Hand } from '../gesture/node.ts';
import type { SessionState } from '../store.ts';
import { type ScreenPoint, onQuilt, onScreen } from '../view.ts';
import { type OnTable, axesOf, onTable } from './on-table.ts';
import { handleOf, shownTemplates } from './shown.ts';
import { type Laying, layingOf } from './setting.ts';
import { toNeedleLine } from './trace.ts';

export type Hit =
  | { readonly kind: 'handle'; readonly placement: string }
  /** An end of a pass of the template picked out. */
  | { readonly kind: 'end'; readonly placement: string; readonly pass: string; readonly end: 'start' | 'stop' }
  /** The needle line of the template picked out: index into `needle.lines`, and inches along it. */
  | { readonly kind: 'needle'; readonly placement: string; readonly needleLine: number; readonly along: number }
  | { readonly kind: 'template'; readonly placement: string; readonly grip: Point<'template'> }
  | { readonly kind: 'nothing' };

/** How near a hand must come to what it can take, in CSS pixels. */
export const HAND_REACH: { readonly [hand in Hand]: number } = { mouse: 9, pen: 12, touch: 22 };

/** What a hand takes at a point of the table: small things before large ones. */
export function hitAt(state: SessionState, at: ScreenPoint, by: Hand): Hit {
  const on = onTable(state);
  if (!on?.sheet) return { kind: 'nothing' };
  const reach = HAND_REACH[by];
  const handle = handleOf(state);
  if (handle && apart(handle.at, at) <= Math.max(reach, HANDLE)) return { kind: 'handle', placement: handle.placement };
  const place = onQuilt(state.view, at);
  const shown = shownTemplates(state);
  const picked = shown.filter(({ isPicked }) => isPicked);
  if (picked.length === 1) {
    const { laid } = picked[0]!;
    const end = endUnder(state, on, laid, at, reach);
    if (end) return end;
    const laying = layingOf(state, laid.placement);
    const needle = laying && needleUnder(laying, laid, place, reach / state.view.scale);
    if (needle) return needle;
  }
  for (const { laid } of shown) {
    const grip = carry(inverse(after(laid.pose, axesOf(laid, on.area))), place);
    if (liesOn(laid.template, grip)) return { kind: 'template', placement: laid.placement, grip };
  }
  return { kind: 'nothing' };
}

/** Half the size of the handle, in CSS pixels. */
const HANDLE = 20;

function endUnder({ view }: SessionState, { area }: OnTable, laid: LaidPlacement, at: ScreenPoint, reach: number): Hit | undefined {
  const axes = axesOf(laid, area);
  let best: Hit | undefined;
  let least = reach;
  for (const pass of laid.passes) {
    if (pass.kind === 'missing') continue;
    for (const end of ['start', 'stop'] as const) {
      const place = end === 'start' ? startOf(pass.path) : endOf(pass.path);
      if (!place) continue;
      const moved = { x: place.x + laid.needleOffset.x, y: place.y + laid.needleOffset.y };
      const away = apart(onScreen(view, carry(axes, moved)), at);
      if (away > least) continue;
      least = away;
      best = { kind: 'end', placement: laid.placement, pass: pass.pass, end };
    }
  }
  return best;
}

/** The needle line is taken beside the acrylic, where the foot runs; a hand on the acrylic takes the template. */
function needleUnder(laying: Laying, laid: LaidPlacement, place: Point<'quilt'>, reach: number): Hit | undefined {
  const there = carry(toNeedleLine(laying, laid.pose), place);
  if (liesOn(laid.template, carry(inverse(after(laid.pose, laying.axes)), place))) return undefined;
  let best: Hit | undefined;
  let least = reach;
  laid.needle.lines.forEach((line, needleLine) => {
    const near = nearestOnPath(line.path, there);
    if (near.distance > least) return;
    least = near.distance;
    best = { kind: 'needle', placement: laid.placement, needleLine, along: near.along };
  });
  return best;
}

function liesOn({ outline, windows }: TemplateShape, p: Point<'template'>): boolean {
  return whereIs(outline, p) !== 'outside' && windows.every((window) => whereIs(window.path, p) !== 'inside');
}

/** The placement of the sheet on the table one of whose lines lies under a hand, with the pass; the nearest of several. */
export function lineUnder(state: SessionState, at: ScreenPoint, by: Hand): { readonly sheet: string; readonly placement: string; readonly pass: string } | undefined {
  const on = onTable(state);
  if (!on?.sheet) return undefined;
  const reach = HAND_REACH[by] / state.view.scale;
  const place = carry(inverse(on.area.frame), onQuilt(state.view, at));
  let best: { readonly sheet: string; readonly placement: string; readonly pass: string } | undefined;
  let least = reach;
  for (const laid of state.evaluation.placements) {
    if (laid.sheet !== on.sheet.id || !laid.areas.includes(on.area.id)) continue;
    for (const pass of laid.passes) {
      if (pass.kind === 'missing') continue;
      for (const image of laid.images) {
        if (!boundsHold(carryBounds(image, boundsOf(pass.path)), place, reach)) continue;
        const { distance } = nearestOnPath(pass.path, carry(inverse(image), place));
        if (distance > least) continue;
        least = distance;
        best = { sheet: laid.sheet, placement: laid.placement, pass: pass.pass };
      }
    }
  }
  return best;
}

function apart(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
