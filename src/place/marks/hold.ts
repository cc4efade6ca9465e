// Everything by which a laying could be held: what of the template lies on what of the top, etched already or to be drawn.
// Trade facts are common practice: a line is drawn across the face from edge to edge, a tick at the edge, a dot on the face; tips and
// etchings need no drawing; the needle is let down on a place and the template brought against the foot.

import { JOIN, SAME_MARK } from '../../num/tolerances.ts';
import { carryPath } from '../../geometry/change.ts';
import { whereIs } from '../../geometry/inside.ts';
import { meetPaths } from '../../geometry/meet-paths.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, endOf, segmentsOf, startOf, straight } from '../../geometry/path.ts';
import { type Point, distance, partWay } from '../../geometry/point.ts';
import { carry, inverse } from '../../geometry/pose.ts';
import type { EtchedShape, TemplateShape } from '../../model/kit/shape.ts';
import type { NeedleLine } from '../../needle/needle-line.ts';
import type { Feature } from '../feature.ts';
import { landmarks } from '../landmarks.ts';
import type { Requirement } from '../requirement.ts';
import { lineTarget } from '../target.ts';
import { tipsOf } from '../tips.ts';
import { placesAlong } from '../wander/wander.ts';
import { type Laying, type Rule, areParallel, liesOn, rulesOf } from './laying.ts';

/** A mark that could be drawn on a template. */
export type DrawnMark =
  /** A tick at the edge or a dot on the face. */
  | { readonly kind: 'tick' | 'dot'; readonly at: Point<'template'> }
  /** A straight line across the face, from edge to edge; in pieces where the face is not whole between them. */
  | { readonly kind: 'line'; readonly from: Point<'template'>; readonly to: Point<'template'>; readonly pieces: readonly Path<'template'>[] };

/** A dot that could be drawn on the top, in the axes of the laying. */
export interface TopDot {
  readonly at: Point<'area'>;
  /** What is put on it: a mark of the template, or the needle. */
  readonly under: 'mark' | 'needle';
}

/** A place where reference lines cross. */
export interface Crossing {
  /** As a registration's `on`. */
  readonly on: string;
  readonly at: Point<'area'>;
  /** Every rule that goes through it. */
  readonly through: readonly Rule[];
}

export type HeldBy =
  | { readonly kind: 'etched'; readonly put: string; readonly name: string }
  | { readonly kind: 'drawn'; readonly mark: DrawnMark }
  | { readonly kind: 'needle'; readonly put: string };

export type HeldOn =
  | { readonly kind: 'line'; readonly rule: Rule }
  | { readonly kind: 'crossing'; readonly crossing: Crossing }
  | { readonly kind: 'dot'; readonly dot: TopDot };

/** One thing of the template on one thing of the top. */
export interface Hold {
  readonly by: HeldBy;
  readonly on: HeldOn;
  readonly requirement: Requirement;
  /** How far the mark lies from where it should, in inches, where something near enough serves. */
  readonly misfit: number;
}

/** What holds a laying without drawing anything on the template or dots on the top. */
export function holdsThere(laying: Laying, shape: TemplateShape): readonly Hold[] {
  const rules = rulesOf(laying);
  const crossings = crossingsOf(laying, rules);
  return [
    ...etchedPoints(shape).flatMap((etched) => pointHolds(laying, etched.feature, { kind: 'etched', put: etched.put, name: etched.feature.name }, rules, crossings)),
    ...etchedLines(shape).flatMap((etched) => lineHolds(laying, etched.feature, { kind: 'etched', put: etched.put, name: etched.feature.name }, rules)),
    ...needleHolds(laying, crossings),
  ];
}

/** The marks that could be drawn for a laying: where its reference lines cross the edge, cross the face, and cross each other on it. */
export function marksFor(laying: Laying, shape: TemplateShape): readonly DrawnMark[] {
  const rules = rulesOf(laying);
  const back = inverse(laying.pose);
  const across = rules.flatMap((rule) => marksAlong(carryPath(back, rule.path), shape));
  const dots = crossingsOf(laying, rules)
    .map(({ at }) => carry(back, at))
    .filter((at) => onFace(shape, at))
    .map((at): DrawnMark => ({ kind: 'dot', at }));
  const there = etchedPoints(shape).map(({ feature }) => feature.at);
  return [...across, ...dots].filter((mark) => mark.kind === 'line' || !there.some((at) => distance(at, mark.at) <= SAME_MARK));
}

/** How a mark holds a laying; a mark made for another may serve by chance. */
export function holdsBy(mark: DrawnMark, laying: Laying): readonly Hold[] {
  const rules = rulesOf(laying);
  const by: HeldBy = { kind: 'drawn', mark };
  if (mark.kind === 'line') return lineHolds(laying, lineFeature(mark.from, mark.to, 'line'), by, rules);
  return pointHolds(laying, { kind: 'point', at: mark.at, name: 'mark' }, by, rules, crossingsOf(laying, rules));
}

/** Dots on the top by which a laying could be held where its reference lines do not do it: under etched points and tips, and under the needle. */
export function dotsFor(laying: Laying, shape: TemplateShape): readonly Hold[] {
  const marks = etchedPoints(shape).map(({ put, feature }): Hold => {
    const at = carry(laying.pose, feature.at);
    return { by: { kind: 'etched', put, name: feature.name }, on: { kind: 'dot', dot: { at, under: 'mark' } }, requirement: { feature, target: { kind: 'point', at, name: 'dot' } }, misfit: 0 };
  });
  if (!laying.centred) return marks;
  const needle = laying.sewn.flatMap((stretch) => {
    const places = placesAlong(stretch, laying.pose, Infinity);
    return [0, 4, 8, 2, 6].flatMap((i) => {
      const place = places[i];
      if (!place || (i === 8 && distance(place.at, places[0]!.at) <= JOIN)) return [];
      return [needleHold(laying, stretch.line, { kind: 'dot', dot: { at: place.at, under: 'needle' } }, place.at, 0)];
    });
  });
  return [...marks, ...needle];
}

// ---- what is etched ----

type PointFeature = Extract<Feature, { kind: 'point' }>;
type LineFeature = Extract<Feature, { kind: 'line' }>;

function etchedPoints(shape: TemplateShape): readonly { readonly put: string; readonly feature: PointFeature }[] {
  const etched = shape.etchings.flatMap((etching) =>
    etching.kind === 'point' || etching.kind === 'cross' ? [{ put: `etching:${etching.id}`, feature: { kind: 'point', at: etching.at, name: etching.name } satisfies PointFeature }] : [],
  );
  const tips = tipsOf(shape.outline);
  return [...etched, ...tips.map(({ id, at }) => ({ put: id, feature: { kind: 'point', at, name: tips.length === 1 ? 'tip' : id.replace(':', ' ') } satisfies PointFeature }))];
}

function etchedLines(shape: TemplateShape): readonly { readonly put: string; readonly feature: LineFeature }[] {
  return shape.etchings.flatMap((etching: EtchedShape) => {
    if (etching.kind !== 'line' || segmentsOf(etching.path).some((s) => s.kind === 'arc')) return [];
    const from = startOf(etching.path);
    const to = endOf(etching.path);
    return from && to && distance(from, to) > JOIN ? [{ put: `etching:${etching.id}`, feature: lineFeature(from, to, etching.name) }] : [];
  });
}

function lineFeature(from: Point<'template'>, to: Point<'template'>, name: string): LineFeature {
  const length = distance(from, to);
  return { kind: 'line', at: partWay(from, to, 0.5), way: { x: (to.x - from.x) / length, y: (to.y - from.y) / length }, lever: length / 2, name };
}

// ---- on what they lie ----

function pointHolds(laying: Laying, feature: PointFeature, by: HeldBy, rules: readonly Rule[], crossings: readonly Crossing[]): readonly Hold[] {
  const at = carry(laying.pose, feature.at);
  const onLines = rules
    .filter((rule) => liesOn(rule, at))
    .map((rule): Hold => {
      const target = lineTarget(rule.line);
      return { by, on: { kind: 'line', rule }, requirement: { feature, target }, misfit: nearestOnPath(rule.path, at).distance };
    });
  const onCrossings = crossings
    .filter((crossing) => distance(crossing.at, at) <= SAME_MARK)
    .map((crossing): Hold => ({ by, on: { kind: 'crossing', crossing }, requirement: { feature, target: { kind: 'point', at: crossing.at, name: 'crossing' } }, misfit: distance(crossing.at, at) }));
  return [...onLines, ...onCrossings];
}

function lineHolds(laying: Laying, feature: LineFeature, by: HeldBy, rules: readonly Rule[]): readonly Hold[] {
  const ends = [-1, 1].map((side) => carry(laying.pose, { x: feature.at.x + side * feature.lever * feature.way.x, y: feature.at.y + side * feature.lever * feature.way.y }));
  return rules
    .filter((rule) => ends.every((end) => liesOn(rule, end)))
    .map((rule): Hold => {
      const misfit = Math.max(...ends.map((end) => nearestOnPath(rule.path, end).distance));
      return { by, on: { kind: 'line', rule }, requirement: { feature, target: lineTarget(rule.line) }, misfit };
    });
}

function needleHolds(laying: Laying, crossings: readonly Crossing[]): readonly Hold[] {
  if (!laying.centred) return [];
  const lines = [...new Set(laying.sewn.map(({ line }) => line))];
  return lines.flatMap((line) => {
    const path = carryPath(laying.pose, line.path);
    return crossings.flatMap((crossing) => {
      const misfit = nearestOnPath(path, crossing.at).distance;
      return misfit <= SAME_MARK ? [needleHold(laying, line, { kind: 'crossing', crossing }, crossing.at, misfit)] : [];
    });
  });
}

function needleHold(laying: Laying, line: NeedleLine, on: HeldOn, at: Point<'area'>, misfit: number): Hold {
  const paths = laying.needle.filter((other) => other.from === line.from).map(({ path }) => path);
  const put = line.from === 'outline' ? 'needle-line' : `needle-line:${line.from}`;
  return { by: { kind: 'needle', put }, on, requirement: { feature: { kind: 'needle-line', paths, name: 'needle line' }, target: { kind: 'point', at, name: 'place' } }, misfit };
}

/** Where reference lines cross, each place once; seams cross only between their ends. */
function crossingsOf({ lines }: Laying, rules: readonly Rule[]): readonly Crossing[] {
  return landmarks(lines, new Map()).places.flatMap(({ on, at }) => {
    const through = rules.filter((rule) => liesOn(rule, at));
    return through.some((a) => through.some((b) => !areParallel(a.way, b.way))) ? [{ on, at, through }] : [];
  });
}

// ---- what could be drawn ----

/** A tick wherever a line crosses the outline, and the line across the face. */
function marksAlong(rule: Path<'template'>, shape: TemplateShape): readonly DrawnMark[] {
  const atEdge = meetPaths(rule, shape.outline).flatMap((meeting) => (meeting.kind === 'crossing' ? [meeting.at] : []));
  const ticks = atEdge.map((at): DrawnMark => ({ kind: 'tick', at }));
  const first = atEdge[0];
  const last = atEdge.at(-1);
  if (!first || !last || atEdge.length < 2 || distance(first, last) <= JOIN) return ticks;
  const atWindows = shape.windows.flatMap((window) => meetPaths(rule, window.path).flatMap((meeting) => (meeting.kind === 'crossing' ? [meeting.at] : [])));
  const stops = [...atEdge, ...atWindows].sort((a, b) => distance(first, a) - distance(first, b));
  const pieces = stops.slice(1).flatMap((to, i) => {
    const from = stops[i]!;
    return distance(from, to) > JOIN && onFace(shape, partWay(from, to, 0.5)) ? [straight(from, to)] : [];
  });
  return pieces.length > 0 ? [...ticks, { kind: 'line', from: first, to: last, pieces }] : ticks;
}

function onFace({ outline, windows }: TemplateShape, p: Point<'template'>): boolean {
  return whereIs(outline, p) === 'inside' && windows.every(({ path }) => whereIs(path, p) === 'outside');
}
