// What is asked when something is set out. Lengths are inches; whatever is left out is free.

import type { Frieze, PathData } from '../../model/plan.ts';

/** What is being set out. */
export interface SettingOut {
  readonly asked: Asked;
  /** The offer that was chosen last, and the sheets it became. */
  readonly taken: { readonly offer: string; readonly sheets: readonly string[] } | undefined;
}

export type Asked = AskedBorder | AskedEcho | AskedMatch;

/** Repeats along all sides of a border, coming out even. */
export interface AskedBorder {
  readonly kind: 'border';
  /** 1 for the innermost. */
  readonly border: number;
  /** Only this template of the kit. */
  readonly template?: string;
  readonly pattern?: Frieze;
  /** About how long a repeat should be. */
  readonly spacing?: number;
  /** How high the crest should stand. */
  readonly crest?: number;
}

/** A line that runs beside a pass already sewn. */
export interface AskedEcho {
  readonly kind: 'echo';
  readonly sheet: string;
  readonly area: string;
  readonly placement: string;
  readonly pass: string;
  readonly distance: number;
  readonly side?: 'left' | 'right';
  readonly template?: string;
}

/** A line drawn by hand or brought in, to be sewn with templates of the kit. */
export interface AskedMatch {
  readonly kind: 'match';
  readonly area: string;
  /** The sheet it is to be sewn on; a new one when left out. */
  readonly sheet?: string;
  /** In the axes placements on that sheet are laid in. */
  readonly line: PathData;
  /** How near the templates should come to it. */
  readonly within: number;
  readonly template?: string;
}
