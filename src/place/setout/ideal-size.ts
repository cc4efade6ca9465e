// The size of a family's template that would suit a border best.
//
// The sizes that are lengths are tried larger and smaller together, and then each by itself; the best of a coarse row of tries is closed in on by
// halving, and the sizes are then brought to the nearest eighth, as templates are made.

import type { Family, SizeRule } from '../../model/kit/families.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { type BorderMeasure, type BorderResult, setOutBorder } from './set-out-border.ts';
import type { SetOutWish } from './wish.ts';

export interface IdealSize {
  readonly sizes: { readonly [size: string]: number };
  readonly best: BorderResult;
}

type Sizes = { readonly [size: string]: number };

/** The best sizes found, to the nearest eighth of an inch, starting from those given (the usual ones where none are); undefined when the family does nothing for this border at any size. */
export function idealSize(family: Family, sizes: Sizes, footDiameter: number, border: BorderMeasure, wish: SetOutWish): IdealSize | undefined {
  const usual: Sizes = { ...Object.fromEntries(family.sizes.map(({ id, usual: size }) => [id, size])), ...sizes };
  const lengths = family.sizes.filter(({ unit }) => unit === 'in');
  const tried = new Map<string, IdealSize | undefined>();
  const at = (these: Sizes): IdealSize | undefined => {
    const key = JSON.stringify(these);
    if (!tried.has(key)) tried.set(key, trySizes(family, these, footDiameter, border, wish));
    return tried.get(key);
  };
  let best = better(at(usual), undefined);
  const from = () => best?.sizes ?? usual;
  best = closeIn(best, COARSE, (times) => at(scaled(family.sizes, from(), lengths.map(({ id }) => id), times)));
  for (const { id } of lengths) best = closeIn(best, COARSE, (times) => at(scaled(family.sizes, from(), [id], times)));
  return best;
}

const COARSE: readonly number[] = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5];
const CLOSER: readonly number[] = [0.94, 0.97, 1.03, 1.06];

/** The best of the steps and, about it, of ever smaller ones. */
function closeIn(before: IdealSize | undefined, steps: readonly number[], at: (times: number) => IdealSize | undefined): IdealSize | undefined {
  const tries = steps.map((times) => ({ times, found: at(times) }));
  let best = before;
  let centre = 1;
  for (const { times, found } of tries) {
    if (better(found, best) !== best) {
      best = found;
      centre = times;
    }
  }
  for (const closer of CLOSER) best = better(at(centre * closer), best);
  return best;
}

function trySizes(family: Family, sizes: Sizes, footDiameter: number, border: BorderMeasure, wish: SetOutWish): IdealSize | undefined {
  const shape = family.draw(sizes);
  if (!shape.ok) return undefined;
  const setOut = setOutBorder(border, { shape: shape.value, needle: needleLines(shape.value, footDiameter) }, wish);
  const best = setOut.kind === 'set-out' ? setOut.results[0] : undefined;
  return best && { sizes, best };
}

/** The sizes times a factor, those that are lengths to the nearest eighth, all within their limits; a corner keeps its rounding. */
function scaled(rules: readonly SizeRule[], sizes: Sizes, ids: readonly string[], times: number): Sizes {
  return Object.fromEntries(
    rules.map(({ id, least, most }) => {
      const size = sizes[id]!;
      if (!ids.includes(id) || id === 'corner') return [id, size];
      return [id, Math.min(most, Math.max(least, Math.round(size * times * 8) / 8))];
    }),
  );
}

function better(a: IdealSize | undefined, b: IdealSize | undefined): IdealSize | undefined {
  if (!a || !b) return a ?? b;
  const fits = Number(a.best.fits) - Number(b.best.fits);
  return fits > 0 || (fits === 0 && a.best.score < b.best.score) ? a : b;
}
