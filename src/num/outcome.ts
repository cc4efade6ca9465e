// The way every fallible function of the core answers: a value, or a problem that can be read. Nothing throws.

export type Outcome<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

/** A success carrying its value. */
export function ok<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

/** A failure carrying the problem that stood in the way. */
export function fail<Problem>(problem: Problem): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem };
}
