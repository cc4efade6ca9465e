// The ways to echo a pass or to sew a drawn line, in words: which template, how much of the line it follows, and how far it strays.

import { carryPath } from '../../geometry/change.ts';
import { pathLength } from '../../geometry/measure.ts';
import type { Path } from '../../geometry/path.ts';
import type { Vec } from '../../geometry/point.ts';
import { carryVec, inverse, poseOf } from '../../geometry/pose.ts';
import { readPathData } from '../../geometry/svg/read.ts';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import { styleOf } from '../../model/length-style.ts';
import type { Placement, Plan, Sheet } from '../../model/plan.ts';
import { setOut } from '../../engine/evaluate.ts';
import { rulersOf } from '../../engine/kit-rulers.ts';
import { type LengthStyle, writeLength } from '../../num/inches.ts';
import { EYE, SAME_POINT } from '../../num/tolerances.ts';
import { type Echo, echo } from '../../place/echo/echo.ts';
import type { Chain } from '../../place/follow/chain.ts';
import type { Following } from '../../place/follow/following.ts';
import { asPlacement } from '../../place/follow/as-placement.ts';
import { axesOf } from '../lay/on-table.ts';
import { repeatIn } from '../../stitch/repeat.ts';
import { freeId } from '../free-id.ts';
import { kindOf } from '../lay/on-table.ts';
import type { AskedEcho, AskedMatch } from './asked.ts';
import type { Offer, Offers } from './offer.ts';

const MOST = 8;

/** Lines beside a pass already sewn. */
export function echoOffers(plan: Plan, asked: AskedEcho): Offers {
  const sheet = plan.sheets[asked.sheet];
  const laid = setOut(plan).placements.find((each) => each.sheet === asked.sheet && each.placement === asked.placement && each.areas.includes(asked.area));
  const pass = laid?.passes.find((each) => each.pass === asked.pass);
  if (!sheet || !laid || pass?.kind !== 'found') return { kind: 'none', why: ['The line to be echoed is no longer there. Go back to the table and choose another.'] };
  const line = carryPath(poseOf<'area', 'area'>(laid.needleOffset.x, laid.needleOffset.y), pass.path);
  const { side, distance, template } = asked;
  return along(plan, sheet, line, laid.needleOffset, { distance, tolerance: EYE, ...(side && { side }), ...(template !== undefined && { template }) });
}

/** Templates that sew a line drawn or brought in. */
export function matchOffers(plan: Plan, asked: AskedMatch): Offers {
  const area = setOut(plan).top.areas.find(({ id }) => id === asked.area);
  const foot = footOnTheMachine(plan.kit)?.foot;
  const read = readPathData<'area'>(asked.line);
  const line = read.ok ? read.value[0] : undefined;
  if (!area || !foot || !line) return { kind: 'none', why: [read.ok ? 'The area or the foot is no longer there. Go back to the table.' : read.problem.message] };
  const sheet: Sheet = (asked.sheet === undefined ? undefined : plan.sheets[asked.sheet]) ?? { name: 'A line of your own', for: kindOf(area), chosen: true, placements: {}, repeat: [], fills: {} };
  const [x, y] = foot.needleOffset;
  const needleOffset = carryVec(inverse(axesOf(repeatIn(area, sheet.repeat), area)), { x, y });
  const { template, within } = asked;
  return along(plan, sheet, line, needleOffset, { distance: 0, tolerance: within, ...(template !== undefined && { template }) });
}

interface Wish {
  readonly distance: number;
  readonly tolerance: number;
  readonly side?: 'left' | 'right';
  readonly template?: string;
}

interface Answer {
  readonly template: string;
  readonly echo: Exclude<Echo<'area'>, { kind: 'none' | 'unusable' }>;
  /** How much of the line is followed, as a part of it. */
  readonly part: number;
}

function along(plan: Plan, sheet: Sheet, line: Path<'area'>, needleOffset: Vec<'area'>, { template, ...wish }: Wish): Offers {
  const onMachine = footOnTheMachine(plan.kit);
  const rulers = rulersOf(plan.kit, template);
  if (!onMachine || rulers.length === 0) return { kind: 'none', why: ['There is no foot or no template on your shelf. Add one in Kit.'] };
  const whole = pathLength(line);
  const told: string[] = [];
  const answers = rulers.flatMap(({ id, ruler: { needle } }): readonly Answer[] => {
    const found = echo<'area'>(line, { needle }, { ...wish, side: wish.side ?? 'either', needleOffset, chain: true });
    if (found.kind === 'unusable') told.push(found.detail);
    if (found.kind === 'unusable' || found.kind === 'none') return [];
    return [{ template: id, echo: found, part: followed(found) / whole }];
  });
  const style = styleOf(plan);
  if (answers.length === 0) {
    return { kind: 'none', why: told.length > 0 ? [...new Set(told)] : [`None of your templates follows it within ${writeLength(wish.tolerance, style)}, not even for half an inch. Ask for less nearness or another distance, or add a template with such a curve in Kit.`] };
  }
  const ranked = answers.sort((a, b) => b.part - a.part || placementsOf(a.echo).length - placementsOf(b.echo).length || straying(a.echo) - straying(b.echo));
  return { kind: 'offers', offers: ranked.slice(0, MOST).map((answer) => offerOf(answer, plan, sheet, onMachine.id, wish, style)) };
}

function chainOf(found: Answer['echo']): Chain<'area'> | undefined {
  return found.kind === 'part' && found.chain && found.chain.placements.length > 0 ? found.chain : undefined;
}

function placementsOf(found: Answer['echo']): readonly Following<'area'>[] {
  return chainOf(found)?.placements ?? [found.best];
}

function followed(found: Answer['echo']): number {
  return placementsOf(found).reduce((sum, { from, to }) => sum + to - from, 0);
}

function straying(found: Answer['echo']): number {
  return Math.max(...placementsOf(found).map(({ deviation }) => deviation.greatest));
}

function offerOf({ template, echo: found, part }: Answer, plan: Plan, sheet: Sheet, foot: string, wish: Wish, style: LengthStyle): Offer {
  const laid = placementsOf(found);
  const name = plan.kit.templates[template]!.name;
  const placements: Record<string, Placement> = { ...sheet.placements };
  for (const following of laid) placements[freeId(placements, wish.distance === 0 ? 'line' : 'echo')] = asPlacement(following, template, foot);
  const times = laid.length === 1 ? 'one placement' : `${laid.length} placements`;
  const first = laid[0]!;
  return {
    id: `${template}/${first.side}/${laid.length}/${first.pose.angle.toFixed(3)}/${first.pose.x.toFixed(3)}`,
    title: part > 1 - PART_SEEN ? `${name}, all of the line in ${times}` : `${name}, ${Math.round(100 * part)} % of the line in ${times}`,
    about: [sayStraying(found, wish, style), sayWhole(found, wish, style), sayFreedom(first), sayMissed(found, style)].filter(Boolean),
    sheets: [{ ...sheet, placements }],
  };
}

const PART_SEEN = 0.005;

function sayStraying(found: Answer['echo'], { distance }: Wish, style: LengthStyle): string {
  const most = straying(found);
  const from = distance === 0 ? 'the line' : `${writeLength(distance, style)} from the line`;
  if (most <= SAME_POINT) return distance === 0 ? 'It follows the line exactly.' : `It keeps exactly ${from}.`;
  return `It strays from ${from} by at most ${finely(most, style)}.`;
}

/** Finer than a tape: so little is judged by eye. */
function finely(inches: number, style: LengthStyle): string {
  return style.unit === 'cm' ? `${(inches * 25.4).toFixed(2)} mm` : `${inches.toFixed(3)} in`;
}

function sayWhole(found: Answer['echo'], { distance }: Wish, style: LengthStyle): string {
  if (found.kind !== 'part' || !found.whole) return '';
  return `Laid once along all of it, it would be ${finely(found.whole.deviation.greatest, style)} ${distance === 0 ? 'off' : 'off that distance'}.`;
}

function sayFreedom({ freedom }: Following<'area'>): string {
  switch (freedom.kind) {
    case 'none':
      return '';
    case 'turn':
      return 'Its edge is round there: it may be turned, and sews the same.';
    default:
      return 'Its edge is straight there: it may be slid along, and sews the same.';
  }
}

function sayMissed(found: Answer['echo'], style: LengthStyle): string {
  const missed = chainOf(found)?.missed ?? [];
  if (missed.length === 0) return '';
  const inches = missed.reduce((sum, { from, to }) => sum + to - from, 0);
  return `${writeLength(inches, style)} of it is left to sew by hand, in ${missed.length === 1 ? 'one place' : `${missed.length} places`}.`;
}
