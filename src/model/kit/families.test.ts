// Families against closed forms: what the outline of a shape must measure, from its sizes and a book of formulas.

import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../geometry/bounds.ts';
import { pathLength, pointAlong, signedArea } from '../../geometry/measure.ts';
import { nearestOnPath } from '../../geometry/nearest.ts';
import { type Path, segmentsOf } from '../../geometry/path.ts';
import { angleOf, between, distance, point } from '../../geometry/point.ts';
import { tangentOnSegment } from '../../geometry/segment.ts';
import { fromDegrees, shortestTurn, toDegrees } from '../../num/angle.ts';
import { FIT, SAME_POINT, SMOOTH_JOINT } from '../../num/tolerances.ts';
import { FAMILIES, familyById } from './families.ts';
import type { TemplateShape } from './shape.ts';

type Sizes = { readonly [size: string]: number };

function shape(id: string, sizes: Sizes): TemplateShape {
  const drawn = familyById(id)!.draw(sizes);
  if (!drawn.ok) throw new Error(drawn.problem.message);
  return drawn.value;
}

function outline(id: string, sizes: Sizes): Path<'template'> {
  return shape(id, sizes).outline;
}

function etchedLine(drawn: TemplateShape, id: string): Path<'template'> {
  const found = drawn.etchings.find((etching) => etching.id === id);
  if (found?.kind !== 'line' && found?.kind !== 'curve') throw new Error(`no line ${id}`);
  return found.path;
}

/** The corners of an outline: how far it turns at each vertex that is not a smooth joint, in degrees. */
function corners(path: Path<'template'>): readonly number[] {
  const sides = segmentsOf(path);
  return sides
    .map((side, i) => shortestTurn(angleOf(tangentOnSegment(sides[(i + 1) % sides.length]!, 0)) - angleOf(tangentOnSegment(side, 1))))
    .filter((turn) => Math.abs(turn) > SMOOTH_JOINT)
    .map(toDegrees);
}

describe('what families measure', () => {
  it('straight edge: a rectangle of length by width, and a round-ended slot', () => {
    const drawn = shape('straight-edge', { length: 12, width: 3, corner: 0, ditch: 0.5, margin: 1 });
    expect(pathLength(drawn.outline)).toBeCloseTo(30, 9);
    expect(signedArea(drawn.outline)).toBeCloseTo(36, 9);
    // Stadium of length 10 and width 1/2: perimeter 2 (L - w) + pi w, area (L - w) w + pi w^2 / 4.
    expect(pathLength(drawn.windows[0]!.path)).toBeCloseTo(19 + Math.PI / 2, 9);
    expect(signedArea(drawn.windows[0]!.path)).toBeCloseTo(4.75 + Math.PI / 16, 9);
  });

  it('square with rounded corners: the square of side 4 grown by 1/4 (Steiner formula)', () => {
    const path = outline('square', { width: 4.5, height: 4.5, corner: 0.25 });
    expect(pathLength(path)).toBeCloseTo(17.570796327, 9);
    expect(signedArea(path)).toBeCloseTo(20.196349541, 9);
  });

  it('a corner as large as half the square makes it a circle', () => {
    const path = outline('square', { width: 4, height: 4, corner: 2 });
    expect(pathLength(path)).toBeCloseTo(4 * Math.PI, 9);
    expect(segmentsOf(path).every((side) => side.kind === 'arc')).toBe(true);
  });

  it('circle: circumference and area', () => {
    expect(pathLength(outline('circle', { diameter: 6 }))).toBeCloseTo(6 * Math.PI, 9);
    expect(signedArea(outline('circle', { diameter: 6 }))).toBeCloseTo(9 * Math.PI, 9);
  });

  it('arc band: both edges are arcs of r times the sweep, the area is that of an annular sector', () => {
    for (const [radius, width, degrees] of [[8, 2, 70], [4, 1.5, 90], [5, 1, 300]] as const) {
      const path = outline('arc-band', { radius, width, sweep: degrees, corner: 0 });
      const sweep = fromDegrees(degrees);
      const lengths = new Map<number, number>();
      for (const side of segmentsOf(path)) {
        const key = side.kind === 'arc' ? Math.round(side.radius * 1e6) / 1e6 : 0;
        lengths.set(key, (lengths.get(key) ?? 0) + (side.kind === 'arc' ? side.radius * Math.abs(side.sweep) : distance(side.from, side.to)));
      }
      expect(lengths.get(radius)).toBeCloseTo(radius * sweep, 9);
      expect(lengths.get(radius - width)).toBeCloseTo((radius - width) * sweep, 9);
      expect(lengths.get(0)).toBeCloseTo(2 * width, 9);
      expect(signedArea(path)).toBeCloseTo((sweep / 2) * (radius ** 2 - (radius - width) ** 2), 9);
    }
  });

  it('leaf: chord and sagitta give the radius, and the points are 4 atan(width / length) sharp', () => {
    const path = outline('leaf', { length: 8, width: 3.5, point: 0 });
    // Sagitta formula: r = (c^2 / 4 + h^2) / 2h.
    const radius = (16 + 1.75 ** 2) / 3.5;
    expect(pathLength(path)).toBeCloseTo(4 * radius * Math.asin(4 / radius), 9);
    const turns = corners(path);
    expect(turns).toHaveLength(2);
    for (const turn of turns) expect(180 - turn).toBeCloseTo(toDegrees(4 * Math.atan(3.5 / 8)), 9);
  });

  it('leaf: two circles through each other’s centres (vesica piscis: area (2 pi / 3 - sqrt 3 / 2) r^2, points of 120 degrees)', () => {
    const path = outline('leaf', { length: 3 * Math.sqrt(3), width: 3, point: 0 });
    expect(signedArea(path)).toBeCloseTo(((2 * Math.PI) / 3 - Math.sqrt(3) / 2) * 9, 9);
    expect(180 - corners(path)[0]!).toBeCloseTo(120, 9);
  });

  it('scallop: a maker’s worked example, chord 2 1/4 and rise 3/8 give radius 1 7/8', () => {
    const path = outline('scallop', { humps: 4, hump: 2.25, rise: 0.375, depth: 1, corner: 0 });
    const humps = segmentsOf(path).filter((side) => side.kind === 'arc');
    expect(humps).toHaveLength(4);
    for (const hump of humps) {
      expect(hump.radius).toBeCloseTo(1.875, 9);
      expect(toDegrees(hump.sweep)).toBeCloseTo(73.739795, 6);
      expect(hump.radius * hump.sweep).toBeCloseTo(2.413129, 6);
    }
  });

  it('clamshell: 2 R^2, less what the rounded point cuts from the cusp', () => {
    const [radius, tip] = [2, 1 / 16];
    const path = outline('clamshell', { width: 4, corner: 0, point: tip });
    // On either side of the axis: the right triangle with legs R and s, less the sector of the hollow side, less that of the point.
    const s = Math.sqrt(2 * radius * tip + tip * tip);
    const angle = Math.atan2(s, radius);
    const cut = (radius * s) / 2 - (radius * radius * angle) / 2 - (tip * tip * (Math.PI / 2 - angle)) / 2;
    expect(signedArea(path)).toBeCloseTo(2 * radius * radius - 2 * cut, 9);
    // Rounded ever less it comes to 2 R^2, the ground one shell covers.
    expect(signedArea(outline('clamshell', { width: 16, corner: 0, point: 1 / 32 })) / (2 * 64)).toBeCloseTo(1, 3);
  });

  it('oval: perimeter and area of the ellipse with semi-axes 3 and 2', () => {
    const path = outline('oval', { length: 6, width: 4 });
    expect(Math.abs(pathLength(path) - 15.865439589)).toBeLessThan(2 * Math.PI * FIT);
    expect(Math.abs(signedArea(path) - 18.849555922)).toBeLessThan(15.87 * FIT);
  });

  it('teardrop: the belt round a circle and a point', () => {
    const [radius, apart] = [1.5, 3.5];
    const path = outline('teardrop', { length: 5, width: 3, point: 0 });
    const lean = Math.acos(radius / apart);
    expect(pathLength(path)).toBeCloseTo(2 * Math.sqrt(apart ** 2 - radius ** 2) + radius * (2 * Math.PI - 2 * lean), 9);
    expect(180 - corners(path)[0]!).toBeCloseTo(toDegrees(2 * Math.asin(radius / apart)), 9);
  });

  it('hexagon: perimeter 2 sqrt 3 h and area sqrt 3 / 2 h^2', () => {
    const path = outline('hexagon', { height: 4, corner: 0 });
    expect(pathLength(path)).toBeCloseTo(8 * Math.sqrt(3), 9);
    expect(signedArea(path)).toBeCloseTo(8 * Math.sqrt(3), 9);
  });

  it('diamond: four sides of h / sin(angle), corners of the angle asked', () => {
    const path = outline('diamond', { height: 3, angle: 45, corner: 0 });
    expect(pathLength(path)).toBeCloseTo((4 * 3) / Math.SQRT1_2, 9);
    expect(signedArea(path)).toBeCloseTo(9 / Math.SQRT1_2, 9);
    expect(corners(path).map((turn) => Math.round((180 - turn) * 1e9) / 1e9).sort((a, b) => a - b)).toEqual([45, 45, 135, 135]);
  });

  it('wedge: a trapezoid', () => {
    const path = outline('wedge', { length: 8, wide: 3.5, narrow: 1, corner: 0 });
    expect(signedArea(path)).toBeCloseTo(8 * 2.25, 9);
    expect(pathLength(path)).toBeCloseTo(4.5 + 2 * Math.hypot(8, 1.25), 9);
  });

  it('half round: half a circle and a strip', () => {
    const path = outline('half-round', { diameter: 6, strip: 0.5, corner: 0 });
    expect(pathLength(path)).toBeCloseTo(3 * Math.PI + 7, 9);
    expect(signedArea(path)).toBeCloseTo((9 * Math.PI) / 2 + 3, 9);
  });

  it('long round: a stadium', () => {
    const path = outline('long-round', { length: 8, width: 2 });
    expect(pathLength(path)).toBeCloseTo(12 + 2 * Math.PI, 9);
    expect(signedArea(path)).toBeCloseTo(12 + Math.PI, 9);
  });

  it('S-curve: both edges keep half the width from the middle line, which climbs by the rise', () => {
    const drawn = shape('s-curve', { length: 10, rise: 2.5, width: 2, corner: 0 });
    const middle = etchedLine(drawn, 'middle-line');
    const length = pathLength(middle);
    // Two tangent arcs with level ends (railway reverse curve): radius (l^2 + h^2) / 4h, sweep 2 atan(h / l).
    expect(length).toBeCloseTo(2 * ((100 + 6.25) / 10) * 2 * Math.atan(0.25), 9);
    for (let i = 2; i < 19; i++) expect(nearestOnPath(drawn.outline, pointAlong(middle, (length * i) / 20).point).distance).toBeCloseTo(1, 9);
    expect(distance(pointAlong(middle, 0).point, point(-5, 1.25))).toBeLessThan(SAME_POINT);
    expect(distance(pointAlong(middle, length).point, point(5, -1.25))).toBeLessThan(SAME_POINT);
    expect(signedArea(drawn.outline)).toBeCloseTo(2 * length, 9);
  });

  it('hill and cable are smooth where arcs follow each other', () => {
    expect(corners(outline('hill', { corner: 0 })).map(Math.round)).toEqual([90, 90, 90, 90]);
    expect(corners(outline('cable', { corner: 0 })).map(Math.round)).toEqual([90, 90, 90, 90]);
  });

  it('cable: as long as its flanks, by the same two arcs as an S', () => {
    const path = outline('cable', { links: 3, link: 4, width: 2.5, neck: 1.25, corner: 0 });
    const [run, rise] = [2, 0.625];
    const flank = 2 * ((run * run + rise * rise) / (4 * rise)) * 2 * Math.atan(rise / run);
    expect(pathLength(path)).toBeCloseTo(12 * flank + 2 * 1.25, 9);
  });

  it('wave: as long as the sine, and nowhere farther from it than a fit may be', () => {
    const [crests, crest, rise, depth] = [3, 6, 2, 1.5];
    const path = outline('wave', { crests, crest, rise, depth, corner: 0 });
    const height = (x: number) => -depth / 2 - (rise / 2) * (1 - Math.cos((2 * Math.PI * (x + (crests * crest) / 2)) / crest));
    // Simpson's rule over the arc length of one wave.
    const slope = (x: number) => Math.hypot(1, (rise / 2) * ((2 * Math.PI) / crest) * Math.sin((2 * Math.PI * x) / crest));
    const n = 2000;
    let sum = slope(0) + slope(crest);
    for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * slope((i * crest) / n);
    const wave = crests * (sum * crest) / n / 3;
    expect(Math.abs(pathLength(path) - (wave + crests * crest + 2 * depth))).toBeLessThan(0.001 * crests);
    for (let x = -8.9; x < 9; x += 0.1) expect(nearestOnPath(path, point(x, height(x))).distance).toBeLessThanOrEqual(FIT);
  });

  it('half flower: lobes reach the radius, notches lie the notch below it', () => {
    const drawn = shape('half-flower', { lobes: 5, radius: 3.5, notch: 0.5, strip: 0.5, corner: 0 });
    for (let i = 1; i <= 5; i++) expect(pathLength(etchedLine(drawn, `lobe-${i}`))).toBeCloseTo(3.5, 9);
    for (let i = 1; i <= 4; i++) expect(pathLength(etchedLine(drawn, `notch-${i}`))).toBeCloseTo(3, 9);
    for (const id of ['lobe-2', 'notch-3']) {
      const line = etchedLine(drawn, id);
      expect(nearestOnPath(drawn.outline, pointAlong(line, pathLength(line)).point).distance).toBeLessThan(SAME_POINT);
    }
  });

  it('crescent: as wide in the middle as asked, its arcs smooth into its points', () => {
    const drawn = shape('crescent', { length: 8, rise: 3, width: 1.5, point: 0.125 });
    expect(pathLength(etchedLine(drawn, 'centre-down'))).toBeCloseTo(1.5, 9);
    expect(corners(drawn.outline)).toEqual([]);
  });

  it('hollow-sided square: the hollow is as deep as asked', () => {
    const drawn = shape('hollow-square', { side: 5, hollow: 0.5 });
    expect(pathLength(etchedLine(drawn, 'centre-across'))).toBeCloseTo(4, 9);
    expect(corners(drawn.outline)).toEqual([]);
  });

  it('plume: smooth all round, its tail hollow in front', () => {
    const path = outline('plume', {});
    expect(corners(path)).toEqual([]);
    expect(segmentsOf(path).filter((side) => side.kind === 'arc' && side.sweep < 0)).toHaveLength(1);
  });

  it('plate: windows of the sizes told, a margin apart', () => {
    const { windows, outline: edge } = shape('round-windows', { windows: 3, largest: 2, step: 0.5, margin: 0.5 });
    expect(windows.map(({ path }) => pathLength(path) / Math.PI).map((d) => Math.round(d * 1e9) / 1e9)).toEqual([2, 1.5, 1]);
    const boxes = [boundsOf(edge), ...windows.map(({ path }) => boundsOf(path))];
    expect(boxes[1]!.minX - boxes[0]!.minX).toBeCloseTo(0.5, 9);
    expect(boxes[2]!.minX - boxes[1]!.maxX).toBeCloseTo(0.5, 9);
    expect(boxes[0]!.maxX - boxes[3]!.maxX).toBeCloseTo(0.5, 9);
  });
});

describe('etchings', () => {
  it('the inner line keeps a quarter inch from the edge', () => {
    for (const { id } of FAMILIES.filter((family) => family.id !== 'ring' && family.id !== 'round-windows')) {
      const drawn = shape(id, {});
      const inner = etchedLine(drawn, 'inner-line');
      for (let i = 0; i < 50; i++) {
        expect(nearestOnPath(drawn.outline, pointAlong(inner, (pathLength(inner) * i) / 50).point).distance).toBeCloseTo(0.25, 6);
      }
    }
  });

  it('angle lines lie at their angle through the origin', () => {
    const drawn = shape('straight-edge', {});
    const line = etchedLine(drawn, 'angle-60');
    const direction = angleOf(between(pointAlong(line, 0).point, pointAlong(line, pathLength(line)).point));
    expect(toDegrees(direction)).toBeCloseTo(-60, 9);
    expect(nearestOnPath(line, point(0, 0)).distance).toBeLessThan(SAME_POINT);
  });
});

describe('sizes that cannot be drawn', () => {
  const message = (id: string, sizes: Sizes): string => {
    const drawn = familyById(id)!.draw(sizes);
    return drawn.ok ? 'drawn' : `${drawn.problem.field}: ${drawn.problem.message}`;
  };

  it('say which size, and its limit', () => {
    expect(message('circle', { diameter: 30 })).toBe('sizes.diameter: The diameter is 30 in; it must be at most 24 in.');
    expect(message('arc-band', { radius: 2, width: 3 })).toBe('sizes.width: The width is 3 in; with a radius of 2 in it must be at most 1 7/8 in.');
    expect(message('straight-edge', { width: 2, corner: 1.5 })).toBe('sizes.corner: The corner radius is 1 1/2 in; with the other sizes as they are it must be at most 1 in.');
    expect(message('wave', { crests: 2.5 })).toBe('sizes.crests: The number of crests must be a whole number; it is 2.5.');
    expect(message('arc-band', { sweep: 5 })).toBe('sizes.sweep: The sweep is 5°; it must be at least 10°.');
    expect(message('arc-band', { swep: 5 })).toBe('sizes.swep: Arc band has no size “swep”; its sizes are radius, width, sweep, corner.');
    expect(message('circle', { diameter: NaN })).toBe('sizes.diameter: The diameter must be a number.');
    expect(message('circle', { diameter: Infinity })).toBe('sizes.diameter: The diameter must be a number.');
  });

  it('every useful set of sizes can be drawn', () => {
    for (const family of FAMILIES) {
      expect(family.useful.length).toBeGreaterThan(0);
      for (const { sizes } of family.useful) expect(family.draw(sizes)).toMatchObject({ ok: true });
    }
  });
});
