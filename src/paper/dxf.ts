// The display list as a DXF file for cutters and computer-aided drawing: inches, a layer for each of ours, arcs as bulges of
// lightweight polylines. DXF's y points up, so y is flipped and bulges change sign; the lower left corner of what is drawn
// becomes the origin. Source: AutoCAD DXF reference, LWPOLYLINE group code 42, header variable $INSUNITS.

import { DxfWriter, LWPolylineFlags, TextHorizontalAlignment, Units, point2d, point3d } from '@tarikjabiri/dxf';
import { type DisplayItem, type DisplayList, LAYERS, type Layer } from '../drawing/display-list.ts';
import type { Frame } from '../geometry/point.ts';
import { PAPER_STYLE } from './style.ts';

/** Colour numbers every program knows: 7 is black on white, 8 and 9 are greys. */
const COLOUR: { readonly [layer in Layer]: number } = {
  ground: 9, seam: 9, 'raw-edge': 8, allowance: 8, 'keep-out': 8, reference: 5, division: 5, template: 9, etching: 9,
  'missed-edge': 1, 'template-edge': 4, 'needle-unsewn': 8, needle: 7, mark: 1, finding: 6, label: 8,
};

/**
 * The text of a DXF file of every line and text in the list. What is only filled, not outlined, is left out: a cutter would cut
 * the outline of a template once for its tint and once for its edge.
 */
export function paintDxf<F extends Frame>(list: DisplayList<F>): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Inches);
  const items = list.items.filter((item) => item.kind === 'text' || PAPER_STYLE[item.layer].width > 0);
  const used = new Set(items.map((item) => item.layer));
  for (const layer of LAYERS) if (used.has(layer)) dxf.addLayer(layer, COLOUR[layer]);
  const { x: left, y: top, height } = list.bounds;
  const across = (x: number) => x - left;
  const up = (y: number) => top + height - y;
  for (const item of items) add(dxf, item, across, up);
  return dxf.stringify();
}

function add<F extends Frame>(dxf: DxfWriter, item: DisplayItem<F>, across: (x: number) => number, up: (y: number) => number): void {
  const { layer: layerName } = item;
  if (item.kind === 'path') {
    for (const { vertices, closed } of [item.path, ...(item.holes ?? [])]) {
      const points = vertices.map((v) => ({ point: point2d(across(v.x), up(v.y)), bulge: v.bulge === 0 ? 0 : -v.bulge }));
      dxf.addLWPolyline(points, { layerName, flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None });
    }
    return;
  }
  const at = point3d(across(item.at.x), up(item.at.y));
  const horizontalAlignment = ALIGNMENT[item.anchor];
  dxf.addText(at, item.height, item.text, { layerName, ...(item.anchor !== 'start' && { horizontalAlignment, secondAlignmentPoint: at }) });
}

const ALIGNMENT = { start: TextHorizontalAlignment.Left, middle: TextHorizontalAlignment.Center, end: TextHorizontalAlignment.Right } as const;
