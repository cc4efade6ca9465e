// Paper: how long drawing and printing take, and how both grow with the number of stitched lines. In the same run the same lines are
// drawn by pdfkit's own calls, as anyone would who had only pdfkit: flattened to polylines, all on one page as large as the top, and
// for comparison tiled by drawing everything on every page behind a clip.

import { readFileSync } from 'node:fs';
import PDFDocument from 'pdfkit';
import type { DisplayList } from '../src/drawing/display-list.ts';
import { drawTop } from '../src/drawing/draw.ts';
import { evaluate } from '../src/engine/evaluate.ts';
import { carryPath } from '../src/geometry/change.ts';
import { flatten } from '../src/geometry/flatten.ts';
import type { Point } from '../src/geometry/point.ts';
import { poseOf } from '../src/geometry/pose.ts';
import { readPlan } from '../src/model/codec.ts';
import { paintDxf } from '../src/paper/dxf.ts';
import { readPaperFonts } from '../src/paper/fonts/read-fonts.edge.ts';
import { planPrint } from '../src/paper/pdf/paint-pdf.ts';
import { type PaperFonts, makePdf } from '../src/paper/pdf/pdf.edge.ts';
import type { PdfOptions } from '../src/paper/pdf/options.ts';
import { paintSvg } from '../src/paper/svg.ts';

const OPTIONS: PdfOptions = { paper: 'letter', title: 'Bench' };
/** Chord error of the peer's polylines, in inches; the arcs of ours stray by no more than 1e-5. */
const PEER_CHORD_ERROR = 1e-3;

const plan = readPlan(readFileSync(new URL('../examples/king-size.needlefall.json', import.meta.url), 'utf8'));
if (!plan.ok) throw new Error('the example could not be read');
const evaluation = evaluate(plan.value);
const fonts = await readPaperFonts();
await makePdf(withLines(100), OPTIONS, fonts); // warm: fonts and code

console.log(`\nThe king-size example: ${evaluation.lines.length} stitched lines on ${evaluation.top.width} x ${evaluation.top.height} in`);
table(['', 'ms', 'kB'], [
  row('draw, first time', timed(() => drawTop(evaluation))),
  row('draw, nothing changed', timed(() => drawTop(evaluation))),
  row('SVG', timed(() => paintSvg(drawTop(evaluation)))),
  row('DXF', timed(() => paintDxf(drawTop(evaluation)))),
  row('PDF, letter, all layers', await timedPdf(drawTop(evaluation), fonts)),
]);

console.log('\nThe same lines in plenty: PDF of the needle lines on letter paper, beside pdfkit alone');
const rows: string[][] = [];
for (const count of [1_000, 10_000, 100_000]) {
  const list = withLines(count);
  const print = planPrint(list, OPTIONS);
  const pages = print.ok ? print.value.pages : 0;
  const plan = timed(() => planPrint(list, OPTIONS));
  const ours = await timedPdf(list, fonts);
  const lines = list.items.flatMap((item) => (item.kind === 'path' ? [flatten(item.path, PEER_CHORD_ERROR)] : []));
  const one = await timedPeer(() => onOnePage(lines, list.bounds));
  const tiled = count > 1_000 ? undefined : await timedPeer(() => tiledBlindly(lines, list));
  rows.push([
    count.toLocaleString('en'), `${pages}`, ms(plan.time), ms(ours.time), kb(ours.size),
    ms(one.time), kb(one.size), tiled ? ms(tiled.time) : '-', tiled ? kb(tiled.size) : '-',
  ]);
}
table(['lines', 'pages', 'plan ms', 'PDF ms', 'PDF kB', 'pdfkit, 1 page ms', 'kB', 'pdfkit, tiled blindly ms', 'kB'], rows);

/** The example's needle lines over and over, each round moved a little, until there are so many. */
function withLines(count: number): DisplayList<'quilt'> {
  const { bounds, items } = drawTop(evaluation, { layers: ['needle'] });
  const many = Array.from({ length: count }, (_, i) => {
    const item = items[i % items.length]!;
    const round = Math.floor(i / items.length);
    return item.kind === 'path' && round > 0 ? { ...item, path: carryPath(poseOf<'quilt', 'quilt'>(round * 0.01, round * 0.013), item.path) } : item;
  });
  return { bounds, items: many };
}

async function onOnePage(lines: readonly (readonly Point<'quilt'>[])[], { width, height }: { readonly width: number; readonly height: number }): Promise<number> {
  const doc = new PDFDocument({ size: [width * 72, height * 72], margin: 0 });
  const size = sizeOf(doc);
  doc.lineWidth(1.6);
  for (const line of lines) polyline(doc, line, 0, 0);
  doc.end();
  return size;
}

async function tiledBlindly(lines: readonly (readonly Point<'quilt'>[])[], list: DisplayList<'quilt'>): Promise<number> {
  const print = planPrint(list, OPTIONS);
  if (!print.ok) return 0;
  const doc = new PDFDocument({ autoFirstPage: false, margin: 0 });
  const size = sizeOf(doc);
  for (const tile of print.value.map.tiles) {
    if (tile.number === undefined) continue;
    doc.addPage({ size: [612, 792], margin: 0 });
    doc.rect(18, 18, print.value.map.liveWidth * 72, print.value.map.liveHeight * 72).clip();
    doc.lineWidth(1.6);
    for (const line of lines) polyline(doc, line, 18 - tile.live.minX * 72, 18 - tile.live.minY * 72);
  }
  doc.end();
  return size;
}

function polyline(doc: PDFKit.PDFDocument, points: readonly Point<'quilt'>[], x: number, y: number): void {
  points.forEach((p, i) => (i === 0 ? doc.moveTo(p.x * 72 + x, p.y * 72 + y) : doc.lineTo(p.x * 72 + x, p.y * 72 + y)));
  doc.stroke();
}

function sizeOf(doc: PDFKit.PDFDocument): Promise<number> {
  let size = 0;
  return new Promise((resolve) => {
    doc.on('data', (chunk: Uint8Array) => (size += chunk.length));
    doc.on('end', () => resolve(size));
  });
}

interface Timed {
  readonly time: number;
  readonly size?: number;
}

function timed(make: () => unknown): Timed {
  const start = performance.now();
  const made = make();
  return { time: performance.now() - start, ...(typeof made === 'string' && { size: made.length }) };
}

async function timedPdf(list: DisplayList<'quilt'>, fonts: PaperFonts): Promise<Timed> {
  const start = performance.now();
  const made = await makePdf(list, OPTIONS, fonts);
  if (!made.ok) throw new Error(made.problem.message);
  return { time: performance.now() - start, size: made.value.length };
}

async function timedPeer(make: () => Promise<number>): Promise<Timed> {
  const start = performance.now();
  const size = await make();
  return { time: performance.now() - start, size };
}

function row(name: string, { time, size }: Timed): string[] {
  return [name, ms(time), kb(size)];
}

function ms(time: number): string {
  return time.toFixed(time < 10 ? 1 : 0);
}

function kb(size: number | undefined): string {
  return size === undefined ? '-' : (size / 1024).toFixed(0);
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((cells) => cells[i]!.length)));
  const line = (cells: readonly string[]) => cells.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  ');
  console.log(line(heads));
  for (const cells of rows) console.log(line(cells));
}
