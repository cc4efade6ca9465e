// Numbered places, of which some turn out to be the same one: a union-find forest (R. E. Tarjan, "Efficiency of a good but
// not linear set union algorithm", Journal of the ACM 22, 1975).

export interface Places {
  /** A new place, on its own; its number. */
  readonly add: () => number;
  /** Makes two places one. */
  readonly join: (a: number, b: number) => void;
  /** The number that stands for a place and all that are one with it. */
  readonly find: (a: number) => number;
}

export function makePlaces(): Places {
  const parents: number[] = [];
  const find = (a: number): number => {
    while (parents[a]! !== a) a = parents[a] = parents[parents[a]!]!;
    return a;
  };
  return {
    add: () => parents.push(parents.length) - 1,
    join: (a, b) => {
      parents[find(b)] = find(a);
    },
    find,
  };
}
