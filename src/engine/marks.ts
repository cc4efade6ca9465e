// The marks of a whole plan, with how far each laying's needle line may stray when it is laid by them, and whether its ends still meet.

import { EYE, JOIN } from '../num/tolerances.ts';
import { styleOf } from '../model/length-style.ts';
import type { Plan } from '../model/plan.ts';
import { type Point, type Vec, distance } from '../geometry/point.ts';
import { type Pose, carry, carryVec } from '../geometry/pose.ts';
import { type LayingEnd, type MarkedLaying, type MarkedTemplate, type MarkedTop, markAll } from '../place/marks/marks.ts';
import { rulesOf } from '../place/marks/laying.ts';
import { requirementOf } from '../place/place.ts';
import type { Requirement } from '../place/requirement.ts';
import { gapOfEnds } from '../place/wander/meeting.ts';
import { type Stray, type Wander, wander } from '../place/wander/wander.ts';
import type { LaidPlacement } from '../stitch/laid-placement.ts';
import { linesOf } from '../stitch/lay.ts';
import type { Evaluation } from './evaluation.ts';
import { type PlanLaying, layingsOf } from './layings.ts';

type Laid = Pick<Evaluation, 'plan' | 'top' | 'placements'>;

export interface LayingWithEnds extends PlanLaying {
  readonly top: string;
  readonly ends: readonly LayingEnd[];
}

export interface ForgivingLaying extends MarkedLaying<LayingWithEnds> {
  /** How far the needle line strays when it is laid by the marks. */
  readonly wander: Wander;
  /** The same when it is laid by the registrations of the plan; undefined where there are none that hold it. */
  readonly byRegistrations: Extract<Wander, { kind: 'held' }> | undefined;
  /** Of ends that meet another end: how far apart the two may come to lie (95 % half-width, inches), and whether nobody would see it. */
  readonly meetings: readonly Meeting[];
}

export interface Meeting {
  readonly pass: string;
  readonly end: 'start' | 'stop';
  readonly at: Point<'area'>;
  readonly gap: number;
  readonly stillMeets: boolean;
}

export interface ForgivingTemplate extends Omit<MarkedTemplate<LayingWithEnds>, 'layings'> {
  readonly layings: readonly ForgivingLaying[];
}

export interface MarksOfPlan {
  readonly templates: readonly ForgivingTemplate[];
  readonly tops: readonly MarkedTop[];
}

const known = new WeakMap<Plan, MarksOfPlan>();

/** What to draw on the templates and the top so that the chosen sheets can be laid again without measuring; kept for the plan. */
export function marksOf(laid: Laid): MarksOfPlan {
  const before = known.get(laid.plan);
  if (before) return before;
  const marks = findMarks(laid);
  known.set(laid.plan, marks);
  return marks;
}

function findMarks(laid: Laid): MarksOfPlan {
  const layings = layingsOf(laid).map((laying): LayingWithEnds => ({ ...laying, top: laying.laid.shape, ends: endsOf(laid.plan, laying.laid) }));
  const byTemplate = new Map<string, LayingWithEnds[]>();
  for (const laying of layings) byTemplate.set(laying.template, [...(byTemplate.get(laying.template) ?? []), laying]);
  const templates = [...byTemplate].map(([id, all]) => ({ id, shape: all[0]!.laid.template, layings: all }));
  const marked = markAll(templates, { style: styleOf(laid.plan) });
  const forgiving = marked.templates.map((template) => ({
    ...template,
    layings: template.layings.map((each) => ({
      ...each,
      wander: wanderOf(each.laying, each.holding?.holds.map(({ requirement }) => requirement) ?? []),
      byRegistrations: byRegistrations(laid, each.laying),
    })),
  }));
  const all = forgiving.flatMap(({ layings: here }) => here);
  return { templates: forgiving.map((template) => ({ ...template, layings: template.layings.map((each) => ({ ...each, meetings: meetingsOf(each, all) })) })), tops: marked.tops };
}

function wanderOf(laying: PlanLaying, holds: readonly Requirement[]): Wander {
  const { pose, needle, sewn, laid } = laying;
  return wander(holds, { pose, needle, sewn, shape: laid.template });
}

function byRegistrations({ plan, placements }: Laid, laying: PlanLaying): Extract<Wander, { kind: 'held' }> | undefined {
  const { laid } = laying;
  const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
  const leans = placement?.registrations.some(({ on }) => on.startsWith('stitched:') || on.startsWith('end:')) ?? false;
  const earlier = leans ? placements.filter((other) => other.sheet === laid.sheet && other.shape === laid.shape && other !== laid) : [];
  const setting = { shape: laid.template, needle: laid.needle, lines: laying.lines, stitched: linesOf(earlier) };
  const read = placement?.registrations.map((registration) => requirementOf(registration, setting)) ?? [];
  if (read.length === 0 || laid.standing.kind === 'impossible') return undefined;
  const result = wanderOf(laying, read.flatMap((one) => (one.ok ? [one.value] : [])));
  return result.kind === 'held' ? result : undefined;
}

// ---- ends ----

function endsOf(plan: Plan, laid: LaidPlacement): readonly LayingEnd[] {
  const placement = plan.sheets[laid.sheet]?.placements[laid.placement];
  return laid.passes.flatMap((pass): readonly LayingEnd[] => {
    const asked = placement?.passes[pass.pass];
    if (pass.kind !== 'found' || !asked || asked.stop === 'all-round') return [];
    const first = pass.path.vertices[0];
    const last = pass.path.vertices.at(-1);
    if (!first || !last) return [];
    const { x, y } = laid.needleOffset;
    const told = (end: typeof asked.start) => ('crosses' in end ? { on: end.crosses.replace(/^line:/, '') } : {});
    return [
      { what: 'start', at: { x: first.x + x, y: first.y + y }, ...told(asked.start) },
      { what: 'stop', at: { x: last.x + x, y: last.y + y }, ...told(asked.stop) },
    ];
  });
}

interface End {
  readonly pass: string;
  readonly end: 'start' | 'stop';
  readonly stray: Stray;
  /** The line it stops on. */
  readonly way: Vec<'area'> | undefined;
}

/** For each end of a laying that meets another, on the same area, in some image: the widest gap that may open there. */
function meetingsOf(one: Omit<ForgivingLaying, 'meetings'>, all: readonly Omit<ForgivingLaying, 'meetings'>[]): readonly Meeting[] {
  const { laid } = one.laying;
  const here = all.filter(({ laying }) => laying.laid.sheet === laid.sheet && laying.laid.areas.includes(one.laying.area.id));
  const others = here.flatMap((other) => strayEnds(other).flatMap((end) => other.laying.laid.images.map((image, number) => ({ of: other, number, ...carriedEnd(end, image) }))));
  return strayEnds(one).flatMap((mine) => {
    const first = laid.images[0]!;
    const end = carriedEnd(mine, first);
    const meeting = others.filter((other) => !(other.of === one && other.number === 0 && other.end === mine.end && other.pass === mine.pass) && distance(other.stray.at, end.stray.at) <= JOIN);
    if (meeting.length === 0) return [];
    const gap = Math.max(...meeting.map((other) => (other.of === one && other.number === 0 ? 0 : gapOfEnds(end.stray, other.stray, end.way))));
    return [{ pass: mine.pass, end: mine.end, at: mine.stray.at, gap, stillMeets: gap <= EYE }];
  });
}

function strayEnds({ laying, wander: found }: Omit<ForgivingLaying, 'meetings'>): readonly End[] {
  if (found.kind === 'free') return [];
  const rules = rulesOf(laying);
  let band = -1;
  return laying.laid.passes.flatMap((pass): readonly End[] => {
    if (pass.kind !== 'found') return [];
    const strays = found.bands[++band];
    const asked = laying.ends.length > 0 ? strays : undefined;
    const first = asked?.[0];
    const last = asked?.at(-1);
    if (!first || !last || distance(first.at, last.at) <= JOIN) return [];
    const [start, stop] = pass.way === 'clockwise' ? [first, last] : [last, first];
    return [
      { pass: pass.pass, end: 'start', stray: start, way: wayAt(start.at) },
      { pass: pass.pass, end: 'stop', stray: stop, way: wayAt(stop.at) },
    ];
  });

  function wayAt(at: Point<'area'>): Vec<'area'> | undefined {
    const end = laying.ends.find((candidate) => distance(candidate.at, at) <= JOIN);
    return rules.find(({ line }) => line.id === end?.on)?.way;
  }
}

function carriedEnd(end: End, image: Pose<'area', 'area'>): End {
  return { ...end, stray: { ...end.stray, at: carry(image, end.stray.at), away: carryVec(image, end.stray.away) }, way: end.way && carryVec(image, end.way) };
}
