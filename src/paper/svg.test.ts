import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import type { DisplayList } from '../drawing/display-list.ts';
import { circle, openPath, polygon } from '../geometry/path.ts';
import { paintSvg } from './svg.ts';
import { PAPER_STYLE } from './style.ts';

const list: DisplayList<'quilt'> = {
  bounds: { x: 0, y: 0, width: 12, height: 8 },
  items: [
    { kind: 'path', layer: 'template', path: polygon([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 4 }]), filled: true, holes: [circle({ x: 3, y: 1 }, 0.25)], source: 'a/b' },
    { kind: 'path', layer: 'needle', path: openPath([{ x: 1, y: 1, bulge: 1 }, { x: 3, y: 1, bulge: 0 }]), source: 'block:r1c1/"<&>' },
    { kind: 'text', layer: 'label', at: { x: 1, y: 1 }, text: 'A < B & "C"', height: 0.33, anchor: 'end', source: 'x' },
  ],
};

const read = (text: string) => new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '' }).parse(text) as { svg: Svg };
interface Svg { width: string; height: string; viewBox: string; title: string; g: { id: string; title: string; path?: { d: string }; text?: Record<string, string> }[] }

describe('paintSvg', () => {
  const text = paintSvg(list, { title: 'Tidewater & sons' });
  const { svg } = read(text);

  it('is well-formed XML (W3C XML 1.0), whatever names hold', () => {
    expect(XMLValidator.validate(text)).toBe(true);
    expect(svg.title).toBe('Tidewater & sons');
    expect(svg.g.at(-1)!.text!['#text']).toBe('A < B & "C"');
  });

  it('is at true size: the box has as many user units as inches (SVG 2, 8.2, units)', () => {
    const [x, y, width, height] = svg.viewBox.split(' ').map(Number) as [number, number, number, number];
    expect(svg.width).toBe(`${width}in`);
    expect(svg.height).toBe(`${height}in`);
    expect(width - 12).toBeCloseTo(2 * PAPER_STYLE.needle.width, 12);
    expect([x + width / 2, y + height / 2]).toEqual([6, 4]);
  });

  it('has a group a layer, in painting order, and keeps arcs', () => {
    expect(svg.g.map((g) => g.id)).toEqual(['template', 'needle', 'label']);
    expect(svg.g[1]!.path!.d).toMatch(/^M ?1[ ,]1 ?A ?1[ ,]1 /);
    expect(svg.g[0]!.path!.d.match(/M/g)).toHaveLength(2);
  });

  it('leaves out layers that are not wanted', () => {
    expect(paintSvg(list, { layers: ['needle'] })).not.toContain('id="template"');
  });
});

describe('the look on paper', () => {
  it('draws no line as dark or as heavy as the needle line', () => {
    for (const [layer, style] of Object.entries(PAPER_STYLE)) {
      if (layer === 'needle') continue;
      expect(style.grey, layer).toBeGreaterThan(PAPER_STYLE.needle.grey);
      expect(style.width, layer).toBeLessThan(PAPER_STYLE.needle.width);
    }
  });
});
