// What zod found wrong, as a flat list of fields: where a value could have been one of several kinds of object, only
// what is wrong with the kind it was meant to be.

import type { z } from 'zod';
import type { JsonPath } from './json-places.ts';

export interface SchemaIssue {
  readonly path: JsonPath;
  /** In words, from the schema. */
  readonly expected: string;
  readonly found: unknown;
}

/** The issues of a checked value, flattened, each with the value found there. */
export function issuesOf(issues: readonly z.core.$ZodIssue[], value: unknown): readonly SchemaIssue[] {
  return issues.flatMap((issue) => flat(issue, value));
}

function flat(issue: z.core.$ZodIssue, root: unknown): readonly SchemaIssue[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'invalid_key') {
    const key = path[path.length - 1];
    return [{ path, expected: issue.issues[0]?.message ?? issue.message, found: key }];
  }
  const found = valueAt(root, path);
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [{ path, expected: issue.message, found }];
  const kinds = issue.errors.map((errors) => kindOf(errors, found));
  const best = kinds.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
  const undecided = best.absent > 0 && kinds.every((kind) => kind.foreign === 0);
  if (undecided) return [{ path, expected: issue.message, found }, ...inAll(kinds).map((each) => below(each, path, root)).flat()];
  return best.errors.flatMap((each) => below(each, path, root));
}

interface Kind {
  readonly errors: readonly z.core.$ZodIssue[];
  /** Fields that tell another kind. */
  readonly foreign: number;
  /** Needed fields that are not there, or the wrong kind of value altogether. */
  readonly absent: number;
}

function kindOf(errors: readonly z.core.$ZodIssue[], value: unknown): Kind {
  const foreign = errors.filter((issue) => issue.code === 'invalid_type' && issue.expected === 'never').length;
  const absent = errors.filter((issue) => issue.path.length === 0 || (issue.path.length === 1 && valueAt(value, issue.path as JsonPath) === undefined)).length;
  return { errors, foreign, absent };
}

function compare(a: Kind, b: Kind): number {
  return a.foreign - b.foreign || a.absent - b.absent || a.errors.length - b.errors.length;
}

/** What is wrong whichever kind was meant, other than what is absent. */
function inAll(kinds: readonly Kind[]): readonly z.core.$ZodIssue[] {
  const [first, ...others] = kinds;
  const same = (a: z.core.$ZodIssue, b: z.core.$ZodIssue) => a.path.join('/') === b.path.join('/') && a.message === b.message;
  return (first?.errors ?? []).filter((issue) => issue.path.length > 0 && others.every((other) => other.errors.some((each) => same(each, issue))));
}

function below(issue: z.core.$ZodIssue, path: JsonPath, root: unknown): readonly SchemaIssue[] {
  return flat({ ...issue, path: [...path, ...issue.path] }, root);
}

function valueAt(root: unknown, path: JsonPath): unknown {
  let value = root;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as { readonly [step: string | number]: unknown })[step];
  }
  return value;
}
