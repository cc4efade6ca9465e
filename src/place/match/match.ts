// Matching a line: which templates, in which poses, sew it in few placements within a tolerance. The same search as an echo, at no distance.

import type { Path } from '../../geometry/path.ts';
import type { Frame } from '../../geometry/point.ts';
import { EYE } from '../../num/tolerances.ts';
import { type Candidate, type EchoOptions, SHORTEST_STRETCH, quarrelWith, railsOf, wantedLines } from '../echo/echo.ts';
import { type KitEcho, echoKit } from '../echo/echo-kit.ts';
import { type Chain, chainAlong } from '../follow/chain.ts';

export type MatchOptions<F extends Frame> = Pick<EchoOptions<F>, 'tolerance' | 'needleOffset' | 'least'> & {
  /** No more placements than this. */
  readonly most?: number;
  /** Whether to say how far each template alone follows. */
  readonly alone?: boolean;
};

export type Match<F extends Frame> =
  /** The whole line is sewn by these placements, one after the other; a placement's `template` counts `ids`. */
  | { readonly kind: 'whole'; readonly ids: readonly string[]; readonly chain: Chain<F>; readonly alone: readonly KitEcho<F>[] }
  /** Stretches of it are; `chain.missed` are not. */
  | { readonly kind: 'part'; readonly ids: readonly string[]; readonly chain: Chain<F>; readonly alone: readonly KitEcho<F>[] }
  | { readonly kind: 'none'; readonly ids: readonly string[]; readonly alone: readonly KitEcho<F>[] }
  | { readonly kind: 'unusable'; readonly detail: string };

/** The match of a line (inches, any frame) by the templates of a kit. */
export function match<F extends Frame>(line: Path<F>, kit: Readonly<Record<string, Candidate>>, options: MatchOptions<F> = {}): Match<F> {
  const { tolerance = EYE, needleOffset = { x: 0, y: 0 }, least = SHORTEST_STRETCH, most } = options;
  const asked: EchoOptions<F> = { distance: 0, tolerance, needleOffset, least };
  const unusable = quarrelWith(line, asked);
  if (unusable !== undefined) return { kind: 'unusable', detail: unusable };
  const ids = Object.keys(kit);
  const candidates = Object.values(kit);
  const alone = options.alone ? echoKit(line, kit, asked) : [];
  const chain = chainAlong(wantedLines(line, asked), railsOf(candidates), candidates.map(({ needle }) => needle), { tolerance, needleOffset, least, ...(most !== undefined && { most }) });
  if (!chain) return { kind: 'none', ids, alone };
  return { kind: chain.missed.length === 0 ? 'whole' : 'part', ids, chain, alone };
}
