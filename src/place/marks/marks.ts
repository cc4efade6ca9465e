// Marks: what to draw on the templates and on the top so that every placement can be laid again without measuring.

import type { LengthStyle } from '../../num/inches.ts';
import { JOIN, MARK_SLACK, SAME_MARK, STEADIER } from '../../num/tolerances.ts';
import { type Point, distance } from '../../geometry/point.ts';
import { carry } from '../../geometry/pose.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { type Slack, USUAL_SLACK } from '../wander/slack.ts';
import { type Candidate, type Fewest, fewestMarks } from './fewest.ts';
import type { DrawnMark, TopDot } from './hold.ts';
import { type Holding, type ReadyLaying, bestHolding, linesToDraw, readyLaying } from './holding.ts';
import { type Laying, type Rule, imageOfRule } from './laying.ts';
import { type HoldableLaying, fewestLines } from './lines-on-top.ts';
import { type Names, type Sentence, letter, sayPlace, saySentences } from './say.ts';

/** A laying to be marked. Layings of one `top` lie on like areas, where what is drawn for one is there for all. */
export interface LayingToMark extends Laying {
  readonly top: string;
  readonly ends: readonly LayingEnd[];
}

/** Where a pass starts or stops. */
export interface LayingEnd {
  readonly what: 'start' | 'stop';
  readonly at: Point<'area'>;
  /** The reference line it is told by, by its id; told by a length along the needle line when left out. */
  readonly on?: string;
}

export interface TemplateToMark<Of extends LayingToMark> {
  readonly id: string;
  readonly shape: TemplateShape;
  readonly layings: readonly Of[];
}

export interface LetteredMark {
  readonly letter: string;
  readonly mark: DrawnMark;
}

export interface MarkedLaying<Of extends LayingToMark> {
  readonly laying: Of;
  /** What it is held by; undefined where nothing could be found that holds it. */
  readonly holding: Holding | undefined;
  readonly sentences: readonly Sentence[];
  /** One mark more, or another, that would let the needle line stray less. */
  readonly steadier?: { readonly mark: DrawnMark; readonly say: string; readonly worst: number };
}

export interface MarkedTemplate<Of extends LayingToMark> {
  readonly id: string;
  readonly shape: TemplateShape;
  readonly marks: readonly LetteredMark[];
  readonly layings: readonly MarkedLaying<Of>[];
  /** False where there were too many choices to try all, and fewer marks might do. */
  readonly fewest: boolean;
}

/** What to draw on all like areas. */
export interface MarkedTop {
  readonly top: string;
  readonly lines: readonly { readonly key: string; readonly name: string }[];
  readonly dots: readonly NumberedDot[];
  /** Where a pass starts or stops on no line that is there to be seen. */
  readonly ends: readonly { readonly what: 'start' | 'stop'; readonly laying: string; readonly at: Point<'area'>; readonly say: string; readonly images: number }[];
  /** False where there were too many lines to try every choice, and fewer might do. */
  readonly fewest: boolean;
}

export interface NumberedDot extends TopDot {
  readonly number: number;
  readonly laying: string;
  readonly say: string;
  /** How many of them on one area: the images of the repeat. */
  readonly images: number;
}

export interface PlanMarks<Of extends LayingToMark> {
  readonly templates: readonly MarkedTemplate<Of>[];
  readonly tops: readonly MarkedTop[];
}

export interface MarkOptions {
  readonly style: LengthStyle;
  readonly slack?: Slack;
}

/**
 * The fewest marks that hold every laying, the fewest lines on the top to go with them, and what goes where in words. A laying for which
 * nothing can be found comes back without a holding.
 */
export function markAll<Of extends LayingToMark>(templates: readonly TemplateToMark<Of>[], { style, slack = USUAL_SLACK }: MarkOptions): PlanMarks<Of> {
  const weighed = templates.map((template) => {
    const readies = template.layings.map((laying) => readyLaying(laying, template.shape, slack));
    return { template, readies, fewest: fewestMarks(readies, template.shape) };
  });
  const holdable = weighed.flatMap(({ template, readies, fewest }) => readies.map((ready, i) => ({ ready, holds: fewest.available[i]!, laying: template.layings[i]! })));
  const groups = new Map<string, typeof holdable>();
  for (const each of holdable) groups.set(each.laying.top, [...(groups.get(each.laying.top) ?? []), each]);
  const holdings = new Map<Of, Holding | undefined>();
  const tops = [...groups].map(([top, layings]) => {
    const { holdings: here, exact } = fewestLines(layings);
    layings.forEach(({ laying }, i) => holdings.set(laying, here[i]));
    return { top, layings, exact };
  });
  const numbers = numbered(tops.map(({ layings }) => layings.map(({ laying }) => ({ laying, holding: holdings.get(laying) }))));
  return {
    templates: weighed.map((each) => markedTemplate(each, holdings, (dot) => numbers.get(dot) ?? 0, style)),
    tops: tops.map(({ top, layings, exact }) => markedTop(top, layings, exact, holdings, numbers, style)),
  };
}

// ---- templates ----

interface Weighed<Of extends LayingToMark> {
  readonly template: TemplateToMark<Of>;
  readonly readies: readonly ReadyLaying[];
  readonly fewest: Fewest;
}

function markedTemplate<Of extends LayingToMark>({ template, readies, fewest }: Weighed<Of>, holdings: ReadonlyMap<Of, Holding | undefined>, numberOf: Names['numberOf'], style: LengthStyle): MarkedTemplate<Of> {
  const used = new Set(template.layings.flatMap((laying) => marksOf(holdings.get(laying))));
  const letters = new Map([...used].sort(fromTheLeft).map((mark, i) => [mark, letter(i)] as const));
  const names: Names = { letterOf: (mark) => letters.get(mark) ?? '?', numberOf };
  return {
    id: template.id,
    shape: template.shape,
    marks: [...letters].map(([mark, name]) => ({ letter: name, mark })),
    layings: template.layings.map((laying, i) => {
      const holding = holdings.get(laying);
      const ready = readies[i]!;
      const better = holding && steadier(ready, i, holding, fewest, style);
      return { laying, holding, sentences: holding ? saySentences(laying, holding.holds, ready.rules, names) : [], ...(better && { steadier: better }) };
    }),
    fewest: fewest.exact,
  };
}

function marksOf(holding: Holding | undefined): readonly DrawnMark[] {
  return holding?.holds.flatMap(({ by }) => (by.kind === 'drawn' ? [by.mark] : [])) ?? [];
}

function fromTheLeft(a: DrawnMark, b: DrawnMark): number {
  const p = placeOf(a);
  const q = placeOf(b);
  return p.x - q.x || p.y - q.y;
}

function placeOf(mark: DrawnMark): Point<'template'> {
  return mark.kind === 'line' ? { x: (mark.from.x + mark.to.x) / 2, y: (mark.from.y + mark.to.y) / 2 } : mark.at;
}

/** One mark more that is worth its drawing: the needle line strays less by STEADIER at least. Where it strays little, nothing is proposed. */
function steadier(ready: ReadyLaying, index: number, holding: Holding, { candidates, available }: Fewest, style: LengthStyle): MarkedLaying<LayingToMark>['steadier'] {
  if (holding.worst <= 1.5 * MARK_SLACK) return undefined;
  let best: { readonly candidate: Candidate; readonly holding: Holding } | undefined;
  for (const candidate of candidates) {
    const own = candidate.mark ? candidate.holds.get(index) : undefined;
    if (!own) continue;
    const other = bestHolding(ready, [...available[index]!, ...own]);
    if (other?.holds.some(({ by }) => by.kind === 'drawn' && by.mark === candidate.mark) && (!best || other.worst < best.holding.worst)) best = { candidate, holding: other };
  }
  if (!best?.candidate.mark || best.holding.worst > holding.worst - STEADIER) return undefined;
  const { mark } = best.candidate;
  const on = best.holding.holds.find(({ by }) => by.kind === 'drawn' && by.mark === mark)?.on;
  const where = on?.kind === 'line' ? `the ${on.rule.line.name}` : sayPlace(carry(ready.laying.pose, placeOf(mark)), ready.rules, style);
  return { mark, say: mark.kind === 'line' ? `A line across the face along ${where} would hold it steadier.` : `A ${mark.kind} on ${where} would hold it steadier.`, worst: best.holding.worst };
}

// ---- the top ----

interface HeldOf {
  readonly laying: Laying;
  readonly holding: Holding | undefined;
}

/** Dots numbered through the plan; dots that fall together on like areas, in some image, are one. */
function numbered(tops: readonly (readonly HeldOf[])[]): ReadonlyMap<TopDot, number> {
  const numbers = new Map<TopDot, number>();
  let last = 0;
  for (const layings of tops) {
    const placed: { readonly at: Point<'area'>; readonly number: number }[] = [];
    for (const { laying, holding } of layings) {
      for (const dot of dotsOf(holding)) {
        if (numbers.has(dot)) continue;
        const number = placed.find(({ at }) => distance(at, dot.at) <= SAME_MARK)?.number ?? ++last;
        numbers.set(dot, number);
        placed.push(...laying.images.map(({ motion }) => ({ at: carry(motion, dot.at), number })));
      }
    }
  }
  return numbers;
}

function dotsOf(holding: Holding | undefined): readonly TopDot[] {
  return holding?.holds.flatMap(({ on }) => (on.kind === 'dot' ? [on.dot] : [])) ?? [];
}

function markedTop<Of extends LayingToMark>(
  top: string,
  layings: readonly (HoldableLaying & { readonly laying: Of })[],
  exact: boolean,
  holdings: ReadonlyMap<Of, Holding | undefined>,
  numbers: ReadonlyMap<TopDot, number>,
  style: LengthStyle,
): MarkedTop {
  const lines = new Map<string, string>();
  for (const { ready, laying } of layings) {
    const holding = holdings.get(laying);
    const wanted = holding ? linesToDraw(ready, holding.holds) : new Set<string>();
    for (const rule of ready.rules) {
      for (const { motion } of laying.images) {
        const image = imageOfRule(rule, motion, ready.rules, laying.period);
        if (wanted.has(image.key) && !lines.has(image.key)) lines.set(image.key, image.key === 'division' ? 'division lines' : image.key === 'division-middle' ? 'middles of the divisions' : image.name);
      }
    }
  }
  const seen = (ready: ReadyLaying, rule: Rule) => (ready.toDraw.get(rule.line.id) ?? []).every((key) => lines.has(key));
  return {
    top,
    lines: [...lines].map(([key, name]) => ({ key, name })),
    dots: eachOnce(
      layings.flatMap(({ ready, laying }) =>
        dotsOf(holdings.get(laying)).map((dot): NumberedDot => ({ ...dot, number: numbers.get(dot) ?? 0, laying: laying.id, say: sayPlace(dot.at, ready.rules, style), images: different(dot.at, laying) })),
      ),
    ),
    ends: endsToDot(layings, seen, style),
    fewest: exact,
  };
}

/** Of dots with one number, the one that comes in the most images. */
function eachOnce(dots: readonly NumberedDot[]): readonly NumberedDot[] {
  const best = new Map<number, NumberedDot>();
  for (const dot of dots) if (dot.images > (best.get(dot.number)?.images ?? 0)) best.set(dot.number, dot);
  return [...best.values()];
}

/** Ends on no line that is seen or drawn; ends that the repeat brings to one place are one. */
function endsToDot<Of extends LayingToMark>(layings: readonly (HoldableLaying & { readonly laying: Of })[], seen: (ready: ReadyLaying, rule: Rule) => boolean, style: LengthStyle): MarkedTop['ends'] {
  const placed: Point<'area'>[] = [];
  return layings.flatMap(({ ready, laying }) =>
    laying.ends.flatMap(({ what, at, on }) => {
      const rule = ready.rules.find(({ line }) => line.id === on);
      if (rule && seen(ready, rule)) return [];
      if (placed.some((other) => distance(other, at) <= JOIN)) return [];
      placed.push(...laying.images.map(({ motion }) => carry(motion, at)));
      return [{ what, laying: laying.id, at, say: sayPlace(at, ready.rules, style), images: different(at, laying) }];
    }),
  );
}

/** How many different places the repeat makes of one on one area. */
function different(at: Point<'area'>, { images }: Laying): number {
  const places: Point<'area'>[] = [];
  let count = 0;
  for (const { motion, numbers } of images) {
    const place = carry(motion, at);
    if (places.some((other) => distance(other, place) <= JOIN)) continue;
    places.push(place);
    count += numbers.length;
  }
  return count;
}
