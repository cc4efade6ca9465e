// Which size of a family would close a ring at a given distance from the centre.
//
// All sizes that are lengths are made larger or smaller together (a corner keeps its rounding) until the best ring just touches; the distance
// between neighbours shrinks as the template grows, and where it passes nought is closed in on by halving. Templates are made in eighths, so the
// nearest such size is told too, with how far it misses.

import type { Family } from '../../model/kit/families.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import type { PlaceSetting } from '../place.ts';
import { type MedallionRule, medallion } from './medallion.ts';
import type { Ring } from './ring.ts';

export interface SizeThatCloses {
  /** Exact, and to the nearest eighth of an inch; inches, degrees and counts by size id. */
  readonly sizes: Sizes;
  readonly made: Sizes;
  /** Between neighbours with the size as it is made, in inches: more than 0 a gap, less than 0 an overlap. */
  readonly apart: number;
}

type Sizes = { readonly [size: string]: number };

const TRIED: readonly number[] = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5];
const HALVINGS = 40;

/** The size nearest to the one given whose neighbours just touch, for a rule with its distance; undefined when none within the family's limits does. */
export function sizeThatCloses(family: Family, sizes: Sizes, footDiameter: number, rule: MedallionRule & { readonly from: number }, around: Pick<PlaceSetting, 'lines' | 'stitched' | 'needleOffset'>): SizeThatCloses | undefined {
  const usual: Sizes = { ...Object.fromEntries(family.sizes.map(({ id, usual: size }) => [id, size])), ...sizes };
  const grown = (times: number, eighths: boolean): Sizes =>
    Object.fromEntries(
      family.sizes.map(({ id, unit, least, most }) => {
        const size = usual[id]!;
        if (unit !== 'in' || id === 'corner') return [id, size];
        const exact = size * times;
        return [id, Math.min(most, Math.max(least, eighths ? Math.round(exact * 8) / 8 : exact))];
      }),
    );
  const apartAt = (these: Sizes): number | undefined => bestOf(family, these, footDiameter, rule, around)?.apart;
  const tries = TRIED.map((times) => ({ times, apart: apartAt(grown(times, false)) }));
  const changes = tries.slice(1).flatMap(({ times, apart }, i) => {
    const before = tries[i]!;
    return apart !== undefined && before.apart !== undefined && before.apart > 0 !== apart > 0 ? [[before.times, times] as const] : [];
  });
  const nearest = [...changes].sort((a, b) => Math.abs(Math.log(a[0])) - Math.abs(Math.log(b[0])))[0];
  if (!nearest) return undefined;
  let [low, high] = nearest;
  const isApart = (apartAt(grown(low, false)) ?? 0) > 0;
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2;
    if ((apartAt(grown(middle, false)) ?? 0) > 0 === isApart) low = middle;
    else high = middle;
  }
  const made = grown(high, true);
  const apart = apartAt(made);
  return apart === undefined ? undefined : { sizes: grown(high, false), made, apart };
}

function bestOf(family: Family, sizes: Sizes, footDiameter: number, rule: MedallionRule, around: Pick<PlaceSetting, 'lines' | 'stitched' | 'needleOffset'>): Ring | undefined {
  const shape = family.draw(sizes);
  if (!shape.ok) return undefined;
  const rings = medallion(rule, { ...around, shape: shape.value, needle: needleLines(shape.value, footDiameter) });
  return rings.ok ? rings.value[0] : undefined;
}
