// Makes the PDF beside the page, so that the page stays quick: the plan comes in, the file goes out.

import { expose, transfer } from 'comlink';
import { evaluate } from '../../engine/evaluate.ts';
import type { Plan } from '../../model/plan.ts';
import { type Outcome, ok } from '../../num/outcome.ts';
import type { PagePainted } from '../../paper/pdf/paint-pdf.ts';
import { type PaperFonts, makePdf } from '../../paper/pdf/pdf.edge.ts';
import firm from '../../paper/fonts/SourceSans3-SemiBold.ttf?url';
import label from '../../paper/fonts/SourceSans3-Regular.ttf?url';
import voice from '../../paper/fonts/SourceSerif4-Regular.ttf?url';
import type { PrintChoice } from '../../session/print-choice.ts';
import { printOf } from './print.ts';

/** The file's bytes, or why there is none, in a sentence. */
export type Made = Outcome<Uint8Array, { readonly message: string }>;

const pdfMaker = {
  make: async (plan: Plan, choice: PrintChoice, onProgress: (painted: PagePainted) => void): Promise<Made> => {
    const { list, options } = printOf(evaluate(plan), choice);
    const made = await makePdf(list, options, await fonts(), { onProgress });
    return made.ok ? transfer(ok(made.value), [made.value.buffer as ArrayBuffer]) : made;
  },
};

export type PdfMaker = typeof pdfMaker;

expose(pdfMaker);

async function fonts(): Promise<PaperFonts> {
  const bytes = async (address: string) => new Uint8Array(await (await fetch(address)).arrayBuffer());
  const [ofLabel, ofFirm, ofVoice] = await Promise.all([bytes(label), bytes(firm), bytes(voice)]);
  return { label: ofLabel, firm: ofFirm, voice: ofVoice };
}
