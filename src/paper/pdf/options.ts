// What is asked of a full-size print.

import type { Layer } from '../../drawing/display-list.ts';
import type { PaperStyle } from '../style.ts';

/** Sheets of a size, or a roll of a width in inches and any length. */
export type Paper = 'letter' | 'a4' | 'tabloid' | 'a3' | { readonly roll: number };

/** On a roll, `portrait` strips run down the picture and `landscape` strips across it. */
export type Orientation = 'portrait' | 'landscape';

export interface PdfOptions {
  readonly paper: Paper;
  /** Whichever needs fewer pages, when left out. */
  readonly orientation?: Orientation;
  /** How far neighbouring pages show the same, in inches; 1/2 when left out. */
  readonly overlap?: number;
  /** All that the list has, when left out. */
  readonly layers?: readonly Layer[];
  /** Name of the plan. */
  readonly title: string;
  /** What the picture shows, in plain words, such as the name of an area; the whole top when left out. */
  readonly area?: string;
  /** Unit of the lengths in words; inches when left out. */
  readonly shownIn?: 'in' | 'cm';
  /** A first page with the whole picture, how to join the pages and what the lines mean; there is one unless this is false. */
  readonly cover?: boolean;
  readonly style?: PaperStyle;
}

export const USUAL_OVERLAP = 1 / 2;

/** Why a print cannot be made, in one or two sentences. */
export type PaperProblem =
  | { readonly kind: 'nothing-to-print'; readonly message: string }
  | { readonly kind: 'paper-too-narrow'; readonly message: string }
  | { readonly kind: 'overlap-too-wide'; readonly message: string };
