// What of a template a registration puts somewhere: reading `etching:cross`, `tip:1`, `point:1,2`, `needle-line`.

import type { Path } from '../geometry/path.ts';
import { endOf, segmentsOf, startOf } from '../geometry/path.ts';
import { type Point, type Vec, between, distance, heading, partWay, unit } from '../geometry/point.ts';
import type { TemplateShape } from '../model/kit/shape.ts';
import type { NeedleLines } from '../needle/needle-line.ts';
import { type Outcome, fail, ok } from '../num/outcome.ts';
import { tipsOf } from './tips.ts';

export type Feature =
  | { readonly kind: 'point'; readonly at: Point<'template'>; readonly name: string }
  /** A straight etching: a place on it, its direction, and half its length as the lever its angle acts by. */
  | { readonly kind: 'line'; readonly at: Point<'template'>; readonly way: Vec<'template'>; readonly lever: number; readonly name: string }
  | { readonly kind: 'curve'; readonly path: Path<'template'>; readonly name: string }
  | { readonly kind: 'needle-line'; readonly paths: readonly Path<'template'>[]; readonly name: string };

/** The feature a registration's `put` names, or a sentence saying that the template has no such thing. */
export function featureOf(put: string, shape: TemplateShape, needle: NeedleLines): Outcome<Feature, string> {
  if (put === 'needle-line') {
    const paths = needle.lines.filter((line) => line.from === 'outline').map((line) => line.path);
    return paths.length > 0 ? ok({ kind: 'needle-line', paths, name: 'needle line' }) : fail('The template gives no needle line with this foot.');
  }
  const [kind, id] = split(put);
  if (kind === 'needle-line') {
    const paths = needle.lines.filter((line) => line.from === id).map((line) => line.path);
    return paths.length > 0 ? ok({ kind: 'needle-line', paths, name: `needle line of ${id}` }) : fail(`The template gives no needle line along "${id}".`);
  }
  if (kind === 'tip') {
    const tip = tipsOf(shape.outline).find((candidate) => candidate.id === put);
    return tip ? ok({ kind: 'point', at: tip.at, name: tipName(shape, put) }) : fail(`The template has no ${put.replace(':', ' ')}.`);
  }
  if (kind === 'point') {
    const [x, y] = id.split(',').map(Number);
    if (x === undefined || y === undefined || !Number.isFinite(x) || !Number.isFinite(y)) return fail(`"${put}" is not a place on the template; write point:X,Y in inches.`);
    return ok({ kind: 'point', at: { x, y }, name: 'marked point' });
  }
  if (kind === 'etching') return etchingFeature(id, shape);
  return fail(`"${put}" is nothing on a template; name an etching, a tip, a point or the needle line.`);
}

function etchingFeature(id: string, shape: TemplateShape): Outcome<Feature, string> {
  const etching = shape.etchings.find((candidate) => candidate.id === id);
  if (!etching) return fail(`The template has no etching "${id}".`);
  const { name } = etching;
  switch (etching.kind) {
    case 'point':
      return ok({ kind: 'point', at: etching.at, name });
    case 'cross':
      return ok({ kind: 'point', at: etching.at, name });
    case 'curve':
      return ok({ kind: 'curve', path: etching.path, name });
    case 'line': {
      const from = startOf(etching.path);
      const to = endOf(etching.path);
      if (!from || !to) return fail(`The etching "${name}" has no length.`);
      if (segmentsOf(etching.path).some((s) => s.kind === 'arc')) return ok({ kind: 'curve', path: etching.path, name });
      return ok({ kind: 'line', at: partWay(from, to, 0.5), way: unit(between(from, to)), lever: distance(from, to) / 2, name });
    }
  }
}

/** The direction a cross or line points on the template, for registrations that ask for an angle. */
export function directionOf(put: string, shape: TemplateShape): Vec<'template'> | undefined {
  const etching = shape.etchings.find((candidate) => `etching:${candidate.id}` === put);
  if (etching?.kind === 'cross') return heading(etching.angle);
  if (etching?.kind === 'line') {
    const from = startOf(etching.path);
    const to = endOf(etching.path);
    return from && to ? unit(between(from, to)) : undefined;
  }
  return undefined;
}

function tipName(shape: TemplateShape, id: string): string {
  return tipsOf(shape.outline).length === 1 ? 'tip' : id.replace(':', ' ');
}

function split(text: string): readonly [string, string] {
  const colon = text.indexOf(':');
  return colon < 0 ? [text, ''] : [text.slice(0, colon), text.slice(colon + 1)];
}
