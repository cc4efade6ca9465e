// A ring as a plan keeps it: the registrations that hold the template, the pass from joint to joint, and the turns.

import { TURN, toDegrees } from '../../num/angle.ts';
import { JOIN, SAME_ANGLE } from '../../num/tolerances.ts';
import { startOf, endOf } from '../../geometry/path.ts';
import { angleOf, between, heading, moved } from '../../geometry/point.ts';
import type { Pass, PassEnd, Placement, Registration, RepeatStep } from '../../model/plan.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { ReferenceLine } from '../../top/area.ts';
import { crossingsAlong } from '../crossings.ts';
import type { PlaceSetting } from '../place.ts';
import { roundOutline } from './laid-line.ts';
import type { MedallionRule } from './medallion.ts';
import type { Ring } from './ring.ts';
import { THIS_LINE } from './round-poses.ts';

/** What of a plan a set-out gives: one placement, and how its sheet repeats it. */
export interface SetOutPlacement {
  readonly placement: Placement;
  readonly repeat: readonly RepeatStep[];
}

/**
 * The placement and repeat of a ring. Marks are put on reference lines where the area has one at that angle, and on measured places where it
 * has none; ends of the pass are told by the lines they lie on, or else in inches along the needle line. A ring that does not close has no pass.
 */
export function medallionPlacement(ring: Ring, rule: MedallionRule, setting: PlaceSetting, template: string, foot: string): SetOutPlacement {
  const line = roundOutline(setting);
  const { pose } = ring;
  const step = rule.repeat === 'turn' ? TURN / rule.count : TURN / (2 * rule.count);
  const [here, next] = [lineAt(setting.lines, THIS_LINE), lineAt(setting.lines, THIS_LINE + step)];
  const passes: { readonly [id: string]: Pass } = line && ring.stretch ? { ring: passOf(ring, line, setting, here, next) } : {};
  return {
    placement: {
      template,
      foot,
      flipped: pose.flipped,
      pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle) },
      registrations: held(ring, rule, here, next),
      passes,
    },
    repeat: rule.repeat === 'turn' ? [{ turn: rule.count }] : [{ mirrorAndTurn: rule.count, across: 'line:vertical-centre' }],
  };
}

/** Held as the rule says, and at its distance from the centre. */
function held({ from }: Ring, { put, tip }: MedallionRule, here: ReferenceLine | undefined, next: ReferenceLine | undefined): readonly Registration[] {
  const at = moved({ x: 0, y: 0 }, heading<'area'>(THIS_LINE), from);
  if (tip === undefined) return here ? [{ put, on: `line:${here.id}` }] : [];
  return [{ put, on: `point:${at.x},${at.y}` }, ...(next ? [{ put: tip, on: `line:${next.id}` }] : [])];
}

function passOf({ stretch, pose }: Ring, line: NeedleLine, setting: PlaceSetting, here: ReferenceLine | undefined, next: ReferenceLine | undefined): Pass {
  if (stretch === 'all-round' || !stretch) return { start: { along: 0 }, stop: 'all-round', way: 'clockwise' };
  const { x, y } = setting.needleOffset ?? { x: 0, y: 0 };
  const centred = x === 0 && y === 0;
  const endOn = (along: number, on: ReferenceLine | undefined): PassEnd => {
    // Where the needle is not in the middle of the foot, images meet where the foot does, not where the needle crosses the line.
    const crossings = on && centred ? crossingsAlong(on, line, { pose, needleOffset: { x, y } }) : [];
    const nth = crossings.findIndex((crossing) => Math.abs(crossing - along) <= JOIN / 16);
    return on && nth >= 0 ? { crosses: `line:${on.id}`, ...(nth > 0 && { nth: nth + 1 }) } : { along };
  };
  return { start: endOn(stretch.start, here), stop: endOn(stretch.stop, next), way: stretch.way };
}

/** The straight reference line through the centre at an angle, in radians. */
function lineAt(lines: readonly ReferenceLine[], angle: number): ReferenceLine | undefined {
  return lines.find(({ kind, path }) => {
    const [from, to] = [startOf(path), endOf(path)];
    if (!from || !to || path.vertices.length !== 2 || kind === 'edge' || kind === 'division') return false;
    const way = between(from, to);
    const misses = Math.abs(from.x * Math.sin(angleOf(way)) - from.y * Math.cos(angleOf(way)));
    return Math.abs(Math.sin(angleOf(way) - angle)) <= SAME_ANGLE && misses <= SAME_ANGLE;
  });
}
