// What would have to be done to one plan to make it another: patches, as small as the maps of a plan allow.
// Lists are taken as a whole, since nothing says which of their items is which.

import type { Patch } from 'immer';
import { type PlainMap, isMap, keysOfEither, saysTheSame } from './same.ts';
import type { Plan } from '../../model/plan.ts';

/** The patches that turn `before` into `after`; none when they say the same. */
export function patchesBetween(before: Plan, after: Plan): readonly Patch[] {
  return differences(asMap(before), asMap(after), []);
}

/** `after`, with every part that says the same as in `before` being that very part, so that nothing is computed twice. */
export function sharing(before: Plan, after: Plan): Plan {
  return shared(before, after) as Plan;
}

function differences(before: PlainMap, after: PlainMap, path: readonly string[]): readonly Patch[] {
  return keysOfEither(before, after).flatMap((key): readonly Patch[] => {
    const [a, b] = [before[key], after[key]];
    const here = [...path, key];
    if (a === b) return [];
    if (b === undefined) return [{ op: 'remove', path: here }];
    if (a === undefined) return [{ op: 'add', path: here, value: b }];
    if (isMap(a) && isMap(b)) return differences(a, b, here);
    return saysTheSame(a, b) ? [] : [{ op: 'replace', path: here, value: b }];
  });
}

function shared(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (Array.isArray(after)) {
    if (!Array.isArray(before)) return after;
    const items = after.map((item, i) => shared(before[i], item));
    return items.length === before.length && items.every((item, i) => item === before[i]) ? before : items;
  }
  if (!isMap(after) || !isMap(before)) return after;
  const entries = Object.entries(after).map(([key, value]) => [key, shared(before[key], value)] as const);
  const keys = Object.keys(before);
  const same = entries.length === keys.length && entries.every(([key, value], i) => keys[i] === key && value === before[key]);
  return same ? before : Object.fromEntries(entries);
}

function asMap(plan: Plan): PlainMap {
  return plan as unknown as PlainMap;
}
