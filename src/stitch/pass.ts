// Finding a pass on the needle line: from "starts where it crosses the diagonal" to a stretch of line that can be sewn.

import { carryPath, reversedPath, startingAt, stretchOfPath } from '../geometry/change.ts';
import type { Path } from '../geometry/path.ts';
import type { Vec } from '../geometry/point.ts';
import type { Pose } from '../geometry/pose.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import type { Pass, PassEnd } from '../model/plan.ts';
import type { NeedleLine, NeedleLines } from '../needle/needle-line.ts';
import { crossingsAlong } from '../place/crossings.ts';
import type { ReferenceLine } from '../top/area.ts';
import type { LaidPass } from './laid-placement.ts';

export interface PassSetting {
  readonly needle: NeedleLines;
  readonly pose: Pose<'template', 'area'>;
  readonly needleOffset: Vec<'area'>;
  readonly lines: readonly ReferenceLine[];
}

/** The pass on the needle line of a placement, or what is missing; distances in inches along the needle line. */
export function findPass(id: string, pass: Pass, setting: PassSetting): LaidPass {
  const missing = (why: Missing['why'], detail: string, end?: 'start' | 'stop'): LaidPass => ({ kind: 'missing', pass: id, why, detail, ...(end && { end }) });
  const edge = pass.edge ?? 'outline';
  const index = setting.needle.lines.findIndex((line) => line.from === edge && line.loop === (pass.loop ?? 0));
  const needleLine = setting.needle.lines[index];
  if (!needleLine) return missing('no-edge', `The template gives no needle line along "${edge}"${pass.loop ? `, loop ${pass.loop}` : ''}.`);

  const start = endAlong(pass.start, needleLine, setting);
  if (!start.ok) return missing(start.problem.why, start.problem.detail, 'start');
  if (pass.stop === 'all-round') {
    if (!needleLine.path.closed) return missing('no-edge', 'This needle line does not close, so it cannot be sewn all round.', 'stop');
    const round = startingAt(needleLine.path, start.value);
    return found(id, index, pass, setting, start.value, start.value, round, needleLine.length);
  }
  const stop = endAlong(pass.stop, needleLine, setting);
  if (!stop.ok) return missing(stop.problem.why, stop.problem.detail, 'stop');
  if (Math.abs(start.value - stop.value) <= SAME_POINT) return missing('no-length', 'The pass starts and stops at the same place.');

  const [first, last] = pass.way === 'clockwise' ? [start.value, stop.value] : [stop.value, start.value];
  if (first > last && !needleLine.path.closed) {
    // An open needle line has no way round: run straight from start to stop.
    return found(id, index, pass, setting, start.value, stop.value, stretchOfPath(needleLine.path, last, first), first - last, true);
  }
  const length = last > first ? last - first : last - first + needleLine.length;
  return found(id, index, pass, setting, start.value, stop.value, stretchOfPath(needleLine.path, first, last), length);
}

type Missing = Extract<LaidPass, { kind: 'missing' }>;

function found(id: string, needleLine: number, pass: Pass, setting: PassSetting, start: number, stop: number, clockwise: Path<'template'>, length: number, back = false): LaidPass {
  const runsBack = (pass.way === 'counterclockwise') !== back;
  const sewn = runsBack ? reversedPath(clockwise) : clockwise;
  return { kind: 'found', pass: id, needleLine, start, stop, way: runsBack ? 'counterclockwise' : 'clockwise', path: carryPath(setting.pose, sewn), length };
}

function endAlong(end: PassEnd, line: NeedleLine, setting: PassSetting): Outcome<number, { readonly why: Missing['why']; readonly detail: string }> {
  if ('along' in end) {
    if (end.along < -SAME_POINT || end.along > line.length + SAME_POINT) {
      return fail({ why: 'off-the-end', detail: `The needle line is ${line.length.toFixed(3)} in long; ${end.along} in along is not on it.` });
    }
    return ok(Math.min(Math.max(end.along, 0), line.length));
  }
  const reference = setting.lines.find((candidate) => `line:${candidate.id}` === end.crosses);
  if (!reference) return fail({ why: 'no-line', detail: `There is no reference line "${end.crosses}" here.` });
  const crossings = crossingsAlong(reference, line, setting);
  const nth = end.nth ?? 1;
  const crossing = crossings[nth - 1];
  if (crossing === undefined) {
    const many = crossings.length === 0 ? 'does not cross' : crossings.length === 1 ? 'crosses once' : `crosses ${crossings.length} times`;
    return fail({ why: 'no-crossing', detail: `The needle line ${many} the ${reference.name}; crossing ${nth} is not there.` });
  }
  return ok(crossing);
}
