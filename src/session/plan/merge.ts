// One plan changed in two windows: what each did, put together where they did not touch the same thing.
// A three-way merge over maps keyed by id, as version control does with lines; lists and single values are one thing each.

import type { Plan } from '../../model/plan.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { type PlainMap, isMap, keysOfEither, saysTheSame } from './same.ts';

/** Paths of things both changed, each in its own way: `sheets/arcs/name`. */
export type BothChanged = readonly string[];

/** The plan with what `mine` and `theirs` each made of `base`, or what stands in the way. */
export function mergePlans(base: Plan, mine: Plan, theirs: Plan): Outcome<Plan, BothChanged> {
  const inTheWay: string[] = [];
  const merged = mergeMaps(asMap(base), asMap(mine), asMap(theirs), '', inTheWay);
  return inTheWay.length === 0 ? ok(merged as unknown as Plan) : fail(inTheWay);
}

function mergeMaps(base: PlainMap, mine: PlainMap, theirs: PlainMap, path: string, inTheWay: string[]): PlainMap {
  const merged: { [key: string]: unknown } = {};
  for (const key of keysOfEither(theirs, mine)) {
    const value = mergeValues(base[key], mine[key], theirs[key], path === '' ? key : `${path}/${key}`, inTheWay);
    if (value !== undefined) merged[key] = value;
  }
  return merged;
}

function mergeValues(base: unknown, mine: unknown, theirs: unknown, path: string, inTheWay: string[]): unknown {
  if (saysTheSame(mine, theirs) || saysTheSame(base, mine)) return theirs;
  if (saysTheSame(base, theirs)) return mine;
  if (isMap(base) && isMap(mine) && isMap(theirs)) return mergeMaps(base, mine, theirs, path, inTheWay);
  inTheWay.push(path);
  return mine;
}

function asMap(plan: Plan): PlainMap {
  return plan as unknown as PlainMap;
}
