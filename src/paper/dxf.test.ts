import DxfParser, { type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import type { DisplayList } from '../drawing/display-list.ts';
import { closedPath, openPath } from '../geometry/path.ts';
import { pathLength } from '../geometry/measure.ts';
import { random } from '../num/random.ts';
import { paintDxf } from './dxf.ts';

const list: DisplayList<'quilt'> = {
  bounds: { x: -1, y: 2, width: 12, height: 9 },
  items: [
    { kind: 'path', layer: 'seam', path: openPath([{ x: -1, y: 2, bulge: 0 }, { x: 11, y: 11, bulge: 0 }]), source: 's' },
    { kind: 'path', layer: 'needle', path: closedPath([{ x: 1, y: 3, bulge: 1 }, { x: 3, y: 3, bulge: 0.25 }, { x: 2, y: 5, bulge: -0.5 }]), source: 'n' },
    { kind: 'text', layer: 'label', at: { x: 5, y: 6 }, text: 'block, row 1', height: 0.25, anchor: 'middle', source: 'b' },
  ],
};

// Read back by dxf-parser, a reader that shares no code with the writer.
function readBack(text: string) {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not read');
  return { header: dxf.header, layers: Object.keys(dxf.tables.layer.layers), lines: dxf.entities.filter((e) => e.type === 'LWPOLYLINE') as ILwpolylineEntity[], texts: dxf.entities.filter((e) => e.type === 'TEXT') as ITextEntity[] };
}

describe('paintDxf', () => {
  const read = readBack(paintDxf(list));

  it('says inches: $INSUNITS is 1 (DXF reference, header variables)', () => {
    expect(read.header['$INSUNITS']).toBe(1);
  });

  it('has a layer for each of ours that is used, and things on their layer', () => {
    expect(read.layers).toEqual(expect.arrayContaining(['seam', 'needle', 'label']));
    expect(read.layers).not.toContain('finding');
    expect(read.lines.map((line) => line.layer)).toEqual(['seam', 'needle']);
  });

  it('turns y up from the lower left corner and bulges the other way (DXF reference: positive bulge is counterclockwise, y up)', () => {
    expect(read.lines[0]!.vertices.map(({ x, y }) => [x, y])).toEqual([[0, 9], [12, 0]]);
    expect(read.lines[1]!.vertices.map((v) => v.bulge)).toEqual([-1, -0.25, 0.5]);
    expect(read.lines[1]!.shape).toBe(true);
  });

  it('has every outline once: fills without a line are left out', () => {
    const outline = closedPath<'quilt'>([{ x: 0, y: 0, bulge: 1 }, { x: 2, y: 0, bulge: 1 }]);
    const items = (['template', 'template-edge'] as const).map((layer) => ({ kind: 'path', layer, path: outline, filled: layer === 'template', source: 't' }) as const);
    expect(readBack(paintDxf({ ...list, items })).lines.map((line) => line.layer)).toEqual(['template-edge']);
  });

  it('letters where the list says', () => {
    expect(read.texts[0]).toMatchObject({ text: 'block, row 1', textHeight: 0.25, layer: 'label' });
    expect(read.texts[0]!.startPoint).toMatchObject({ x: 6, y: 5 });
  });

  it('keeps bulges to the last digit and lengths within rounding, seed 7', () => {
    const { between, whole } = random(7);
    const paths = Array.from({ length: 200 }, (_, i) => ({
      closed: i % 2 === 0,
      vertices: Array.from({ length: whole(2, 12) }, () => ({ x: between(-60, 60), y: between(-60, 60), bulge: whole(0, 2) === 0 ? 0 : between(-1, 1) })),
    }));
    const bounds = { x: -60, y: -60, width: 120, height: 120 };
    const { lines } = readBack(paintDxf({ bounds, items: paths.map((path) => ({ kind: 'path', layer: 'needle', path, source: '' })) }));
    expect(lines).toHaveLength(paths.length);
    lines.forEach((line, i) => {
      const path = paths[i]!;
      expect(line.vertices.map((v) => v.bulge ?? 0)).toEqual(path.vertices.map((v) => (v.bulge === 0 ? 0 : -v.bulge)));
      const back = { closed: line.shape, vertices: line.vertices.map((v) => ({ x: v.x, y: v.y, bulge: v.bulge ?? 0 })) };
      expect(pathLength(back)).toBeCloseTo(pathLength(path), 9);
    });
  });
});
