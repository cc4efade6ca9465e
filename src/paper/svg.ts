// The display list as a standalone SVG file at true size: width and height in inches, one user unit to the inch, arcs
// kept as arcs, one group a layer.

import { type DisplayItem, type DisplayList, LAYERS, type Layer } from '../drawing/display-list.ts';
import { type Bounds, NO_BOUNDS, boundsOf, grownBounds, unionBounds } from '../geometry/bounds.ts';
import type { Frame } from '../geometry/point.ts';
import { writePathData } from '../geometry/svg/write.ts';
import { type LineStyle, PAPER_STYLE, type PaperStyle } from './style.ts';

export interface SvgOptions {
  /** Shown by programs that show titles. */
  readonly title?: string;
  readonly layers?: readonly Layer[];
  readonly style?: PaperStyle;
}

/** Height of the capitals of the label typeface as a part of its size (Source Sans 3: 660 of 1000 units). */
const CAPITALS = 0.66;

/**
 * The text of an SVG file of everything in the list. Its edge stands off by the heaviest line, and lies farther out where
 * templates reach beyond the bounds of the list.
 */
export function paintSvg<F extends Frame>(list: DisplayList<F>, options: SvgOptions = {}): string {
  const style = options.style ?? PAPER_STYLE;
  const wanted = new Set<Layer>(options.layers ?? LAYERS);
  const margin = Math.max(...LAYERS.map((layer) => style[layer].width));
  const items = list.items.filter((item) => wanted.has(item.layer));
  const { minX, minY, maxX, maxY } = grownBounds(extentOf(list.bounds, items), margin);
  const box = [minX, minY, maxX - minX, maxY - minY].map(number);
  const groups = LAYERS.filter((layer) => wanted.has(layer)).flatMap((layer) => {
    const here = items.filter((item) => item.layer === layer);
    return here.length > 0 ? [group(layer, here, style[layer])] : [];
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${box[2]}in" height="${box[3]}in" viewBox="${box.join(' ')}">`,
    ...(options.title === undefined ? [] : [`<title>${escaped(options.title)}</title>`]),
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

function extentOf<F extends Frame>({ x, y, width, height }: DisplayList<F>['bounds'], items: readonly DisplayItem<F>[]): Bounds {
  const drawn = items.map((item) => (item.kind === 'path' ? boundsOf(item.path) : NO_BOUNDS));
  return unionBounds([{ minX: x, minY: y, maxX: x + width, maxY: y + height }, ...drawn]);
}

function group<F extends Frame>(layer: Layer, items: readonly DisplayItem<F>[], style: LineStyle): string {
  const attributes = [
    `id="${layer}"`,
    'fill="none"',
    style.width > 0 ? `stroke="${grey(style.grey)}" stroke-width="${number(style.width)}" stroke-linecap="${style.cap}" stroke-linejoin="round"` : 'stroke="none"',
    ...(style.dash.length > 0 ? [`stroke-dasharray="${style.dash.map(number).join(' ')}"`] : []),
  ];
  return [`<g ${attributes.join(' ')}>`, `<title>${escaped(style.name)}</title>`, ...items.map((item) => element(item, style)), '</g>'].join('\n');
}

function element<F extends Frame>(item: DisplayItem<F>, style: LineStyle): string {
  const source = `data-source="${escaped(item.source)}"`;
  if (item.kind === 'text') {
    const { at, height, anchor, text } = item;
    const face = `font-family="Source Sans 3, sans-serif" font-size="${number(height / CAPITALS)}" text-anchor="${anchor}"`;
    return `<text x="${number(at.x)}" y="${number(at.y)}" ${face} fill="${grey(style.grey)}" stroke="none" ${source}>${escaped(text)}</text>`;
  }
  const filled = item.filled && style.fill !== undefined ? ` fill="${grey(style.fill)}" fill-rule="evenodd"` : '';
  const d = [item.path, ...(item.holes ?? [])].map(writePathData).join(' ');
  return `<path d="${d}"${filled} ${source}/>`;
}

function grey(part: number): string {
  const pair = Math.round(part * 255).toString(16).padStart(2, '0');
  return `#${pair}${pair}${pair}`;
}

/** Twelve significant digits: far finer than any machine, and free of binary noise. */
function number(value: number): string {
  return `${Number(value.toPrecision(12))}`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
