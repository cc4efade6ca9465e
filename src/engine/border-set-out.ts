// A border of a plan set out with the kit of that plan: measured sides, clearances and templates come from it.

import { footOnTheMachine } from '../model/kit/on-the-machine.ts';
import type { Frieze, Plan, Sheet, Side } from '../model/plan.ts';
import { fail, ok, type Outcome } from '../num/outcome.ts';
import type { BorderMeasure, BorderResult, BorderSetOut } from '../place/setout/set-out-border.ts';
import { setOutKit } from '../place/setout/set-out-kit.ts';
import type { SetOutWish } from '../place/setout/wish.ts';
import { borderSheets } from '../stitch/set-out-sheet.ts';
import type { Area } from '../top/area.ts';
import { layTop } from '../top/lay-top.ts';
import { styleOf } from '../model/length-style.ts';
import { rulersOf } from './kit-rulers.ts';

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
  readonly sheets: readonly Sheet[];
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
  return ok(
    found.slice(0, most).map(({ template: id, result }) => {
      const { ruler } = rulers.find((each) => each.id === id)!;
      const { id: foot, foot: { needleOffset } } = onMachine;
      return { template: id, foot, result, sheets: borderSheets(result, border, areas, { template: id, foot, ruler, needleOffset, name: plan.kit.templates[id]!.name }) };
    }),
  );
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
