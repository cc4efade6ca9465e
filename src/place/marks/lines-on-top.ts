// The fewest lines to draw on the top, given the marks on the templates: reference lines in every image of every laying that uses them.
// Every choice of lines is tried where there are few; where there are many, lines are left out one by one as long as it pays, which
// need not be the fewest.

import { type Holding, LINE_ON_TOP, type ReadyLaying, type WeighedHold, bestHolding, crossingRules, linesToDraw } from './holding.ts';
import type { Rule } from './laying.ts';

/** A laying with everything that could hold it, the chosen marks included. */
export interface HoldableLaying {
  readonly ready: ReadyLaying;
  readonly holds: readonly WeighedHold[];
}

export interface LinesOnTop {
  readonly holdings: readonly (Holding | undefined)[];
  /** Whether every choice was tried. */
  readonly exact: boolean;
}

/** With more reference lines than this on one area, not every choice is tried. */
const MOST_LINES = 8;

/** Holdings for layings on like areas that together need the fewest lines on the top, a line weighing as much as LINE_ON_TOP of wander. */
export function fewestLines(layings: readonly HoldableLaying[]): LinesOnTop {
  const keys = [...new Set(layings.flatMap(({ ready, holds }) => holds.flatMap((hold) => rulesUsed(hold).filter((rule) => drawn(ready, rule).length > 0).map((rule) => rule.key))))];
  const known = layings.map(() => new Map<string, Holding | undefined>());
  const tryWith = (allowed: ReadonlySet<string>): Tried => weigh(layings, allowed, known);
  const whole = tryWith(new Set(keys));
  if (keys.length <= MOST_LINES) {
    let best = whole;
    for (let choice = 0; choice < 2 ** keys.length - 1; choice++) {
      const tried = tryWith(new Set(keys.filter((_, i) => (choice >> i) & 1)));
      if (better(tried, best)) best = tried;
    }
    return { holdings: best.holdings, exact: true };
  }
  let kept = new Set(keys);
  let best = whole;
  for (const key of keys) {
    const fewer = new Set([...kept].filter((other) => other !== key));
    const tried = tryWith(fewer);
    if (better(tried, best)) [kept, best] = [fewer, tried];
  }
  return { holdings: best.holdings, exact: false };
}

interface Tried {
  readonly holdings: readonly (Holding | undefined)[];
  readonly held: number;
  readonly score: number;
}

function better(a: Tried, b: Tried): boolean {
  return a.held > b.held || (a.held === b.held && a.score < b.score);
}

function weigh(layings: readonly HoldableLaying[], allowed: ReadonlySet<string>, known: readonly Map<string, Holding | undefined>[]): Tried {
  const lines = new Set<string>();
  const holdings = layings.map(({ ready, holds }, i) => {
    const possible = holds.flatMap((hold, number) => allowedHold(ready, hold, allowed).map((other) => ({ hold: other, number })));
    const key = possible.map(({ hold, number }) => `${number}:${rulesUsed(hold).map((rule) => rule.line.id).join('+')}`).join();
    const before = known[i]!;
    if (!before.has(key)) before.set(key, bestHolding(ready, possible.map(({ hold }) => hold)));
    const holding = before.get(key);
    if (holding) linesToDraw(ready, holding.holds).forEach((line) => lines.add(line));
    return holding;
  });
  const worst = Math.max(0, ...holdings.map((holding) => holding?.worst ?? 0));
  return { holdings, held: holdings.filter((holding) => holding !== undefined).length, score: worst + LINE_ON_TOP * lines.size };
}

/** The hold if it can be found by the allowed lines and seams alone; of a crossing, by the two of them that take the fewest lines. */
function allowedHold(ready: ReadyLaying, hold: WeighedHold, allowed: ReadonlySet<string>): readonly WeighedHold[] {
  if (hold.on.kind === 'dot') return [hold];
  const there = (rule: Rule) => drawn(ready, rule).length === 0 || allowed.has(rule.key);
  if (hold.on.kind === 'line') return there(hold.on.rule) ? [hold] : [];
  const pair = crossingRules(hold.on.crossing.through.filter(there), (rule) => drawn(ready, rule).length);
  return pair ? [{ ...hold, on: { kind: 'crossing', crossing: { ...hold.on.crossing, through: pair } } }] : [];
}

function rulesUsed({ on }: WeighedHold): readonly Rule[] {
  return on.kind === 'line' ? [on.rule] : on.kind === 'crossing' ? on.crossing.through : [];
}

function drawn({ toDraw }: ReadyLaying, rule: Rule): readonly string[] {
  return toDraw.get(rule.line.id) ?? [];
}
