// What `echo` and `match` share: the line they are given, and a placement that follows it as documented JSON and in words.

import type { Path } from '../geometry/path.ts';
import { pathLength } from '../geometry/measure.ts';
import { carryPath, reversedPath, stretchOfPath } from '../geometry/change.ts';
import { after, poseOf } from '../geometry/pose.ts';
import type { Vec } from '../geometry/point.ts';
import { readPathData } from '../geometry/svg/read.ts';
import { writePathData } from '../geometry/svg/write.ts';
import type { NeedleLines } from '../needle/needle-line.ts';
import { toDegrees } from '../num/angle.ts';
import { readLength } from '../num/inches.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import type { Chain } from '../place/follow/chain.ts';
import type { Following } from '../place/follow/following.ts';
import type { ScoreTerm } from '../place/follow/score.ts';

/** The one run a `--line` draws, in inches, or what to say about it. */
export function lineOf(data: string): Outcome<Path<'quilt'>, string> {
  const paths = readPathData<'quilt'>(data);
  if (!paths.ok) return fail(`The line could not be read: ${paths.problem.message}`);
  const [line, ...more] = paths.value;
  if (!line || more.length > 0) return fail(`The line is to be one run without a break; this one has ${paths.value.length}.`);
  return pathLength(line) > LONGEST_LINE ? fail(`A line is at most ${LONGEST_LINE} in long; this one is ${pathLength(line).toFixed(1)} in.`) : ok(line);
}

/** Longer than round any quilt; beyond it the places looked at lie too far apart. */
const LONGEST_LINE = 600;

/** A length of 0 or more, or what to say about it. */
export function lengthNamed(name: string, text: string): Outcome<number, string> {
  const read = readLength(text);
  if (!read.ok) return fail(`The ${name} could not be understood. ${read.problem.message}`);
  return read.value < 0 ? fail(`The ${name} is to be 0 or more; this one is ${text}.`) : ok(read.value);
}

/** The documented JSON of a placement that follows a line; `needle` are the needle lines of its template. */
export function followingJson(following: Following<'quilt'>, needle: NeedleLines, needleOffset: Vec<'quilt'>, score: readonly ScoreTerm[]) {
  const { pose, pass, side, from, to, deviation, freedom } = following;
  const room = freedom.kind === 'none' ? undefined : freedom.room.map((inches) => (Number.isFinite(inches) ? inches : null));
  return {
    pose: { x: pose.x, y: pose.y, angle: toDegrees(pose.angle), flipped: pose.flipped },
    pass,
    d: sewnData(following, needle, needleOffset),
    side,
    from,
    to,
    deviation: {
      greatest: deviation.greatest,
      at: deviation.at,
      typical: deviation.typical,
      alongTemplate: deviation.alongTemplate,
      samples: deviation.samples.map(({ along, deviation: off }): [number, number] => [along, off]),
    },
    freedom:
      freedom.kind === 'none'
        ? { kind: 'none' as const }
        : freedom.kind === 'turn'
          ? { kind: 'turn' as const, about: [freedom.about.x, freedom.about.y], room }
          : { kind: 'slide' as const, along: [freedom.along.x, freedom.along.y], room },
    score: Object.fromEntries(score.map(({ name, value }) => [name, value])),
  };
}

/** The documented JSON of a chain of placements, each made by `each`. */
export function chainJson<Told>(chain: Chain<'quilt'>, each: (following: Following<'quilt'>) => Told) {
  return {
    placements: chain.placements.map(each),
    gaps: chain.gaps.map((gap) => (Number.isFinite(gap) ? gap : null)),
    missed: chain.missed,
    greatest: chain.greatest,
  };
}

/** The line that is sewn, where the line that was given is. */
function sewnData({ pose, pass }: Following<'quilt'>, needle: NeedleLines, needleOffset: Vec<'quilt'>): string {
  const line = needle.lines.find(({ from, loop }) => from === pass.edge && loop === pass.loop)!;
  const low = pass.stop === 'all-round' || pass.way === 'clockwise' ? pass.start : pass.stop;
  const clockwise = stretchOfPath(line.path, low, low + pass.length);
  const laid = after(pose, poseOf<'quilt', 'quilt'>(needleOffset.x, needleOffset.y));
  return writePathData(carryPath(laid, pass.way === 'clockwise' ? clockwise : reversedPath(clockwise)));
}

/** How a placement lies and how near it keeps, in one line. */
export function followingInWords(following: Following<'quilt'>, length: (inches: number) => string): string {
  const { pose, from, to, deviation, freedom } = following;
  const face = pose.flipped ? 'face down' : 'etched face up';
  const free = freedom.kind === 'turn' ? '; the edge is round there, so the template may turn about its middle' : freedom.kind === 'slide' ? '; the edge is straight there, so the template may slide along it' : '';
  return `${face} at ${length(pose.x)}, ${length(pose.y)}, turned ${toDegrees(pose.angle).toFixed(1)} degrees: from ${length(from)} to ${length(to)} along the line, off by at most ${off(deviation.greatest)} (at ${length(deviation.at)})${free}`;
}

/** A deviation is told to the thousandth: fractions would hide what is asked. */
export function off(inches: number): string {
  return `${inches.toFixed(3)} in`;
}
