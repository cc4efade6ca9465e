// Every family at random sizes within its rules: a shape that can be cut and followed, or a plain word why not.
// The shapes are judged by a general geometry library (jsts: valid polygons with holes), which shares no code with the kit.

import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, it } from 'vitest';
import { boundsOf, sizeOfBounds } from '../../src/geometry/bounds.ts';
import { carryPath } from '../../src/geometry/change.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { whereIs } from '../../src/geometry/inside.ts';
import { pathLength, pointAlong, signedArea } from '../../src/geometry/measure.ts';
import { nearestOnPath } from '../../src/geometry/nearest.ts';
import type { Path } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import { turnAbout } from '../../src/geometry/pose.ts';
import { FAMILIES, type Family } from '../../src/model/kit/families.ts';
import type { EtchedShape, ShapeProblem, TemplateShape } from '../../src/model/kit/shape.ts';
import { fromDegrees } from '../../src/num/angle.ts';
import { readLength } from '../../src/num/inches.ts';
import { type Random, random } from '../../src/num/random.ts';
import { FIT } from '../../src/num/tolerances.ts';

const SEEDS = 25;
const ROUNDING = 1e-7;

type Sizes = { readonly [size: string]: number };

/** How wide and high a template of these sizes must be, where its sizes say so. */
const askedFor: { readonly [family: string]: (s: Sizes) => { readonly width?: number; readonly height?: number } } = {
  'straight-edge': (s) => ({ width: s['length']!, height: s['width']! }),
  square: (s) => ({ width: s['width']!, height: s['height']! }),
  'hollow-square': (s) => ({ width: s['side']!, height: s['side']! }),
  wedge: (s) => ({ height: s['length']!, ...(s['corner'] === 0 ? { width: s['wide']! } : {}) }),
  clamshell: (s) => (s['corner'] === 0 ? { width: s['width']! } : {}),
  hexagon: (s) => ({ height: s['height']! }),
  circle: (s) => ({ width: s['diameter']!, height: s['diameter']! }),
  ring: (s) => ({ width: s['diameter']!, height: s['diameter']! }),
  'round-windows': (s) => {
    const [n, largest, step, margin] = [s['windows']!, s['largest']!, s['step']!, s['margin']!];
    return { width: n * largest - (step * n * (n - 1)) / 2 + (n + 1) * margin, height: largest + 2 * margin };
  },
  'half-round': (s) => ({ width: s['diameter']!, height: s['diameter']! / 2 + s['strip']! }),
  oval: (s) => ({ width: s['length']!, height: s['width']! }),
  'long-round': (s) => ({ width: s['length']!, height: s['width']! }),
  crescent: (s) => ({ width: s['length']!, height: s['rise']! }),
  leaf: (s) => ({ width: s['length']!, height: s['width']! }),
  teardrop: (s) => ({ width: s['width']!, height: s['length']! }),
  plume: (s) => ({ height: s['length']! }),
  's-curve': (s) => ({ width: s['length']!, ...(s['corner'] === 0 ? { height: s['rise']! + s['width']! } : {}) }),
  hill: (s) => ({ width: s['length']!, height: s['rise']! + s['depth']! }),
  wave: (s) => ({ width: s['crests']! * s['crest']!, height: s['rise']! + s['depth']! }),
  scallop: (s) => ({ width: s['humps']! * s['hump']!, height: s['rise']! + s['depth']! }),
  cable: (s) => ({ width: s['links']! * s['link']!, height: s['width']! }),
};

describe.each(FAMILIES.map((family) => [family.id, family] as const))('%s', (id, family) => {
  it(`is valid or says why not at random sizes (seeds 1 to ${SEEDS})`, () => {
    let drawn = 0;
    for (let seed = 1; seed <= SEEDS; seed++) {
      const sizes = randomSizes(family, random(seed));
      const outcome = family.draw(sizes);
      const told = `${id}, seed ${seed}: ${JSON.stringify(sizes)}`;
      if (outcome.ok) {
        drawn++;
        expectSound(outcome.value, told);
        expectAskedFor(id, sizes, outcome.value, told);
      } else expectHelpful(family, sizes, outcome.problem, told);
    }
    // Most random sizes of a family must be drawable, or the judgement above has seen too little.
    expect(drawn).toBeGreaterThan(SEEDS / 10);
  });

  it('keeps its promise at the least and the most of every size', () => {
    for (const rule of family.sizes) {
      for (const size of [rule.least, rule.most]) {
        const sizes = { [rule.id]: size };
        const outcome = family.draw(sizes);
        if (outcome.ok) expectSound(outcome.value, `${id}, ${JSON.stringify(sizes)}`);
        else expectHelpful(family, sizes, outcome.problem, `${id}, ${JSON.stringify(sizes)}`);
      }
    }
  });
});

it('a diamond is as high as asked between both pairs of sides', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const chance = random(seed);
    const [height, angle] = [chance.between(2, 8), chance.between(30, 90)];
    const outcome = FAMILIES.find((family) => family.id === 'diamond')!.draw({ height, angle });
    expect(outcome.ok).toBe(true);
    if (!outcome.ok) continue;
    for (const turn of [angle / 2, -angle / 2]) {
      const turned = carryPath(turnAbout(point<'template'>(0, 0), fromDegrees(turn)), outcome.value.outline);
      expect(sizeOfBounds(boundsOf(turned)).height).toBeCloseTo(height, 9);
    }
  }
});

/** Sizes anywhere within the rules; half of them near the usual ones, so that they go together often enough. */
function randomSizes(family: Family, chance: Random): Sizes {
  const entries = family.sizes.map(({ id, least, most, usual, unit }) => {
    // Sharp corners now and then, so that what is measured before rounding is measured too.
    if (id === 'corner' && chance.next() < 0.25) return [id, 0] as const;
    const isNear = chance.next() < 0.7;
    const [low, high] = isNear ? [Math.max(least, usual / 2), Math.min(most, usual * 2)] : [least, most];
    return [id, unit === 'count' ? chance.whole(Math.ceil(low), Math.floor(high)) : chance.between(low, high)] as const;
  });
  return Object.fromEntries(entries);
}

function expectSound(shape: TemplateShape, told: string): void {
  for (const path of [shape.outline, ...shape.windows.map((window) => window.path)]) {
    expect(path.closed, told).toBe(true);
    expect(path.vertices.every((v) => Number.isFinite(v.x) && Number.isFinite(v.y) && Math.abs(v.bulge) <= 1), told).toBe(true);
    expect(signedArea(path), told).toBeGreaterThan(0);
  }
  expect(isValidPolygon(shape), told).toBe(true);
  const ids = shape.etchings.map((etching) => etching.id);
  expect(new Set(ids).size, told).toBe(ids.length);
  for (const etching of shape.etchings) {
    expect(etching.id, told).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
    expect(etching.name.length, told).toBeGreaterThan(3);
    for (const p of pointsOf(etching)) {
      const isOnAcrylic = whereIs(shape.outline, p) !== 'outside' || nearestOnPath(shape.outline, p).distance < ROUNDING;
      expect(isOnAcrylic, `${told}: ${etching.id} leaves the template at ${p.x}, ${p.y}`).toBe(true);
    }
  }
}

function expectAskedFor(id: string, sizes: Sizes, shape: TemplateShape, told: string): void {
  const { width, height } = askedFor[id]?.(sizes) ?? {};
  const found = sizeOfBounds(boundsOf(shape.outline));
  // An oval is fitted, and may lie outside its ellipse by as much on both sides.
  const slack = id === 'oval' ? 2 * FIT : ROUNDING;
  if (width !== undefined) expect(Math.abs(found.width - width), `${told}: width`).toBeLessThan(slack);
  if (height !== undefined) expect(Math.abs(found.height - height), `${told}: height`).toBeLessThan(slack);
}

/** The problem names one of the family's sizes, and the limit it tells can be drawn or leads to another size that cannot. */
function expectHelpful(family: Family, sizes: Sizes, problem: ShapeProblem, told: string): void {
  const id = problem.field.replace(/^sizes\./, '');
  const rule = family.sizes.find((one) => one.id === id);
  expect(rule, `${told}: ${problem.field}`).toBeDefined();
  const limit = /must be at (?:most|least) (.+)\.$/.exec(problem.message)?.[1];
  expect(problem.message.startsWith(`The ${rule!.name} is `), `${told}: ${problem.message}`).toBe(true);
  expect(limit, `${told}: ${problem.message}`).toBeDefined();
  const length = rule!.unit === 'in' ? readLength(limit!) : undefined;
  const size = length?.ok ? length.value : Number(limit!.replace('°', ''));
  if (size < rule!.least || size > rule!.most) return;
  const mended = family.draw({ ...sizes, [id]: size });
  if (!mended.ok) expect(mended.problem.field, `${told}: ${problem.message} ${mended.problem.message}`).not.toBe(problem.field);
}

function pointsOf(etching: EtchedShape): readonly Point<'template'>[] {
  if (etching.kind === 'point' || etching.kind === 'cross') return [etching.at];
  const length = pathLength(etching.path);
  return Array.from({ length: 9 }, (_, i) => pointAlong(etching.path, (length * i) / 8).point);
}

/** Whether outline and windows, finely flattened, are a valid polygon with holes: each ring simple, the holes inside and apart. */
function isValidPolygon(shape: TemplateShape): boolean {
  const factory = new GeometryFactory();
  const ringOf = (path: Path<'template'>): unknown => {
    const points = flatten(path, 1e-3);
    return factory.createLinearRing([...points, points[0]!].map(({ x, y }): unknown => new Coordinate(x, y)));
  };
  const polygon: unknown = factory.createPolygon(ringOf(shape.outline), shape.windows.map(({ path }) => ringOf(path)));
  return (new IsValidOp(polygon) as { isValid(): boolean }).isValid();
}
