// The ways to echo a pass or to sew a drawn line: which templates, in how few placements, how near.

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
import { EYE } from '../../num/tolerances.ts';
import { type Candidate, echo } from '../../place/echo/echo.ts';
import { DEVIATION_WEIGHT } from '../../place/follow/score.ts';
import { asPlacement } from '../../place/follow/as-placement.ts';
import type { Chain } from '../../place/follow/chain.ts';
import { match } from '../../place/match/match.ts';
import { repeatIn } from '../../stitch/repeat.ts';
import { freeId } from '../free-id.ts';
import { axesOf, kindOf } from '../lay/on-table.ts';
import type { AskedEcho, AskedMatch } from './asked.ts';
import type { Offer, Offers } from './offer.ts';
import { type Along, type LaidAlong, greatestStray, sayAlong, sayNothingFollows, titleAlong } from './say-along.ts';

const MOST = 8;
/** One placement more weighs as much as leaving out a tenth of the line: each is a stop, a move and a join. */
const PLACEMENT_WEIGHT = 0.1;

/** Lines beside a pass already sewn. */
export function echoOffers(plan: Plan, asked: AskedEcho): Offers {
  const sheet = plan.sheets[asked.sheet];
  const laid = setOut(plan).placements.find((each) => each.sheet === asked.sheet && each.placement === asked.placement && each.areas.includes(asked.area));
  const pass = laid?.passes.find((each) => each.pass === asked.pass);
  if (!sheet || !laid || pass?.kind !== 'found') return { kind: 'none', why: ['The line to be echoed is no longer there. Go back to the table and choose another.'] };
  const line = carryPath(poseOf<'area', 'area'>(laid.needleOffset.x, laid.needleOffset.y), pass.path);
  const { side, distance, template } = asked;
  return offersAlong({ plan, sheet, line, needleOffset: laid.needleOffset, distance, tolerance: EYE, ...(side && { side }), ...(template !== undefined && { template }) });
}

/** Templates that sew a line drawn or brought in. */
export function matchOffers(plan: Plan, { area: areaId, sheet: sheetId, line: data, within, template }: AskedMatch): Offers {
  const area = setOut(plan).top.areas.find(({ id }) => id === areaId);
  const read = readPathData<'area'>(data);
  const line = read.ok ? read.value[0] : undefined;
  if (!area || !line) return { kind: 'none', why: [read.ok ? 'The area is no longer there. Go back to the table.' : read.problem.message] };
  const sheet: Sheet = (sheetId === undefined ? undefined : plan.sheets[sheetId]) ?? { name: 'A line of your own', for: kindOf(area), chosen: true, placements: {}, repeat: [], fills: {} };
  const [x, y] = footOnTheMachine(plan.kit)?.foot.needleOffset ?? [0, 0];
  const needleOffset = carryVec(inverse(axesOf(repeatIn(area, sheet.repeat), area)), { x, y });
  return offersAlong({ plan, sheet, line, needleOffset, distance: 0, tolerance: within, ...(template !== undefined && { template }) });
}

interface Question {
  readonly plan: Plan;
  /** The sheet that gets the placements. */
  readonly sheet: Sheet;
  readonly line: Path<'area'>;
  readonly needleOffset: Vec<'area'>;
  readonly distance: number;
  readonly tolerance: number;
  readonly side?: 'left' | 'right';
  readonly template?: string;
}

/** Most of the line, in few placements, near: ranked by the sum of what is wanting of each. */
function offersAlong(question: Question): Offers {
  const { plan, line, template, distance, tolerance } = question;
  const foot = footOnTheMachine(plan.kit);
  const kit = Object.fromEntries(rulersOf(plan.kit, template).map(({ id, ruler: { needle } }) => [id, { needle }]));
  if (!foot || Object.keys(kit).length === 0) return { kind: 'none', why: ['There is no foot or no template on your shelf. Add one in Kit.'] };
  const whole = pathLength(line);
  const style = styleOf(plan);
  const ways = [...oneByOne(question, kit), ...(distance === 0 ? together(question, kit) : [])];
  if (ways.length === 0) return { kind: 'none', why: [sayNothingFollows(tolerance, style)] };
  const wanting = (way: Along) => 1 - followed(way) / whole + PLACEMENT_WEIGHT * (way.laid.length - 1) + (DEVIATION_WEIGHT * greatestStray(way)) / tolerance;
  const ranked = ways.sort((a, b) => wanting(a) - wanting(b));
  return { kind: 'offers', offers: ranked.slice(0, MOST).map((way): Offer => ({ id: idOf(way), title: titleAlong(way, followed(way) / whole, plan.kit), about: sayAlong(way, distance, style), sheets: [withPlacements(question, way, foot.id)] })) };
}

/** Each template by itself: the whole line or its longest stretch in one placement, and a chain of placements where that goes farther. */
function oneByOne({ line, needleOffset, distance, tolerance, side }: Question, kit: Readonly<Record<string, Candidate>>): readonly Along[] {
  return Object.entries(kit).flatMap(([template, candidate]): readonly Along[] => {
    const found = echo<'area'>(line, candidate, { distance, tolerance, side: side ?? 'either', needleOffset, chain: true });
    switch (found.kind) {
      case 'whole':
        return [{ laid: [{ template, following: found.best }], missed: [] }];
      case 'part': {
        const { best, chain, whole } = found;
        const once: Along = { laid: [{ template, following: best }], missed: [], ...(whole && { onceAlongAll: whole }) };
        if (!chain || chain.placements.length < 2) return [once];
        return [once, { laid: chain.placements.map((following): LaidAlong => ({ template, following })), missed: chain.missed }];
      }
      case 'none':
      case 'unusable':
        return [];
    }
  });
}

/** The kit together, one template going on where another stops; nothing where one template does it all. */
function together({ line, needleOffset, tolerance }: Question, kit: Readonly<Record<string, Candidate>>): readonly Along[] {
  const found = match<'area'>(line, kit, { tolerance, needleOffset });
  if (found.kind !== 'whole' && found.kind !== 'part') return [];
  const laid = laidOf(found.chain, found.ids);
  return new Set(laid.map(({ template }) => template)).size > 1 ? [{ laid, missed: found.chain.missed }] : [];
}

function laidOf({ placements }: Chain<'area'>, ids: readonly string[]): readonly LaidAlong[] {
  return placements.map((following) => ({ template: ids[following.template]!, following }));
}

function followed({ laid }: Along): number {
  return laid.reduce((sum, { following: { from, to } }) => sum + to - from, 0);
}

function withPlacements({ sheet, distance }: Question, { laid }: Along, foot: string): Sheet {
  const placements: Record<string, Placement> = { ...sheet.placements };
  for (const { template, following } of laid) placements[freeId(placements, distance === 0 ? 'line' : 'echo')] = asPlacement(following, template, foot);
  return { ...sheet, placements };
}

function idOf({ laid }: Along): string {
  return laid.map(({ template, following: { side, pose } }) => `${template}/${side}/${pose.x.toFixed(3)}/${pose.y.toFixed(3)}/${pose.angle.toFixed(3)}`).join(' ');
}
