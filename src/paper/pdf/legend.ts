// What each line means: a sample of it, its name and, where there is room, its meaning. Darkest first.

import { type Layer, LAYERS } from '../../drawing/display-list.ts';
import type { LineStyle, PaperStyle } from '../style.ts';
import type { Box, PaperCanvas } from './canvas.ts';
import { POINT, fitted, linesOf, write } from './lettering.ts';

const SAMPLE = 0.36;

/** The layers that need explaining, of those drawn: the needle line first, then up from the ground in reverse. */
export function explained(layers: ReadonlySet<Layer>): readonly Layer[] {
  return [...LAYERS].reverse().filter((layer) => layers.has(layer) && layer !== 'label' && layer !== 'ground')
    .sort((a, b) => Number(b === 'needle') - Number(a === 'needle'));
}

/** Names only, in as many columns as the height asks for. */
export function paintSmallLegend(canvas: PaperCanvas, box: Box, layers: readonly Layer[], style: PaperStyle): void {
  const leading = 0.15;
  const rows = Math.max(1, Math.floor(box.height / leading));
  const columns = Math.ceil(layers.length / rows);
  const width = box.width / Math.max(columns, 2);
  layers.forEach((layer, i) => {
    const x = box.x + Math.floor(i / rows) * width;
    const y = box.y + (i % rows) * leading + 0.09;
    const words = { face: 'label', size: 7.5 * POINT } as const;
    paintSample(canvas, layer, x, y - 0.03, SAMPLE * 0.8, style[layer]);
    write(canvas, x + SAMPLE, y, fitted(canvas, style[layer].name, width - SAMPLE - 0.05, words), words);
  });
}

/** Names and meanings, one under the other; gives the y below the last. */
export function paintLegend(canvas: PaperCanvas, box: Box, layers: readonly Layer[], style: PaperStyle): number {
  const words = { face: 'label', size: 9 * POINT } as const;
  const leading = 0.155;
  let y = box.y + 0.12;
  for (const layer of layers) {
    const { name, meaning } = style[layer];
    paintSample(canvas, layer, box.x, y - 0.04, SAMPLE, style[layer]);
    const x = box.x + SAMPLE + 0.1;
    const nameWidth = write(canvas, x, y, `${name}: `, { ...words, face: 'firm' });
    const [first = '', ...rest] = brokenAfter(canvas, meaning, box.width - SAMPLE - 0.1, nameWidth, words);
    write(canvas, x + nameWidth, y, first, words);
    for (const line of rest) write(canvas, x, (y += leading), line, words);
    y += leading + 0.035;
  }
  return y;
}

/** Lines of text of which the first begins after something as wide as `indent`. */
function brokenAfter(canvas: PaperCanvas, text: string, width: number, indent: number, words: { readonly face: 'label'; readonly size: number }): readonly string[] {
  const [first = ''] = linesOf(canvas, text, width - indent, words);
  const rest = text.slice(first.length).trimStart();
  return [first, ...linesOf(canvas, rest, width, words)];
}

function paintSample(canvas: PaperCanvas, layer: Layer, x: number, y: number, width: number, line: LineStyle): void {
  const pen = { width: line.width, grey: line.grey, dash: line.dash, cap: line.cap };
  if (layer === 'finding') {
    shape(canvas, [[x + width / 2, y - 0.05], [x + width / 2 + 0.05, y], [x + width / 2, y + 0.05], [x + width / 2 - 0.05, y]]);
    canvas.fill(line.grey);
    return;
  }
  if (line.fill !== undefined) {
    const corners = [[x, y - 0.04], [x + width, y - 0.04], [x + width, y + 0.04], [x, y + 0.04]] as const;
    shape(canvas, corners);
    canvas.fill(line.fill);
    if (line.width <= 0) return;
    shape(canvas, corners);
    canvas.stroke(pen);
    return;
  }
  if (line.width <= 0) return;
  canvas.moveTo(x, y);
  canvas.lineTo(x + width, y);
  canvas.stroke(pen);
}

function shape(canvas: PaperCanvas, corners: readonly (readonly [number, number])[]): void {
  corners.forEach(([x, y], i) => (i === 0 ? canvas.moveTo(x, y) : canvas.lineTo(x, y)));
  canvas.close();
}
