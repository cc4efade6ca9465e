// From what is chosen to what is printed: the same list and options for the preview on the page and for the worker.

import type { DisplayList, Layer } from '../../drawing/display-list.ts';
import { drawTop } from '../../drawing/draw.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { PdfOptions } from '../../paper/pdf/options.ts';
import type { PrintChoice } from '../../session/print-choice.ts';

const LINES: readonly Layer[] = ['ground', 'seam', 'raw-edge', 'allowance', 'keep-out', 'needle', 'mark', 'label'];
const TEMPLATES: readonly Layer[] = ['reference', 'division', 'template', 'etching', 'missed-edge', 'template-edge', 'needle-unsewn'];

export interface Print {
  readonly list: DisplayList<'quilt'>;
  readonly options: PdfOptions;
}

/** The layers that are printed. */
export function layersPrinted({ templates }: PrintChoice): readonly Layer[] {
  return templates ? [...LINES, ...TEMPLATES] : LINES;
}

export function printOf(evaluation: Evaluation, choice: PrintChoice): Print {
  const { plan, top } = evaluation;
  const area = top.areas.find(({ id }) => id === choice.area);
  const layers = layersPrinted(choice);
  return {
    list: drawTop(evaluation, { layers, labels: true, ...(area && { area: area.id }) }),
    options: {
      paper: choice.paper === 'roll' ? { roll: choice.rollWidth } : choice.paper,
      overlap: choice.overlap,
      title: plan.name,
      shownIn: plan.shownIn,
      ...(area && { area: area.name }),
    },
  };
}
