// Reasons offered when a finding is left so: the ones usual for its kind first, then those that always may be.

import type { FindingCode } from '../../check/codes.ts';
import type { Finding } from '../../check/finding.ts';

const ALWAYS: readonly string[] = ['It is meant so.', 'It will not show on this quilt.', 'I have sewn it so before, and it held.'];

const BY_CODE: { readonly [code in FindingCode]?: readonly string[] } = {
  'near-raw-edge': ['The binding is narrower there.'],
  'near-seam': ['The seams are pressed flat there.'],
  'near-keep-out': ['I sew slowly there.'],
  'ends-apart': ['The ends are meant to stand apart.'],
  'over-missed-edge': ['The needle line pleases me as it is.'],
  'flip-with-grips': ['I hold it down well.'],
  'template-too-thin': ['My machine’s manual allows it.'],
  'template-too-thick': ['My machine’s manual allows it.'],
  'nothing-to-rest-on': ['I lay a second piece under it.'],
  'two-sheets-one-area': ['Both are to be sewn.'],
  'empty-sheet': ['It is filled later.'],
  'measure-doubtful': ['I measured it again.'],
};

/** Reasons for leaving this finding so, each one sentence. */
export function usualReasons({ code }: Finding): readonly string[] {
  return [...(BY_CODE[code as FindingCode] ?? []), ...ALWAYS];
}
