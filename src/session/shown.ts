// What can be shown or hidden on the table: the layers of the drawing, gathered under the words people use for them.

import type { Layer } from '../drawing/display-list.ts';

export interface ShownGroup {
  readonly id: string;
  readonly name: string;
  readonly layers: readonly Layer[];
  /** Shown when a plan is opened. */
  readonly usual: boolean;
}

export const SHOWN_GROUPS = [
  { id: 'lines', name: 'Stitched lines', layers: ['needle'], usual: true },
  { id: 'needle', name: 'Needle line all the way round', layers: ['needle-unsewn'], usual: false },
  { id: 'templates', name: 'Templates', layers: ['template', 'etching', 'missed-edge', 'template-edge', 'mark'], usual: false },
  { id: 'references', name: 'Reference lines', layers: ['reference', 'division'], usual: false },
  { id: 'seams', name: 'Seams', layers: ['seam', 'raw-edge', 'allowance', 'keep-out'], usual: true },
  { id: 'cloth', name: 'Cloth', layers: ['ground'], usual: true },
  { id: 'names', name: 'Names', layers: ['label'], usual: false },
  { id: 'findings', name: 'Findings', layers: ['finding'], usual: true },
] as const satisfies readonly ShownGroup[];

export type ShownId = (typeof SHOWN_GROUPS)[number]['id'];

export const USUALLY_SHOWN: ReadonlySet<ShownId> = new Set(SHOWN_GROUPS.filter((group) => group.usual).map((group) => group.id));

/** The layers to be painted when these groups are shown. */
export function layersOf(shown: ReadonlySet<ShownId>): ReadonlySet<Layer> {
  return new Set(SHOWN_GROUPS.filter((group) => shown.has(group.id)).flatMap((group) => group.layers));
}
