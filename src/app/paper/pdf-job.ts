// The one print under way: begun, watched, given up or finished. It goes on when the quilter walks to another room.

import { proxy, wrap } from 'comlink';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../model/plan.ts';
import type { PrintChoice } from '../../session/print-choice.ts';
import { download, fileNameOf } from '../plans/save.ts';
import type { Made, PdfMaker } from './pdf.worker.ts';

export type PdfJob =
  | { readonly kind: 'none' }
  | { readonly kind: 'making'; readonly done: number; readonly of: number | undefined }
  | { readonly kind: 'made'; readonly file: Blob; readonly name: string; readonly pages: number }
  | { readonly kind: 'failed'; readonly message: string };

export const pdfJob = createStore<PdfJob>(() => ({ kind: 'none' }));

let worker: Worker | undefined;

/** Begins a print; one under way is given up for it. The file comes among the downloads when it is done. */
export async function beginPdf(plan: Plan, choice: PrintChoice, areaName: string | undefined): Promise<void> {
  worker?.terminate();
  const mine = new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module', name: 'pdf' });
  worker = mine;
  pdfJob.setState({ kind: 'making', done: 0, of: undefined }, true);
  let pages = 0;
  const made = await madeBy(mine, plan, choice, (done, of) => {
    pages = of;
    if (worker === mine) pdfJob.setState({ kind: 'making', done, of }, true);
  });
  mine.terminate();
  // Given up, or another print was begun meanwhile.
  if (worker !== mine) return;
  worker = undefined;
  if (!made.ok) return pdfJob.setState({ kind: 'failed', message: made.problem.message }, true);
  const file = new Blob([made.value as Uint8Array<ArrayBuffer>], { type: 'application/pdf' });
  const name = `${fileNameOf(areaName === undefined ? plan.name : `${plan.name} ${areaName}`)}.pdf`;
  pdfJob.setState({ kind: 'made', file, name, pages }, true);
  download(file, name);
}

/** Gives the print up, at once. */
export function cancelPdf(): void {
  worker?.terminate();
  worker = undefined;
  pdfJob.setState({ kind: 'none' }, true);
}

function madeBy(worker: Worker, plan: Plan, choice: PrintChoice, onPage: (done: number, of: number) => void): Promise<Made> {
  const broken = new Promise<Made>((resolve) => {
    worker.onerror = () => resolve({ ok: false, problem: { message: 'The print could not be made: something went wrong inside. Your plan is untouched.' } });
  });
  const made = wrap<PdfMaker>(worker).make(plan, choice, proxy(({ done, of }) => onPage(done, of)));
  return Promise.race([made as Promise<Made>, broken]).catch((): Made => ({ ok: false, problem: { message: 'The print could not be made: something went wrong inside. Your plan is untouched.' } }));
}
