// Makes the PDF with pdfkit, the same in Node and in a browser's worker. Fonts come as bytes; nothing is read from anywhere.
// Units: a PDF unit is 1/72 in (ISO 32000, 8.3.2.3), so an inch is exactly 72 of them. Layers are optional content groups (8.11).

import PDFDocument from 'pdfkit';
import type { DisplayList } from '../../drawing/display-list.ts';
import type { Frame } from '../../geometry/point.ts';
import { type Outcome, fail, ok } from '../../num/outcome.ts';
import type { Face, Lettering, PaperCanvas, Pen } from './canvas.ts';
import type { PaperProblem, PdfOptions } from './options.ts';
import { type PagePainted, paintPdf, planPrint } from './paint-pdf.ts';

/** The bytes of three TrueType fonts, one for each face. */
export type PaperFonts = { readonly [face in Face]: Uint8Array };

export interface PdfHooks {
  /** Called after every page. */
  readonly onProgress?: (painted: PagePainted) => void;
  /** Asked between pages; true gives up. */
  readonly cancelled?: () => boolean;
}

export type PdfProblem = PaperProblem | { readonly kind: 'cancelled'; readonly message: string };

const POINTS_PER_INCH = 72;
/** How long to paint before letting others have a turn, in milliseconds. */
const TURN = 40;

/** The PDF file as bytes, or why there is none. Never rejects for anything that is in the list or the options. */
export async function makePdf<F extends Frame>(list: DisplayList<F>, options: PdfOptions, fonts: PaperFonts, hooks: PdfHooks = {}): Promise<Outcome<Uint8Array, PdfProblem>> {
  const print = planPrint(list, options);
  if (!print.ok) return print;
  const Title = [options.title, options.area].filter(Boolean).join(', ');
  // No font at the start: pdfkit would look for Helvetica, or open one of ours afresh at every use.
  const doc = new PDFDocument({ autoFirstPage: false, pdfVersion: '1.7', margin: 0, font: null as unknown as string, info: { Title, Creator: 'Needlefall', Producer: 'Needlefall' } });
  const file = collected(doc);
  const canvas = canvasOn(doc, fonts);
  let since = Date.now();
  for (const painted of paintPdf(list, print.value, options, canvas)) {
    hooks.onProgress?.(painted);
    if (Date.now() - since > TURN) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      since = Date.now();
    }
    if (hooks.cancelled?.()) return fail({ kind: 'cancelled', message: 'The print was given up.' });
  }
  canvas.finish();
  doc.end();
  return ok(await file);
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.length;
      }
      resolve(bytes);
    });
  });
}

/** What pdfkit has and its types do not tell. */
interface Inner {
  readonly page: { readonly resources: { readonly data: Record<string, unknown> } };
  readonly _root: { readonly data: Record<string, unknown> };
  readonly ref: (data: unknown) => { readonly end: () => void };
  readonly addContent: (content: string) => void;
}

/** A canvas whose lines go into the page as they are, rounded to a ten-thousandth of a point (a millionth of an inch). */
function canvasOn(doc: PDFKit.PDFDocument, fonts: PaperFonts): PaperCanvas & { readonly finish: () => void } {
  const inner = doc as unknown as Inner;
  const layers = new Map<string, { readonly id: string; readonly group: { readonly end: () => void } }>();
  /** Widths at a size of one inch, since the same words stand on every page. */
  const widths = new Map<string, number>();
  let path: string[] = [];
  /** Pen settings of the innermost saved state, so that they are written only when they change. */
  let pens: { pen: string; fill: string }[] = [{ pen: '', fill: '' }];

  for (const [face, bytes] of Object.entries(fonts)) doc.registerFont(face, bytes);

  /** Content not yet handed to pdfkit: it is much quicker with few long pieces than with many short ones. */
  let written: string[] = [];
  const handOver = () => {
    if (written.length > 0) inner.addContent(written.join('\n'));
    written = [];
  };

  const saved = (paint: () => void) => {
    written.push('q');
    pens.push({ ...pens[pens.length - 1]! });
    paint();
    pens.pop();
    written.push('Q');
  };
  const layer = (name: string) => {
    const known = layers.get(name);
    if (known) return known;
    const made = { id: `L${layers.size + 1}`, group: inner.ref({ Type: 'OCG', Name: new String(name) }) };
    layers.set(name, made);
    return made;
  };
  const set = (lettering: Lettering) => doc.font(lettering.face).fontSize(lettering.size * POINTS_PER_INCH);
  const textOptions = ({ fraction }: Lettering) => ({ lineBreak: false, baseline: 'alphabetic' as const, ...(fraction && { features: ['frac' as const] }) });

  return {
    startPage: (width, height) => {
      handOver();
      doc.addPage({ size: [width * POINTS_PER_INCH, height * POINTS_PER_INCH], margin: 0 });
      pens = [{ pen: '', fill: '' }];
    },
    inLayer: (name, paint) => {
      const { id, group } = layer(name);
      const { data } = inner.page.resources;
      data['Properties'] = { ...(data['Properties'] as object | undefined), [id]: group };
      written.push(`/OC /${id} BDC`);
      paint();
      written.push('EMC');
    },
    within: ({ x, y, width, height }, paint) =>
      saved(() => {
        written.push(`${points(x)} ${points(y)} ${points(width)} ${points(height)} re W n`);
        paint();
      }),
    turned: (x, y, angle, paint) =>
      saved(() => {
        handOver();
        doc.rotate((angle * 180) / Math.PI, { origin: [x * POINTS_PER_INCH, y * POINTS_PER_INCH] });
        paint();
      }),
    moveTo: (x, y) => path.push(`${points(x)} ${points(y)} m`),
    lineTo: (x, y) => path.push(`${points(x)} ${points(y)} l`),
    curveTo: (x1, y1, x2, y2, x, y) => path.push(`${points(x1)} ${points(y1)} ${points(x2)} ${points(y2)} ${points(x)} ${points(y)} c`),
    close: () => path.push('h'),
    stroke: (pen) => {
      const settings = penSettings(pen);
      const state = pens[pens.length - 1]!;
      if (state.pen !== settings) written.push((state.pen = settings));
      path.push('S');
      for (const part of path) written.push(part);
      path = [];
    },
    fill: (grey) => {
      const settings = `${hundredth(grey)} g`;
      const state = pens[pens.length - 1]!;
      if (state.fill !== settings) written.push((state.fill = settings));
      path.push('f*');
      for (const part of path) written.push(part);
      path = [];
    },
    letter: (x, y, text, lettering) => {
      handOver();
      set(lettering);
      // pdfkit writes the colour outside its own saved state, so our note of the fill is no longer true.
      doc.fillColor(`#${Math.round(lettering.grey * 255).toString(16).padStart(2, '0').repeat(3)}`);
      pens[pens.length - 1]!.fill = '';
      doc.text(text, x * POINTS_PER_INCH, y * POINTS_PER_INCH, textOptions(lettering));
    },
    widthOf: (text, lettering) => {
      const key = `${lettering.face} ${lettering.fraction ? '/' : ' '}${text}`;
      const known = widths.get(key);
      if (known !== undefined) return known * lettering.size;
      set({ ...lettering, size: 1 });
      const width = doc.widthOfString(text, textOptions(lettering)) / POINTS_PER_INCH;
      widths.set(key, width);
      return width * lettering.size;
    },
    finish: () => {
      handOver();
      const groups = [...layers.values()].map(({ group }) => group);
      for (const group of groups) group.end();
      if (groups.length > 0) inner._root.data['OCProperties'] = { OCGs: groups, D: { Order: groups, ON: groups } };
    },
  };
}

function penSettings({ width, grey, dash = [], phase = 0, cap = 'butt' }: Pen): string {
  return `${points(width)} w ${hundredth(grey)} G ${cap === 'round' ? 1 : 0} J 1 j [${dash.map(points).join(' ')}] ${points(phase)} d`;
}

function points(inches: number): number {
  return Math.round(inches * POINTS_PER_INCH * 1e4) / 1e4;
}

function hundredth(grey: number): number {
  return Math.round(grey * 100) / 100;
}
