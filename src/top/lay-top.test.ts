import { describe, expect, it } from 'vitest';
import { pathLength, signedArea } from '../geometry/measure.ts';
import { segmentsOf } from '../geometry/path.ts';
import { type Point, distance } from '../geometry/point.ts';
import { carry, carryVec } from '../geometry/pose.ts';
import type { Blocks, Border, Top } from '../model/plan.ts';
import type { Area, LaidTop } from './area.ts';
import { layTop, piecedAreas } from './lay-top.ts';
import { cornerTriangleSquare, sideTriangleSquare } from './triangle-cuts.ts';

const BARE: Top = { borders: [], drawnAreas: {}, keepOuts: {}, clearance: { rawEdge: 0.5, seam: 0.125 } };

function straight(rows: number, columns: number, size: number, more: Partial<Blocks> = {}): Blocks {
  return { setting: 'straight', rows, columns, size: [size, size], sashing: 0, cornerstones: false, ...more };
}

function onPoint(rows: number, columns: number, size: number, more: Partial<Blocks> = {}): Blocks {
  return straight(rows, columns, size, { setting: 'on-point', ...more });
}

function lay(blocks: Blocks | undefined, borders: readonly Border[] = [], more: Partial<Top> = {}): LaidTop {
  return layTop({ ...BARE, ...(blocks && { blocks }), borders, ...more });
}

function ofKind(top: LaidTop, kind: Area['kind']): readonly Area[] {
  return top.areas.filter((area) => area.kind === kind);
}

function area(top: LaidTop, id: string): Area {
  const found = top.areas.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no area ${id}: ${top.areas.map((a) => a.id).join(', ')}`);
  return found;
}

function cornersOnQuilt(a: Area): readonly Point<'quilt'>[] {
  return a.boundary.vertices.map((v) => carry(a.frame, { x: v.x, y: v.y }));
}

describe('blocks on point', () => {
  // The setting-triangle table of four trade charts (quarter-inch seams): squares to cut for side and corner triangles.
  const TABLE: readonly (readonly [block: number, side: number, corner: number])[] = [
    [4, 7, 3.75], [5, 8.375, 4.5], [6, 9.75, 5.125], [7, 11.25, 5.875], [8, 12.625, 6.625], [9, 14, 7.25], [10, 15.5, 8],
    [11, 16.875, 8.75], [12, 18.25, 9.375], [13, 19.75, 10.125], [14, 21.125, 10.875], [15, 22.5, 11.5], [16, 24, 12.25],
  ];

  it.each(TABLE)('a block of %f in needs squares of %f and %f for its triangles', (block, sideSquare, cornerSquare) => {
    const top = lay(onPoint(3, 2, block));
    const side = area(top, 'setting-triangle:top:1');
    const corner = area(top, 'corner-triangle:top-left');
    const [longEdge, rightLeg, leftLeg] = segmentsOf(side.boundary).map((s) => distance(s.from, s.to));
    expect(rightLeg).toBeCloseTo(block, 12);
    expect(leftLeg).toBeCloseTo(block, 12);
    expect(longEdge).toBeCloseTo(block * Math.SQRT2, 12);
    expect(sideTriangleSquare(longEdge!)).toBe(sideSquare);
    const [shortEdge, cornerLong] = segmentsOf(corner.boundary).map((s) => distance(s.from, s.to));
    expect(shortEdge).toBeCloseTo(block / Math.SQRT2, 12);
    expect(cornerLong).toBeCloseTo(block, 12);
    expect(cornerTriangleSquare(shortEdge!)).toBe(cornerSquare);
  });

  it.each([[4, 5, 14], [1, 1, 0], [1, 6, 10], [3, 3, 8]])('%i rows by %i columns take %i side triangles: 2 (r + c - 2), as the charts say', (rows, columns, count) => {
    const top = lay(onPoint(rows, columns, 8));
    expect(ofKind(top, 'setting-triangle')).toHaveLength(count);
    expect(ofKind(top, 'corner-triangle')).toHaveLength(4);
    expect(ofKind(top, 'block')).toHaveLength(rows * columns + (rows - 1) * (columns - 1));
    expect(top.width).toBeCloseTo(columns * 8 * Math.SQRT2, 12);
    expect(top.height).toBeCloseTo(rows * 8 * Math.SQRT2, 12);
  });

  it('turns the blocks 45 degrees and points their corners at the sides', () => {
    const top = lay(onPoint(2, 2, 10));
    const block = area(top, 'block:r1c1');
    expect(block.frame.angle).toBeCloseTo(Math.PI / 4, 15);
    const ys = cornersOnQuilt(block).map((p) => p.y);
    expect(Math.min(...ys)).toBeCloseTo(0, 12);
    expect(area(top, 'block:r1.5c1.5').frame.x).toBeCloseTo(10 * Math.SQRT2, 12);
  });

  it('keeps setting triangles half blocks when strips run between the blocks', () => {
    for (const sashedRound of [false, true]) {
      for (const cornerstones of [false, true]) {
        const top = lay(onPoint(3, 4, 9, { sashing: 2, cornerstones, sashedRound }));
        expect(top.problems).toEqual([]);
        for (const triangle of ofKind(top, 'setting-triangle')) expect(signedArea(triangle.boundary)).toBeCloseTo(40.5, 9);
        for (const triangle of ofKind(top, 'corner-triangle')) expect(signedArea(triangle.boundary)).toBeCloseTo(20.25, 9);
        // A pitch of 11 in on point; with strips all round the outer cornerstones are cut through the middle.
        expect(top.width).toBeCloseTo((sashedRound ? 4 * 11 : 3 * 11 + 9) * Math.SQRT2, 10);
        expect(top.height).toBeCloseTo((sashedRound ? 3 * 11 : 2 * 11 + 9) * Math.SQRT2, 10);
      }
    }
  });

  it('counts strips and cornerstones on point', () => {
    // Two by two, five blocks. Strips all round: each block has four sides, and the middle one shares all of its own: 16 strips.
    // Cornerstones stand at every corner of a block: 4 x 4 corners outside, of which 4 are shared with the middle block, so
    // 4 whole ones, and 2 on each side of the quilt cut in half.
    const round = lay(onPoint(2, 2, 9, { sashing: 2, cornerstones: true, sashedRound: true }));
    expect(ofKind(round, 'sashing')).toHaveLength(16);
    expect(ofKind(round, 'cornerstone').filter((a) => a.boundary.vertices.length === 4)).toHaveLength(4);
    expect(ofKind(round, 'cornerstone').filter((a) => a.boundary.vertices.length === 3)).toHaveLength(8);
    // Without cornerstones the strips between the three diagonal rows, and outside the first and last, run through.
    const through = lay(onPoint(2, 2, 9, { sashing: 2, cornerstones: false, sashedRound: true }));
    expect(ofKind(through, 'sashing').filter((a) => a.id.includes('across'))).toHaveLength(4);
    expect(ofKind(through, 'sashing').filter((a) => a.id.includes('down'))).toHaveLength(2 + 4 + 2);
  });

  it('has square blocks only, and says so', () => {
    const top = lay({ ...onPoint(2, 2, 9), size: [9, 12] });
    expect(top.problems).toEqual([
      { field: 'top.blocks.size', kind: 'cannot-be', message: 'Blocks on point are square; these are 9 in by 12 in. They are laid 9 in square.' },
    ]);
    expect(area(top, 'block:r1c1').height).toBe(9);
  });
});

describe('blocks set straight', () => {
  it('runs the strips between rows through across the width', () => {
    const top = lay(straight(4, 3, 10, { sashing: 2 }));
    expect([top.width, top.height]).toEqual([34, 46]);
    const across = ofKind(top, 'sashing').filter((a) => a.width === 34);
    expect(across.map((a) => a.id)).toEqual(['sashing:across:r1', 'sashing:across:r2', 'sashing:across:r3']);
    expect(ofKind(top, 'sashing')).toHaveLength(3 + 4 * 2);
    expect(ofKind(top, 'cornerstone')).toHaveLength(0);
  });

  it('adds strips and cornerstones all round', () => {
    const top = lay(straight(4, 3, 10, { sashing: 2, cornerstones: true, sashedRound: true }));
    expect([top.width, top.height]).toEqual([38, 50]);
    expect(ofKind(top, 'cornerstone')).toHaveLength(5 * 4);
    expect(ofKind(top, 'sashing')).toHaveLength(4 * 4 + 5 * 3);
    const withoutStones = lay(straight(4, 3, 10, { sashing: 2, sashedRound: true }));
    expect(ofKind(withoutStones, 'sashing').filter((a) => a.width === 38)).toHaveLength(5);
    expect(area(withoutStones, 'sashing:down:r1c0').frame.x).toBe(1);
  });

  it('lays upright strips along their own x axis, like level ones', () => {
    const top = lay(straight(3, 3, 10, { sashing: 2, cornerstones: true, sashedRound: true }), [{ width: 3, corners: 'squares' }]);
    expect(area(top, 'sashing:down:r2c1').shape).toBe(area(top, 'sashing:across:r1c2').shape);
    expect(area(top, 'sashing:down:r2c1').width).toBe(10);
  });

  it('lays a quilt for a mattress: width plus two drops by length plus one', () => {
    // US mattress sizes: queen 60 x 80. With a drop of 12 at both sides and the foot: 84 x 92.
    const top = lay(straight(8, 7, 10), [{ width: 3, corners: 'butted' }, { width: 4, corners: 'mitred' }]);
    expect([top.width, top.height]).toEqual([60 + 2 * 12, 80 + 12 + 2]);
  });
});

describe('borders', () => {
  const blocks = straight(4, 3, 10);

  it('gives four sides and four corners, whatever the corners', () => {
    for (const corners of ['butted', 'mitred', 'squares'] as const) {
      const top = lay(blocks, [{ width: 2, corners }, { width: 5, corners }]);
      expect([top.width, top.height]).toEqual([30 + 14, 40 + 14]);
      expect(ofKind(top, 'border-side')).toHaveLength(8);
      expect(ofKind(top, 'border-corner')).toHaveLength(8);
      expect(area(top, 'border:1:top')).toMatchObject({ width: 30, height: 2, side: 'top', border: 1 });
      expect(area(top, 'border:2:right')).toMatchObject({ width: 44, height: 5, side: 'right', border: 2 });
    }
  });

  it('mitres with a seam as long as the width times the square root of two', () => {
    const top = lay(blocks, [{ width: 5, corners: 'mitred' }]);
    for (const corner of ofKind(top, 'border-corner')) {
      const mitre = corner.seams.find((seam) => seam.id === 'mitre')!;
      expect(mitre.kind).toBe('seam');
      // Mitre seam of a border of width w: w sqrt 2.
      expect(pathLength(mitre.path)).toBeCloseTo(5 * Math.SQRT2, 12);
      expect(corner.seams.filter((seam) => seam.kind === 'seam')).toHaveLength(1);
      const [from, to] = [segmentsOf(mitre.path)[0]!.from, segmentsOf(mitre.path)[0]!.to].map((p) => carry(corner.frame, p));
      expect(top.seams.some((seam) => joins(seam, from!, to!))).toBe(true);
    }
    for (const side of ofKind(top, 'border-side')) expect(side.seams.map((seam) => [seam.id, seam.kind])).toEqual([['edge-top', 'raw'], ['edge-bottom', 'seam']]);
    // Four sides of the middle (the rows and columns run between them) and four mitres.
    expect(top.seams).toHaveLength(4 + 3 + 2 + 4);
  });

  it('puts seams on both inner sides of a corner square', () => {
    const top = lay(blocks, [{ width: 5, corners: 'squares' }]);
    for (const corner of ofKind(top, 'border-corner')) {
      expect(corner.seams.map((seam) => [seam.id, seam.kind])).toEqual([['edge-top', 'raw'], ['edge-right', 'seam'], ['edge-bottom', 'seam'], ['edge-left', 'raw']]);
    }
    // Seams run from raw edge to raw edge: two across, two down, and those between blocks.
    expect(top.seams).toHaveLength(2 + 2 + 3 + 2);
  });

  it.each([
    ['top-and-bottom', ['top', 'bottom'], ['left', 'right']],
    ['left-and-right', ['left', 'right'], ['top', 'bottom']],
  ] as const)('butts corners with %s running through', (through, free, butted) => {
    const top = lay(blocks, [{ width: 5, corners: 'butted', through }]);
    for (const side of free) expect(area(top, `border:1:${side}`).seams.map((seam) => seam.id)).toEqual(['edge-top', 'edge-bottom']);
    for (const side of butted) expect(area(top, `border:1:${side}`).seams.map((seam) => seam.id)).toEqual(['edge-top', 'edge-right', 'edge-bottom', 'edge-left']);
    for (const corner of ofKind(top, 'border-corner')) expect(corner.seams.filter((seam) => seam.kind === 'seam')).toHaveLength(1);
    // The seam of a corner lies where the corner meets a side that does not run through.
    const inner = area(top, 'border:1:top-left').seams.find((seam) => seam.kind === 'seam')!;
    expect(inner.id).toBe(through === 'top-and-bottom' ? 'edge-bottom' : 'edge-right');
    // Two seams from raw edge to raw edge, two between them, and those between blocks.
    expect(top.seams).toHaveLength(4 + 3 + 2);
    const longest = top.seams.map(pathLength).sort((a, b) => b - a);
    expect(longest[0]).toBeCloseTo(through === 'top-and-bottom' ? 40 : 50, 12);
  });

  it('points -y outward on the sides, and the corner to the upper left in the corners', () => {
    const top = lay(blocks, [{ width: 5, corners: 'squares' }]);
    const outward = { top: [0, -1], right: [1, 0], bottom: [0, 1], left: [-1, 0] } as const;
    for (const side of ofKind(top, 'border-side')) {
      const out = carryVec(side.frame, { x: 0, y: -1 });
      expect(out.x).toBeCloseTo(outward[side.side!][0], 12);
      expect(out.y).toBeCloseTo(outward[side.side!][1], 12);
    }
    const rawCorner = { 'top-left': [0, 0], 'top-right': [40, 0], 'bottom-right': [40, 50], 'bottom-left': [0, 50] } as const;
    for (const corner of ofKind(top, 'border-corner')) {
      const at = carry(corner.frame, { x: -2.5, y: -2.5 });
      expect(at.x).toBeCloseTo(rawCorner[corner.corner!][0], 12);
      expect(at.y).toBeCloseTo(rawCorner[corner.corner!][1], 12);
    }
  });

  it('uses the measured length of a side, centred where the layout has it', () => {
    const top = lay(blocks, [{ width: 5, corners: 'mitred', measured: { top: 30.25, bottom: 29.875 } }]);
    expect(area(top, 'border:1:top').width).toBe(30.25);
    expect(area(top, 'border:1:bottom').width).toBe(29.875);
    expect(area(top, 'border:1:left').width).toBe(40);
    expect(area(top, 'border:1:top').frame).toMatchObject({ x: 20, y: 2.5 });
    expect(top.problems).toEqual([]);
  });

  it('doubts a tape that is far off', () => {
    const top = lay(blocks, [{ width: 5, corners: 'mitred', measured: { top: 31.0625, bottom: 29.125, left: 40.9375 } }]);
    expect(top.problems.map((p) => [p.field, p.kind, p.message])).toEqual([
      ['top.borders[0].measured.top', 'doubtful', 'The top of border 1 measures 31 1/16 in, the layout gives 30 in. Measure again.'],
      ['top.borders[0].measured', 'doubtful', 'The top and the bottom of border 1 differ: 31 1/16 in and 29 1/8 in. Measure again, or ease the longer side in.'],
    ]);
    expect(area(top, 'border:1:top').width).toBe(31.0625);
    // Three parts in a hundred of 30 in is less than an inch: 0.9 in. Exactly that is let pass.
    expect(lay(blocks, [{ width: 5, corners: 'mitred', measured: { top: 29.1 } }]).problems).toEqual([]);
    expect(lay(blocks, [{ width: 5, corners: 'mitred', measured: { top: 29.05 } }]).problems).toHaveLength(1);
  });
});

describe('reference lines and seams', () => {
  it('gives a block its centre lines, diagonals and edges, edges with the inside on their right', () => {
    const block = area(lay(straight(1, 1, 12)), 'block:r1c1');
    expect(block.referenceLines.map((line) => line.id)).toEqual([
      'vertical-centre', 'horizontal-centre', 'diagonal-down', 'diagonal-up', 'edge-top', 'edge-right', 'edge-bottom', 'edge-left',
    ]);
    for (const line of block.referenceLines.filter((l) => l.kind === 'edge')) {
      const s = segmentsOf(line.path)[0]!;
      // To the right of a line as it runs, with y down, is its direction turned clockwise.
      const right = { x: -(s.to.y - s.from.y), y: s.to.x - s.from.x };
      const toCentre = { x: -s.from.x, y: -s.from.y };
      expect(right.x * toCentre.x + right.y * toCentre.y).toBeGreaterThan(0);
    }
  });

  it('adds lines at 45 degrees where the diagonals are not', () => {
    const whole = area(lay(undefined, [], { panel: { size: [60, 72] } }), 'panel');
    const bias = whole.referenceLines.find((line) => line.id === 'bias-down')!;
    const s = segmentsOf(bias.path)[0]!;
    expect([s.from, s.to]).toEqual([{ x: -30, y: -30 }, { x: 30, y: 30 }]);
  });

  it('gives triangles their altitude and edges', () => {
    const top = lay(onPoint(2, 2, 8));
    const side = area(top, 'setting-triangle:left:1');
    expect(side.referenceLines.map((line) => line.id)).toEqual(['vertical-centre', 'edge-top', 'edge-right', 'edge-left']);
    // Half the diagonal of the block.
    expect(pathLength(side.referenceLines[0]!.path)).toBeCloseTo(4 * Math.SQRT2, 12);
    const corner = area(top, 'corner-triangle:bottom-right');
    expect(corner.referenceLines.map((line) => line.id)).toEqual(['diagonal-down', 'edge-top', 'edge-long', 'edge-left']);
    expect(pathLength(corner.referenceLines[0]!.path)).toBeCloseTo(4, 12);
  });

  it('tells the raw edge from seams', () => {
    const bare = lay(straight(2, 2, 10));
    expect(area(bare, 'block:r1c1').seams.map((seam) => [seam.id, seam.kind])).toEqual([['edge-top', 'raw'], ['edge-right', 'seam'], ['edge-bottom', 'seam'], ['edge-left', 'raw']]);
    const bordered = lay(straight(2, 2, 10), [{ width: 2, corners: 'squares' }]);
    expect(new Set(ofKind(bordered, 'block').map((a) => a.shape)).size).toBe(1);
    const blocks = ofKind(bordered, 'block');
    for (const block of blocks) {
      expect(block.boundary).toBe(blocks[0]!.boundary);
      expect(block.seams).toBe(blocks[0]!.seams);
      expect(block.referenceLines).toBe(blocks[0]!.referenceLines);
    }
  });

  it('lists each seam once', () => {
    // Three rows of three blocks without a border: two seams across, two down.
    const top = lay(straight(3, 3, 10));
    expect(top.seams).toHaveLength(4);
    for (const seam of top.seams) expect(pathLength(seam)).toBeCloseTo(30, 12);
    // On point, two by two: five blocks with four sides each, of which the middle one shares all of its own.
    const turned = lay(onPoint(2, 2, 10));
    const lengths = turned.seams.map(pathLength).sort((a, b) => a - b);
    expect(lengths.reduce((sum, l) => sum + l, 0)).toBeCloseTo(5 * 4 * 10 - 4 * 10, 9);
  });
});

describe('drawn areas and keep-outs', () => {
  it('lays a drawn area in its own turned axes', () => {
    const top = lay(straight(2, 2, 10), [], { drawnAreas: { d: { name: 'Medallion', outline: 'M 10 5 L 15 10 L 10 15 L 5 10 Z', angle: 45 } } });
    const d = area(top, 'drawn:d');
    expect(d.name).toBe('Medallion');
    expect(d.width).toBeCloseTo(5 * Math.SQRT2, 12);
    expect(d.height).toBeCloseTo(5 * Math.SQRT2, 12);
    expect(d.frame.x).toBeCloseTo(10, 12);
    expect(d.frame.y).toBeCloseTo(10, 12);
    expect(top.problems).toEqual([]);
  });

  it('keeps arcs of an outline', () => {
    const top = lay(straight(2, 2, 10), [], { keepOuts: { k: { name: 'Bird', outline: 'M 8 10 A 2 2 0 1 1 12 10 A 2 2 0 1 1 8 10 Z', clearance: 0.25 } } });
    expect(top.keepOuts).toHaveLength(1);
    expect(Math.abs(signedArea(top.keepOuts[0]!.outline))).toBeCloseTo(4 * Math.PI, 9);
    expect(top.keepOuts[0]!.clearance).toBe(0.25);
  });

  it('leaves out outlines that are none, and says where', () => {
    const top = lay(straight(2, 2, 10), [], {
      drawnAreas: {
        bow: { name: 'Bow', outline: 'M 0 0 L 10 10 L 10 0 L 0 10 Z' },
        noise: { name: 'Noise', outline: 'hello' },
        far: { name: 'Far', outline: 'M 15 5 L 22 5 L 22 8 L 15 8 Z' },
      },
    });
    expect(ofKind(top, 'drawn').map((a) => a.id)).toEqual(['drawn:far']);
    expect(top.problems.map((p) => p.field)).toEqual(['top.drawnAreas.bow.outline', 'top.drawnAreas.noise.outline', 'top.drawnAreas.far.outline']);
    expect(top.problems[2]).toMatchObject({ message: 'Far reaches 2 in beyond the edge of the top. It is kept as drawn.', measured: 2 });
  });
});

describe('what cannot be', () => {
  it.each<[string, Partial<Top>, string]>([
    ['a border of no width', { blocks: straight(1, 1, 10), borders: [{ width: -1, corners: 'mitred' }] }, 'top.borders[0].width'],
    ['a border of no number', { blocks: straight(1, 1, 10), borders: [{ width: NaN, corners: 'mitred' }] }, 'top.borders[0].width'],
    ['half a row', { blocks: straight(1.5, 1, 10) }, 'top.blocks.rows'],
    ['no columns', { blocks: straight(1, 0, 10) }, 'top.blocks.columns'],
    ['a thousand million blocks', { blocks: straight(1e5, 1e4, 10) }, 'top.blocks'],
    ['a block of no size', { blocks: straight(1, 1, 0) }, 'top.blocks.size'],
    ['sashing narrower than nothing', { blocks: straight(2, 2, 10, { sashing: -1 }) }, 'top.blocks.sashing'],
    ['an endless panel', { panel: { size: [Infinity, 10] } }, 'top.panel.size'],
    ['blocks and a panel', { blocks: straight(1, 1, 10), panel: { size: [10, 10] } }, 'top.panel'],
    ['nothing at all', {}, 'top'],
    ['a clearance below nothing', { panel: { size: [10, 10] }, clearance: { rawEdge: -1, seam: 0 } }, 'top.clearance.rawEdge'],
    ['a side that measures nothing', { panel: { size: [10, 10] }, borders: [{ width: 1, corners: 'mitred', measured: { left: 0 } }] }, 'top.borders[0].measured.left'],
  ])('says so of %s', (_, more, field) => {
    const top = layTop({ ...BARE, ...more });
    expect(top.problems.map((p) => p.field)).toEqual([field]);
    expect(Number.isFinite(top.width) && Number.isFinite(top.height)).toBe(true);
    expect(piecedAreas(top).reduce((sum, a) => sum + signedArea(a.boundary), 0)).toBeCloseTo(top.width * top.height, 9);
  });

  it('numbers borders as the plan does when one is left out', () => {
    const top = lay(straight(1, 1, 10), [{ width: 0, corners: 'mitred' }, { width: 2, corners: 'mitred' }]);
    expect(ofKind(top, 'border-side').map((a) => a.id)).toEqual(['border:2:top', 'border:2:right', 'border:2:bottom', 'border:2:left']);
  });
});

function joins(seam: LaidTop['seams'][number], a: Point<'quilt'>, b: Point<'quilt'>): boolean {
  const s = segmentsOf(seam)[0]!;
  const near = (p: Point<'quilt'>, q: Point<'quilt'>) => distance(p, q) < 1e-9;
  return (near(s.from, a) && near(s.to, b)) || (near(s.from, b) && near(s.to, a));
}
