// The fewest marks that hold every laying of a template, and among as few the best.
// Maths: a small covering problem, solved exactly by branch and bound with a growing limit on the count (iterative deepening: Korf,
// "Depth-first iterative-deepening", 1985, from memory): some laying is not held yet, so one of its own candidates must be taken; those
// tried before are barred below, so that no set is met twice. Layings that share no candidate cannot help each other, so what each
// of them needs by itself adds up to a bound. Where that takes too many tries, each laying in turn takes the fewest it still needs, and
// the answer says that it may not be the fewest.

import { SAME_MARK, STEADY } from '../../num/tolerances.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { type DrawnMark, type Hold, type TopDot, dotsFor, holdsBy, holdsThere, marksFor } from './hold.ts';
import { LINE_ON_FACE, LINE_ON_TOP, type ReadyLaying, type WeighedHold, bestHolding, linesToDraw, trouble, weighed, worstWith } from './holding.ts';

/** Something that could be drawn: a mark on the template for all layings it serves, or a dot on the top for one. */
export interface Candidate {
  readonly mark?: DrawnMark;
  readonly dot?: TopDot;
  /** By index of the laying. */
  readonly holds: ReadonlyMap<number, readonly WeighedHold[]>;
}

export interface Fewest {
  readonly chosen: readonly Candidate[];
  /** Of each laying, everything that can hold it once these are drawn. */
  readonly available: readonly (readonly WeighedHold[])[];
  /** False where there were too many to try and the marks may not be the fewest. */
  readonly exact: boolean;
  /** Everything that was weighed. */
  readonly candidates: readonly Candidate[];
}

/** No set of marks larger than this is looked for at once. */
const MOST_MARKS = 6;
/** After so many tries the exact search is given up. */
const MOST_TRIES = 20_000;
/** So many of the smallest sets are weighed in full. */
const MOST_WEIGHED = 24;

/** The fewest marks for layings of one template; dots on the top only where reference lines cannot hold a laying. */
export function fewestMarks(readies: readonly ReadyLaying[], shape: TemplateShape): Fewest {
  const there = readies.map((ready) => holdsThere(ready.laying, shape).map((hold) => weighed(ready, hold)));
  const marks = merged(readies.flatMap(({ laying }) => marksFor(laying, shape))).map((mark): Candidate => ({ mark, holds: new Map(readies.flatMap((ready, i) => entry(i, holdsBy(mark, ready.laying).map((hold) => weighed(ready, hold))))) }));
  const dots = readies.map((ready, i) => dotsFor(ready.laying, shape).map((hold): Candidate => dotCandidate(i, weighed(ready, hold))));
  const tasks = readies.map((ready, i): Task => taskOf(ready, i, there[i]!, marks, dots[i]!));
  const candidates = [...new Set(tasks.flatMap((task) => task.own))];
  let exact = true;
  // Layings that no candidate serves together are looked at apart.
  const chosen = connected(tasks.filter((task) => task.limit !== undefined)).flatMap((together) => {
    const sets = smallestSets(together);
    exact &&= sets !== undefined;
    return sets ? bestOf(sets, together) : inTurn(together);
  });
  return { chosen, available: tasks.map((task) => withChosen(task, chosen)), exact, candidates };
}

function entry(index: number, holds: readonly WeighedHold[]): readonly (readonly [number, readonly WeighedHold[]])[] {
  return holds.length > 0 ? [[index, holds]] : [];
}

function dotCandidate(index: number, hold: WeighedHold): Candidate {
  const on = hold.on as Extract<Hold['on'], { kind: 'dot' }>;
  return { dot: on.dot, holds: new Map([[index, [hold]]]) };
}

/** Marks nearer than a pencil line is wide, as one. */
function merged(marks: readonly DrawnMark[]): readonly DrawnMark[] {
  const kept: DrawnMark[] = [];
  for (const mark of marks) if (!kept.some((other) => areOne(other, mark))) kept.push(mark);
  return kept;
}

function areOne(a: DrawnMark, b: DrawnMark): boolean {
  const near = (p: { readonly x: number; readonly y: number }, q: { readonly x: number; readonly y: number }) => Math.hypot(p.x - q.x, p.y - q.y) <= SAME_MARK;
  if (a.kind === 'line' || b.kind === 'line') return a.kind === 'line' && b.kind === 'line' && ((near(a.from, b.from) && near(a.to, b.to)) || (near(a.from, b.to) && near(a.to, b.from)));
  return near(a.at, b.at);
}

// ---- one laying ----

interface Task {
  readonly ready: ReadyLaying;
  readonly index: number;
  readonly there: readonly WeighedHold[];
  /** What may be drawn for it. */
  readonly own: readonly Candidate[];
  /** How far its needle line may stray, in inches; undefined when nothing holds it. */
  readonly limit: number | undefined;
  readonly known: Map<string, boolean>;
}

/** What has to be drawn for a laying: marks if they hold it steadily, or else dots as well; if even so it is not steady, what holds it at all. */
function taskOf(ready: ReadyLaying, index: number, there: readonly WeighedHold[], marks: readonly Candidate[], dots: readonly Candidate[]): Task {
  const mine = marks.filter(({ holds }) => holds.has(index));
  const wandersWith = (own: readonly Candidate[]) => worstWith(ready, [...there, ...own.flatMap(({ holds }) => holds.get(index) ?? [])]);
  const byMarks = wandersWith(mine);
  if (byMarks !== undefined && byMarks <= STEADY) return { ready, index, there, own: mine, limit: STEADY, known: new Map() };
  const all = [...mine, ...dots];
  const byAll = wandersWith(all);
  const limit = byAll === undefined ? undefined : byAll <= STEADY ? STEADY : Infinity;
  return { ready, index, there, own: all, limit, known: new Map() };
}

function withChosen(task: Task, chosen: readonly Candidate[]): readonly WeighedHold[] {
  return [...task.there, ...chosen.flatMap(({ holds }) => holds.get(task.index) ?? [])];
}

function isDone(task: Task, chosen: readonly Candidate[]): boolean {
  const mine = chosen.filter((candidate) => task.own.includes(candidate));
  const key = mine.map((candidate) => task.own.indexOf(candidate)).sort((a, b) => a - b).join();
  const known = task.known.get(key);
  if (known !== undefined) return known;
  const worst = worstWith(task.ready, withChosen(task, mine));
  const done = worst !== undefined && worst <= task.limit!;
  task.known.set(key, done);
  return done;
}

// ---- all layings ----

interface Search {
  readonly tasks: readonly Task[];
  /** Fewest candidates each task needs when it is alone. */
  readonly needs: ReadonlyMap<Task, number>;
  tries: number;
}

/** Tasks in groups that share candidates, directly or through others. */
function connected(tasks: readonly Task[]): readonly (readonly Task[])[] {
  const groups: Task[][] = [];
  for (const task of tasks) {
    const mine = groups.filter((group) => group.some((other) => sharesWith(other, task)));
    const merged = [...mine.flat(), task];
    for (const group of mine) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups;
}

function sharesWith(a: Task, b: Task): boolean {
  return a.own.some((candidate) => b.own.includes(candidate));
}

/** All smallest sets that hold every laying, or undefined when they could not be found in time. */
function smallestSets(tasks: readonly Task[]): readonly (readonly Candidate[])[] | undefined {
  const needs = new Map(tasks.map((task) => [task, fewestFor(task, [])?.length ?? 1] as const));
  const search: Search = { tasks, needs, tries: 0 };
  for (let count = 0; count <= MOST_MARKS; count++) {
    const found: (readonly Candidate[])[] = [];
    const whole = descend(search, [], new Set(), count, found);
    if (found.length > 0) return found;
    if (!whole) return undefined;
  }
  return undefined;
}

/** No fewer than this many candidates more hold the open tasks: of tasks that share none, the needs add up. */
function leastMore({ needs }: Search, open: readonly Task[], chosen: readonly Candidate[]): number {
  const apart: Task[] = [];
  let sum = 0;
  for (const task of open) {
    if (apart.some((other) => sharesWith(other, task))) continue;
    apart.push(task);
    sum += Math.max(1, (needs.get(task) ?? 1) - chosen.filter((candidate) => task.own.includes(candidate)).length);
  }
  return sum;
}

/** Adds the sets found below; false when it was given up. */
function descend(search: Search, chosen: readonly Candidate[], barred: ReadonlySet<Candidate>, left: number, found: (readonly Candidate[])[]): boolean {
  if (++search.tries > MOST_TRIES) return false;
  const open = search.tasks.filter((task) => !isDone(task, chosen));
  if (open.length === 0) {
    found.push(chosen);
    return true;
  }
  if (left < leastMore(search, open, chosen)) return true;
  const own = open.map((task) => task.own.filter((candidate) => !barred.has(candidate) && !chosen.includes(candidate)));
  const fewest = own.reduce((least, each) => (each.length < least.length ? each : least));
  const below = new Set(barred);
  for (const candidate of fewest) {
    if (!descend(search, [...chosen, candidate], below, left - 1, found)) return false;
    below.add(candidate);
  }
  return true;
}

/** The fallback: laying after laying takes the fewest it still needs. */
function inTurn(tasks: readonly Task[]): readonly Candidate[] {
  let chosen: readonly Candidate[] = [];
  for (const task of tasks) {
    if (isDone(task, chosen)) continue;
    chosen = [...chosen, ...(fewestFor(task, chosen) ?? task.own)];
  }
  return chosen;
}

function fewestFor(task: Task, chosen: readonly Candidate[]): readonly Candidate[] | undefined {
  for (let count = 1; count <= 3; count++) {
    const found: (readonly Candidate[])[] = [];
    descend({ tasks: [task], needs: new Map(), tries: 0 }, chosen, new Set(), count, found);
    const first = found[0];
    if (first) return first.filter((candidate) => !chosen.includes(candidate));
  }
  return undefined;
}

/** Of sets of the same count, the one with the least score: the widest wander, lines to draw on the top, lines across the face. */
function bestOf(sets: readonly (readonly Candidate[])[], tasks: readonly Task[]): readonly Candidate[] {
  const roughly = sets.map((chosen) => {
    const worsts = tasks.map((task) => worstWith(task.ready, withChosen(task, chosen)) ?? 0);
    return { chosen, rough: Math.max(0, ...worsts) + LINE_ON_FACE * chosen.filter(({ mark }) => mark?.kind === 'line').length };
  });
  const finalists = roughly.sort((a, b) => a.rough - b.rough).slice(0, MOST_WEIGHED);
  let best: { readonly chosen: readonly Candidate[]; readonly score: number } | undefined;
  for (const { chosen } of finalists) {
    const holdings = tasks.map((task) => bestHolding(task.ready, withChosen(task, chosen)));
    const lines = new Set(holdings.flatMap((holding, i) => (holding ? [...linesToDraw(tasks[i]!.ready, holding.holds)] : [])));
    const worst = Math.max(0, ...holdings.map((holding) => (holding ? holding.worst + trouble(holding.holds) : 0)));
    const score = worst + LINE_ON_TOP * lines.size + LINE_ON_FACE * chosen.filter(({ mark }) => mark?.kind === 'line').length;
    if (!best || score < best.score) best = { chosen, score };
  }
  return best?.chosen ?? [];
}
