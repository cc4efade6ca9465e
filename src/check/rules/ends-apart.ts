// Ends that should meet and do not. An end that meets another end, or lands on another line, has what it wants. Of the
// others, each is held against the nearest end within the reach of what was meant to meet.

import { distanceToPath } from '../../geometry/nearest.ts';
import { type Point, distance, partWay } from '../../geometry/point.ts';
import { indexOf } from '../../geometry/segment-index.ts';
import { JOIN, MEANT_TO_MEET, SAME_POINT } from '../../num/tolerances.ts';
import { quiltPath } from '../../stitch/quilt-path.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding, placeOf } from '../report.ts';
import { endsOf, roughBounds } from '../stitched.ts';
import { areaName, soInPlaces, writtenBeside } from '../words.ts';

interface End {
  readonly line: StitchedLine;
  readonly which: 'start' | 'stop';
  readonly at: Point<'quilt'>;
}

interface Pair {
  readonly a: End;
  readonly b: End;
  readonly gap: number;
}

/**
 * One finding for each two ends of passes, in however many images, that lie more than JOIN and less than MEANT_TO_MEET
 * apart; measured is the widest gap, limit is JOIN.
 */
export function endsApart(input: CheckInput): readonly Finding[] {
  const { plan } = input;
  const ends = input.lines.flatMap((line): readonly End[] => {
    const both = endsOf(line);
    return both ? [{ line, which: 'start', at: both.start }, { line, which: 'stop', at: both.stop }] : [];
  });
  return groupsOf(pairsApart(input, ends)).map((group) => {
    const { a, b, gap } = group.reduce((x, y) => (y.gap > x.gap ? y : x));
    const lines = [...new Set(group.flatMap((pair) => [pair.a.line.id, pair.b.line.id]))];
    const { area, sheet, placement, pass } = a.line;
    const other = { sheet: b.line.sheet, placement: b.line.placement, pass: b.line.pass };
    const where = area === b.line.area ? `in ${areaName(input, area)}` : `of ${areaName(input, area)} and ${areaName(input, b.line.area)}`;
    const message = `Two ends ${where} do not meet. They are ${writtenBeside(plan, gap, JOIN)} apart.${soInPlaces(group.length)}`;
    return finding('ends-apart', message, { area, sheet, placement, pass, other, lines, at: placeOf(partWay(a.at, b.at, 0.5)) }, { measured: gap, limit: JOIN });
  });
}

/** Each end that meets nothing, with the nearest end it may have been meant to meet; each pair once. */
function pairsApart(input: CheckInput, ends: readonly End[]): readonly Pair[] {
  if (ends.length === 0) return [];
  const index = indexOf(ends.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })));
  const lands = landing(input);
  const pairs = new Map<number, Pair>();
  ends.forEach((end, i) => {
    const { x, y } = end.at;
    let nearest = -1;
    let gap = MEANT_TO_MEET - SAME_POINT;
    for (const j of index.search(x - MEANT_TO_MEET, y - MEANT_TO_MEET, x + MEANT_TO_MEET, y + MEANT_TO_MEET)) {
      const other = ends[j]!;
      const apart = distance(end.at, other.at);
      if (j === i || (other.line === end.line && end.line.length <= 2 * apart)) continue;
      if (apart <= JOIN + SAME_POINT) return;
      if (apart >= gap) continue;
      gap = apart;
      nearest = j;
    }
    if (nearest < 0 || lands(end)) return;
    const key = Math.min(i, nearest) * ends.length + Math.max(i, nearest);
    if (!pairs.has(key)) pairs.set(key, { a: ends[Math.min(i, nearest)]!, b: ends[Math.max(i, nearest)]!, gap });
  });
  return [...pairs.values()];
}

/** Tells whether an end lies on some line other than its own. */
function landing(input: CheckInput): (end: End) => boolean {
  let index: ReturnType<typeof indexOf> | undefined;
  return ({ line, at }) => {
    index ??= indexOf(input.lines.map(roughBounds));
    return index.search(at.x - JOIN, at.y - JOIN, at.x + JOIN, at.y + JOIN).some((i) => {
      const other = input.lines[i]!;
      return other !== line && distanceToPath(quiltPath(other), at) <= JOIN + SAME_POINT;
    });
  };
}

/** Pairs of the same two ends of passes, whatever image and area they are of. */
function groupsOf(pairs: readonly Pair[]): readonly (readonly Pair[])[] {
  const groups = new Map<string, Pair[]>();
  for (const pair of pairs) {
    const key = [pair.a, pair.b].map(({ line, which }) => `${line.sheet}\n${line.placement}\n${line.pass}\n${which}`).sort().join('\n\n');
    const group = groups.get(key);
    if (group) group.push(pair);
    else groups.set(key, [pair]);
  }
  return [...groups.values()];
}
