// Seeded random outlines of lines and arcs, of many kinds: wild ones, and above all ones where things just fit.

import { pathOfSegments, type Path, type Vertex, closedPath } from '../../src/geometry/path.ts';
import { carryPath } from '../../src/geometry/change.ts';
import { poseOf } from '../../src/geometry/pose.ts';
import { checkSimple } from '../../src/geometry/simple.ts';
import { type Segment, arcAround, lineFrom } from '../../src/geometry/segment.ts';
import { type Random, random } from '../../src/num/random.ts';

export interface RandomEdge {
  readonly kind: string;
  readonly path: Path<'template'>;
  readonly radius: number;
}

type Maker = (r: Random) => { vertices: readonly Vertex[]; radius: number };

const QUARTER = Math.tan(Math.PI / 8);

/** The edge of a seed and a foot for it; undefined when the seed gives an outline that meets itself. */
export function randomEdge(seed: number, kind?: string): RandomEdge | undefined {
  const r = random(seed);
  const name = kind ?? r.pick(KINDS);
  const made = (name === 'nearly' ? nearly : makers[name]!)(r);
  const path = closedPath<'template'>(made.vertices);
  const carried = r.next() < 0.5 ? carryPath(poseOf<'template', 'template'>(r.between(-20, 20), r.between(-20, 20), r.between(-3, 3), r.next() < 0.5), path) : path;
  const simple = checkSimple(carried);
  return simple.ok ? { kind: name, path: simple.value, radius: made.radius } : undefined;
}

const foot = (r: Random) => r.pick([0.125, 0.25, 0.25, 0.28125, 0.5, r.between(0.05, 1)]);

const makers: { readonly [kind: string]: Maker } = {
  /** Star-shaped round a middle, with random bulges. */
  star: (r) => {
    const n = r.whole(3, 24);
    const angles = Array.from({ length: n }, () => r.between(0, 2 * Math.PI)).sort((a, b) => a - b);
    const bulgy = r.pick([0, 0.3, 0.7, 1]);
    const size = r.between(0.5, 6);
    return {
      vertices: angles.map((a) => {
        const away = size * r.between(0.25, 1);
        return { x: away * Math.cos(a), y: away * Math.sin(a), bulge: r.next() < bulgy ? r.between(-1, 1) * r.next() : 0 };
      }),
      radius: foot(r),
    };
  },
  /** The same with even steps, so that outlines keep from crossing themselves more often. */
  blob: (r) => {
    const n = r.whole(3, 40);
    const size = r.between(0.5, 6);
    const rough = r.between(0.02, 0.6);
    return {
      vertices: Array.from({ length: n }, (_, i) => {
        const a = (2 * Math.PI * i) / n;
        const away = size * (1 - rough * r.next());
        return { x: away * Math.cos(a), y: away * Math.sin(a), bulge: r.next() < 0.6 ? r.between(-0.5, 0.5) : 0 };
      }),
      radius: foot(r),
    };
  },
  /** A rectangle with slots cut from its top: wider, narrower and exactly as wide as the foot, square or round at the bottom. */
  slots: (r) => {
    const radius = foot(r);
    const vertices: Vertex[] = [{ x: 0, y: 0, bulge: 0 }];
    const count = r.whole(1, 4);
    let x = 0;
    for (let i = 0; i < count; i++) {
      const width = 2 * radius * r.pick([1, 1, 0.8, 1.3, 2, r.between(0.3, 2)]);
      const depth = r.between(0.2, 4);
      x += radius * r.pick([0.5, 1, 2, 3, r.between(0.1, 3)]);
      vertices.push({ x, y: 0, bulge: 0 }, { x, y: depth, bulge: r.pick([0, 0, -1, -QUARTER, 1]) });
      x += width;
      vertices.push({ x, y: depth, bulge: 0 }, { x, y: 0, bulge: 0 });
    }
    x += radius * r.pick([1, 2, r.between(0.1, 3)]);
    const height = 4 + radius * 3;
    vertices.push({ x, y: 0, bulge: 0 }, { x, y: height, bulge: 0 }, { x: 0, y: height, bulge: 0 });
    return { vertices, radius };
  },
  /** A star with its corners rounded, often to exactly the foot's radius. */
  rounded: (r) => {
    const radius = foot(r);
    const n = r.whole(3, 12);
    const size = r.between(1.5, 7);
    const points = Array.from({ length: n }, (_, i) => {
      const a = (2 * Math.PI * (i + 0.6 * r.next())) / n;
      const away = size * r.between(0.4, 1);
      return { x: away * Math.cos(a), y: away * Math.sin(a) };
    });
    return { vertices: filleted(points, () => radius * r.pick([1, 1, 0.5, 0.99, 1.01, 2, r.between(0.1, 3)])), radius };
  },
  /** Half circles abutting in cusps round a ring, in and out. */
  scallops: (r) => {
    const n = r.whole(3, 16);
    const size = r.between(1, 5);
    const way = r.pick([1, -1, 0]);
    const chord = 2 * size * Math.sin(Math.PI / n);
    return {
      vertices: Array.from({ length: n }, (_, i) => ({
        x: size * Math.cos((2 * Math.PI * i) / n),
        y: size * Math.sin((2 * Math.PI * i) / n),
        bulge: (way === 0 ? r.pick([1, -1]) : way) * r.pick([1, 1, 0.5]),
      })),
      radius: r.pick([chord / 2, chord / 4, chord, 0.25, 0.125, r.between(0.05, 1)]),
    };
  },
  /** A row of half circles and straight steps on a grid, where cusps, half turns and exact fits abound. */
  row: (r) => {
    const step = r.pick([0.25, 0.5, 1]);
    const n = r.whole(1, 8);
    const vertices: Vertex[] = [];
    for (let i = 0; i < n; i++) vertices.push({ x: i * step, y: 0, bulge: r.pick([1, 1, -1, 0, QUARTER, -QUARTER]) });
    const height = r.pick([2, 3, 4]) * step;
    const right = n * step;
    vertices.push({ x: right, y: 0, bulge: r.pick([0, 0, 1, QUARTER]) });
    for (let i = n; i > 0; i--) vertices.push({ x: i * step, y: height, bulge: r.pick([1, 1, -1, 0, QUARTER, -QUARTER]) });
    vertices.push({ x: 0, y: height, bulge: r.pick([0, 0, 1, QUARTER]) });
    return { vertices, radius: step * r.pick([0.25, 0.5, 0.5, 1, 1.5]) };
  },
  /** Cells of a grid grown together: nearly every gap is a whole number of half feet. */
  cells: (r) => {
    const size = r.pick([0.25, 0.5]);
    const corners = r.next() < 0.5 ? 0 : r.pick([QUARTER, -QUARTER]);
    const vertices = boundaryOfCells(r).map(([x, y]) => ({ x: x * size, y: y * size, bulge: 0 }));
    return { vertices: corners === 0 ? vertices : filleted(vertices, () => (r.next() < 0.5 ? size / 2 : size / 4)), radius: size * r.pick([0.5, 0.5, 1, 0.25, 1.5]) };
  },
  /** Many short chords or arcs that stand for a curve. */
  dense: (r) => {
    const n = r.whole(60, 400);
    const lobes = r.whole(2, 7);
    const depth = r.between(0, 0.6);
    const size = r.between(1, 6);
    const bulge = r.next() < 0.5 ? 0 : Math.tan(Math.PI / (2 * n));
    return {
      vertices: Array.from({ length: n }, (_, i) => {
        const a = (2 * Math.PI * i) / n;
        const away = size * (1 - depth * (0.5 + 0.5 * Math.cos(lobes * a)));
        return { x: away * Math.cos(a), y: away * Math.sin(a), bulge };
      }),
      radius: foot(r),
    };
  },
  /** Very flat arcs, and very short segments, among the usual ones. */
  fine: (r) => {
    const n = r.whole(3, 14);
    const size = r.between(1, 8);
    const vertices: Vertex[] = [];
    for (let i = 0; i < n; i++) {
      const a = (2 * Math.PI * i) / n;
      const away = size * r.between(0.5, 1);
      const x = away * Math.cos(a);
      const y = away * Math.sin(a);
      vertices.push({ x, y, bulge: r.pick([0, 1e-8, -1e-7, 1e-6, -1e-5, 1e-4, -1e-3]) });
      const jog = r.pick([0, 0, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3]);
      if (jog > 0) vertices.push({ x: x + jog * r.between(-1, 1), y: y + jog * r.between(-1, 1), bulge: r.pick([0, 0, 0.3, -0.3]) });
    }
    return { vertices, radius: foot(r) };
  },
  /** Smooth chains of arcs, each starting the way the last ended: waves and leaves with corners and cusps at their ends. */
  chain: (r) => {
    const width = r.between(0.2, 2);
    const top: Segment<'template'>[] = [];
    let heading = r.between(-0.6, 0.6);
    let at = { x: 0, y: 0 };
    const n = r.whole(2, 6);
    for (let i = 0; i < n; i++) {
      const sweep = (i % 2 === 0 ? 1 : -1) * r.between(0.2, 1.5);
      const radius = r.pick([0.25, 0.5, 1, r.between(0.3, 4)]);
      const way = Math.sign(sweep);
      const centre = { x: at.x - Math.sin(heading) * radius * way, y: at.y + Math.cos(heading) * radius * way };
      const arc = arcAround<'template'>(centre, radius, heading - (way * Math.PI) / 2, sweep);
      top.push(arc);
      heading += sweep;
      at = arc.to;
    }
    // Below it, straight back or the same chain moved down.
    const down = (s: Segment<'template'>): Segment<'template'> =>
      s.kind === 'line'
        ? lineFrom({ x: s.to.x, y: s.to.y + width }, { x: s.from.x, y: s.from.y + width })
        : { ...s, from: { x: s.to.x, y: s.to.y + width }, to: { x: s.from.x, y: s.from.y + width }, centre: { x: s.centre.x, y: s.centre.y + width }, start: s.start + s.sweep, sweep: -s.sweep };
    const bottom = [...top].reverse().map(down);
    const path = pathOfSegments<'template'>([...top, lineFrom(at, { x: at.x, y: at.y + width }), ...bottom, lineFrom({ x: 0, y: width }, { x: 0, y: 0 })], true);
    return { vertices: path.vertices, radius: r.pick([width / 2, 0.25, 0.125, r.between(0.05, 1)]) };
  },
  /** Concentric bands with slots along arcs: a C of constant width, its mouth as wide as may be. */
  band: (r) => {
    const radius = foot(r);
    const inner = r.between(0.3, 3);
    const width = 2 * radius * r.pick([1, 1, 0.7, 1.5, r.between(0.3, 3)]);
    const half = r.pick([Math.PI / 2, r.between(0.3, 3)]) / 2;
    // A closed band window: outside arc there, end, inside arc back, end; arcs over a half turn are cut in two.
    const outer = inner + width;
    const on = (away: number, angle: number, bulge: number): Vertex => ({ x: away * Math.cos(angle), y: away * Math.sin(angle), bulge });
    const b = Math.tan(half / 4);
    const ends = r.pick([0, 1, 0]);
    return { vertices: [on(outer, -half, b), on(outer, 0, b), on(outer, half, ends), on(inner, half, -b), on(inner, 0, -b), on(inner, -half, ends)], radius };
  },
};

/** Outlines where things just fit, put out by next to nothing: from a hundredth of rounding slack to a thousandth of an inch. */
const nearly: Maker = (r) => {
  const made = makers[r.pick(['cells', 'cells', 'row', 'slots', 'scallops', 'band', 'rounded'])]!(r);
  const noise = 10 ** r.between(-12, -3);
  return { ...made, vertices: made.vertices.map((v) => ({ x: v.x + noise * r.between(-1, 1), y: v.y + noise * r.between(-1, 1), bulge: v.bulge === 0 ? 0 : Math.max(-1, Math.min(1, v.bulge + noise * r.between(-1, 1))) })) };
};

export const KINDS: readonly string[] = [...Object.keys(makers), 'nearly'];

/** A polygon with its corners rounded by tangent arcs; a corner without room for its arc stays sharp. */
function filleted(points: readonly { x: number; y: number }[], radiusOf: () => number): Vertex[] {
  const n = points.length;
  const vertices: Vertex[] = [];
  points.forEach((p, i) => {
    const a = points[(i + n - 1) % n]!;
    const b = points[(i + 1) % n]!;
    const la = Math.hypot(a.x - p.x, a.y - p.y);
    const lb = Math.hypot(b.x - p.x, b.y - p.y);
    const ua = { x: (a.x - p.x) / la, y: (a.y - p.y) / la };
    const ub = { x: (b.x - p.x) / lb, y: (b.y - p.y) / lb };
    const turn = Math.atan2(-ua.x * ub.y + ua.y * ub.x, -ua.x * ub.x - ua.y * ub.y);
    const back = radiusOf() * Math.tan(Math.abs(turn) / 2);
    if (!(back < la / 2 && back < lb / 2) || back < 1e-6) {
      vertices.push({ x: p.x, y: p.y, bulge: 0 });
      return;
    }
    vertices.push({ x: p.x + ua.x * back, y: p.y + ua.y * back, bulge: Math.tan(turn / 4) }, { x: p.x + ub.x * back, y: p.y + ub.y * back, bulge: 0 });
  });
  return vertices;
}

/** The outer boundary of cells grown together on a small grid, corner by corner, in whole numbers. */
function boundaryOfCells(r: Random): readonly (readonly [number, number])[] {
  const size = r.whole(3, 7);
  const filled = new Set<string>();
  const key = (x: number, y: number) => `${x},${y}`;
  let frontier: [number, number][] = [[Math.floor(size / 2), Math.floor(size / 2)]];
  const want = r.whole(3, size * size * 0.7);
  while (filled.size < want && frontier.length > 0) {
    const at = r.whole(0, frontier.length - 1);
    const [x, y] = frontier[at]!;
    frontier = frontier.filter((_, i) => i !== at);
    if (x < 0 || y < 0 || x >= size || y >= size || filled.has(key(x, y))) continue;
    filled.add(key(x, y));
    frontier.push([x + 1, y], [x - 1, y], [x, y + 1], [x, y - 1]);
  }
  const isFilled = (x: number, y: number) => filled.has(key(x, y));
  // Walk with the filled cell on the right, starting on the top side of the topmost, leftmost cell.
  const cells = [...filled].map((k) => k.split(',').map(Number) as [number, number]).sort((a, b) => a[1] - b[1] || a[0] - b[0]);
  let [x, y] = cells[0]!;
  const start = [x, y] as const;
  let [dx, dy] = [1, 0];
  const corners: [number, number][] = [];
  do {
    // The two cells ahead, seen from the corner (x, y) along (dx, dy): right and left of the way.
    const ahead = (side: number) => isFilled(x + (dx + dy * -side - 1) / 2, y + (dy + dx * side - 1) / 2);
    const [px, py] = [dx, dy];
    if (ahead(-1) && ahead(1)) [dx, dy] = [dy, -dx];
    else if (!ahead(1)) [dx, dy] = [-dy, dx];
    if (px !== dx || py !== dy) corners.push([x, y]);
    x += dx;
    y += dy;
  } while ((x !== start[0] || y !== start[1]) && corners.length < 400);
  return corners.length > 0 && (corners[0]![0] !== start[0] || corners[0]![1] !== start[1]) ? [start, ...corners] : corners;
}
