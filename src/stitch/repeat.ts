// How a pass is multiplied within one area: the steps of a repeat become rigid motions of the area onto itself.

import { TURN } from '../num/angle.ts';
import { segmentsOf } from '../geometry/path.ts';
import { angleOf, between } from '../geometry/point.ts';
import { type Pose, after, mirrorAcross, stay, turnAbout } from '../geometry/pose.ts';
import type { RepeatStep } from '../model/plan.ts';
import type { Area, ReferenceLine } from '../top/area.ts';
import { friezeMotions } from '../place/frieze.ts';
import type { RepeatProblem } from './laid-placement.ts';
import { countAlong, unitLines } from './unit-lines.ts';

type Motion = Pose<'area', 'area'>;

export interface Repeated {
  readonly images: readonly Motion[];
  readonly problems: readonly RepeatProblem[];
}

/**
 * The images of whatever is laid in an area, in the area's own axes, the thing itself first. A step that cannot be done
 * (a mirror that is not there or not straight, no count for this side) is left out and reported; without a count along
 * this side there are no images.
 */
export function repeatIn(area: Area, steps: readonly RepeatStep[]): Repeated {
  const problems: RepeatProblem[] = [];
  let images: readonly Motion[] = [stay()];
  let lines = unitLines(area, countAlong(steps, area.side));
  steps.forEach((step, index) => {
    if ('along' in step) {
      const count = countAlong([step], area.side);
      if (count === undefined) {
        problems.push({ step: index, why: 'no-count', detail: `No count is given for ${area.name}.` });
        images = [];
        return;
      }
      images = times(images, friezeMotions(step.along, count, area.width));
      lines = area.referenceLines;
    } else if ('turn' in step) {
      images = times(images, turns(step.turn));
    } else if ('mirrorAndTurn' in step) {
      const mirror = mirrorIn(lines, step.across ?? 'line:vertical-centre', index);
      if (mirror.kind === 'problem') problems.push(mirror.problem);
      const both = mirror.kind === 'mirror' ? [stay<'area'>(), mirror.motion] : [stay<'area'>()];
      images = times(times(images, both), turns(step.mirrorAndTurn));
    } else {
      const mirror = mirrorIn(lines, step.mirror, index);
      if (mirror.kind === 'problem') problems.push(mirror.problem);
      else images = times(images, [stay(), mirror.motion]);
    }
  });
  return { images, problems };
}

/** Every image carried by every motion; the images carried by the first motion come first. */
function times(images: readonly Motion[], motions: readonly Motion[]): readonly Motion[] {
  return motions.flatMap((motion) => images.map((image) => after(image, motion)));
}

function turns(count: number): readonly Motion[] {
  return Array.from({ length: count }, (_, i) => turnAbout<'area'>({ x: 0, y: 0 }, (i * TURN) / count));
}

type Mirror = { readonly kind: 'mirror'; readonly motion: Motion } | { readonly kind: 'problem'; readonly problem: RepeatProblem };

function mirrorIn(lines: readonly ReferenceLine[], name: string, step: number): Mirror {
  const line = lines.find((candidate) => `line:${candidate.id}` === name);
  if (!line) return { kind: 'problem', problem: { step, why: 'no-line', detail: `There is no reference line "${name}" to mirror across.` } };
  const segments = segmentsOf(line.path);
  const only = segments[0];
  if (segments.length !== 1 || only?.kind !== 'line') {
    return { kind: 'problem', problem: { step, why: 'curved-line', detail: `The ${line.name} is not straight, so nothing can be mirrored across it.` } };
  }
  return { kind: 'mirror', motion: mirrorAcross(only.from, angleOf(between(only.from, only.to))) };
}
