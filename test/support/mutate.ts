// Seeded damage to a plan file: to its text, as a bad disk or a hasty hand would do it, and to the value in it.

import type { Random } from '../../src/num/random.ts';

const SCRAPS = ['', '"', '{', '}', '[', ']', ',', ':', '\\', '\u0000', '\n', '0', '-', '1e999', '1e-400', 'null', 'true', 'NaN', '"a"', '{}', '[]', '\uD800', '/', '.', '-1', '999999999999'];

/** The text with one to four cuts, doublings or scraps put in. */
export function mutateText(text: string, { whole, pick }: Random): string {
  let damaged = text;
  for (let n = whole(1, 4); n > 0; n--) {
    const at = whole(0, damaged.length);
    const length = whole(0, 1) ? whole(0, 3) : whole(0, 200);
    const piece = damaged.slice(at, at + length);
    const kind = whole(0, 4);
    if (kind === 0) damaged = damaged.slice(0, at) + damaged.slice(at + length);
    else if (kind === 1) damaged = damaged.slice(0, at) + piece + damaged.slice(at);
    else if (kind === 2) damaged = damaged.slice(0, at) + pick(SCRAPS) + damaged.slice(at);
    else if (kind === 3) damaged = damaged.slice(0, at) + pick(SCRAPS) + damaged.slice(at + whole(0, 2));
    else damaged = whole(0, 9) === 0 ? damaged.slice(0, at) : damaged.slice(0, at) + piece.split('').reverse().join('') + damaged.slice(at + length);
  }
  return damaged;
}

type Json = null | boolean | number | string | Json[] | { [field: string]: Json };

/** A copy of the value with one to four of its parts changed for something else. Most numbers stay numbers and most texts texts, so that many of the results can still be read. */
export function mutateValue(value: unknown, random: Random): unknown {
  const copy = structuredClone(value) as Json;
  for (let n = random.whole(1, 4); n > 0; n--) mutateOnce(copy, random);
  return copy;
}

function mutateOnce(root: Json, random: Random): void {
  const { whole, pick } = random;
  const holders = holdersIn(root);
  const holder = pick(holders);
  if (Array.isArray(holder)) {
    const at = whole(0, Math.max(0, holder.length - 1));
    const kind = whole(0, 3);
    if (kind === 0) holder.splice(at, 1);
    else if (kind === 1 && holder.length > 0) holder.splice(at, 0, structuredClone(holder[at]!));
    else if (holder.length > 0) holder[at] = other(holder[at]!, random, root);
    return;
  }
  const fields = Object.keys(holder);
  if (fields.length === 0) return;
  const field = pick(fields);
  const kind = whole(0, 5);
  if (kind === 0) delete holder[field];
  else if (kind === 1) holder[pick(['constructor', 'toString', 'x', '', 'a b', pick(fields)])] = structuredClone(holder[field]!);
  else holder[field] = other(holder[field]!, random, root);
}

function other(value: Json, random: Random, root: Json): Json {
  const { whole, pick, between } = random;
  if (whole(0, 9) === 0) return pick<Json>([null, true, false, 0, 'x', [], {}, '', -1, 1e6]);
  if (typeof value === 'number') {
    return pick([0, 1, -1, 2, 3, 0.5, 0.25, value * 2, value / 3, -value, value + 1e-9, value + 1e-12, between(-20, 20), whole(0, 12), 1e-7, 1000, 360, 1e-300, Number.MAX_SAFE_INTEGER]);
  }
  if (typeof value === 'string') return textOther(value, random, root);
  if (typeof value === 'boolean') return !value;
  return structuredClone(pick(holdersIn(root)));
}

/** Another text of the plan, an ill-formed or dangling one, or the same one damaged. */
function textOther(value: string, random: Random, root: Json): string {
  const { whole, pick } = random;
  if (/^M /.test(value)) {
    return pick([
      'M 0 0', 'Z', 'M 0 0 L 1 1', 'M 0 0 H 4 V 4 H 0', 'M 0 0 H 4 L 0 4 L 4 4 Z', 'M 0 0 L 4 4 L 4 0 L 0 4 Z', 'M 0 0 A 1 1 0 0 1 0 0 Z', 'M 0 0 A 0 0 0 0 1 4 4 Z',
      'M 1e9 0 h 1 v 1 z', 'M 0 0 H 1e-9 V 1e-9 H 0 Z', 'M 0 0 C 1 1 2 2 3 3 C 3 3 3 3 0 0 Z', 'M 0 0 H 4 V 4 H 0 Z M 8 8 H 9 V 9 Z', 'M NaN 0 L 1 1 Z', 'M 0 0 H 6 V 0 H 0 Z', 'M -3 0 A 3 3 0 1 1 3 0 A 3 3 0 1 1 -3 0 Z',
      mutateText(value, random),
    ]);
  }
  const texts = textsIn(root);
  return pick([
    pick(texts), pick(texts), pick(texts), '', 'line:', 'line:constructor', 'line:vertical-centre', 'line:diagonal-up', 'crossing:,', 'crossing:vertical-centre,horizontal-centre', 'etching:toString', 'end:a/b/c/start', 'end:corner-arcs/p1/a/stop',
    'tip:-1', 'tip:99', 'tip:x', 'point:1', 'point:NaN,NaN', 'point:1,2', 'window:', 'window:slot', 'centre', 'needle-line', 'all-round', 'constructor', value.slice(whole(0, value.length)), value + value,
  ]);
}

function holdersIn(value: Json): (Json[] | { [field: string]: Json })[] {
  if (typeof value !== 'object' || value === null) return [];
  const inside = Array.isArray(value) ? value : Object.values(value);
  return [value, ...inside.flatMap(holdersIn)];
}

function textsIn(value: Json): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return [...Object.keys(value), ...(Array.isArray(value) ? value : Object.values(value)).flatMap(textsIn)];
}
