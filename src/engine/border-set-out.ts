// A border of a plan set out with the kit of that plan: measured sides, clearances and templates come from it.

import { footOnTheMachine } from '../model/kit/on-the-machine.ts';
import type { Frieze, Placement, Plan, Sheet, Side } from '../model/plan.ts';
import { arcAround } from '../geometry/segment.ts';
import { pathOfSegments } from '../geometry/path.ts';
import { SAME_POINT } from '../num/tolerances.ts';
import { fail, ok, type Outcome } from '../num/outcome.ts';
import { echo } from '../place/echo/echo.ts';
import { asPlacement } from '../place/follow/as-placement.ts';
import type { BorderMeasure, BorderResult, BorderSetOut } from '../place/setout/set-out-border.ts';
import { setOutKit } from '../place/setout/set-out-kit.ts';
import type { SetOutWish } from '../place/setout/wish.ts';
import { borderSheets } from '../stitch/set-out-sheet.ts';
import type { Area } from '../top/area.ts';
import { layTop } from '../top/lay-top.ts';
import { styleOf } from '../model/length-style.ts';
import { type RulerInKit, rulersOf } from './kit-rulers.ts';

/** The seven arrangements, in the order in which quilters meet them along borders: common practice, no source. */
const PATTERNS: readonly Frieze[] = ['scallop', 'wave', 'run', 'lantern', 'spin', 'step', 'twin'];

export interface BorderQuestion {
  /** 1 for the innermost. */
  readonly border: number;
  /** Only this template; every one that is not hidden when left out. */
  readonly template?: string;
  /** Only this arrangement; all when left out. */
  readonly pattern?: Frieze;
  readonly wish?: Omit<SetOutWish, 'pattern'>;
  /** How many answers at most. */
  readonly most?: number;
}

export interface BorderAnswer {
  readonly template: string;
  readonly foot: string;
  readonly result: BorderResult;
  /** The template that joins the sides round the corners, and how far it strays from the quarter circle; undefined when the sides do not ask for one, or none of the kit does it. */
  readonly corner: CornerAnswer | undefined;
  /** Of the sides and, where there is one, of the corners. */
  readonly sheets: readonly Sheet[];
}

export interface CornerAnswer {
  readonly template: string;
  readonly placement: Placement;
  /** In inches. */
  readonly greatest: number;
}

export type BorderProblem =
  | { readonly kind: 'no-such-border' }
  | { readonly kind: 'no-foot' }
  | { readonly kind: 'no-template' }
  /** Nothing works: for each template and arrangement, why. */
  | { readonly kind: 'nothing-works'; readonly tried: readonly { readonly template: string; readonly pattern: Frieze; readonly setOut: Extract<BorderSetOut, { kind: 'impossible' }> }[] };

/** The ways to set a border out, the best first. Without a template or an arrangement named, the best of each comes before a second of any. */
export function setOutBorderOf(plan: Plan, { border, template, pattern, wish = {}, most = Infinity }: BorderQuestion): Outcome<readonly BorderAnswer[], BorderProblem> {
  const measure = borderMeasureOf(plan, border);
  if (!measure) return fail({ kind: 'no-such-border' });
  const onMachine = footOnTheMachine(plan.kit);
  if (!onMachine) return fail({ kind: 'no-foot' });
  const { areas } = layTop(plan.top, styleOf(plan));
  const rulers = rulersOf(plan.kit, template);
  if (rulers.length === 0) return fail({ kind: 'no-template' });

  const tried: Extract<BorderProblem, { kind: 'nothing-works' }>['tried'][number][] = [];
  const found: { readonly template: string; readonly result: BorderResult; readonly nth: number }[] = [];
  for (const each of pattern === undefined ? PATTERNS : [pattern]) {
    const { results, impossible } = setOutKit(rulers, measure, { ...wish, pattern: each });
    for (const { template: id, all } of results) all.forEach((result, nth) => found.push({ template: id, result, nth }));
    for (const { template: id, setOut } of impossible) tried.push({ template: id, pattern: each, setOut });
  }
  if (found.length === 0) return fail({ kind: 'nothing-works', tried });
  const firsts = template === undefined || pattern === undefined;
  found.sort((a, b) => Number(b.result.fits) - Number(a.result.fits) || (firsts ? Number(a.nth > 0) - Number(b.nth > 0) : 0) || a.result.score - b.result.score);
  const cornerFor = cornersFrom(rulersOf(plan.kit), onMachine.id, measure.width);
  return ok(
    found.slice(0, most).map(({ template: id, result }) => {
      const { ruler } = rulers.find((each) => each.id === id)!;
      const { id: foot, foot: { needleOffset } } = onMachine;
      const corner = cornerFor(result);
      const sheets = borderSheets(result, border, areas, { template: id, foot, ruler, needleOffset, name: plan.kit.templates[id]!.name });
      return { template: id, foot, result, corner, sheets: corner ? [...sheets, cornerSheet(border, corner, plan)] : sheets };
    }),
  );
}

/** Joins the sides of a set-out round the corners: a quarter circle about the inner corner from centre line to centre line, sewn with whatever of the kit follows it. */
function cornersFrom(rulers: readonly RulerInKit[], foot: string, width: number): (result: BorderResult) => CornerAnswer | undefined {
  const known = new Map<number, CornerAnswer | undefined>();
  return ({ corners, across }) => {
    const turn = corners.find(({ how }) => how === 'corner-motif');
    const startsOnLine = Math.abs(across.unit.start.at.y + across.base) <= SAME_POINT || Math.abs(across.unit.stop.at.y + across.base) <= SAME_POINT;
    if (turn?.how !== 'corner-motif' || !turn.fits || !startsOnLine) return undefined;
    if (!known.has(turn.radius)) known.set(turn.radius, bestQuarter(rulers, foot, width, turn.radius));
    return known.get(turn.radius);
  };
}

function bestQuarter(rulers: readonly RulerInKit[], foot: string, width: number, radius: number): CornerAnswer | undefined {
  // In a corner's own axes the top's corner lies to the upper left, and the inner corner to the lower right.
  const inner = width / 2;
  const line = pathOfSegments<'area'>([arcAround({ x: inner, y: inner }, radius, -Math.PI / 2, -Math.PI / 2)], false);
  const found = rulers.flatMap(({ id, ruler: { needle } }): readonly CornerAnswer[] => {
    const followed = echo<'area'>(line, { needle }, { distance: 0 });
    return followed.kind === 'whole' ? [{ template: id, placement: asPlacement(followed.best, id, foot), greatest: followed.best.deviation.greatest }] : [];
  });
  return found.sort((a, b) => a.greatest - b.greatest)[0];
}

function cornerSheet(border: number, { template, placement }: CornerAnswer, plan: Plan): Sheet {
  return { name: `${plan.kit.templates[template]!.name}, corners`, for: { kind: 'border-corner', border }, chosen: true, placements: { corner: placement }, repeat: [], fills: {} };
}

/** A border of a plan as it was measured, and how far stitching stays from its two seams; undefined when there is no such border. */
export function borderMeasureOf(plan: Plan, border: number): BorderMeasure | undefined {
  const { areas } = layTop(plan.top, styleOf(plan));
  const sides = areas.filter((area) => area.kind === 'border-side' && area.border === border);
  const [first] = sides;
  if (!first) return undefined;
  const lengthOf = (side: Side) => sides.find((area) => area.side === side)?.width ?? 0;
  const { rawEdge, seam } = plan.top.clearance;
  return {
    lengths: { top: lengthOf('top'), right: lengthOf('right'), bottom: lengthOf('bottom'), left: lengthOf('left') },
    width: first.height,
    outerClearance: isOutermost(first) ? rawEdge : seam,
    innerClearance: seam,
  };
}

function isOutermost({ seams }: Area): boolean {
  return seams.some(({ kind }) => kind === 'raw');
}
