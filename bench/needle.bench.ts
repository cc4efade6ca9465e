// Needle lines of the whole built-in kit, beside the offsets of two polygon libraries in the same run: clipper2-ts and the buffers of jsts, both
// fed the outlines flattened to a chord error of 1/10,000 in and told to keep their own arcs within it. Worst is the greatest distance by which
// the result comes nearer to the true edge than the foot's radius or lies farther off, sampled along the result.

import { EndType, JoinType, inflatePathsD } from 'clipper2-ts';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { flatten } from '../src/geometry/flatten.ts';
import { distanceToPath } from '../src/geometry/nearest.ts';
import { offsetClosed } from '../src/geometry/offset/offset-closed.ts';
import { type Path, closedPath, polygon, segmentsOf } from '../src/geometry/path.ts';
import type { Point } from '../src/geometry/point.ts';
import { pointOnSegment } from '../src/geometry/segment.ts';
import { BUILT_IN_KIT } from '../src/model/kit/built-in.ts';
import { shapeOf } from '../src/model/kit/shape-of.ts';

const RADIUS = 1 / 4;
const CHORD_ERROR = 1e-4;

interface Edge {
  readonly path: Path<'template'>;
  readonly where: 'outside' | 'inside';
}

type Way = (edge: Edge) => readonly Path<'template'>[];

const ours: Way = ({ path, where }) => {
  const offset = offsetClosed(path, RADIUS, where);
  return offset.kind === 'loops' ? offset.loops.map((loop) => loop.path) : [];
};

const clipper: Way = ({ path, where }) =>
  inflatePathsD([flatten(path, CHORD_ERROR).map(({ x, y }) => ({ x, y }))], where === 'outside' ? RADIUS : -RADIUS, JoinType.Round, EndType.Polygon, 2, 8, CHORD_ERROR)
    .filter((line) => line.length > 2)
    .map((line) => polygon<'template'>(line));

interface Ring {
  readonly getCoordinates: () => readonly Point<'template'>[];
}
interface Area extends Ring {
  readonly getExteriorRing: () => Ring;
  readonly getNumInteriorRing: () => number;
  readonly getInteriorRingN: (n: number) => Ring;
  readonly isEmpty: () => boolean;
}
interface Areas {
  readonly getNumGeometries: () => number;
  readonly getGeometryN: (n: number) => Area;
}

const NewCoordinate = Coordinate as new (x: number, y: number) => unknown;
const factory = new (GeometryFactory as new () => { readonly createPolygon: (ring: readonly unknown[]) => unknown })();
const parameters = new (BufferParameters as new (quadrantSegments: number) => unknown)(Math.ceil(Math.PI / 4 / Math.acos(1 - CHORD_ERROR / RADIUS)));
const { bufferOp } = BufferOp as unknown as { readonly bufferOp: (shape: unknown, distance: number, parameters: unknown) => Areas };

const jsts: Way = ({ path, where }) => {
  const points = flatten(path, CHORD_ERROR);
  const ring = [...points, points[0]!].map(({ x, y }) => new NewCoordinate(x, y));
  const areas = bufferOp(factory.createPolygon(ring), where === 'outside' ? RADIUS : -RADIUS, parameters);
  return Array.from({ length: areas.getNumGeometries() }, (_, i) => areas.getGeometryN(i))
    .filter((area) => !area.isEmpty())
    .flatMap((area) => [area.getExteriorRing(), ...Array.from({ length: area.getNumInteriorRing() }, (_, k) => area.getInteriorRingN(k))])
    .map((line) => polygon<'template'>(line.getCoordinates().slice(1).map(({ x, y }) => ({ x, y }))));
};

const ways: readonly (readonly [string, Way])[] = [
  ['needle lines', ours],
  ['clipper2-ts', clipper],
  ['jsts', jsts],
];

const templates = Object.values(BUILT_IN_KIT.templates).flatMap((template) => {
  const shape = shapeOf(template);
  if (!shape.ok) return [];
  const windows = shape.value.windows.map(({ path }): Edge => ({ path, where: 'inside' }));
  return [{ name: template.name, edges: [{ path: shape.value.outline, where: 'outside' } satisfies Edge, ...windows] }];
});

console.log(`Foot ${2 * RADIUS} in, ${templates.length} templates of the built-in kit. Milliseconds of processor time a template, pieces or points, worst in inches.\n`);
const heads = ['', 'edge', ...ways.flatMap(([name]) => [name, '', ''])];
const rows: string[][] = [heads, ['template', 'segments', ...ways.flatMap((_, i) => ['ms', i === 0 ? 'pieces' : 'points', 'worst'])]];
const totals = ways.map(() => ({ ms: 0, count: 0, worst: 0 }));
for (const { name, edges } of templates) {
  const row = [name, String(edges.reduce((sum, { path }) => sum + path.vertices.length, 0))];
  ways.forEach(([, way], i) => {
    const ms = timeOf(edges, way);
    const lines = edges.map((edge) => way(edge));
    const count = lines.flat().reduce((sum, line) => sum + line.vertices.length, 0);
    const worst = Math.max(0, ...edges.flatMap((edge, k) => lines[k]!.map((line) => worstOf(edge, line))));
    const total = totals[i]!;
    total.ms += ms;
    total.count += count;
    total.worst = Math.max(total.worst, worst);
    row.push(ms.toFixed(3), String(count), worst.toExponential(1));
  });
  rows.push(row);
}
rows.push(['all', '', ...totals.flatMap(({ ms, count, worst }) => [ms.toFixed(3), String(count), worst.toExponential(1)])]);
rows.push(['mean', '', ...totals.flatMap(({ ms }) => [(ms / templates.length).toFixed(3), '', ''])]);
print(rows);

console.log('\nOne outline of many arcs, foot 1/2 in:\n');
print([
  ['segments', ...ways.flatMap(([name]) => [`${name} ms`, 'worst'])],
  ...[50, 200, 800, 2000].map((count) => {
    const edge: Edge = { path: gear(count), where: 'outside' };
    return [String(count), ...ways.flatMap(([, way]) => [timeOf([edge], way).toFixed(2), Math.max(...way(edge).map((line) => worstOf(edge, line))).toExponential(1)])];
  }),
]);

/** Milliseconds for all edges of a template, each time with paths that nothing is remembered of. */
function timeOf(edges: readonly Edge[], way: Way): number {
  const fresh = () => edges.map(({ path, where }): Edge => ({ path: closedPath(path.vertices.map((v) => ({ ...v }))), where }));
  const run = (rounds: number) => {
    const all = Array.from({ length: rounds }, fresh);
    const before = process.cpuUsage();
    for (const one of all) one.forEach(way);
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000 / rounds;
  };
  const once = run(2);
  const rounds = Math.max(3, Math.min(300, Math.ceil(60 / Math.max(once, 0.05))));
  run(rounds);
  return Math.min(run(rounds), run(rounds), run(rounds));
}

function worstOf({ path }: Edge, line: Path<'template'>): number {
  let worst = 0;
  for (const s of segmentsOf(line)) {
    for (const part of [0, 0.25, 0.5, 0.75]) worst = Math.max(worst, Math.abs(distanceToPath(path, pointOnSegment(s, part)) - RADIUS));
  }
  return worst;
}

/** A round outline with nine lobes, of so many arcs. */
function gear(count: number): Path<'template'> {
  return closedPath(
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      const away = 8 * (1 - 0.15 * (1 + Math.cos(9 * angle)));
      return { x: away * Math.cos(angle), y: away * Math.sin(angle), bulge: 0.01 };
    }),
  );
}

function print(table: readonly (readonly string[])[]): void {
  const widths = table.reduce<number[]>((w, row) => row.map((cell, i) => Math.max(w[i] ?? 0, cell.length)), []);
  for (const row of table) console.log(row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  '));
}
