// What is known of thread, bobbin, batting and machine, each in a few words for the drawer.

import { stitchesPerInch, weightOfTex } from '../../model/kit/thread.ts';
import type { Machine, Materials } from '../../model/plan.ts';
import { CM_PER_INCH, MM_PER_INCH } from '../../num/inches.ts';
import type { WriteLength } from '../words/lengths.ts';

export const CM_PER_YARD = 36 * CM_PER_INCH;

const UNKNOWN = 'not said yet';

export function sayThread({ thread }: Materials): string {
  const tex = thread?.tex;
  const isNamedByWeight = thread?.name?.includes('weight') === true;
  const weight = tex === undefined || isNamedByWeight ? [] : [`${Math.round(weightOfTex(tex))} weight, Tex ${Number(tex.toFixed(1))}`];
  return joined([...weight, ...(thread?.name === undefined ? [] : [thread.name])]);
}

export function sayBobbin({ bobbin }: Materials, unit: 'in' | 'cm'): string {
  const yards = bobbin?.yards;
  const length = yards === undefined ? [] : [unit === 'cm' ? `${Math.round((yards * CM_PER_YARD) / 100)} m` : `${Math.round(yards)} yd`];
  return joined([...(bobbin?.name === undefined ? [] : [bobbin.name]), ...length]);
}

export function sayBatting({ batting }: Materials, length: WriteLength): string {
  const gap = batting?.widestGap;
  return joined([...(batting?.name === undefined ? [] : [batting.name]), ...(gap === undefined ? [] : [`${length(gap)} at most`])]);
}

export function sayMachine({ name, kind, stitchLength }: Machine): string {
  const stitch = stitchLength === undefined ? [] : [`${Number((stitchLength * MM_PER_INCH).toFixed(2))} mm, about ${Math.round(stitchesPerInch(stitchLength))} to the inch`];
  return joined([...stitch, ...(name === undefined ? (kind === undefined ? [] : [kind === 'frame' ? 'frame machine' : 'sit-down machine']) : [name])]);
}

function joined(parts: readonly string[]): string {
  return parts.length === 0 ? UNKNOWN : parts.join(', ');
}
