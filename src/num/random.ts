// Seeded random numbers, so that the same seed always tells the same story.
// Maths: sfc32 by Chris Doty-Humphrey (PractRand), public domain; the seed is spread by splitmix32.

export type Random = {
  /** The next number in [0, 1). */
  readonly next: () => number;
  /** The next number in [low, high). */
  readonly between: (low: number, high: number) => number;
  /** The next whole number in [low, high], both included. */
  readonly whole: (low: number, high: number) => number;
  /** One of the items; the list must not be empty. */
  readonly pick: <Item>(items: readonly Item[]) => Item;
};

/** A stream of random numbers that is the same for the same whole-number seed. */
export function random(seed: number): Random {
  const state = spread(seed);
  const next = () => sfc32(state) / 4294967296;
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    whole: (low, high) => low + Math.floor((high - low + 1) * next()),
    pick: (items) => items[Math.floor(next() * items.length)]!,
  };
}

function spread(seed: number): Uint32Array {
  const state = new Uint32Array(4);
  let mixed = seed | 0;
  for (let i = 0; i < 4; i++) {
    mixed = (mixed + 0x9e3779b9) | 0;
    let t = mixed ^ (mixed >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    state[i] = t ^ (t >>> 15);
  }
  for (let i = 0; i < 12; i++) sfc32(state);
  return state;
}

function sfc32(state: Uint32Array): number {
  const [a, b, c, d] = state as unknown as [number, number, number, number];
  const sum = (((a + b) | 0) + d) | 0;
  state[3] = d + 1;
  state[0] = b ^ (b >>> 9);
  state[1] = c + (c << 3);
  state[2] = ((c << 21) | (c >>> 11)) + sum;
  return sum >>> 0;
}
