// How each layer looks on paper: line weights and dashes in inches, greys from 0 (black) to 1 (paper). The needle line is
// the darkest and heaviest; what it is sewn along and lined up on is lighter. Everything reads in black and white.

import type { Layer } from '../drawing/display-list.ts';

export interface LineStyle {
  /** Width of the line, in inches; 0 draws none. */
  readonly width: number;
  readonly grey: number;
  /** Lengths of dash and gap in turn, in inches; empty for an unbroken line. */
  readonly dash: readonly number[];
  readonly cap: 'butt' | 'round';
  /** Grey of filled shapes; they stay open when left out. */
  readonly fill?: number;
  /** What the line means, for legends and layer names. */
  readonly name: string;
  readonly meaning: string;
}

export type PaperStyle = { readonly [layer in Layer]: LineStyle };

export const PAPER_STYLE: PaperStyle = {
  ground: { width: 0, grey: 1, dash: [], cap: 'butt', name: 'Ground', meaning: 'the cloth' },
  seam: { width: 0.008, grey: 0.62, dash: [], cap: 'butt', name: 'Seam', meaning: 'where two pieces of the top are joined' },
  'raw-edge': { width: 0.014, grey: 0.45, dash: [], cap: 'butt', name: 'Raw edge', meaning: 'outer edge of the top' },
  allowance: { width: 0.01, grey: 0.5, dash: [0.12, 0.035, 0.025, 0.035], cap: 'butt', name: 'Allowance', meaning: 'no stitching beyond it: seam and binding cover it' },
  'keep-out': { width: 0.012, grey: 0.5, dash: [0.04, 0.04], cap: 'butt', fill: 0.92, name: 'Keep-out', meaning: 'no stitching in it' },
  reference: { width: 0.007, grey: 0.5, dash: [0.09, 0.05], cap: 'butt', name: 'Reference line', meaning: 'to line up on' },
  division: { width: 0.007, grey: 0.55, dash: [0.02, 0.05], cap: 'butt', name: 'Division line', meaning: 'where one repeat ends and the next begins' },
  template: { width: 0, grey: 1, dash: [], cap: 'butt', fill: 0.95, name: 'Template', meaning: 'where the acrylic lies' },
  etching: { width: 0.005, grey: 0.6, dash: [], cap: 'butt', name: 'Etching', meaning: 'line on the face of the template' },
  'missed-edge': { width: 0.014, grey: 0.45, dash: [0.035, 0.035], cap: 'butt', name: 'Missed edge', meaning: 'the foot cannot reach here' },
  'template-edge': { width: 0.009, grey: 0.45, dash: [], cap: 'butt', name: 'Template edge', meaning: 'outline and windows of the acrylic' },
  'needle-unsewn': { width: 0.014, grey: 0.3, dash: [0, 0.055], cap: 'round', name: 'Not sewn', meaning: 'needle line of the template that no pass uses' },
  needle: { width: 0.022, grey: 0, dash: [], cap: 'round', name: 'Needle line', meaning: 'sew here: the needle falls on the middle of the line' },
  mark: { width: 0.016, grey: 0.25, dash: [], cap: 'butt', name: 'Mark', meaning: 'to be drawn' },
  finding: { width: 0.012, grey: 0.25, dash: [], cap: 'butt', fill: 0.25, name: 'Finding', meaning: 'diamond: mend it; triangle: look and decide; ring: good to know' },
  label: { width: 0, grey: 0.45, dash: [], cap: 'butt', name: 'Name', meaning: 'name of an area or a template' },
};
