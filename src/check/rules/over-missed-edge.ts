// Where the foot does not fit the edge it touches two places at once, and the needle line turns sharply there, leaving
// out the edge between. A pass should not run over such a place unawares.

import { pointAlong } from '../../geometry/measure.ts';
import { type Point, moved } from '../../geometry/point.ts';
import { carry } from '../../geometry/pose.ts';
import type { NeedleLine, NeedleLines } from '../../needle/needle-line.ts';
import { SAME_POINT, TOUCHED } from '../../num/tolerances.ts';
import type { LaidPass } from '../../stitch/laid-placement.ts';
import type { StitchedLine } from '../../stitch/stitched-line.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding, placeOf } from '../report.ts';
import { chosenPlacements, linesOfImage } from '../stitched.ts';
import { soInPlaces, templateName, written } from '../words.ts';

/** One finding for each pass that runs over places where edge is missed; measured is the most edge missed at one of them. */
export function overMissedEdge(input: CheckInput): readonly Finding[] {
  const { plan } = input;
  const found = new Map<string, Found>();
  for (const laid of chosenPlacements(input)) {
    for (const pass of laid.passes) {
      const needleLine = pass.kind === 'found' ? laid.needle.lines[pass.needleLine] : undefined;
      if (pass.kind === 'missing' || !needleLine) continue;
      const sharp = sharpTurns(needleLine, laid.needle).filter((turn) => runsOver(pass, turn.along, needleLine));
      const worst = sharp.reduce<SharpTurn | undefined>((a, b) => (a && a.missed >= b.missed ? a : b), undefined);
      const lines = worst ? laid.images.flatMap((_, image) => linesOfImage(input, laid, pass.pass, image)) : [];
      const first = lines[0];
      if (!worst || !first) continue;
      const key = `${laid.sheet}\n${laid.placement}\n${pass.pass}`;
      const before = found.get(key);
      const at = moved(carry(first.to, carry(laid.pose, pointAlong(needleLine.path, worst.along).point)), first.needleOffset);
      const one = before && before.missed >= worst.missed ? before : { first, missed: worst.missed, at };
      found.set(key, { ...one, places: (before?.places ?? 0) + lines.length * sharp.length, lines: [...(before?.lines ?? []), ...lines.map(({ id }) => id)] });
    }
  }
  return [...found.values()].map(({ first, missed, at, places, lines }) => {
    const { area, sheet, placement, pass } = first;
    const message = `The foot misses ${written(plan, missed)} of the edge of ${templateName(plan, sheet, placement)}, and the needle line turns sharply there.${soInPlaces(places)}`;
    return finding('over-missed-edge', message, { area, sheet, placement, pass, lines, at: placeOf(at) }, { measured: missed, limit: 0 });
  });
}

/** What was found of one pass on all shapes of area, the place with the most missed first. */
interface Found {
  readonly first: StitchedLine;
  readonly missed: number;
  readonly at: Point<'quilt'>;
  readonly places: number;
  readonly lines: readonly string[];
}

interface SharpTurn {
  /** Inches along the needle line. */
  readonly along: number;
  /** Inches of edge missed between the two places the foot touches there. */
  readonly missed: number;
}

/** Places on a needle line where the foot touches the edge twice with missed edge between. */
function sharpTurns(line: NeedleLine, needle: NeedleLines): readonly SharpTurn[] {
  const { contacts } = line;
  const missed = needle.missed.filter((stretch) => stretch.from === line.from);
  if (missed.length === 0) return [];
  return contacts.flatMap((contact, i) => {
    const next = contacts[(i + 1) % contacts.length]!;
    if (i === contacts.length - 1 && !line.path.closed) return [];
    if (Math.abs(contact.edgeEnd - next.edgeStart) <= TOUCHED) return [];
    const between = missed.filter((stretch) => liesBetween(stretch, contact.edgeEnd, next.edgeStart));
    const length = between.reduce((sum, stretch) => sum + stretch.length, 0);
    return length > TOUCHED ? [{ along: contact.end, missed: length }] : [];
  });
}

/** Whether a stretch of edge lies between two places on it, going on from the first; over the edge's start when the second is the lesser. */
function liesBetween(stretch: { readonly start: number; readonly end: number }, from: number, to: number): boolean {
  const afterFrom = stretch.start >= from - TOUCHED;
  const beforeTo = stretch.end <= to + TOUCHED;
  if (from <= to) return afterFrom && beforeTo && stretch.start <= stretch.end;
  return stretch.start <= stretch.end ? afterFrom || beforeTo : afterFrom && beforeTo;
}

/** Whether a pass goes on beyond a place on its needle line on both sides of it. */
function runsOver(pass: Extract<LaidPass, { kind: 'found' }>, along: number, line: NeedleLine): boolean {
  const first = pass.way === 'clockwise' ? pass.start : pass.stop;
  if (!line.path.closed) {
    const [low, high] = [Math.min(pass.start, pass.stop), Math.max(pass.start, pass.stop)];
    return along > low + SAME_POINT && along < high - SAME_POINT;
  }
  const wrapped = (((along - first) % line.length) + line.length) % line.length;
  const all = pass.length >= line.length - SAME_POINT;
  // All round there is no end to stop at; but a pass may begin and end at the sharp place.
  if (all) return wrapped > SAME_POINT && wrapped < line.length - SAME_POINT;
  return wrapped > SAME_POINT && wrapped < pass.length - SAME_POINT;
}
