// Path data of SVG, the open standard outlines are kept in, read into line-arc paths.
// Source: SVG 2 (W3C), 9.3 "Path data". The grammar, relative commands and smooth shorthands are the work of the library `svgpath`; what it lets
// through (numbers without digits, numbers beyond all measure, its own spline command) is refused here. Unlike a screen, which draws what comes before an
// error, a plan must not be cut short in silence: data with an error is refused whole.

import svgpath from 'svgpath';
import { fromDegrees } from '../../num/angle.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import { FIT } from '../../num/tolerances.ts';
import { fitCubic, fitQuadratic } from '../fit/bezier.ts';
import { type Path, type Vertex, straight } from '../path.ts';
import type { Frame, Point } from '../point.ts';
import { withoutEmptyStretches } from '../tidy.ts';
import { endpointArc } from './endpoint-arc.ts';

export interface PathDataProblem {
  readonly message: string;
  /** The character at which reading stopped, counted from 0. */
  readonly at?: number;
}

/** No template or top is measured in more inches than this; larger numbers would cost the others their digits. */
const BEYOND_MEASURE = 1e6;

/**
 * The paths that path data draws, one for each subpath, in the units of the data taken as inches. Lines and circular arcs come as they are,
 * curves and other elliptical arcs as arcs within `fit` inches. Z gives a closed path. Stretches of no length, and subpaths that draw nothing, are left
 * out; data with an error, or that draws nothing at all, comes back as a problem.
 */
export function readPathData<F extends Frame>(d: string, fit: number = FIT): Outcome<readonly Path<F>[], PathDataProblem> {
  const unreadable = textProblem(d);
  if (unreadable) return fail(unreadable);
  const parsed = svgpath(d) as unknown as ParsedData;
  if (parsed.err !== '') return fail(libraryProblem(d, parsed.err));
  const spline = parsed.segments.some(([command]) => command === 'R' || command === 'r') ? d.search(/r/i) : -1;
  if (spline >= 0) return fail(problemAt(d, spline, 'R is not a command of path data'));
  const segments = parsed.abs().unshort().segments;
  if (segments.some(isBeyondMeasure)) {
    return fail({ message: `The path data has a number beyond ${BEYOND_MEASURE}.` });
  }
  const paths = subpathsOf<F>(segments, fit).map(withoutEmptyStretches).filter((path) => path.vertices.length > 1);
  return paths.length === 0 ? fail({ message: 'The path data draws nothing.' }) : ok(paths);
}

/** What svgpath holds beside what its type declares. */
interface ParsedData {
  readonly err: string;
  readonly segments: readonly (readonly [string, ...(number | string)[]])[];
  abs(): ParsedData;
  unshort(): ParsedData;
}

/** A nearly straight circular arc has a radius far beyond the things drawn, so its radius is measured with another yard. */
function isBeyondMeasure([command, ...raw]: ParsedData['segments'][number]): boolean {
  const n = raw.map(Number);
  const isCircular = command === 'A' && n[0] === n[1];
  return n.some((value, i) => !(Math.abs(value) <= (isCircular && i < 2 ? BEYOND_MEASURE ** 2 : BEYOND_MEASURE)));
}

function subpathsOf<F extends Frame>(segments: ParsedData['segments'], fit: number): readonly Path<F>[] {
  const paths: Path<F>[] = [];
  let vertices: Vertex[] = [];
  let start: Point<F> = { x: 0, y: 0 };
  let at = start;
  const begin = (p: Point<F>) => {
    paths.push({ closed: false, vertices });
    vertices = [{ ...p, bulge: 0 }];
    start = at = p;
  };
  const draw = (path: Path<F>, to: Point<F>) => {
    vertices.splice(-1, 1, ...path.vertices);
    at = to;
  };
  for (const [command, ...raw] of segments) {
    const n = raw.map(Number);
    const pair = (i: number): Point<F> => ({ x: n[i]!, y: n[i + 1]! });
    switch (command) {
      case 'M': begin(pair(0)); break;
      case 'L': draw(straight(at, pair(0)), pair(0)); break;
      case 'H': draw(straight(at, { x: n[0]!, y: at.y }), { x: n[0]!, y: at.y }); break;
      case 'V': draw(straight(at, { x: at.x, y: n[0]! }), { x: at.x, y: n[0]! }); break;
      case 'C': draw(fitCubic(at, pair(0), pair(2), pair(4), fit), pair(4)); break;
      case 'Q': draw(fitQuadratic(at, pair(0), pair(2), fit), pair(2)); break;
      case 'A': {
        const [rx, ry, degrees, large, sweep] = n as [number, number, number, number, number];
        draw(endpointArc({ from: at, rx, ry, tilt: fromDegrees(degrees), large: large !== 0, clockwise: sweep !== 0, to: pair(5) }, fit), pair(5));
        break;
      }
      case 'Z': {
        paths.push({ closed: true, vertices });
        // What follows without an M starts where this subpath did.
        vertices = [{ ...start, bulge: 0 }];
        at = start;
        break;
      }
    }
  }
  paths.push({ closed: false, vertices });
  return paths;
}

/** What can be told from the text alone. */
function textProblem(d: string): PathDataProblem | undefined {
  if (d.trim() === '') return { message: 'The path data is empty.' };
  const lonePoint = d.search(/(?<!\d)\.(?!\d)/);
  return lonePoint < 0 ? undefined : problemAt(d, lonePoint, 'there is a decimal point without a digit');
}

const IN_PLAIN_WORDS: readonly (readonly [RegExp, string])[] = [
  [/arc flag/, 'the flag of an arc must be 0 or 1'],
  [/missed param/, 'a number is missing at the end'],
  [/param should start/, 'a number was expected'],
  [/numbers started with/, 'a number starts with a 0 it does not need'],
  [/exponent/, 'the exponent of a number is incomplete'],
  [/bad command/, 'a command was expected (one of M L H V C S Q T A Z)'],
  [/start with `M`/, 'path data starts with M'],
];

function libraryProblem(d: string, err: string): PathDataProblem {
  const at = Number(/at pos (\d+)/.exec(err)?.[1] ?? d.search(/\S/));
  return problemAt(d, at, IN_PLAIN_WORDS.find(([pattern]) => pattern.test(err))?.[1] ?? 'it is not path data');
}

function problemAt(d: string, at: number, what: string): PathDataProblem {
  const near = d.slice(Math.max(0, at - 12), at + 12).replace(/\s+/g, ' ').trim();
  return { message: `The path data cannot be read at character ${at + 1}, near “${near}”: ${what}.`, at };
}
