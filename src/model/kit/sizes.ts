// Sizes of a family held to their rules, and the sentences that say what is wrong with one.

import { writeLength } from '../../num/inches.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { ShapeProblem } from './shape.ts';

export type SizeUnit = 'in' | 'degrees' | 'count';

/** One size of a family: what it is called, how far it may go, and what it is when the quilter does not say. */
export interface SizeRule {
  readonly id: string;
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly usual: number;
  readonly unit: SizeUnit;
}

/** Limits are told to the nearest thirty-second of an inch, or degree, that is still allowed. */
const TOLD_TO = 32;

/** Every size of the rules, the usual one where none is given; or the first that is unknown, no number, or beyond its limits. */
export function sizesWithinRules(
  family: string,
  rules: readonly SizeRule[],
  given: { readonly [size: string]: number },
): Outcome<{ readonly [size: string]: number }, ShapeProblem> {
  for (const id of Object.keys(given)) {
    if (rules.some((rule) => rule.id === id)) continue;
    const known = rules.map((rule) => rule.id).join(', ');
    return fail({ field: `sizes.${id}`, message: `${family} has no size “${id}”; its sizes are ${known}.` });
  }
  const sizes: { [size: string]: number } = {};
  for (const rule of rules) {
    const size = Object.hasOwn(given, rule.id) ? given[rule.id]! : rule.usual;
    const problem = problemOf(rule, size);
    if (problem) return fail({ field: `sizes.${rule.id}`, message: problem });
    sizes[rule.id] = size;
  }
  return ok(sizes);
}

function problemOf(rule: SizeRule, size: number): string | undefined {
  const { name, unit, least, most } = rule;
  if (typeof size !== 'number' || !Number.isFinite(size)) return `The ${name} must be a number.`;
  if (unit === 'count' && !Number.isInteger(size)) return `The ${name} must be a whole number; it is ${size}.`;
  if (size < least) return `The ${name} is ${shown(size, unit)}; it must be at least ${shown(least, unit)}.`;
  if (size > most) return `The ${name} is ${shown(size, unit)}; it must be at most ${shown(most, unit)}.`;
  return undefined;
}

/** The problem of a size that is too great beside the others: `because` reads on after “With” (“a radius of 8 in”). */
export function tooGreat(id: string, name: string, size: number, limit: number, because: string, unit: SizeUnit = 'in'): { readonly ok: false; readonly problem: ShapeProblem } {
  const told = unit === 'count' ? Math.floor(limit) : Math.floor(limit * TOLD_TO) / TOLD_TO;
  return fail({ field: `sizes.${id}`, message: `The ${name} is ${shown(size, unit)}; with ${because} it must be at most ${shown(told, unit)}.` });
}

/** The problem of a size that is too small beside the others. */
export function tooSmall(id: string, name: string, size: number, limit: number, because: string, unit: SizeUnit = 'in'): { readonly ok: false; readonly problem: ShapeProblem } {
  const told = unit === 'count' ? Math.ceil(limit) : Math.ceil(limit * TOLD_TO) / TOLD_TO;
  return fail({ field: `sizes.${id}`, message: `The ${name} is ${shown(size, unit)}; with ${because} it must be at least ${shown(told, unit)}.` });
}

/** A length in a sentence: a fraction to the nearest 1/32 when it is one, otherwise decimals. */
export function inches(length: number): string {
  const isFraction = Number.isInteger(length * TOLD_TO);
  return writeLength(length, isFraction ? { unit: 'in', smallest: 32 } : { unit: 'in', decimals: 4 });
}

function shown(size: number, unit: SizeUnit): string {
  if (unit === 'in') return inches(size);
  return unit === 'degrees' ? `${Number(size.toFixed(2))}°` : String(size);
}
