// A first look at many stretches, needle lines, faces and ways: the most promising starts, then settled.

import type { Frame } from '../../geometry/point.ts';
import { type EndsOf, type Rail, type Seating, follows, looseEnds, seated } from './seating.ts';
import type { SettleOptions } from './settle.ts';
import { type Start, type Stretch, startsFor } from './starts.ts';
import { type WantedLine, placesBetween } from './wanted-line.ts';

interface Found<F extends Frame> {
  readonly line: WantedLine<F>;
  readonly rail: Rail;
  readonly start: Start;
}

export interface LookOptions extends SettleOptions {
  /** By how many places a stretch is looked at, and settled. */
  readonly looked: number;
  readonly settled: number;
  readonly ends?: EndsOf;
  /** How many starts to settle at most, the nearest of the first look. */
  readonly most: number;
  /** Starts no farther apart than this, in inches, are equally good, and are taken from here and there among them. */
  readonly alike?: number;
  /** Starts with a place farther than this from where it should lie, in inches, are not worth settling. */
  readonly apart?: number;
}

/**
 * Seatings of any of the rails along any of the stretches, settled one after the other as they are asked for, those that fitted best at a first look
 * before others. With no limit to how far apart, the best start of every line, rail and way is among them.
 */
export function* look<F extends Frame>(lines: readonly WantedLine<F>[], stretches: readonly Stretch[], rails: readonly Rail[], options: LookOptions): Generator<Seating<F>> {
  const found: Found<F>[] = [];
  const best = new Set<Found<F>>();
  for (const line of lines) {
    const shown = stretches.map((stretch) => ({ stretch, places: placesBetween(line, stretch.from, stretch.to, options.looked) }));
    for (const rail of rails) {
      for (const way of [1, -1] as const) {
        let nearest: Found<F> | undefined;
        for (const { stretch, places } of shown) {
          for (const start of startsFor(line, stretch, places, rail.track, way, options.apart)) {
            const one = { line, rail, start };
            found.push(one);
            if (!nearest || start.apart < nearest.start.apart) nearest = one;
          }
        }
        if (nearest && options.apart === undefined) best.add(nearest);
      }
    }
  }
  const alike = options.alike ?? 0;
  const rank = new Map(found.map((one, i) => [one, { apart: Math.max(alike, one.start.apart), order: (i * GOLDEN) % 1 }]));
  found.sort((a, b) => rank.get(a)!.apart - rank.get(b)!.apart || rank.get(a)!.order - rank.get(b)!.order);
  for (const { line, rail, start } of new Set([...found.slice(0, options.most), ...best])) {
    yield seated(line, rail, start, options.ends ?? looseEnds, options.settled, options);
  }
}

/** Steps of the golden section go everywhere evenly. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The first so many seatings that follow their stretch, also at a closer look. */
export function firstThatFollow<F extends Frame>(seatings: Iterable<Seating<F>>, tolerance: number, many: number, closer: (seating: Seating<F>) => Seating<F> | undefined): readonly Seating<F>[] {
  const found: Seating<F>[] = [];
  for (const seating of seatings) {
    const looked = follows(seating, tolerance) ? closer(seating) : undefined;
    if (looked) found.push(looked);
    if (found.length >= many) break;
  }
  return found;
}
