// Ids for new things in a map of the plan.

import { RESERVED_NAMES } from '../model/reserved-names.ts';

/** The base itself when it is free in the map, otherwise with the first number behind it that is. The base must be fit for an id. */
export function freeId(taken: { readonly [id: string]: unknown }, base: string): string {
  const isFree = (id: string) => !Object.hasOwn(taken, id) && !(RESERVED_NAMES as readonly string[]).includes(id);
  if (isFree(base)) return base;
  let number = 2;
  while (!isFree(`${base}-${number}`)) number++;
  return `${base}-${number}`;
}

/** A name made fit for an id: small letters and digits with dashes between; `otherwise` when nothing is left of it. */
export function idFrom(name: string, otherwise: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  return plain === '' ? otherwise : plain;
}
