// Path data for many images of a few passes: a pass is measured once, and each image only carries its corners. A hand that moves one
// template over a large top moves thousands of lines; this is what keeps up with it.

import { type Bounds, boundsMeet, boundsOf } from '../../../geometry/bounds.ts';
import { segmentsOf } from '../../../geometry/path.ts';
import { type Pose, after, carryVec } from '../../../geometry/pose.ts';
import type { LaidPass, LaidPlacement } from '../../../stitch/laid-placement.ts';
import type { Area } from '../../../top/area.ts';
import { inReach, short } from '../../table/screen-data.ts';

type FoundPass = Extract<LaidPass, { kind: 'found' }>;

/** A pass ready to be carried: its corners, and of each stretch after the first corner what path data says between corners. */
interface Stroke {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Radius of an arc, 0 for a line; positive when it turns clockwise. */
  readonly radii: readonly number[];
  readonly middle: { readonly x: number; readonly y: number };
  readonly reach: number;
}

const strokes = new WeakMap<FoundPass, Stroke>();

/** Where the needle sews every image of a laid placement's passes on some areas, as one path in quilt inches; images out of sight are left out. */
export function inkData(laid: LaidPlacement, areas: readonly Area[], inSight?: Bounds): string {
  const passes = laid.passes.flatMap((pass) => (pass.kind === 'found' ? [strokeOf(pass)] : []));
  const parts: string[] = [];
  for (const area of areas) {
    const offset = carryVec(area.frame, laid.needleOffset);
    for (const image of laid.images) {
      const to = after(image, area.frame);
      const pose = offset.x === 0 && offset.y === 0 ? to : { ...to, x: to.x + offset.x, y: to.y + offset.y };
      for (const stroke of passes) carried(stroke, pose, inSight, parts);
    }
  }
  return parts.join('');
}

function carried({ xs, ys, radii, middle, reach }: Stroke, pose: Pose<'area', 'quilt'>, inSight: Bounds | undefined, parts: string[]): void {
  const cos = Math.cos(pose.angle);
  const sin = Math.sin(pose.angle);
  const flip = pose.flipped ? -1 : 1;
  const acrossX = cos * flip;
  const acrossY = sin * flip;
  if (inSight) {
    const x = pose.x + acrossX * middle.x - sin * middle.y;
    const y = pose.y + acrossY * middle.x + cos * middle.y;
    if (!boundsMeet(inSight, { minX: x - reach, minY: y - reach, maxX: x + reach, maxY: y + reach })) return;
  }
  for (let i = 0; i < xs.length; i++) {
    const px = xs[i]!;
    const py = ys[i]!;
    const at = `${short(pose.x + acrossX * px - sin * py)} ${short(pose.y + acrossY * px + cos * py)}`;
    const radius = i === 0 ? 0 : radii[i - 1]! * flip;
    if (i === 0) parts.push(`M${at}`);
    else if (radius === 0) parts.push(`L${at}`);
    else parts.push(`A${short(Math.abs(radius))} ${short(Math.abs(radius))} 0 0 ${radius > 0 ? 1 : 0} ${at}`);
  }
}

function strokeOf(pass: FoundPass): Stroke {
  const known = strokes.get(pass);
  if (known) return known;
  const { path } = pass;
  const segments = segmentsOf(path).flatMap(inReach);
  const corners = [...segments.slice(0, 1).map((s) => s.from), ...segments.map((s) => s.to)];
  const { minX, minY, maxX, maxY } = boundsOf(path);
  const stroke: Stroke = {
    xs: corners.map(({ x }) => x),
    ys: corners.map(({ y }) => y),
    radii: segments.map((s) => (s.kind === 'line' ? 0 : s.sweep > 0 ? s.radius : -s.radius)),
    middle: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
    reach: Math.hypot(maxX - minX, maxY - minY) / 2,
  };
  strokes.set(pass, stroke);
  return stroke;
}
