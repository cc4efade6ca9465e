// Whether two pieces of a plan say the same. Plans are JSON: maps, lists and single values, nothing else.

export type PlainMap = { readonly [key: string]: unknown };

/** True for a map (not a list). */
export function isMap(value: unknown): value is PlainMap {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** True when both say the same, whatever order their fields stand in. A field that is undefined counts as not there. */
export function saysTheSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((item, i) => saysTheSame(item, b[i]));
  if (!isMap(a) || !isMap(b)) return false;
  return keysOfEither(a, b).every((key) => saysTheSame(a[key], b[key]));
}

/** Every key that stands in either map: first those of the first, in its order. */
export function keysOfEither(a: PlainMap, b: PlainMap): readonly string[] {
  return [...new Set([...Object.keys(a), ...Object.keys(b)])];
}
