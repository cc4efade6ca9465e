// The ways to set a border out, in words: what a quilter decides by.

import { styleOf } from '../../model/length-style.ts';
import type { Plan } from '../../model/plan.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';
import { toDegrees } from '../../num/angle.ts';
import { EYE, SAME_POINT } from '../../num/tolerances.ts';
import { type BorderAnswer, type CornerAnswer, type BorderProblem, setOutBorderOf } from '../../engine/border-set-out.ts';
import type { BorderResult } from '../../place/setout/set-out-border.ts';
import type { CornerTurn } from '../../place/setout/turn-corners.ts';
import { FRIEZES } from '../sheet/repeats.ts';
import type { AskedBorder } from './asked.ts';
import type { Offer, Offers } from './offer.ts';

/** As many as can be compared by eye. */
const MOST = 10;

export function borderOffers(plan: Plan, asked: AskedBorder): Offers {
  const { border, template, pattern, spacing, crest } = asked;
  const found = setOutBorderOf(plan, {
    border,
    ...(template !== undefined && { template }),
    ...(pattern !== undefined && { pattern }),
    wish: { ...(spacing !== undefined && { spacing }), ...(crest !== undefined && { height: crest }) },
    most: MOST,
  });
  const style = styleOf(plan);
  if (!found.ok) return { kind: 'none', why: sayProblem(found.problem, plan, style) };
  return { kind: 'offers', offers: found.value.map((answer) => offerOf(answer, plan, style)) };
}

function offerOf({ template, result, corner, sheets }: BorderAnswer, plan: Plan, style: LengthStyle): Offer {
  const { counts, across, down } = result;
  return {
    id: [template, across.pattern, counts.top, counts.left, across.unit.pose.angle.toFixed(4), across.unit.pose.flipped].join('/'),
    title: sayCounts(counts),
    about: [
      `${plan.kit.templates[template]!.name}, ${FRIEZES[across.pattern].name.toLowerCase()}${across.unit.pose.flipped ? ', face down' : ''}. ${saySpacing(result, style)}`,
      [sayCrest(result, style), sayJoints(result), sayClearance(result, style), sayForgiveness(across.forgiveness.heightPerSixteenth, style), down === across ? '' : sayPose(result)].filter(Boolean).join(' '),
      sayCorners(result.corners, corner, plan, style),
    ].filter(Boolean),
    sheets,
  };
}

function sayCounts(counts: BorderResult['counts']): string {
  return counts.top === counts.left ? `${counts.top} repeats on every side` : `${counts.top} repeats on top and bottom, ${counts.left} on the sides`;
}

function saySpacing({ pair: { spacings, difference, sixteenths, percent, seen } }: BorderResult, style: LengthStyle): string {
  const [a, b] = spacings;
  if (difference <= SAME_POINT || percent < 0.05) return `${writeLength(a, style)} each on all sides.`;
  const both = `${writeLength(a, style)} and ${writeLength(b, style)} each`;
  const apart = sixteenths === 0 || style.unit === 'cm' ? `${percent.toFixed(1)} %` : `about ${writeLength(sixteenths / 16, style)}, ${percent.toFixed(1)} %`;
  return seen ? `${both}: they differ by ${apart}, which the eye will see.` : `${both}: they differ by ${apart}, which no eye will see.`;
}

function sayCrest({ across, down }: BorderResult, style: LengthStyle): string {
  const [a, b] = [across.height, down.height];
  const what = across.found === 'rise' ? 'It rises' : 'Its crest stands';
  return Math.abs(a - b) <= EYE ? `${what} ${writeLength(a, style)} high.` : `${what} ${writeLength(a, style)} high on top and bottom, ${writeLength(b, style)} on the sides.`;
}

function sayJoints({ across: { kinks, corners } }: BorderResult): string {
  const worst = toDegrees(Math.max(kinks.start, kinks.stop, kinks.crest));
  const joints = worst < SMOOTH ? 'Smooth where repeats meet.' : `Where repeats meet the line turns by ${Math.round(worst)}°.`;
  return corners > 0 ? `${joints} The foot must stop and turn at ${corners === 1 ? 'one corner' : `${corners} corners`} in each repeat.` : joints;
}

/** Degrees no hand could sew. */
const SMOOTH = 0.5;

function sayClearance({ across, down, fits }: BorderResult, style: LengthStyle): string {
  const least = Math.min(across.clearance.outer, across.clearance.inner, down.clearance.outer, down.clearance.inner);
  if (least < 0) return `It runs ${writeLength(-least, style)} over a seam.`;
  return fits ? `At least ${writeLength(least, style)} from the seams.` : `Only ${writeLength(least, style)} from a seam, nearer than you keep.`;
}

/** What a sixteenth in the length of the side does to the crest, where it does much. */
function sayForgiveness(heightPerSixteenth: number, style: LengthStyle): string {
  if (!Number.isFinite(heightPerSixteenth)) return 'The template only just spans it: a sixteenth in the border changes the crest a great deal.';
  return Math.abs(heightPerSixteenth) > EYE ? `A sixteenth in the length of the side moves the crest by ${writeLength(Math.abs(heightPerSixteenth), style)}.` : '';
}

function sayPose({ onePose }: BorderResult): string {
  return onePose ? 'The template lies alike on all four sides.' : 'It lies a little differently on top and bottom than on the sides, on two sheets.';
}

function sayCorners(corners: readonly CornerTurn[], corner: CornerAnswer | undefined, plan: Plan, style: LengthStyle): string {
  const fitting = corners.filter(({ fits }) => fits);
  const mitre = fitting.find(({ how }) => how !== 'corner-motif');
  if (mitre) return `The corners can turn on the mitre, ${mitre.how === 'crest-on-mitre' ? 'on a crest' : 'on a division'}.`;
  const motif = fitting.find((turn) => turn.how === 'corner-motif');
  if (corner) return `${plan.kit.templates[corner.template]!.name} turns the corners.`;
  if (motif?.how === 'corner-motif') return `The corners are left open: a quarter circle sewn with a radius of ${writeLength(motif.radius, style)} would join the sides, and none of your templates makes it.`;
  return 'An odd count leaves the sides out of step at the corners: give each a motif of its own.';
}

function sayProblem(problem: BorderProblem, plan: Plan, style: LengthStyle): readonly string[] {
  switch (problem.kind) {
    case 'no-such-border':
      return ['This top has no such border. Give it one in Top.'];
    case 'no-foot':
      return ['There is no foot in your kit. Add the one on your machine in Kit.'];
    case 'no-template':
      return ['There is no template on your shelf. Add one in Kit.'];
    case 'nothing-works': {
      const spans = problem.tried.flatMap(({ template, setOut }) => {
        const wide = [setOut.across, setOut.down].find((side) => side.kind === 'impossible' && side.why.kind === 'no-count-works');
        return wide?.kind === 'impossible' && wide.why.kind === 'no-count-works' ? [{ name: plan.kit.templates[template]?.name ?? template, ...wide.why }] : [];
      });
      const best = [...spans].sort((a, b) => b.widest - a.widest)[0];
      const counts = problem.tried.some(({ setOut }) => [setOut.across, setOut.down].some((side) => side.kind === 'impossible' && side.why.kind === 'no-counts'));
      return [
        'None of your templates makes this border come out even as you ask.',
        ...(best ? [`The widest, ${best.name}, spans ${writeLength(best.widest, style)}: it needs at least ${best.leastCount} repeats on a side. Ask for shorter repeats, or add a larger template in Kit.`] : []),
        ...(counts && !best ? ['No count of repeats is near the length you ask for. Leave the length free.'] : []),
      ];
    }
  }
}
