// Which of the templates at hand makes this border: each set out on all four sides, the best first.

import { type BorderMeasure, type BorderResult, type BorderSetOut, setOutBorder } from './set-out-border.ts';
import type { Ruler, SetOutWish } from './wish.ts';

/** A template of the kit with the foot it would be used with. */
export interface KitRuler {
  readonly id: string;
  readonly ruler: Ruler;
}

export interface KitResult {
  readonly template: string;
  readonly best: BorderResult;
  readonly all: readonly BorderResult[];
}

export interface KitSetOut {
  /** The best of each template that works, the best first. */
  readonly results: readonly KitResult[];
  /** Templates with which nothing works. */
  readonly impossible: readonly { readonly template: string; readonly setOut: Extract<BorderSetOut, { kind: 'impossible' }> }[];
}

/** Every template tried on a border; those that keep the clearances come first, then by score. */
export function setOutKit(kit: readonly KitRuler[], border: BorderMeasure, wish: SetOutWish): KitSetOut {
  const results: KitResult[] = [];
  const impossible: { template: string; setOut: Extract<BorderSetOut, { kind: 'impossible' }> }[] = [];
  for (const { id, ruler } of kit) {
    const setOut = setOutBorder(border, ruler, wish);
    const best = setOut.kind === 'set-out' ? setOut.results[0] : undefined;
    if (setOut.kind === 'impossible') impossible.push({ template: id, setOut });
    else if (best) results.push({ template: id, best, all: setOut.results });
  }
  return { results: results.sort((a, b) => Number(b.best.fits) - Number(a.best.fits) || a.best.score - b.best.score), impossible };
}
