// Marks in words: for each way a template comes to lie, what goes where, in one sentence; and where dots go on the top.

import { type LengthStyle, writeLength } from '../../num/inches.ts';
import { SAME_MARK } from '../../num/tolerances.ts';
import { type Point, type Vec, quarterTurned } from '../../geometry/point.ts';
import { carry } from '../../geometry/pose.ts';
import type { DrawnMark, Hold, HeldBy, HeldOn, TopDot } from './hold.ts';
import { type LaidImage, type Laying, type Rule, areParallel, heightOver, imageOfRule } from './laying.ts';

/** How marks and dots are called. */
export interface Names {
  readonly letterOf: (mark: DrawnMark) => string;
  readonly numberOf: (dot: TopDot) => number;
}

/** One way in which a laying comes to lie, and what goes where. */
export interface Sentence {
  /** Images of the repeat that are laid so. */
  readonly images: readonly number[];
  readonly faceDown: boolean;
  readonly say: string;
}

/** "Face down: A on the vertical centre line, tip on the horizontal centre line."; ways that read alike are one. */
export function saySentences(laying: Laying, holds: readonly Hold[], rules: readonly Rule[], names: Names): readonly Sentence[] {
  const said: { readonly images: number[]; readonly faceDown: boolean; readonly say: string }[] = [];
  for (const image of laying.images) {
    const faceDown = laying.pose.flipped !== image.motion.flipped;
    const parts = holds.map((hold) => `${sayBy(hold.by, names)} ${sayOn(hold, image, laying, rules, names)}`);
    const say = `${faceDown ? 'Face down' : 'Face up'}: ${parts.join(', ')}.`;
    const same = said.find((other) => other.say === say);
    if (same) same.images.push(...image.numbers);
    else said.push({ images: [...image.numbers], faceDown, say });
  }
  return said;
}

function sayBy(by: HeldBy, { letterOf }: Names): string {
  switch (by.kind) {
    case 'etched':
      return by.name;
    case 'drawn':
      return letterOf(by.mark);
    case 'needle':
      return 'needle down';
  }
}

function sayOn({ by, on, requirement }: Hold, image: LaidImage, laying: Laying, rules: readonly Rule[], { numberOf }: Names): string {
  const lies = requirement.feature.kind === 'line' ? 'along' : 'on';
  const after = by.kind === 'needle' ? ' and the edge against the foot' : '';
  switch (on.kind) {
    case 'line':
      return `${lies} the ${imageOfRule(on.rule, image.motion, rules, laying.period).name}`;
    case 'dot':
      return `on ${image === laying.images[0] ? '' : 'its own '}dot ${numberOf(on.dot)}${after}`;
    case 'crossing':
      return `${sayCrossing(on, image, laying, rules)}${after}`;
  }
}

function sayCrossing({ crossing }: Extract<HeldOn, { kind: 'crossing' }>, image: LaidImage, laying: Laying, rules: readonly Rule[]): string {
  const at = carry(image.motion, crossing.at);
  if (laying.period === undefined && Math.hypot(at.x, at.y) <= SAME_MARK) return 'on the centre';
  const [a, b] = crossing.through.map((rule) => imageOfRule(rule, image.motion, rules, laying.period).name);
  return `where the ${a} and the ${b} cross`;
}

/** Where a place of the top is: on which line and how far along, or how far from two lines. */
export function sayPlace(at: Point<'area'>, rules: readonly Rule[], style: LengthStyle): string {
  const sides = [...rules].sort((a, b) => rank(a) - rank(b));
  const on = sides.find((rule) => Math.abs(heightOver(rule, at)) <= SAME_MARK);
  const away = Math.hypot(at.x, at.y);
  if (on && away <= SAME_MARK) return 'on the centre';
  if (on && on.line.kind === 'diagonal' && Math.abs(heightOver(on, { x: 0, y: 0 })) <= SAME_MARK) {
    return `on the ${on.line.name}, ${writeLength(away, style)} from the centre to the ${at.y < 0 ? 'upper' : 'lower'} ${at.x < 0 ? 'left' : 'right'}`;
  }
  const first = on ?? sides[0];
  if (!first) return `${writeLength(at.x, style)} across and ${writeLength(at.y, style)} down from the centre`;
  // The line most nearly square to the first tells the rest the best.
  const others = sides.filter((rule) => !areParallel(rule.way, first.way));
  const squarest = Math.min(...others.map((rule) => Math.abs(rule.way.x * first.way.x + rule.way.y * first.way.y)));
  const second = others.find((rule) => Math.abs(rule.way.x * first.way.x + rule.way.y * first.way.y) <= squarest + SAME_MARK);
  const rest = second ? sayDistance(second, at, style) : '';
  if (on) return `on the ${on.line.name}${rest && `, ${rest}`}`;
  return `${sayDistance(first, at, style)}${rest && ` and ${rest}`}`;
}

/** Centre lines tell a place best, then diagonals and divisions, then edges. */
function rank({ line }: Rule): number {
  return { centre: 0, diagonal: 2, division: 1, edge: 3 }[line.kind];
}

function sayDistance(rule: Rule, at: Point<'area'>, style: LengthStyle): string {
  const height = heightOver(rule, at);
  if (Math.abs(height) <= SAME_MARK) return `on the ${rule.line.name}`;
  return `${writeLength(Math.abs(height), style)} ${sideOf(quarterTurned(rule.way), height)} the ${rule.line.name}`;
}

function sideOf(right: Vec<'area'>, height: number): string {
  const x = right.x * Math.sign(height);
  const y = right.y * Math.sign(height);
  if (Math.abs(y) > Math.abs(x) - SAME_MARK) return y < 0 ? 'above' : 'below';
  return x < 0 ? 'left of' : 'right of';
}

/** A, B ... Z, AA, AB ... */
export function letter(index: number): string {
  const here = String.fromCharCode(65 + (index % 26));
  return index < 26 ? here : `${letter(Math.floor(index / 26) - 1)}${here}`;
}
