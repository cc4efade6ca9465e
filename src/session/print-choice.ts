// What is to be printed, as the quilter chose it in the Paper room. It belongs to the session, not to the plan.

export const PAPER_SIZES = ['letter', 'a4', 'tabloid', 'a3', 'roll'] as const;

export type PaperSize = (typeof PAPER_SIZES)[number];

export interface PrintChoice {
  readonly paper: PaperSize;
  /** Width of the roll in inches; kept while another paper is chosen. */
  readonly rollWidth: number;
  /** One area; undefined for the whole top. */
  readonly area: string | undefined;
  /** How far neighbouring pages show the same, in inches. */
  readonly overlap: number;
  /** Templates and the lines to lay them by are printed as well as the stitched lines. */
  readonly templates: boolean;
}

export const USUAL_PRINT: PrintChoice = { paper: 'letter', rollWidth: 24, area: undefined, overlap: 0.5, templates: true };
