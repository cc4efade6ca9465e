// How to hold one laying with the marks at hand: the fewest things to line up that hold it, and of those the steadiest.

import type { TemplateShape } from '../../model/kit/shape.ts';
import { NOT_LEFT, SHALLOW_MEETING, STEADY } from '../../num/tolerances.ts';
import { type Body, bodyOf } from '../register.ts';
import { type GripPart, gripOf, gripParts } from '../wander/grip.ts';
import { type Slack, USUAL_SLACK } from '../wander/slack.ts';
import { type NeedlePlace, isHeld, placesAlong, placesRound, strayAt } from '../wander/wander.ts';
import type { Hold } from './hold.ts';
import { type Laying, rulesOf, imageOfRule, type Rule } from './laying.ts';

/** A laying made ready for weighing many ways of holding it. */
export interface ReadyLaying {
  readonly laying: Laying;
  readonly rules: readonly Rule[];
  readonly body: Body;
  readonly round: readonly NeedlePlace[];
  readonly samples: readonly NeedlePlace[];
  readonly slack: Slack;
  /** What has to be drawn on the top, by the key of a rule: the keys of the rule in all images of the laying, less seams. */
  readonly toDraw: ReadonlyMap<string, readonly string[]>;
}

/** A hold with its equations worked out. */
export interface WeighedHold extends Hold {
  readonly parts: readonly GripPart[];
}

/** A laying held: by what, and how far its needle line may then stray at worst (95 % half-width, inches). */
export interface Holding {
  readonly holds: readonly WeighedHold[];
  readonly worst: number;
  /** What the choice is ranked by, in inches; the least is the best. */
  readonly score: number;
}

/** Every line to be drawn on the top weighs as much as so many inches of wander. */
export const LINE_ON_TOP = 1 / 64;

/** A line across the face is more to draw than a tick; in inches of wander. */
export const LINE_ON_FACE = 1 / 128;

/** Letting the needle down on a place and bringing the template against the foot takes more care than putting a mark on it; in inches of wander. */
const BY_NEEDLE = 1 / 64;

/** No more than this many things are lined up at a time. */
const MOST_HOLDS = 3;

export function readyLaying(laying: Laying, shape: TemplateShape, slack: Slack = USUAL_SLACK): ReadyLaying {
  const rules = rulesOf(laying);
  const toDraw = new Map<string, readonly string[]>();
  for (const rule of rules) {
    const keys = laying.images.map(({ motion }) => imageOfRule(rule, motion, rules, laying.period)).filter(({ seen }) => !seen).map(({ key }) => key);
    toDraw.set(rule.line.id, [...new Set(keys)]);
  }
  const samples = laying.sewn.flatMap((stretch) => placesAlong(stretch, laying.pose, Infinity));
  return { laying, rules, body: bodyOf(shape.outline), round: placesRound(laying), samples, slack, toDraw };
}

export function weighed({ laying, body, slack }: ReadyLaying, hold: Hold): WeighedHold {
  return { ...hold, parts: gripParts(hold.requirement, laying.pose, body, laying.needle, slack) };
}

/** How far the needle line strays at worst with all of these lined up together, or undefined when they do not hold it. */
export function worstWith({ laying, body, round, samples, slack }: ReadyLaying, holds: readonly WeighedHold[]): number | undefined {
  const grip = gripOf(holds.flatMap(({ parts }) => parts), laying.pose, body, slack);
  if (!isHeld(grip, round)) return undefined;
  let worst = 0;
  for (const place of samples) worst = Math.max(worst, strayAt(place, grip, slack).wide);
  return worst;
}

/**
 * The best way to hold a laying with some of these holds: as few as hold it steadily and, of as few, the one with the least score. Where
 * none holds it steadily, the steadiest there is; undefined where none holds it.
 */
export function bestHolding(ready: ReadyLaying, holds: readonly WeighedHold[]): Holding | undefined {
  let best: Holding | undefined;
  for (let size = 1; size <= MOST_HOLDS; size++) {
    for (const chosen of subsets(holds, size)) {
      const worst = worstWith(ready, chosen);
      if (worst === undefined) continue;
      const score = worst + trouble(chosen) + LINE_ON_TOP * linesToDraw(ready, chosen).size;
      // Of ways as good as each other the first is kept, so that like layings are held alike.
      if (!best || score < best.score - NOT_LEFT) best = { holds: chosen, worst, score };
    }
    if (best && best.worst <= STEADY) break;
  }
  return best;
}

/** What speaks against a way of holding besides its wander: marks that are not quite where they should be, and lining up by the needle. */
export function trouble(holds: readonly Hold[]): number {
  return Math.max(0, ...holds.map(({ misfit }) => misfit)) + BY_NEEDLE * holds.filter(({ by }) => by.kind === 'needle').length;
}

/** What has to be drawn on the top so that these holds can be found there. */
export function linesToDraw({ toDraw, laying }: Pick<ReadyLaying, 'toDraw' | 'laying'>, holds: readonly Hold[]): ReadonlySet<string> {
  const keys = new Set<string>();
  const draw = (rule: Rule) => toDraw.get(rule.line.id)?.forEach((key) => keys.add(key));
  for (const { on } of holds) {
    if (on.kind === 'line') draw(on.rule);
    else if (on.kind === 'crossing') crossingRules(on.crossing.through, (rule) => toDraw.get(rule.line.id)?.length ?? laying.images.length)?.forEach(draw);
  }
  return keys;
}

/** The two lines through a crossing that show it at the least cost; undefined where no two cross clearly. */
export function crossingRules(through: readonly Rule[], costOf: (rule: Rule) => number): readonly Rule[] | undefined {
  let best: { readonly pair: readonly Rule[]; readonly cost: number } | undefined;
  through.forEach((a, i) => {
    for (const b of through.slice(i + 1)) {
      if (Math.abs(a.way.x * b.way.y - a.way.y * b.way.x) < SHALLOW_MEETING) continue;
      const cost = costOf(a) + costOf(b);
      if (!best || cost < best.cost) best = { pair: [a, b], cost };
    }
  });
  return best?.pair;
}

/** All ways to take `size` of the items, in order. */
export function* subsets<Item>(items: readonly Item[], size: number, from = 0): Generator<readonly Item[]> {
  if (size === 0) yield [];
  else for (let i = from; i + size <= items.length; i++) for (const rest of subsets(items, size - 1, i + 1)) yield [items[i]!, ...rest];
}
