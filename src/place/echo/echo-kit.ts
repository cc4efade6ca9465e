// Which template of a kit echoes a line best.

import type { Path } from '../../geometry/path.ts';
import { pathLength } from '../../geometry/measure.ts';
import type { Frame } from '../../geometry/point.ts';
import { EYE } from '../../num/tolerances.ts';
import { type ScoreTerm, scoreOf, total } from '../follow/score.ts';
import { type Candidate, type Echo, type EchoOptions, echo } from './echo.ts';

export interface KitEcho<F extends Frame> {
  readonly id: string;
  readonly echo: Echo<F>;
  /** The terms it is ranked by, less is better; empty where it follows no stretch worth a placement. */
  readonly score: readonly ScoreTerm[];
}

/** The echo of a line by each template, best first: least of the line left out, then least deviation; those that follow nothing come last. */
export function echoKit<F extends Frame>(line: Path<F>, kit: Readonly<Record<string, Candidate>>, options: EchoOptions<F> = {}): readonly KitEcho<F>[] {
  const length = pathLength(line);
  const rank = ({ score }: KitEcho<F>) => (score.length > 0 ? total(score) : Infinity);
  return Object.entries(kit)
    .map(([id, template]): KitEcho<F> => {
      const found = echo(line, template, { ...options, chain: false });
      const best = found.kind === 'whole' || found.kind === 'part' ? found.best : undefined;
      return { id, echo: found, score: best ? scoreOf(best, length, options.tolerance ?? EYE) : [] };
    })
    .sort((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)));
}
